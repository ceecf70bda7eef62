package dev.penstock.vehicle.engine;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;

/**
 * A solid motor by its stated thrust over time. Between two points thrust in vacuum is a straight line; the flow follows it at one
 * impulse, so that the propellant burns up with the last point:
 *
 * <pre>
 * c = ∫F dt / m_propellant,  ṁ(t) = F(t)/c,  F(p_a) = F − p_a A_e
 * </pre>
 *
 * It cannot be throttled. Erosion of the throat, temperature of the grain and the inert mass that leaves with the gas are in the
 * stated table, or nowhere.
 *
 * @param times times after ignition (s), rising from zero
 * @param thrusts thrust in vacuum at these (N)
 * @param propellant propellant (kg)
 * @param exitArea nozzle exit area (m²)
 */
public record SolidMotor(List<Double> times, List<Double> thrusts, double propellant, double exitArea) {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "vehicle.solid-motor",
            "Solid motor by its thrust table",
            "c = ∫F dt/m; ṁ = F/c; F(p_a) = F − p_a A_e; straight lines between the points of the table",
            "the motor for which the table is stated; it is not throttled",
            "that of the table",
            List.of("sutton-rpe"));

    /** Its name in tables. */
    public static final String NAME = "solid motor";

    public SolidMotor {
        Require.within(NAME, "points of the thrust table", times.size(), 2, 10_000);
        Require.within(NAME, "thrusts of the thrust table", thrusts.size(), times.size(), times.size());
        times = List.copyOf(times);
        thrusts = List.copyOf(thrusts);
        Require.within(NAME, "first time (s)", times.get(0), 0, 0);
        for (int i = 1; i < times.size(); i++) {
            Require.positive(NAME, "step of time (s)", times.get(i) - times.get(i - 1));
        }
        for (double thrust : thrusts) {
            Require.notNegative(NAME, "thrust (N)", thrust);
        }
        Require.positive(NAME, "propellant (kg)", propellant);
        Require.notNegative(NAME, "exit area (m²)", exitArea);
        Require.positive(NAME, "total impulse (N s)", impulse(times, thrusts));
    }

    /**
     * @param times times (s), rising
     * @param thrusts thrust at these (N)
     * @return total impulse in vacuum (N s)
     */
    public static double impulse(List<Double> times, List<Double> thrusts) {
        double sum = 0;
        for (int i = 1; i < times.size(); i++) {
            sum += (times.get(i) - times.get(i - 1)) * (thrusts.get(i) + thrusts.get(i - 1)) / 2;
        }
        return sum;
    }

    /** @return total impulse in vacuum (N s) */
    public double impulse() {
        return impulse(times, thrusts);
    }

    /** @return exhaust velocity in vacuum (m/s) */
    public double exhaustVelocity() {
        return impulse() / propellant;
    }

    /** @return impulse in vacuum (s) */
    public double vacuumIsp() {
        return exhaustVelocity() / Constants.STANDARD_GRAVITY;
    }

    /** @return time from ignition to the last point (s) */
    public double burnTime() {
        return times.get(times.size() - 1);
    }

    /** @return largest thrust in vacuum (N) */
    public double mostThrust() {
        return thrusts.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }

    /**
     * @param time time after ignition (s)
     * @return thrust in vacuum (N); none before and after the table
     */
    public double vacuumThrust(double time) {
        if (time < 0 || time > burnTime()) {
            return 0;
        }
        int low = 0;
        int high = times.size() - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (times.get(middle) <= time) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double share = (time - times.get(low)) / (times.get(high) - times.get(low));
        return thrusts.get(low) + share * (thrusts.get(high) - thrusts.get(low));
    }

    /**
     * @param ambientPressure ambient pressure (Pa)
     * @return thrust soon after ignition (N): the largest of the first tenth of the burn
     */
    public double thrustAtIgnition(double ambientPressure) {
        double most = vacuumThrust(0.1 * burnTime());
        for (int i = 0; i < times.size() && times.get(i) <= 0.1 * burnTime(); i++) {
            most = Math.max(most, thrusts.get(i));
        }
        return Math.max(0, most - ambientPressure * exitArea);
    }
}
