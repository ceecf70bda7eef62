package dev.penstock.claims.file;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.InputKind;
import dev.penstock.input.Usual;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every input of a claims file. */
public final class ClaimsInputs {

    static final String ANY = "any";

    static final Input<String> NAME =
            Input.text("name", "What the claims are about").example("\"New engine, as announced\"");
    static final Input<String> DESCRIPTION =
            Input.text("description", "A sentence about it").usual(Usual.of("", "", ""));
    static final Input<List<String>> CYCLE = new Input<>(
                    "cycle",
                    "Cycles that it may have",
                    new InputKind.Many<>(new InputKind.Word(cycles())),
                    Input.Silence.REQUIRED,
                    Optional.empty(),
                    "",
                    Optional.empty(),
                    "",
                    Optional.empty())
            .usual(Usual.of(List.of(ANY), "each cycle as likely as any other", ""));
    static final Input<String> ABOUT = Input.text("about", "Figure that further facts should narrow, by its path")
            .computed("the chamber pressure, or the first figure that is not certain");

    static final Input<List<String>> OXIDIZER =
            Input.texts("oxidizer", "Oxidizer: a file in fluids; or several").example("\"oxygen\"");
    static final Input<List<String>> FUEL =
            Input.texts("fuel", "Fuel: a file in fluids; or several").example("\"methane\"");

    static final Input<String> VALUE = any("value", "Value that is claimed");
    static final Input<String> WITHIN = any(
            "within", "Half of the interval that holds the truth nine times out of ten, or a share such as \"2 %\"");
    static final Input<String> LOW = any("low", "Lower end of a hard range");
    static final Input<String> HIGH = any("high", "Upper end of a hard range");
    static final Input<String> AT_LEAST = any("at_least", "Bound with nothing known above it");
    static final Input<String> AT_MOST = any("at_most", "Bound with nothing known below it");
    static final Input<String> SOURCE =
            Input.text("source", "Where it was stated").usual(Usual.of("", "", ""));
    static final Input<String> LIKELY = any("likely", "Most likely value; without it all are alike");

    static final Input<Double> BASE_DIAMETER = Input.quantity(
                    "base_diameter", Dimension.LENGTH, Range.of(0.05, 100), "Outer diameter at the foot")
            .example("\"1 m\"");
    static final Input<Double> TOP_DIAMETER = Input.quantity(
                    "top_diameter", Dimension.LENGTH, Range.of(0, 100), "Outer diameter at the top")
            .example("\"0.5 m\"");
    static final Input<Double> HEIGHT = Input.quantity(
                    "height", Dimension.LENGTH, Range.of(0.1, 300), "Height between the two")
            .example("\"10 m\"");
    static final Input<Double> FILLED = Input.ratio(
                    "filled", Range.of(0.05, 1), "Share of the volume that tanks can take up at most")
            .usual(Usual.common(0.8));

    /** Claims by path, each a table with what is said. */
    public static final InputGroup CLAIMS = InputGroup.table(
                    "claims",
                    "A claim for each path of an input or figure: value and within, low and high, at_least or at_most",
                    VALUE,
                    WITHIN,
                    LOW,
                    HIGH,
                    AT_LEAST,
                    AT_MOST,
                    SOURCE)
            .named();

    static final InputGroup PRIOR = InputGroup.table(
                    "prior",
                    "What is believed of an input before any claim, where that is narrower than its declaration",
                    LOW,
                    HIGH,
                    LIKELY,
                    SOURCE)
            .named();
    static final InputGroup GIVEN =
            InputGroup.free("given", "What is taken as certain, by path as in a concept file", new InputKind.Any());
    static final InputGroup BODY = InputGroup.table(
                    "body",
                    "The vehicle's body as a picture shows it, which must hold its tanks",
                    BASE_DIAMETER,
                    TOP_DIAMETER,
                    HEIGHT,
                    FILLED)
            .ifWritten();

    static final InputGroup PROPELLANTS = InputGroup.table("propellants", "Propellants", OXIDIZER, FUEL);

    /** A claims file. */
    public static final InputGroup FILE = InputGroup.table(
                    "", "Claims about an engine or a vehicle", NAME, DESCRIPTION, CYCLE, ABOUT)
            .with(PROPELLANTS, CLAIMS, GIVEN, PRIOR, BODY);

    private ClaimsInputs() {}

    static Input<String> any(String key, String title) {
        return new Input<>(
                        key,
                        title,
                        new InputKind.Any(),
                        Input.Silence.REQUIRED,
                        Optional.empty(),
                        "",
                        Optional.empty(),
                        "",
                        Optional.empty())
                .computed("not said");
    }

    private static List<String> cycles() {
        List<String> ids = new ArrayList<>(List.of(ANY));
        Cycle.all().forEach(c -> ids.add(c.id()));
        return ids;
    }
}
