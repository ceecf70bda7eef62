package dev.penstock.validation;

import dev.penstock.fluids.state.FluidState;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.ConstantDensityLiquid;
import dev.penstock.turbomachinery.PerfectGas;
import dev.penstock.turbomachinery.pump.PumpDefaults;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.pump.PumpDuty;
import dev.penstock.turbomachinery.pump.PumpModel;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.pump.PumpType;
import dev.penstock.turbomachinery.pump.SpecificSpeed;
import dev.penstock.turbomachinery.pump.SuppressionHead;
import dev.penstock.turbomachinery.shaft.MechanicalLosses;
import dev.penstock.turbomachinery.shaft.TurbopumpMass;
import dev.penstock.turbomachinery.turbine.TurbineDefaults;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import dev.penstock.turbomachinery.turbine.TurbineDuty;
import dev.penstock.turbomachinery.turbine.TurbineModel;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The worked examples: the A-1 pump and turbine of [nasa-sp-125] (transcribed) and two machines computed from the same formulas
 * by an independent calculation. Each is run through the models with the example's own speed and efficiency; what is left to the
 * program is marked.
 */
final class WorkedExamples {

    private static final double G = Constants.STANDARD_GRAVITY;
    private static final double FOOT = 0.3048;
    private static final double RPM = Math.PI / 30;
    private static final double GPM = 3.785411784e-3 / 60;
    private static final double HORSEPOWER = 745.6999;
    private static final double POUND = 0.45359237;

    private WorkedExamples() {}

    static Map<String, List<Comparison>> all() {
        Map<String, List<Comparison>> all = new LinkedHashMap<>();
        all.put("A-1 oxidizer pump, 7000 rpm [nasa-sp-125]", samplePump());
        all.put("A-1 turbine, ratio 23.7, 1400 °F [nasa-sp-125]", sampleTurbine());
        all.put("100 kg/s pump, 10 MPa, 20 000 rpm (independent calculation)", secondPump());
        all.put("900 K turbine, ratio 20 (independent calculation)", secondTurbine());
        all.put("hydrogen at 20.37 K (independent calculation)", hydrogen());
        return all;
    }

    private static List<Comparison> samplePump() {
        double density = 71.17 * 16.018463;
        ConstantDensityLiquid liquid = new ConstantDensityLiquid(density, 1700, 1e5);
        FluidState inlet = liquid.atPressureTemperature(1e5 + 58 * FOOT * density * G, 90);
        PumpDuty duty = new PumpDuty(
                liquid.asOxidizer(), inlet, inlet.pressure() + density * 2930 * FOOT * G, density * 12420 * GPM);
        PumpDesign free =
                PumpDefaults.of(liquid.asOxidizer()).withSpeed(7000 * RPM).withStages(PumpType.CENTRIFUGAL, 1);
        PumpSizing pump =
                new PumpModel().size("pump", duty, free.withEfficiency(0.707).withHeadCoefficient(0.46));
        PumpSizing own = new PumpModel().size("pump", duty, free);
        List<Comparison> rows = new ArrayList<>();
        rows.add(new Comparison("power, hp", 14850, pump.power() / HORSEPOWER, 0.005));
        rows.add(new Comparison("specific speed, US", 1980, SpecificSpeed.inUsUnits(pump.specificSpeed()), 0.012));
        rows.add(new Comparison("tip speed, ft/s", 453, pump.tipSpeed() / FOOT, 0.015));
        rows.add(new Comparison("impeller diameter, in", 14.8, pump.impellerDiameter() / 0.0254, 0.015));
        rows.add(new Comparison("efficiency (the program's own)", 0.707, own.efficiency(), 0.15));
        rows.add(new Comparison(
                "impeller diameter (the program's own head coefficient), in",
                14.8,
                own.impellerDiameter() / 0.0254,
                0.1));
        return rows;
    }

