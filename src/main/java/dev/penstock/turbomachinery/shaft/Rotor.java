package dev.penstock.turbomachinery.shaft;

import dev.penstock.turbomachinery.pump.LightLiquid;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.List;

/**
 * Mass, length and inertia of the turning parts, from the sizes of the wheels: impellers as discs a tenth of their diameter
 * thick, turbine discs as 0.12 of the pitch diameter, all with half of the disc filled at the densities of the usual alloys.
 * Common practice, no source; for first estimates of critical speed and of start energy only.
 *
 * @param mass turning mass (kg)
 * @param span length between the bearings (m)
 * @param inertia moment of inertia about the axis (kg·m²), at the turbine's speed
 */
public record Rotor(double mass, double span, double inertia) {

    private static final double FILLED = 0.5;
    private static final double IMPELLER_THICKNESS = 0.10;
    private static final double TURBINE_THICKNESS = 0.12;
    private static final double STEEL = 8000;
    private static final double TITANIUM = 4500;

    /**
     * @param pumps pumps on the shaft
     * @param turbines turbines on the shaft
     * @param shaftDiameter shaft diameter (m)
     * @param speed speed of the turbine's end (rad/s)
     * @return the turning parts
     */
    public static Rotor of(List<PumpSizing> pumps, List<TurbineSizing> turbines, double shaftDiameter, double speed) {
        double mass = 0;
        double span = 2 * shaftDiameter;
        double inertia = 0;
        for (PumpSizing pump : pumps) {
            double density = LightLiquid.is(pump.duty().inlet().density()) ? TITANIUM : STEEL;
            double d = pump.impellerDiameter();
            double wheels = pump.stages() * disc(d, IMPELLER_THICKNESS * d, density);
            double gear = pump.speed() / speed;
            mass += wheels;
            span += pump.inducerDiameter() * 0.5 + pump.stages() * Math.max(0.35 * d, 2 * pump.impellerTipWidth());
            inertia += wheels * d * d / 8 * gear * gear;
        }
        for (TurbineSizing turbine : turbines) {
            double d = turbine.meanDiameter();
            double wheel = turbine.stages() * disc(d, TURBINE_THICKNESS * d, STEEL);
            mass += wheel;
            span += 0.2 * d * turbine.stages();
            inertia += wheel * d * d / 8;
        }
        double shaft = STEEL * Math.PI / 4 * shaftDiameter * shaftDiameter * span;
        return new Rotor(mass + shaft, span, inertia + shaft * shaftDiameter * shaftDiameter / 8);
    }

    private static double disc(double diameter, double thickness, double density) {
        return FILLED * density * Math.PI / 4 * diameter * diameter * thickness;
    }
}
