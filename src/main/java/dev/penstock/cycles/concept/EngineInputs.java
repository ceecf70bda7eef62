package dev.penstock.cycles.concept;

import dev.penstock.input.Belief;
import dev.penstock.input.Input;
import dev.penstock.input.Usual;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;

/** What a concept may say of the engine as a whole, of its cooling circuits and of the limits of its hardware. */
public final class EngineInputs {

    public static final Input<Double> MIXTURE_RATIO = Input.ratio(
                    "mixture_ratio", Range.of(0.05, 50), "Oxidizer over fuel leaving the tanks, by mass")
            .example("2.5")
            .believed(Belief.differences(0.55, 1).ofStoichiometric());
    public static final Input<Double> CHAMBER_PRESSURE = Input.quantity(
                    "chamber_pressure", Dimension.PRESSURE, Range.of(2e4, 1e8), "Stagnation pressure before the nozzle")
            .example("\"7 MPa\"")
            // of any cycle; CycleTraits.pressures() has those of each
            .believed(Belief.factors(0.15e6, 37e6));

    public static final Input<Integer> CHAMBERS = Input.whole(
                    "chambers", 1, ThrustTarget.MOST_CHAMBERS, "Thrust chambers fed by one set of pumps")
            .usual(Usual.of(1, "one chamber", ""));

    public static final Input<Double> DISCHARGE_PRESSURE_LIMIT = Input.quantity(
                    "discharge_pressure", Dimension.PRESSURE, Range.of(1e5, 5e8), "Highest pressure behind a pump")
            .usual(Usual.between(60e6, 80e6, 92e6, Usual.COMMON).because("about the highest in service"));
    public static final Input<Double> TANK_PRESSURE_LIMIT = Input.quantity(
                    "tank_pressure", Dimension.PRESSURE, Range.of(1e5, 6e7), "Highest pressure in a tank")
            .usual(Usual.between(4e6, 5e6, 6.5e6, Usual.COMMON).because("heavy beyond"));
    public static final Input<Double> EXHAUST_LOSS_LIMIT = Input.ratio(
                    "exhaust_loss",
                    Range.of(1e-4, 0.9),
                    "Largest share of the specific impulse that dumped turbine gas may cost")
            .usual(Usual.between(0.03, 0.05, 0.07, Usual.COMMON)
                    .because("built engines lose 1 to 4 %, and more gas always makes more pressure"));
    public static final Input<Double> TURBINE_TEMPERATURE_LIMIT = Input.quantity(
                    "turbine_temperature", Dimension.TEMPERATURE, Range.of(200, 3000), "Hottest gas of every turbine")
            .computed("by gas, see the turbines");

    public static final Input<Double> FLOW_FRACTION = Input.ratio(
                    "flow_fraction", Range.of(0.01, 1), "Share of that propellant's chamber flow that cools")
            .usual(Usual.of(1.0, "all of its chamber flow", ""));

    private EngineInputs() {}
}
