package dev.penstock.study;

import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.InputKind;
import dev.penstock.input.Usual;
import dev.penstock.numerics.design.DesignKind;
import dev.penstock.numerics.design.UnitDesign;
import java.util.List;
import java.util.Map;

/** Every input of a study file. */
public final class StudyInputs {

    private static final int MOST_SAMPLES = 1000;

    /** Points of a batch: what a core works at for some seconds, and what a kill loses at most. */
    public static final int USUAL_BATCH = 500;

    /** Rows that are in memory at once, for each core. */
    public static final int LARGEST_BATCH = 100_000;

    static final Input<String> NAME = Input.text("name", "Name of the study").example("\"New study\"");
    static final Input<StudyFile.Kind> STUDY =
            Input.choice("study", StudyFile.Kind.class, "What is done").example("\"compare\"");
    static final Input<List<String>> CASES = Input.texts(
                    "cases", "Concept or vehicle files, relative to the study's folder")
            .example("[\"../heron.toml\"]");
    static final Input<List<String>> VARY = Input.texts(
                    "vary", "Inputs that a sweep varies: path=from..to:count or path=value,value,...")
            .usual(Usual.of(List.of(), "none", ""));
    static final Input<Integer> SAMPLES = Input.whole(
                    "samples", 0, MOST_SAMPLES, "Engines sampled about each combination of a sweep")
            .usual(Usual.of(0, "none", ""));
    static final Input<Boolean> FLY = Input.flag("fly", "Whether a vehicle is sized on the losses of its flight")
            .usual(Usual.of(false, "on the losses it states", ""));

    static final Input<DesignKind> DESIGN = Input.choice("design", DesignKind.class, "How the points of a sample lie")
            .usual(Usual.of(DesignKind.SOBOL, "scrambled Sobol points", ""));
    static final Input<Integer> POINTS = Input.whole(
                    "points", 0, UnitDesign.MOST_POINTS, "Points of a sample; 0 if a grid counts them itself")
            .usual(Usual.of(0, "none", ""));
    static final Input<Integer> SEED = Input.whole(
                    "seed", 0, Integer.MAX_VALUE, "Chooses one of all such designs of a sample")
            .usual(Usual.of(1, "the first", ""));
    static final Input<Integer> BATCH = Input.whole("batch", 1, LARGEST_BATCH, "Points of a batch of a sample")
            .usual(Usual.of(USUAL_BATCH, "some seconds' work of a core", ""));
    static final Input<List<String>> FIGURE = Input.texts("figure", "Further figures of a sample, by their paths")
            .usual(Usual.of(List.of(), "the usual figures only", ""));

    /** Keys of one kind of study alone, handed to its command as options of the same name. */
    static final Map<StudyFile.Kind, List<Input<?>>> FURTHER =
            Map.of(StudyFile.Kind.SAMPLE, List.of(DESIGN, POINTS, SEED, BATCH, FIGURE));

    /** A study file. */
    public static final InputGroup FILE = InputGroup.table(
                    "", "A study", NAME, STUDY, CASES, VARY, SAMPLES, FLY, DESIGN, POINTS, SEED, BATCH, FIGURE)
            .with(InputGroup.free(
                    "set", "Values in place of those of the cases, by dotted path", new InputKind.Text()));

    private StudyInputs() {}
}
