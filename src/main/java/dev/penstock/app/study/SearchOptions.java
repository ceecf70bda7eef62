package dev.penstock.app.study;

import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.errors.InvalidInput;
import dev.penstock.study.search.QuestionText;
import dev.penstock.study.space.StudyCase;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The options that all searches share: what varies, what must be kept, the seed. */
final class SearchOptions {

    @Option(
            names = "--vary",
            paramLabel = "PATH=FROM..TO",
            description = "input to vary, for example engine.chamber_pressure=6..12MPa, or by a list"
                    + " propellants.fuel=methane,rp-1; of a vehicle's engine engines.heron.engine.chamber_pressure=6..12MPa;"
                    + " may be given several times")
    private List<String> vary = new ArrayList<>();

    @Option(names = "--seed", paramLabel = "S", defaultValue = "1", description = "seed of the random numbers (1)")
    private int seed;

    @Mixin
    private ChangeOptions changes;

    int seed() {
        return seed;
    }

    CaseFiles.Case found(Session session, String file) {
        return CaseFiles.one(session, file, changes.map());
    }

    StudyCase subject(Session session, CaseFiles.Case found) {
        return StudyCase.open(session.runs(), found.file(), found.changes());
    }

    /** What is asked, with figures to explain. */
    QuestionText text(List<String> figures) {
        return new QuestionText(vary, List.of(), List.of(), List.of(), figures);
    }

    /** What is asked, with goals. */
    QuestionText text(Goals goals) {
        return new QuestionText(vary, goals.minimise, goals.maximise, goals.subjectTo, goals.figures);
    }

    /** What should be small, large, and kept. */
    static final class Goals {

        @Option(
                names = "--minimise",
                paramLabel = "FIGURE",
                description = "figure that should be as small as it can be")
        private List<String> minimise = new ArrayList<>();

        @Option(
                names = "--maximise",
                paramLabel = "FIGURE",
                description = "figure that should be as large as it can be")
        private List<String> maximise = new ArrayList<>();

        @Option(
                names = "--subject-to",
                paramLabel = "FIGURE<=VALUE",
                description = "what must be kept, in SI or with a unit, for example"
                        + " \"cooling.peak_wall_temperature_K<=900\", or within_limits for all limits of the hardware;"
                        + " may be given several times")
        private List<String> subjectTo = new ArrayList<>();

        @Option(
                names = "--figures",
                paramLabel = "FIGURE",
                split = ",",
                description = "further figures to tell of, with commas between them")
        private List<String> figures = new ArrayList<>();
    }

    /** A whole number of an option, of one at least. */
    static int atLeast(String option, int value, int least) {
        if (value < least) {
            throw new InvalidInput("", option, Integer.toString(value), "write " + least + " or more");
        }
        return value;
    }
}
