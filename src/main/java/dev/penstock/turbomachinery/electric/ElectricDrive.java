package dev.penstock.turbomachinery.electric;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Spread;
import dev.penstock.provenance.UncertainInput;
import java.util.List;

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
        List<UncertainInput> inputs = uncertain();
        return new ElectricDrive(
                inputs.get(0).spread().mode(),
                inputs.get(1).spread().mode(),
                inputs.get(2).spread().mode(),
                inputs.get(3).spread().mode(),
                inputs.get(4).spread().mode(),
                inputs.get(5).spread().mode(),
                inputs.get(6).spread().mode(),
                inputs.get(7).spread().mode());
    }

    /** @return all figures with their spreads, by key, in the order of the components */
    public static List<UncertainInput> uncertain() {
        String source = "common practice, no source";
        return List.of(
                new UncertainInput("motor_power", "W/kg", new Spread(2500, 5000, 9000), source),
                new UncertainInput("motor_efficiency", "-", new Spread(0.88, 0.93, 0.96), source),
                new UncertainInput("inverter_power", "W/kg", new Spread(8000, 15000, 30000), source),
                new UncertainInput("inverter_efficiency", "-", new Spread(0.94, 0.97, 0.985), source),
                new UncertainInput("battery_energy", "J/kg", new Spread(120, 170, 230).times(WATT_HOUR), source),
                new UncertainInput("battery_power", "W/kg", new Spread(1500, 3000, 6000), source),
                new UncertainInput("discharge_efficiency", "-", new Spread(0.85, 0.92, 0.96), source),
                new UncertainInput("usable_fraction", "-", new Spread(0.75, 0.88, 0.95), source));
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
