package dev.penstock.turbomachinery.start;

import java.util.List;

/**
 * A start on tank head.
 *
 * @param reached whether the speed asked for was reached
 * @param speedFraction share of the design speed reached (-)
 * @param time time to it (s)
 * @param breakaway torque at rest over breakaway torque (-); below one nothing moves
 * @param used propellant through the turbines (kg)
 * @param metalTemperature temperature of the jacket's metal at the end (K); zero without a jacket
 * @param why one sentence on what ended it; empty text if the speed was reached
 * @param points the run, from rest
 */
public record TankHeadRun(
        boolean reached,
        double speedFraction,
        double time,
        double breakaway,
        double used,
        double metalTemperature,
        String why,
        List<Point> points) {

    /**
     * One moment.
     *
     * @param time time (s)
     * @param speedFraction share of the design speed (-)
     * @param flow gas flow (kg/s)
     * @param pressure pressure before the turbines (Pa)
     * @param temperature temperature there (K)
     * @param metalTemperature temperature of the jacket's metal (K); zero without a jacket
     */
    public record Point(
            double time,
            double speedFraction,
            double flow,
            double pressure,
            double temperature,
            double metalTemperature) {}

    public TankHeadRun {
        points = List.copyOf(points);
    }
}
