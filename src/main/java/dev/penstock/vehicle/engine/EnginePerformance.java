package dev.penstock.vehicle.engine;

import dev.penstock.provenance.Trail;
import dev.penstock.quantities.Constants;
import java.util.Optional;

/** One engine at full thrust as its vehicle sees it. Implementations are immutable. */
public interface EnginePerformance {

    /** What the path of a figure or an input of one of a vehicle's engines begins with. */
    String PATHS = "engines.";

    /**
     * @param name name of an engine
     * @return path of that engine among those of its vehicle
     */
    static String path(String name) {
        return PATHS + Trail.slug(name);
    }

    /** @return name for tables */
    String name();

    /** @return vacuum thrust (N) */
    double vacuumThrust();

    /** @return propellant flow, all that leaves the tanks (kg/s) */
    double massFlow();

    /**
     * @param ambientPressure ambient pressure (Pa), zero or more
     * @return thrust (N)
     */
    double thrustAt(double ambientPressure);

    /** @return oxidizer over fuel by mass, engine total (-) */
    double mixtureRatio();

    /** @return oxidizer as loaded */
    LoadedPropellant oxidizer();

    /** @return fuel as loaded */
    LoadedPropellant fuel();

    /** @return a third fluid as loaded, if it takes one */
    default Optional<LoadedPropellant> diluent() {
        return Optional.empty();
    }

    /** @return share of the third fluid in the flow (-) */
    default double diluentShare() {
        return 0;
    }

    /** @return dry mass of one engine (kg) */
    double mass();

    /** @return nozzle exit area (m²) */
    double exitArea();

    /** @return chamber pressure (Pa); zero where it is not known */
    double chamberPressure();

    /**
     * @param bottle how often it starts, and from which bottle
     * @return what one engine takes along for that; of an engine without machines in sight the igniter alone
     */
    default StartNeeds starts(StartNeeds.Bottle bottle) {
        return new StartNeeds(0, 0, StartNeeds.igniter(this, bottle.count()));
    }

    /**
     * @param ambientPressure ambient pressure (Pa), zero or more
     * @return specific impulse (s)
     */
    default double ispAt(double ambientPressure) {
        return thrustAt(ambientPressure) / (massFlow() * Constants.STANDARD_GRAVITY);
    }

    /** @return vacuum specific impulse (s) */
    default double vacuumIsp() {
        return vacuumThrust() / (massFlow() * Constants.STANDARD_GRAVITY);
    }
}
