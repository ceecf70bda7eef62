package dev.penstock.app.console;

import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.InputFile;
import dev.penstock.reports.page.ReportRecord;
import dev.penstock.reports.print.PdfReport;
import dev.penstock.reports.text.Software;
import dev.penstock.vehicle.reading.VehicleReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The files that a page or its print holds. */
public final class PageFiles {

    private static final int MOST_FILES = 64;
    private static final int LONGEST_NAME = 200;

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
            if (Files.size(file) > PdfReport.LARGEST_PAGE) {
                throw new InvalidInput(
                        "", "CASE", file.toString(), "a page may hold " + (PdfReport.LARGEST_PAGE >> 20) + " MiB");
            }
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
     * Everything that a page holds is data from somebody else: only the files that it embeds are read.
     *
     * @param session session, with the fluids that a vehicle among them may name
     * @param page the page
     * @param record what it holds
     * @return a new folder with its files, gone when the program ends
     * @throws InvalidInput if a file is too large, a name among them cannot be one in that folder, or a case is not among
     *     them or names an engine that is not
     */
    public static Path unpack(Session session, Path page, ReportRecord record) {
        checkSizes(record);
        try {
            Path folder = Files.createTempDirectory("penstock-page");
            folder.toFile().deleteOnExit();
            session.pages().add(folder, page);
            for (Map.Entry<String, String> entry : record.files().entrySet()) {
                Path file = within(folder, entry.getKey());
                makeParents(folder, file);
                Files.writeString(file, entry.getValue());
                file.toFile().deleteOnExit();
            }
            record.cases().forEach(name -> checkEngines(folder, within(folder, name), record, session.fluids()));
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void checkSizes(ReportRecord record) {
        if (record.files().size() > MOST_FILES) {
            throw new InvalidInput("", "CASE", record.files().size() + " files", "a page may hold " + MOST_FILES);
        }
        Set<String> names = record.files().keySet();
        for (Map.Entry<String, String> entry : record.files().entrySet()) {
            String name = entry.getKey();
            if (entry.getValue().length() > InputFile.LARGEST) {
                throw new InvalidInput(
                        "", "CASE", name, "a file in a page may hold " + (InputFile.LARGEST >> 10) + " KiB");
            }
            if (names.stream().anyMatch(other -> other.startsWith(name + "/"))) {
                throw new InvalidInput("", "CASE", name, "a page must not use one name for a file and a folder");
            }
        }
        for (String name : record.cases()) {
            if (!names.contains(name)) {
                throw new InvalidInput("", "CASE", name, "a page must hold the files of its cases");
            }
        }
    }

    private static Path within(Path folder, String name) {
        boolean plain = name.length() <= LONGEST_NAME && name.chars().noneMatch(Character::isISOControl);
        Path file = plain ? folder.resolve(name).normalize() : folder;
        if (!plain || Path.of(name).isAbsolute() || !file.startsWith(folder) || file.equals(folder)) {
            throw new InvalidInput(
                    "",
                    "CASE",
                    name,
                    "a page must not name files outside its own folder, nor with more than " + LONGEST_NAME
                            + " characters or with control characters");
        }
        return file;
    }

    /** A vehicle names its engines by path. */
    private static void checkEngines(Path folder, Path file, ReportRecord record, FluidLibrary fluids) {
        if (InputFile.read(file, record.changes()).root().has("cycle")) {
            return;
        }
        for (Path engine :
                new VehicleReader(fluids).read(file, record.changes()).engineFiles()) {
            if (!engine.startsWith(folder) || !Files.isRegularFile(engine)) {
                throw new InvalidInput("", "engine", engine.toString(), "a page must hold the engines of its vehicles");
            }
        }
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
