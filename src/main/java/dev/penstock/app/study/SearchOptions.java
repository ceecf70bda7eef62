package dev.penstock.app.study;

import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ChangeOptions;
import dev.penstock.app.console.Session;
import dev.penstock.errors.InvalidInput;
import dev.penstock.study.search.Objective;
import dev.penstock.study.search.Question;
import dev.penstock.study.space.CasePaths;
import dev.penstock.study.space.StudyCase;
import dev.penstock.study.space.StudySpace;
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

    /** The case, and the space of the inputs that vary. */
    record Asked(StudyCase subject, CasePaths paths, StudySpace space) {}

    Asked asked(Session session, CaseFiles.Case found) {
        StudyCase subject = StudyCase.open(session.runs(), found.file(), found.changes());
        CasePaths paths = subject.paths();
        return new Asked(subject, paths, paths.space(vary));
    }

    /** A question with so many objectives. */
    Question question(Session session, CaseFiles.Case found, Goals goals, int least, int most) {
        Asked asked = asked(session, found);
        int count = goals.minimise.size() + goals.maximise.size();
        if (count < least || count > most) {
            throw new InvalidInput(
                    "",
                    "--minimise and --maximise",
                    count + " figures",
                    least == most
                            ? "write one: --minimise FIGURE or --maximise FIGURE"
                            : "write " + least + " or " + most + ", for example --minimise engine.mass_kg --maximise"
                                    + " engine.isp_vacuum_s");
        }
        List<Objective> objectives = new ArrayList<>();
        asked.paths().figures("--minimise", goals.minimise).forEach(f -> objectives.add(new Objective(f, false)));
        asked.paths().figures("--maximise", goals.maximise).forEach(f -> objectives.add(new Objective(f, true)));
        return new Question(
                asked.subject(),
                asked.space(),
                objectives,
                asked.paths().constraints(goals.subjectTo),
                asked.paths().figures("--figures", goals.figures));
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
