package dev.penstock.app.study;

import dev.penstock.app.console.Session;
import dev.penstock.app.options.OutputOption;
import dev.penstock.reports.text.Release;
import dev.penstock.reports.text.Software;
import dev.penstock.study.search.PointJournal;
import dev.penstock.study.search.Question;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option that keeps the points of a search, so that it can go on. */
public final class JournalOption implements OutputOption {

    @Option(
            names = "--journal",
            paramLabel = "FILE",
            description =
                    "of a search: keep every point in this file as it is tried; after an interruption or a kill the same line"
                            + " goes on with the others")
    private Optional<Path> file = Optional.empty();

    /** @return whether it is given */
    public boolean given() {
        return file.isPresent();
    }

    /** @return the command line that says the same */
    public List<String> arguments() {
        return file.map(path -> List.of("--journal", path.toString())).orElse(List.of());
    }

    /** The journal, which keeps nothing where none is asked for. */
    PointJournal open(Session session, Question question) {
        return file.map(path -> PointJournal.open(path, question, made(session)))
                .orElse(PointJournal.NONE);
    }

    private static String made(Session session) {
        Software software = Software.of(session.home(), Release.version());
        return software.penstock() + " " + software.coolProp() + " " + software.data();
    }
}
