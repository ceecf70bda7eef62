package dev.penstock.vehicle.engine;

import dev.penstock.errors.Require;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * What all starts of one engine take along.
 *
 * <pre>
 * turbines on burnt gas     gas from a bottle spins each shaft up to 0.4 of its speed in 1 s ({@code turbomachinery.start})
 * turbines on jacket heat   tank head and warm metal: no gas;   no turbines: none
 * igniter fluid             0.002 s times the flow, at least 50 g, for each start with a cryogenic oxidizer; storables light themselves
 * </pre>
 *
 * Speed, time and igniter: common practice, no source.
 *
 * @param gas start gas loaded (kg)
 * @param bottles its bottles (kg)
 * @param igniter igniter fluid (kg)
 */
public record StartNeeds(double gas, double bottles, double igniter) {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "vehicle.starts",
            "Start gas and igniter fluid of an engine",
            "gas by dm = dE/(η Δhs) for each shaft to 0.4 of its speed in 1 s; igniter 0.002 s ṁ ≥ 50 g each start",
            "turbopumps that start on bottled gas, hypergolic or pyrophoric slugs",
            "a factor of two",
            List.of("common practice, no source"));

    /** Share of the design speed to which gas takes a shaft. */
    static final double SPEED = 0.4;
    /** Time of that rise (s). */
    static final double RISE = 1;

    private static final double IGNITER_TIME = 0.002;
    private static final double LEAST_IGNITER = 0.05;

    public StartNeeds {
        Require.notNegative("starts", "gas (kg)", gas);
        Require.notNegative("starts", "bottles (kg)", bottles);
        Require.notNegative("starts", "igniter fluid (kg)", igniter);
    }

    /**
     * How often an engine starts, and from which bottle.
     *
     * @param count starts of each engine
     * @param gas gas of the bottle
     * @param fullPressure pressure of the full bottle (Pa)
     * @param temperature its temperature (K)
     */
    public record Bottle(int count, Fluid gas, double fullPressure, double temperature) {

        public Bottle {
            Require.within("starts", "starts of an engine", count, 1, 1000);
        }
    }

    static double igniter(EnginePerformance engine, int starts) {
        return engine.oxidizer().cryogenic() ? starts * Math.max(LEAST_IGNITER, IGNITER_TIME * engine.massFlow()) : 0;
    }
}
