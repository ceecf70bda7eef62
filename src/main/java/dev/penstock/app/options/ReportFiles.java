package dev.penstock.app.options;

import dev.penstock.files.WholeFiles;
import dev.penstock.reports.print.PaperSize;
import dev.penstock.reports.print.PdfReport;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine;

/**
 * Writes pages, and prints them where paper was named; all files or none.
 *
 * @param paper paper to print on, if any
 * @param withTrail whether models, folded tables, the file and the trail of the numbers are printed too
 */
public record ReportFiles(Optional<PaperSize> paper, boolean withTrail) {

    private static final String PAGE = ".html";
    private static final String PRINT = ".pdf";

    /** Reads the name of a paper. */
    public static final class PaperName implements CommandLine.ITypeConverter<PaperSize> {

        @Override
        public PaperSize convert(String name) {
            return PaperSize.named(name)
                    .orElseThrow(() -> new CommandLine.TypeConversionException(name + " is not known, allowed is "
                            + Arrays.stream(PaperSize.values())
                                    .map(PaperSize::id)
                                    .collect(Collectors.joining(" or "))));
        }
    }

    /**
     * @param place folder, or a file whose name ends in .html or .pdf, which gets the first page alone
     * @param pages text by file name
     * @return the files written
     * @throws dev.penstock.errors.InvalidInput if they cannot be written
     */
    public List<Path> write(Path place, Map<String, String> pages) {
        String name = place.getFileName() == null ? "" : place.getFileName().toString();
        String lower = name.toLowerCase(Locale.ROOT);
        Map<String, byte[]> files = new LinkedHashMap<>();
        Path folder = place;
        if (lower.endsWith(PAGE) || lower.endsWith(PRINT)) {
            folder = place.toAbsolutePath().getParent();
            String page = pages.values().iterator().next();
            if (lower.endsWith(PRINT)) {
                files.put(name, PdfReport.of(page, paper.orElse(PaperSize.A4), withTrail));
            } else {
                add(files, name, page);
            }
        } else {
            pages.forEach((file, text) -> add(files, file, text));
        }
        WholeFiles.writeBytes(folder, files);
        Path written = folder;
        return files.keySet().stream()
                .map(f -> name.equals(f) ? place : written.resolve(f))
                .toList();
    }

    private void add(Map<String, byte[]> files, String name, String text) {
        files.put(name, text.getBytes(StandardCharsets.UTF_8));
        if (paper.isPresent() && name.endsWith(PAGE)) {
            String print = name.substring(0, name.length() - PAGE.length()) + PRINT;
            files.put(print, PdfReport.of(text, paper.get(), withTrail));
        }
    }
}
