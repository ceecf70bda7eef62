package dev.penstock.app.options;

import dev.penstock.reports.print.PaperSize;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** The options that ask for a page, on screen or on paper. */
public final class ReportOption implements OutputOption {

    @Option(
            names = "--report",
            paramLabel = "PATH",
            description = "also write a self-contained page: into this folder, made if absent, or as this one file,"
                    + " whose name ends in .html or .pdf")
    private Optional<Path> place = Optional.empty();

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            converter = ReportFiles.PaperName.class,
            description = "print the page as PDF too, on a4 or letter; a file that ends in .pdf is on a4 otherwise")
    private Optional<PaperSize> paper = Optional.empty();

    @Option(
            names = "--with-trail",
            description =
                    "on paper: models, folded tables, the file and the trail of every number too; the page always has them")
    private boolean withTrail;

    /** @return where the page goes; empty if none was asked for */
    public Optional<Path> place() {
        return place;
    }

    /**
     * @param pages makes text by file name, the page of the answer first; called only where a page was asked for
     * @return the files written
     */
    public List<Path> write(Supplier<Map<String, String>> pages) {
        ReportFiles files = new ReportFiles(paper, withTrail);
        return place.map(p -> files.write(p, pages.get())).orElse(List.of());
    }
}
