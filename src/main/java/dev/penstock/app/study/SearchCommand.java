package dev.penstock.app.study;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConceptReports;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ReportOption;
import dev.penstock.reports.text.Software;
import dev.penstock.study.search.PointJournal;
import dev.penstock.study.search.Question;
import dev.penstock.study.space.StudyCase;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** What all searches of a case share: the case, what varies in it, and how the answer is shown. */
abstract class SearchCommand extends BaseCommand {

    @Parameters(paramLabel = "CASE", description = "concept or vehicle file, or the name of one in cycles/")
    private String file;

    @Mixin
    private SearchOptions search;

    @Mixin
    private ReportOption report;

    @Mixin
    private JournalOption journal;

    SearchCommand(Session session) {
        super(session);
    }

    @Override
    protected Optional<Set<String>> furtherParts() {
        return Optional.of(Set.of());
    }

    SearchOptions search() {
        return search;
    }

    PointJournal journal(Question question) {
        return journal.open(session, question);
    }

    CaseFiles.Case found() {
        return search.found(session, file);
    }

    /** Shows an answer, as a page too where one was asked for. */
    int show(
            CaseFiles.Case found,
            StudyCase subject,
            String kind,
            Supplier<Map<String, Object>> json,
            Supplier<String> text,
            Function<Software, String> html,
            boolean solved) {
        List<Path> pages = report.write(() -> Map.of(
                ConceptReports.slug(subject.name()) + "-" + kind + ".html",
                record(found).addTo(html.apply(new ConceptReports(session).software()))));
        answer(json, () -> text.get() + written(pages));
        return solved ? ExitCode.OK : ExitCode.NO_SOLUTION;
    }
}
