package dev.penstock.study;

import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.InputKind;
import dev.penstock.input.Usual;
import java.util.List;

/** Every input of a study file. */
public final class StudyInputs {

    private static final int MOST_SAMPLES = 1000;

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

    /** A study file. */
    public static final InputGroup FILE = InputGroup.table("", "A study", NAME, STUDY, CASES, VARY, SAMPLES, FLY)
            .with(InputGroup.free(
                    "set", "Values in place of those of the cases, by dotted path", new InputKind.Text()));

    private StudyInputs() {}
}
