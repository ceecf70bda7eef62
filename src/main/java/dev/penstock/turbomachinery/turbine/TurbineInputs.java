package dev.penstock.turbomachinery.turbine;

import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;

/** What a file may say of a turbine, with its usual values and limits. Nothing here is fitted to one engine. */
public final class TurbineInputs {

    public static final Input<Double> EFFICIENCY = Input.ratio(
                    "efficiency", Range.of(0.05, 1), "Shaft power over isentropic power, total to static")
            .computed("velocity triangles at the blade speed");
    public static final Input<Integer> STAGES =
            Input.whole("stages", 1, 10, "Number of stages").computed("by pressure ratio and velocity ratio");
    public static final Input<TurbineType> TYPE = Input.choice("type", TurbineType.class, "Kind of its stages")
            .usual(Usual.of(TurbineType.AUTOMATIC, "by velocity ratio", ""));
    public static final Input<Double> MEAN_DIAMETER = Input.quantity(
                    "mean_diameter", Dimension.LENGTH, Range.of(0.01, 5), "Diameter at half blade height")
            .computed("best velocity ratio within the limits");
    public static final Input<Double> PITCH_LINE_SPEED_LIMIT = Input.quantity(
                    "pitch_line_speed_limit",
                    Dimension.VELOCITY,
                    Range.of(20, 1000),
                    "Highest blade speed at half height")
            .usual(Usual.between(370, 460, 550, "nasa-sp-8110"));
    public static final Input<Double> ANNULUS_SPEED_LIMIT = Input.quantity(
                    "annulus_speed_limit",
                    Dimension.VELOCITY,
                    Range.of(20, 1500),
                    "Highest shaft speed times the root of the blade annulus")
            .follows("by the temperature of the gas");
    public static final Input<Double> INLET_TEMPERATURE_LIMIT = Input.quantity(
                    "inlet_temperature_limit",
                    Dimension.TEMPERATURE,
                    Range.of(200, 3000),
                    "Hottest gas that the blades stand")
            .follows("limits.turbine_temperature, else by gas, nasa-sp-125");
    public static final Input<Double> NOZZLE_COEFFICIENT = Input.ratio(
                    "nozzle_coefficient", Range.of(0.8, 1), "Velocity behind the nozzles over the isentropic one")
            .usual(Usual.between(0.94, 0.96, 0.97, "nasa-sp-8110"));
    public static final Input<Double> BLADE_COEFFICIENT = Input.ratio(
                    "blade_coefficient", Range.of(0.5, 1), "Relative velocity behind the blades over that before")
            .usual(Usual.between(0.80, 0.85, 0.90, "nasa-sp-8110"));
    public static final Input<Double> EFFICIENCY_FACTOR = Input.ratio(
                    "efficiency_factor",
                    Range.of(0.3, 1),
                    "What secondary flow, disk friction and a tip gap of 2 % leave of the efficiency")
            .usual(Usual.between(0.85, 0.93, 0.98, "nasa-sp-8110"));
    public static final Input<Double> DIAMETER_COEFFICIENT = Input.ratio(
                    "diameter_coefficient",
                    Range.of(0.005, 0.1),
                    "Largest mean diameter over the cube root of the torque, in m/(N·m)^(1/3)")
            .usual(Usual.between(0.020, 0.026, 0.030, Usual.COMMON));
    public static final Input<Double> NOZZLE_ANGLE = Input.quantity(
                    "nozzle_angle",
                    Dimension.ANGLE,
                    Range.of(Math.toRadians(8), Math.toRadians(45)),
                    "Angle of the nozzles against the plane of the wheel")
            .usual(Usual.common(Math.toRadians(20)));
    public static final Input<Double> SMALLEST_BLADE_HEIGHT = Input.quantity(
                    "smallest_blade_height", Dimension.LENGTH, Range.of(5e-4, 0.05), "Shortest blade that is built")
            .usual(Usual.common(0.003));

    /** All of them; a cycle adds the pressure ratio. */
    public static final InputGroup GROUP = InputGroup.table(
            "turbine",
            "A turbine",
            EFFICIENCY,
            STAGES,
            TYPE,
            MEAN_DIAMETER,
            PITCH_LINE_SPEED_LIMIT,
            ANNULUS_SPEED_LIMIT,
            INLET_TEMPERATURE_LIMIT,
            NOZZLE_COEFFICIENT,
            BLADE_COEFFICIENT,
            EFFICIENCY_FACTOR,
            DIAMETER_COEFFICIENT,
            NOZZLE_ANGLE,
            SMALLEST_BLADE_HEIGHT);

    private TurbineInputs() {}

    /**
     * Hot blades: ω√A of 2, 3 and 4·10¹⁰ in²·rpm². Cold blades do not creep: twice the root stress.
     *
     * @param cold whether the gas is no more than warm, as behind a cooling jacket
     * @return default of {@link #ANNULUS_SPEED_LIMIT} (m/s)
     */
    public static Usual<Double> annulusSpeed(boolean cold) {
        return cold ? Usual.between(532, 652, 752, Usual.COMMON) : Usual.between(376, 461, 532, "nasa-sp-8110");
    }

    /**
     * @param oxygenRich whether the gas is oxygen-rich
     * @return default of {@link #INLET_TEMPERATURE_LIMIT} (K)
     */
    public static Usual<Double> inletTemperature(boolean oxygenRich) {
        return oxygenRich
                ? Usual.between(700, 850, 950, "nasa-sp-125")
                : Usual.between(1000, 1150, 1250, "nasa-sp-125");
    }
}
