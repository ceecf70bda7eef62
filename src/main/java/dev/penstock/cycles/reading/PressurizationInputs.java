package dev.penstock.cycles.reading;

import dev.penstock.cycles.concept.PressurizationDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.fluids.UsualFluids;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.TableKey;
import dev.penstock.input.Usual;
import dev.penstock.provenance.Scatter;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.turbomachinery.feed.UllageGas;

/** What a concept without pumps may say of its pressurant. */
final class PressurizationInputs {

    private static final Range ULLAGES = Range.of(0.01, 0.95);

    /** Where they stand. */
    static final TableKey TABLE = new TableKey("pressurization");

    static final Input<PressurizationDesign.Feed> FEED = Input.choice(
                    "feed", PressurizationDesign.Feed.class, "How the tanks are kept under pressure")
            .usual(Usual.common(PressurizationDesign.Feed.REGULATED));
    static final Input<String> GAS =
            Input.text("gas", "The pressurant, a file in fluids").usual(Usual.common(UsualFluids.pressurant()));
    static final Input<Double> PROPELLANT_MASS = Input.quantity(
                    "propellant_mass", Dimension.MASS, Range.of(1e-3, 1e7), "Propellant loaded, both together")
            .computed("what burns in the burn time at the start");
    static final Input<Double> BURN_TIME = Input.quantity(
                    "burn_time", Dimension.TIME, Range.of(0.1, 1e6), "Burn time that loads the tanks")
            .usual(Usual.of(600.0, "sizes tanks where no mass is given, an example", ""));
    static final Input<Double> INITIAL_ULLAGE = Input.ratio(
                    "initial_ullage", ULLAGES, "Gas volume over tank volume at the start")
            .follows("5 %, a third for blowdown, " + Usual.COMMON);
    static final Input<Double> FUEL_INITIAL_ULLAGE = Input.ratio(
                    "fuel_initial_ullage", ULLAGES, "The same of the fuel tank alone")
            .follows("as in the oxidizer tank");
    static final Input<UllageGas.Law> EXPANSION = Input.choice(
                    "expansion", UllageGas.Law.class, "How the gas of a blowdown expands")
            .usual(Usual.of(UllageGas.Law.ISOTHERMAL, "walls keep the gas warm over a long life", "sutton-rpe"));
    static final Input<Double> POLYTROPIC_EXPONENT = Input.ratio(
                    "polytropic_exponent", Range.of(0.95, 1.9), "Exponent of a polytropic blowdown")
            .usual(Usual.common(1.2).because("between isothermal and isentropic"));
    static final Input<Double> BOTTLE_PRESSURE = Input.quantity(
                    "bottle_pressure", Dimension.PRESSURE, Range.of(1e6, 1e8), "Pressure of the full bottle")
            .usual(Usual.common(31e6));
    static final Input<Double> BOTTLE_TEMPERATURE = Input.quantity(
                    "bottle_temperature", Dimension.TEMPERATURE, Range.of(50, 400), "Temperature of the full bottle")
            .usual(Usual.of(293.15, "room temperature", ""));
    static final Input<Double> HEATED_TEMPERATURE = Input.quantity(
                    "heated_temperature",
                    Dimension.TEMPERATURE,
                    Range.of(250, 1200),
                    "Temperature of heated pressurant")
            .usual(Usual.common(500.0).because("what tank walls and propellant vapour stand"));
    static final Input<PressurizationDesign.HeatSource> HEAT_SOURCE = Input.choice(
                    "heat_source", PressurizationDesign.HeatSource.class, "What heats the pressurant")
            .usual(Usual.common(PressurizationDesign.HeatSource.NOZZLE_COIL));

    /** Half the excess over one to 1.8 times of it, about the ranges of the source. */
    private static final Scatter EXCESS = Scatter.from(1, 0.5, 1.8);

    private PressurizationInputs() {}

    static Input<Double> collapseFactor(Side side) {
        return Input.ratio(
                        side.key() + "_collapse_factor",
                        Range.of(1, 5),
                        "Pressurant needed over what fills the tank at its own temperature, " + side.key())
                .follows("by propellant, in its file")
                .scatter(EXCESS);
    }

    static InputGroup group() {
        return InputGroup.table(
                TABLE.key(),
                "How the tanks are kept under pressure",
                FEED,
                GAS,
                PROPELLANT_MASS,
                BURN_TIME,
                INITIAL_ULLAGE,
                FUEL_INITIAL_ULLAGE,
                EXPANSION,
                POLYTROPIC_EXPONENT,
                BOTTLE_PRESSURE,
                BOTTLE_TEMPERATURE,
                collapseFactor(Side.OXIDIZER),
                collapseFactor(Side.FUEL),
                HEATED_TEMPERATURE,
                HEAT_SOURCE);
    }
}
