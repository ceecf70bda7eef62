package dev.penstock.cooling.gas;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import dev.penstock.fluids.Propellant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The hot side of a jacket: wall contour and the gas along it from injector to nozzle exit, that of the outer zone where the
 * injector has one. Made once per chamber and
 * reused while a cycle iterates on the coolant.
 *
 * @param gas gas at stagnation
 * @param soot soot that the flame lays on the wall over that of a uniform mixture (-); zero where it lays none
 * @param throatRadius throat radius (m)
 * @param throatCurvatureRadius mean radius of curvature of the throat contour (m)
 * @param stations stations from the injector to the nozzle exit, x rising
 * @param film film of fuel along the wall, if there is one
 */
public record HotGasProfile(
        HotGas gas,
        double soot,
        double throatRadius,
        double throatCurvatureRadius,
        List<HotGasStation> stations,
        Optional<Film> film) {

    /**
     * A film of fuel.
     *
     * @param fuel what it is of
     * @param flow its flow (kg/s)
     */
    public record Film(Propellant fuel, double flow) {

        public Film {
            Objects.requireNonNull(fuel, "fuel");
            Require.positive("film", "flow (kg/s)", flow);
        }
    }

    public HotGasProfile {
        Require.notNegative("hot gas profile", "soot over that of a uniform mixture (-)", soot);
        Require.positive("hot gas profile", "throat radius (m)", throatRadius);
        Require.positive("hot gas profile", "throat radius of curvature (m)", throatCurvatureRadius);
        stations = List.copyOf(stations);
        if (stations.size() < 3) {
            throw new OutsideValidity("hot gas profile", "number of stations (-)", stations.size(), "3 or more");
        }
        for (int i = 1; i < stations.size(); i++) {
            double step = stations.get(i).x() - stations.get(i - 1).x();
            if (!(step > 0)) {
                Require.positive("hot gas profile", "distance from station " + (i - 1) + " to the next (m)", step);
            }
        }
    }

    /**
     * @param newFilm film along the wall
     * @return the same hot side with that film
     */
    public HotGasProfile withFilm(Film newFilm) {
        return new HotGasProfile(gas, soot, throatRadius, throatCurvatureRadius, stations, Optional.of(newFilm));
    }

    /** @return axial position of the injector face (m), negative */
    public double start() {
        return stations.get(0).x();
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
