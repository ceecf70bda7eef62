package dev.penstock.turbomachinery.turbine;

import dev.penstock.provenance.Spread;
import dev.penstock.provenance.UncertainInput;
import dev.penstock.turbomachinery.pump.PumpDefaults;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Usual values and limits of turbines, with their spreads. Nothing here is fitted to one engine. */
public final class TurbineDefaults {

    private TurbineDefaults() {}

    /**
     * @param oxygenRich whether the gas is oxygen-rich
     * @return design for hot gas with nothing fixed and the usual limits
     */
    public static TurbineDesign of(boolean oxygenRich) {
        return of(oxygenRich, false);
    }

    /**
     * @param oxygenRich whether the gas is oxygen-rich
     * @param cold whether the gas is no more than warm, as behind a cooling jacket
     * @return design with nothing fixed and the usual limits
     */
    public static TurbineDesign of(boolean oxygenRich, boolean cold) {
        List<UncertainInput> inputs = uncertain(oxygenRich, cold);
        return new TurbineDesign(
                OptionalDouble.empty(),
                OptionalInt.empty(),
                TurbineType.AUTOMATIC,
                OptionalDouble.empty(),
                PumpDefaults.mode(inputs, "pitch_line_speed_limit"),
                PumpDefaults.mode(inputs, "annulus_speed_limit"),
                PumpDefaults.mode(inputs, "inlet_temperature_limit"),
                Math.toRadians(20),
                PumpDefaults.mode(inputs, "nozzle_coefficient"),
                PumpDefaults.mode(inputs, "blade_coefficient"),
                PumpDefaults.mode(inputs, "efficiency_factor"),
                PumpDefaults.mode(inputs, "diameter_coefficient"),
                0.003,
                oxygenRich);
    }

    /**
     * @param oxygenRich whether the gas is oxygen-rich
     * @param cold whether the gas is no more than warm, as behind a cooling jacket
     * @return every efficiency and limit that is only known within bounds, by its key in the concept file
     */
    public static List<UncertainInput> uncertain(boolean oxygenRich, boolean cold) {
        return List.of(
                new UncertainInput("pitch_line_speed_limit", "m/s", new Spread(370, 460, 550), "nasa-sp-8110"),
                // hot: ω√A of 2, 3 and 4·10¹⁰ in²·rpm². Cold blades do not creep: twice the root stress
                cold
                        ? new UncertainInput(
                                "annulus_speed_limit", "m/s", new Spread(532, 652, 752), "common practice, no source")
                        : new UncertainInput("annulus_speed_limit", "m/s", new Spread(376, 461, 532), "nasa-sp-8110"),
                new UncertainInput(
                        "inlet_temperature_limit",
                        "K",
                        oxygenRich ? new Spread(700, 850, 950) : new Spread(1000, 1150, 1250),
                        "nasa-sp-125"),
                new UncertainInput("nozzle_coefficient", "-", new Spread(0.94, 0.96, 0.97), "nasa-sp-8110"),
                new UncertainInput("blade_coefficient", "-", new Spread(0.80, 0.85, 0.90), "nasa-sp-8110"),
                new UncertainInput("efficiency_factor", "-", new Spread(0.85, 0.93, 0.98), "nasa-sp-8110"),
                new UncertainInput(
                        "diameter_coefficient",
                        "m/(N·m)^(1/3)",
                        new Spread(0.020, 0.026, 0.030),
                        "common practice, no source"));
    }
}
