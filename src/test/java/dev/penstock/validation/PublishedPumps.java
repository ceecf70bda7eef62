package dev.penstock.validation;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.pump.PumpDefaults;
import dev.penstock.turbomachinery.pump.PumpDuty;
import dev.penstock.turbomachinery.pump.PumpModel;
import dev.penstock.turbomachinery.shaft.MechanicalLosses;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The pump model alone: published flow (from thrust, specific impulse and mixture ratio), discharge pressure and speed put in,
 * stages and efficiency by the program. The power is that of the turbine, mechanical losses included.
 */
final class PublishedPumps {

    private static final double POWER = 0.15;
    private static final FluidLibrary LIBRARY = FluidLibrary.open();

    private PublishedPumps() {}

    static Map<String, List<Comparison>> all() {
        Map<String, List<Comparison>> all = new LinkedHashMap<>();
        for (RatedEngine question : RatedEngine.withMachines()) {
            PublishedEngine engine = question.engine();
            boolean both = engine.published("fuel_pump_discharge_MPa").isPresent()
                    && engine.published("ox_pump_discharge_MPa").isPresent()
                    && engine.published("fuel_turbine_power_MW").isPresent();
            // pumps that lift a part of their flow further are left out: the table does not give that part
            boolean staged = engine.cycle().startsWith("staged");
            if (both && !staged) {
                all.put(engine.name(), compare(question));
            }
        }
        return all;
    }

    private static List<Comparison> compare(RatedEngine question) {
        PublishedEngine engine = question.engine();
        double flow = engine.published("thrust_vac_kN").orElseThrow()
                * 1000
                / (engine.published("isp_vac_s").orElseThrow() * Constants.STANDARD_GRAVITY);
        double ratio = engine.published("mixture_ratio").orElseThrow();
        double fuel = power(question, "fuel", flow / (1 + ratio));
        double oxidizer = power(question, "ox", flow * ratio / (1 + ratio));
        List<Comparison> rows = new ArrayList<>();
        if (engine.published("ox_turbine_power_MW").isPresent()) {
            rows.add(new Comparison(
                    "fuel pump's turbine power, MW",
                    engine.published("fuel_turbine_power_MW").orElseThrow(),
                    fuel,
                    POWER));
            rows.add(new Comparison(
                    "oxidizer pump's turbine power, MW",
                    engine.published("ox_turbine_power_MW").orElseThrow(),
                    oxidizer,
                    POWER));
        } else {
            rows.add(new Comparison(
                    "both pumps' turbine power, MW",
                    engine.published("fuel_turbine_power_MW").orElseThrow(),
                    fuel + oxidizer,
                    POWER));
        }
        return rows;
    }

    private static double power(RatedEngine question, String side, double massFlow) {
        PublishedEngine engine = question.engine();
        Propellant propellant = LIBRARY.propellant(side.equals("ox") ? engine.oxidizer() : engine.fuel());
        FluidState inlet = propellant
                .fluid()
                .atPressureTemperature(1e6 * question.tankPressure(side.equals("ox")), propellant.storageTemperature());
        PumpDuty duty = new PumpDuty(
                propellant,
                inlet,
                1e6 * engine.published(side + "_pump_discharge_MPa").orElseThrow(),
                massFlow);
        double speed = engine.published(side + "_pump_speed_rpm").orElseThrow() * Math.PI / 30;
        double power = new PumpModel()
                .work(duty, PumpDefaults.of(propellant).withSpeed(speed))
                .power();
        return MechanicalLosses.usual(false).turbinePower(power) / 1e6;
    }
}
