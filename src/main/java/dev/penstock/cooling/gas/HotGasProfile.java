package dev.penstock.cooling.gas;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import java.util.List;

/**
 * The hot side of a jacket: wall contour and free-stream gas from injector to nozzle exit. Made once per chamber and
 * reused while a cycle iterates on the coolant.
 *
 * @param gas gas at stagnation
 * @param sooty whether the flame lays soot on the wall, as a fuel-rich kerosene flame does
 * @param throatRadius throat radius (m)
 * @param throatCurvatureRadius mean radius of curvature of the throat contour (m)
 * @param stations stations from the injector to the nozzle exit, x rising
 */
public record HotGasProfile(
        HotGas gas, boolean sooty, double throatRadius, double throatCurvatureRadius, List<HotGasStation> stations) {

    public HotGasProfile {
        Require.positive("hot gas profile", "throat radius (m)", throatRadius);
        Require.positive("hot gas profile", "throat radius of curvature (m)", throatCurvatureRadius);
        stations = List.copyOf(stations);
        if (stations.size() < 3) {
            throw new OutsideValidity("hot gas profile", "number of stations (-)", stations.size(), "3 or more");
        }
        for (int i = 1; i < stations.size(); i++) {
            double step = stations.get(i).x() - stations.get(i - 1).x();
            Require.positive("hot gas profile", "distance from station " + (i - 1) + " to the next (m)", step);
        }
    }

    /** @return axial position of the injector face (m), negative */
    public double start() {
        return stations.get(0).x();
    }

    /** @return axial position of the nozzle exit (m) */
    public double end() {
        return stations.get(stations.size() - 1).x();
    }

    /**
     * @param station station of this profile
     * @return cross-section over throat area there (-)
     */
    public double areaRatio(HotGasStation station) {
        double ratio = station.radius() / throatRadius;
        return ratio * ratio;
    }
}
