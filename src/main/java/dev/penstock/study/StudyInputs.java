package dev.penstock.study;

import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.InputKind;
import dev.penstock.input.Usual;
import dev.penstock.numerics.design.DesignKind;
import dev.penstock.numerics.design.UnitDesign;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Every input of a study file. */
public final class StudyInputs {

    private static final int MOST_SAMPLES = 100_000;

    /** Points of a batch: what a core works at for some seconds, and what a kill loses at most. */
    public static final int USUAL_BATCH = 500;

    /** Starts of an optimise where none are stated. */
    public static final int USUAL_STARTS = 4;

    /** Points of a sensitivity where none are stated. */
    public static final int USUAL_SAMPLES = 256;

    /** Points of a generation of a frontier: where none are stated, and at least. */
    public static final int USUAL_POPULATION = 40;

    public static final int LEAST_POPULATION = 8;

    /** Generations of a frontier where none are stated. */
    public static final int USUAL_GENERATIONS = 25;

    /** Points that each start of an optimise may try at least. */
    public static final int LEAST_EVALUATIONS = 20;

    /** Rows that are in memory at once, for each core. */
    public static final int LARGEST_BATCH = 100_000;

    static final Input<String> NAME = Input.text("name", "Name of the study").example("\"New study\"");
    static final Input<StudyFile.Kind> STUDY =
            Input.choice("study", StudyFile.Kind.class, "What is done").example("\"compare\"");
    static final Input<List<String>> CASES = Input.texts(
                    "cases", "Concept or vehicle files, relative to the study's folder")
            .example("[\"../heron.toml\"]");
    static final Input<List<String>> VARY = Input.texts(
                    "vary",
                    "Inputs that the study varies: path=from..to, of a grid path=from..to:count, path=value,value,..., path=spread,"
                            + " or spreads for all that have one")
            .usual(Usual.of(List.of(), "none", ""));
    static final Input<Integer> SAMPLES = Input.whole(
                    "samples",
                    0,
                    MOST_SAMPLES,
                    "Engines sampled about each combination of a sweep; vehicles sampled for percentiles; points of a sensitivity")
            .usual(Usual.of(0, "none", ""));
    static final Input<Boolean> FLY = Input.flag("fly", "Whether a vehicle is sized on the losses of its flight")
            .usual(Usual.of(false, "on the losses it states", ""));

    static final Input<DesignKind> DESIGN = Input.choice("design", DesignKind.class, "How the points of a sample lie")
            .usual(Usual.of(DesignKind.SOBOL, "scrambled Sobol points", ""));
    static final Input<Integer> POINTS = Input.whole(
                    "points", 0, UnitDesign.MOST_POINTS, "Points of a sample; 0 if a grid counts them itself")
            .usual(Usual.of(0, "none", ""));
    static final Input<Integer> SEED = Input.whole(
                    "seed", 0, Integer.MAX_VALUE, "Seed of the random numbers of a sample or a search")
            .usual(Usual.of(1, "the first", ""));
    static final Input<Integer> BATCH = Input.whole("batch", 1, LARGEST_BATCH, "Points of a batch of a sample")
            .usual(Usual.of(USUAL_BATCH, "some seconds' work of a core", ""));
    static final Input<List<String>> FIGURE = Input.texts("figure", "Further figures of a sample, by their paths")
            .usual(Usual.of(List.of(), "the usual figures only", ""));

    static final Input<List<String>> MINIMISE = texts(
            "minimise", "Figures that should be small: one of an optimise, two or three with maximise of a frontier");
    static final Input<List<String>> MAXIMISE = texts("maximise", "Figures that should be large");
    static final Input<List<String>> SUBJECT_TO =
            texts("subject_to", "Constraints: FIGURE<=VALUE, FIGURE>=VALUE or within_limits");
    static final Input<List<String>> FIGURES = texts("figures", "Figures to explain or to tell of");
    static final Input<Integer> STARTS = count("starts", 1, 1000, USUAL_STARTS, "Starts of an optimise");
    static final Input<Integer> EVALUATIONS = Input.whole(
                    "evaluations", LEAST_EVALUATIONS, 1_000_000, "Points that each start may try")
            .computed("120 for each input, 400 at least");
    static final Input<Integer> POPULATION =
            count("population", LEAST_POPULATION, 100_000, USUAL_POPULATION, "Points of a generation of a frontier");
    static final Input<Integer> GENERATIONS =
            count("generations", 1, 100_000, USUAL_GENERATIONS, "Generations of a frontier");

    /** Keys of some kinds of study alone, handed to their commands as options of the same name. */
    static final Map<StudyFile.Kind, List<Input<?>>> FURTHER = new EnumMap<>(Map.of(
            StudyFile.Kind.SAMPLE,
            List.of(DESIGN, POINTS, SEED, BATCH, FIGURE, SUBJECT_TO),
            StudyFile.Kind.OPTIMISE,
            List.of(MINIMISE, MAXIMISE, SUBJECT_TO, FIGURES, STARTS, EVALUATIONS, SEED),
            StudyFile.Kind.SENSITIVITY,
            List.of(FIGURES, SEED),
            StudyFile.Kind.FRONTIER,
            List.of(MINIMISE, MAXIMISE, SUBJECT_TO, FIGURES, POPULATION, GENERATIONS, SEED)));

    /** Kinds that vary inputs. */
    static final Set<StudyFile.Kind> VARYING = EnumSet.of(
            StudyFile.Kind.SWEEP,
            StudyFile.Kind.SAMPLE,
            StudyFile.Kind.OPTIMISE,
            StudyFile.Kind.SENSITIVITY,
            StudyFile.Kind.FRONTIER);

    /** Kinds that have samples. */
    static final Set<StudyFile.Kind> SAMPLED =
            EnumSet.of(StudyFile.Kind.SWEEP, StudyFile.Kind.VEHICLE, StudyFile.Kind.CLAIMS, StudyFile.Kind.SENSITIVITY);

    /** A study file. */
    public static final InputGroup FILE = InputGroup.table("", "A study", NAME, STUDY, CASES, VARY, SAMPLES, FLY)
            .and(further().toArray(Input<?>[]::new))
            .with(InputGroup.free(
                    "set", "Values in place of those of the cases, by dotted path", new InputKind.Text()));

    private StudyInputs() {}

    /**
     * @param kind kind of a study
     * @return keys that it alone, or with some others, has
     */
    public static List<String> keys(StudyFile.Kind kind) {
        return FURTHER.getOrDefault(kind, List.of()).stream().map(Input::key).toList();
    }

    /**
     * @param key a key of some kinds of study alone
     * @return whether its value is a whole number
     */
    public static boolean isWhole(String key) {
        return FILE.all().get(key).kind() instanceof InputKind.Whole;
    }

    /** Every key that some kinds alone have, once. */
    static List<Input<?>> further() {
        return FURTHER.values().stream()
                .flatMap(List::stream)
                .<Input<?>>map(input -> input)
                .distinct()
                .toList();
    }

    private static Input<List<String>> texts(String key, String title) {
        return Input.texts(key, title).usual(Usual.of(List.of(), "none", ""));
    }

    private static Input<Integer> count(String key, int least, int most, int usual, String title) {
        return Input.whole(key, least, most, title).usual(Usual.of(usual, "", ""));
    }
}
