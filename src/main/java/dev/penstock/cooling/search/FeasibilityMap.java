package dev.penstock.cooling.search;

import dev.penstock.errors.Require;
import java.util.List;

/**
 * Can chambers of a propellant pair be cooled, over chamber pressure and thrust?
 *
 * @param title what the map is of
 * @param chamberPressures chamber pressures, rising (Pa)
 * @param thrusts vacuum thrusts, rising (N)
 * @param points one point for each pair, all thrusts of the first pressure first
 */
public record FeasibilityMap(String title, List<Double> chamberPressures, List<Double> thrusts, List<Point> points) {

    public FeasibilityMap {
        chamberPressures = List.copyOf(chamberPressures);
        thrusts = List.copyOf(thrusts);
        points = List.copyOf(points);
        Require.within(
                "feasibility map",
                "number of points (-)",
                points.size(),
                (double) chamberPressures.size() * thrusts.size(),
                (double) chamberPressures.size() * thrusts.size());
    }

    /**
     * One chamber.
     *
     * @param chamberPressure chamber pressure (Pa)
     * @param thrust vacuum thrust (N)
     * @param feasible whether every limit is kept
     * @param binding name of the limit with the smallest margin, or why there is no jacket
     * @param margin its relative margin (-); −1 where there is no jacket
     */
    public record Point(double chamberPressure, double thrust, boolean feasible, String binding, double margin) {

        public Point {
            Require.positive("feasibility map", "chamber pressure (Pa)", chamberPressure);
            Require.positive("feasibility map", "thrust (N)", thrust);
            Require.finite("feasibility map", "margin (-)", margin);
        }
    }

    /**
     * @param pressureIndex index of the chamber pressure
     * @param thrustIndex index of the thrust
     * @return the point there
     */
    public Point at(int pressureIndex, int thrustIndex) {
        return points.get(pressureIndex * thrusts.size() + thrustIndex);
    }
}
