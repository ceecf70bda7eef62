package dev.penstock.turbomachinery.electric;

import dev.penstock.errors.Require;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Spread;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Motors, inverters and batteries by specific power and energy.
 * <pre>
 * P_battery = P_shaft/(η_motor η_inverter)
 * m_motor = P_shaft/π_motor,  m_inverter = P_shaft/(η_motor π_inverter)
 * m_battery = max(P_battery t/(η_discharge u e), P_battery/π_battery)
 * </pre>
 * The battery heats up and empties together; what it delivers at the end of a short, hard discharge is in η_discharge and u.
 *
 * @param motorPower π_motor (W/kg)
 * @param motorEfficiency η_motor (-)
 * @param inverterPower π_inverter (W/kg)
 * @param inverterEfficiency η_inverter (-)
 * @param batteryEnergy e of the pack, not of a cell (J/kg)
 * @param batteryPower π_battery of the pack at the end of discharge (W/kg)
 * @param dischargeEfficiency η_discharge (-)
 * @param usableFraction u (-)
 */
public record ElectricDrive(
        double motorPower,
        double motorEfficiency,
        double inverterPower,
        double inverterEfficiency,
        double batteryEnergy,
        double batteryPower,
        double dischargeEfficiency,
        double usableFraction) {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.electric-drive",
            "Mass of an electric pump drive",
            "m = P/π_motor + P/(η_motor π_inverter) + max(P_b t/(η u e), P_b/π_battery), P_b = P/(η_motor η_inverter)",
            "kilowatts to a few megawatts, burns of minutes",
            "30 %: specific power and energy move with the state of the art",
            List.of("common practice, no source"));

    private static final double WATT_HOUR = 3600;
    private static final Range EFFICIENCIES = Range.of(0.3, 1);

    public static final Input<Double> MOTOR_POWER =
            power("motor_power", "Specific power of the motors").usual(Usual.between(2500, 5000, 9000, Usual.COMMON));
    public static final Input<Double> MOTOR_EFFICIENCY = Input.ratio(
                    "motor_efficiency", EFFICIENCIES, "Efficiency of the motors")
            .usual(Usual.between(0.88, 0.93, 0.96, Usual.COMMON));
    public static final Input<Double> INVERTER_POWER = power("inverter_power", "Specific power of the inverters")
            .usual(Usual.between(8000, 15000, 30000, Usual.COMMON));
    public static final Input<Double> INVERTER_EFFICIENCY = Input.ratio(
                    "inverter_efficiency", EFFICIENCIES, "Efficiency of the inverters")
            .usual(Usual.between(0.94, 0.97, 0.985, Usual.COMMON));
    public static final Input<Double> BATTERY_ENERGY = Input.quantity(
                    "battery_energy",
                    Dimension.SPECIFIC_ENERGY,
                    Range.of(10, 1e8),
                    "Specific energy of the battery pack, not of a cell")
            .usual(Usual.of(new Spread(120, 170, 230).times(WATT_HOUR), "", Usual.COMMON));
    public static final Input<Double> BATTERY_POWER = power(
                    "battery_power", "Specific power of the battery pack at the end of discharge")
            .usual(Usual.between(1500, 3000, 6000, Usual.COMMON));
    public static final Input<Double> DISCHARGE_EFFICIENCY = Input.ratio(
                    "discharge_efficiency", EFFICIENCIES, "Energy delivered over energy stored")
            .usual(Usual.between(0.85, 0.92, 0.96, Usual.COMMON));
    public static final Input<Double> USABLE_FRACTION = Input.ratio(
                    "usable_fraction", EFFICIENCIES, "Share of the stored energy that is used")
            .usual(Usual.between(0.75, 0.88, 0.95, Usual.COMMON));

    /** All of them. */
    public static final InputGroup GROUP = InputGroup.table(
            "electric",
            "Motors, inverters and battery",
            MOTOR_POWER,
            MOTOR_EFFICIENCY,
            INVERTER_POWER,
            INVERTER_EFFICIENCY,
            BATTERY_ENERGY,
            BATTERY_POWER,
            DISCHARGE_EFFICIENCY,
            USABLE_FRACTION);

    private static Input<Double> power(String key, String title) {
        return Input.quantity(key, Dimension.SPECIFIC_POWER, Range.of(10, 1e8), title);
    }

    public ElectricDrive {
        String name = "electric drive";
        Require.positive(name, "specific power of the motor (W/kg)", motorPower);
        Require.within(name, "efficiency of the motor (-)", motorEfficiency, 0.3, 1);
        Require.positive(name, "specific power of the inverter (W/kg)", inverterPower);
        Require.within(name, "efficiency of the inverter (-)", inverterEfficiency, 0.3, 1);
        Require.positive(name, "specific energy of the battery (J/kg)", batteryEnergy);
        Require.positive(name, "specific power of the battery (W/kg)", batteryPower);
        Require.within(name, "efficiency of discharge (-)", dischargeEfficiency, 0.3, 1);
        Require.within(name, "usable fraction (-)", usableFraction, 0.1, 1);
    }

    /** @return lithium-polymer pack and permanent-magnet motor of today's practice */
    public static ElectricDrive usual() {
        return of(input -> input.standing().value());
    }

    /**
     * @param value value of each input of {@link #GROUP}, SI
     * @return the drive with these
     */
    public static ElectricDrive of(ToDoubleFunction<Input<Double>> value) {
        return new ElectricDrive(
                value.applyAsDouble(MOTOR_POWER),
                value.applyAsDouble(MOTOR_EFFICIENCY),
                value.applyAsDouble(INVERTER_POWER),
                value.applyAsDouble(INVERTER_EFFICIENCY),
                value.applyAsDouble(BATTERY_ENERGY),
                value.applyAsDouble(BATTERY_POWER),
                value.applyAsDouble(DISCHARGE_EFFICIENCY),
                value.applyAsDouble(USABLE_FRACTION));
    }

    /**
     * @param shaftPower power at the motor shafts (W)
     * @param duration burn time (s)
     * @return masses, power and energy
     * @throws dev.penstock.errors.OutsideValidity if an argument is not positive
     */
    public ElectricSizing size(double shaftPower, double duration) {
        Require.positive(CARD.id(), "shaft power (W)", shaftPower);
        Require.positive(CARD.id(), "burn time (s)", duration);
        double drawn = batteryPowerFor(shaftPower);
        double held = drawn * duration / (dischargeEfficiency * usableFraction);
        double forEnergy = held / batteryEnergy;
        double forPower = drawn / batteryPower;
        double battery = Math.max(forEnergy, forPower);
        return new ElectricSizing(
                shaftPower,
                drawn,
                battery * batteryEnergy,
                shaftPower / motorPower,
                shaftPower / motorEfficiency / inverterPower,
                battery,
                forEnergy >= forPower,
                drawn - shaftPower);
    }

    /**
     * @param shaftPower power at the motor shafts (W)
     * @return power drawn from the battery (W)
     */
    public double batteryPowerFor(double shaftPower) {
        return shaftPower / (motorEfficiency * inverterEfficiency);
    }
}
