package dev.penstock.turbomachinery.shaft;

import dev.penstock.input.Input;
import dev.penstock.input.Usual;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.pump.PumpSpeed;
import dev.penstock.turbomachinery.speed.Smooth;
import java.util.List;

/**
 * Speed limit of a gearbox: the speed of the teeth at the pitch circle of its fastest pinion.
 * <pre>
 * v = ω d_p/2,   d_p = 2 d          the teeth stand on a rim around the shaft
 * d = (16 P/(ω π S))^(1/3), or the smallest shaft that is built
 * ω ≤ v^1.5 √(π S/(16 P)),   ω ≤ v/d_min
 * </pre>
 * Faster teeth throw off what cools them and scuff.
 */
public final class GearTeeth {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.gear-teeth",
            "Speed limit of a gearbox",
            "ω d ≤ v; d shaft diameter from torque, the pinion twice that; v = 100 m/s (20 000 ft/min)",
            "spur gears of a turbopump",
            "25 % on the speed",
            List.of("nasa-sp-8100"));

    /** Highest speed at the pitch line (m/s). */
    public static final Input<Double> SPEED_LIMIT = Input.quantity(
                    "gear_speed_limit",
                    Dimension.VELOCITY,
                    Range.of(5, 400),
                    "Highest speed of gear teeth at the pitch line")
            .usual(Usual.between(80, 100, 125, "nasa-sp-8100"));

    private GearTeeth() {}

    /**
     * @param shaftSpeed of the pinion (rad/s)
     * @param shaftDiameter of its shaft (m)
     * @return speed of the teeth at the pitch line (m/s)
     */
    public static double speed(double shaftSpeed, double shaftDiameter) {
        return shaftSpeed * shaftDiameter;
    }

    /**
     * @param hydraulicPower isentropic power of all pumps that the shaft drives (W)
     * @param design of the pump on that shaft: its stress and smallest shaft
     * @param pitchLineSpeed v (m/s)
     * @return highest speed of the pinion (rad/s)
     */
    public static double fastest(double hydraulicPower, PumpDesign design, double pitchLineSpeed) {
        double byTorque = PumpSpeed.bearings(hydraulicPower, design.shaftStress(), 0.5 * pitchLineSpeed);
        return Smooth.least(byTorque, pitchLineSpeed / design.minimumShaftDiameter());
    }
}