    private static List<Comparison> sampleTurbine() {
        PerfectGas gas = new PerfectGas(0.653 * 4186.8, 1.124);
        double inlet = gas.heatCapacity() * (1400 + 459.67) / 1.8;
        double shaftPower = 27140 * HORSEPOWER;
        TurbineModel model = new TurbineModel();
        TurbineDesign given = TurbineDefaults.of(false).withEfficiency(0.582);
        TurbineDuty one = new TurbineDuty(gas, 4.4e6, inlet, 4.4e6 / 23.7, 1);
        double perKilogram = model.work(one, 7000 * RPM, given).power();
        double flow = shaftPower / perKilogram;
        TurbineDuty duty = new TurbineDuty(gas, 4.4e6, inlet, 4.4e6 / 23.7, flow);
        TurbineSizing own = model.size("turbine", duty, 7000 * RPM, TurbineDefaults.of(false));
        List<Comparison> rows = new ArrayList<>();
        rows.add(new Comparison("isentropic drop, Btu/lb", 358.0, own.isentropicDrop() / 2326, 0.005));
        rows.add(new Comparison("spouting velocity, ft/s", 4234, own.spoutingVelocity() / FOOT, 0.005));
        rows.add(new Comparison("gas flow, lb/s", 92, flow / POUND, 0.005));
        rows.add(new Comparison("efficiency (the program's own)", 0.582, own.efficiency(), 0.1));
        return rows;
    }

    private static List<Comparison> secondPump() {
        ConstantDensityLiquid liquid = new ConstantDensityLiquid(1141, 1700, 1e5);
        PumpDuty duty = new PumpDuty(liquid.asOxidizer(), liquid.atPressureTemperature(3e5, 90), 10.3e6, 100);
        PumpSizing pump = new PumpModel()
                .size(
                        "pump",
                        duty,
                        PumpDefaults.of(liquid.asOxidizer())
                                .withSpeed(20000 * RPM)
                                .withEfficiency(0.7)
                                .withStages(PumpType.CENTRIFUGAL, 1)
                                .withHeadCoefficient(0.5));
        return List.of(
                new Comparison("head, m", 893.70, pump.head() / G, 0.001),
                new Comparison("specific speed, US", 1870.8, SpecificSpeed.inUsUnits(pump.specificSpeed()), 0.001),
                new Comparison("power, MW", 1.25203, pump.power() / 1e6, 0.001),
                new Comparison("tip speed, m/s", 132.40, pump.tipSpeed(), 0.001),
                new Comparison("impeller diameter, m", 0.12643, pump.impellerDiameter(), 0.001),
                new Comparison("turbopump mass, kg", 69.5, TurbopumpMass.of(pump.torque()), 0.002));
    }

    private static List<Comparison> secondTurbine() {
        PerfectGas gas = new PerfectGas(2650, 1.10);
        TurbineDuty duty = new TurbineDuty(gas, 10e6, 2650 * 900, 0.5e6, 1);
        TurbineDesign design = TurbineDefaults.of(false).withEfficiency(0.60).withMeanDiameter(0.4);
        TurbineSizing turbine = new TurbineModel().size("turbine", duty, 2000, design);
        double flow = new MechanicalLosses(1, 1, 0).turbinePower(5e6) / turbine.power();
        return List.of(
                new Comparison("isentropic drop, kJ/kg", 568.59, turbine.isentropicDrop() / 1000, 0.0005),
                new Comparison("spouting velocity, m/s", 1066.4, turbine.spoutingVelocity(), 0.0005),
                new Comparison("velocity ratio at 400 m/s", 0.3751, turbine.velocityRatio(), 0.0005),
                new Comparison("gas flow for 5 MW of pumps, kg/s", 14.66, flow, 0.0005));
    }

    private static List<Comparison> hydrogen() {
        return List.of(new Comparison(
                "suppression head per unit volume ratio, m",
                37.39,
                SuppressionHead.perVolumeRatio(20.37, 29.83e3, 70.85, 1.338, 9660),
                0.002));
    }
}
