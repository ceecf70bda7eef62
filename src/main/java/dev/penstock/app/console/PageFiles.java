package dev.penstock.app.console;

import dev.penstock.errors.InvalidInput;
import dev.penstock.reports.page.ReportRecord;
import dev.penstock.reports.print.PdfReport;
import dev.penstock.reports.text.Software;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The files that a page or its print holds. */
public final class PageFiles {

    private PageFiles() {}

    /**
     * @param file any file
     * @return whether its name is that of a page or a print
     */
    public static boolean is(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        return name.endsWith(".html") || name.endsWith(".pdf");
    }

    /**
     * @param file page or print
     * @return text of the page
     * @throws InvalidInput if it cannot be read
     */
    public static String page(Path file) {
        try {
            byte[] bytes = Files.readAllBytes(file);
            return file.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")
                    ? PdfReport.page(bytes).orElse("")
                    : new String(bytes, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new InvalidInput("", "CASE", file.toString(), "it must be a file that can be read (" + e + ")");
        }
    }

    /**
     * @param file page or print
     * @return what it holds about its origin
     * @throws InvalidInput if it holds nothing of the kind
     */
    public static ReportRecord record(Path file) {
        return record(file, page(file));
    }

    /** As above, for a page that was read before. */
    public static ReportRecord record(Path file, String page) {
        return ReportRecord.in(page)
                .orElseThrow(() -> new InvalidInput(
                        "",
                        "CASE",
                        file.toString(),
                        "it must be a page that a command wrote with --report, or its PDF"));
    }

    /**
     * @param record what a page holds
     * @return a new folder with its files, gone when the program ends
     * @throws InvalidInput if a name among them leads out of that folder
     */
    public static Path unpack(ReportRecord record) {
        try {
            Path folder = Files.createTempDirectory("penstock-page");
            folder.toFile().deleteOnExit();
            for (Map.Entry<String, String> entry : record.files().entrySet()) {
                Path file = within(folder, entry.getKey());
                makeParents(folder, file);
                Files.writeString(file, entry.getValue());
                file.toFile().deleteOnExit();
            }
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path within(Path folder, String name) {
        Path file = folder.resolve(name).normalize();
        if (Path.of(name).isAbsolute() || !file.startsWith(folder) || file.equals(folder)) {
            throw new InvalidInput("", "CASE", name, "a page must not name files outside its own folder");
        }
        return file;
    }

    /** Folders are noted before what they hold, since the last noted goes first. */
    private static void makeParents(Path folder, Path file) throws IOException {
        Path made = folder;
        for (Path step : folder.relativize(file.getParent())) {
            made = made.resolve(step).normalize();
            if (!Files.isDirectory(made)) {
                Files.createDirectory(made).toFile().deleteOnExit();
            }
        }
    }

    /**
     * @param file page or print
     * @param record what it holds
     * @param here versions in use
     * @return a sentence, if anything differs that can move a number
     */
    public static Optional<String> warning(Path file, ReportRecord record, Software here) {
        List<String> differences = record.differences(here);
        return differences.isEmpty()
                ? Optional.empty()
                : Optional.of("numbers may differ from those in " + file + ": " + String.join("; ", differences));
    }
}
