package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.app.console.ExitCode;
import dev.penstock.reports.print.PaperSize;
import dev.penstock.reports.print.PdfReport;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every kind of report, on both kinds of paper. */
class PrintedReportTest {

    /** Margin of the style sheet, 15 mm, less the rounding of positions (points). */
    private static final double MARGIN = 15 * 72 / 25.4 - 0.5;

    private static final String CAUTION = "An estimate for comparing concepts, not a design release.";
    private static final Map<String, String> PAGES = new LinkedHashMap<>();

    @TempDir
    static Path folder;

    @BeforeAll
    static void everyKind() throws IOException {
        make("concept", "balance", "razorbill");
        make("limit", "limit", "dunlin");
        make("off-design", "off-design", "heron", "--throttle", "1");
        make("comparison", "compare", "heron", "dunlin", "dunlin", "dunlin", "dunlin", "dunlin", "dunlin", "dunlin");
        make("sweep", "sweep", "heron", "--vary", "engine.chamber_pressure=7..8MPa:2");
        make("vehicle", "size", "skerry");
    }

    private static void make(String kind, String... command) throws IOException {
        Path page = folder.resolve(kind + ".html");
        String[] all = java.util.Arrays.copyOf(command, command.length + 2);
        all[command.length] = "--report";
        all[command.length + 1] = page.toString();
        Run run = Run.of(all);
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("wrote " + page);
        PAGES.put(kind, Files.readString(page));
    }

    @TestFactory
    List<DynamicTest> everyKindOfReportFitsBothKindsOfPaper() {
        List<DynamicTest> tests = new ArrayList<>();
        PAGES.keySet().forEach(kind -> {
            for (PaperSize size : PaperSize.values()) {
                tests.add(DynamicTest.dynamicTest(kind + " on " + size.id(), () -> check(kind, size)));
            }
        });
        return tests;
    }

    /** With the trail on the narrower of both, where it is tightest, and of one kind on the shorter too: it is laid out alike for all. */
    private static void check(String kind, PaperSize size) throws IOException {
        String html = PAGES.get(kind);
        boolean withTrail = size == PaperSize.A4 || kind.equals("limit");
        try (PDDocument pdf = Loader.loadPDF(PdfReport.of(html, size, withTrail))) {
            for (PDPage page : pdf.getPages()) {
                assertThat((double) page.getMediaBox().getWidth()).isCloseTo(size.width(), within(0.1));
                assertThat((double) page.getMediaBox().getHeight()).isCloseTo(size.height(), within(0.1));
            }
            Positions positions = new Positions();
            String text = positions.getText(pdf);
            assertThat(positions.outside).isEmpty();
            assertThat(positions.empty).as("sheets without content").isEmpty();
            everySheetIsNumberedAndCautions(text, pdf.getNumberOfPages());
            if (withTrail) {
                assertThat(missingSigns(html, text)).as("signs lost on paper").isEmpty();
                assertThat(bookmarks(pdf)).containsExactlyElementsOf(headings(html));
            }
            // each drawing, and its words that can be selected
            assertThat(drawings(pdf)).isEqualTo(2 * count(html, "<svg "));
            String printed = letters(text);
            assertThat(wordsOfDrawings(html))
                    .allSatisfy(words -> assertThat(printed).contains(letters(words)));
            pdf.getDocument()
                    .getObjectsByType(COSName.FONT)
                    .forEach(font -> assertThat(font.getObject().toString()).containsAnyOf("DejaVu", "LiberationSans"));
        }
    }

    private static void everySheetIsNumberedAndCautions(String text, int sheets) {
        List<String> each = List.of(text.split(Positions.END));
        assertThat(each).hasSize(sheets);
        for (int i = 1; i <= sheets; i++) {
            assertThat(each.get(i - 1).replaceAll("\\s+", " "))
                    .contains("Page " + i + " of " + sheets)
                    .contains("Penstock")
                    .contains(CAUTION);
        }
    }

    /** @return signs of the text outside drawings that the sheets do not have */
    private static Set<Character> missingSigns(String html, String printed) {
        String text = html.replaceAll("(?s)<style>.*?</style>|<svg .*?</svg>|<summary>.*?</summary>|<[^>]*>", "")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&");
        Set<Character> signs = new TreeSet<>();
        text.chars().filter(c -> !Character.isWhitespace(c)).forEach(c -> signs.add((char) c));
        printed.chars().forEach(c -> signs.remove((char) c));
        return signs;
    }

    /** @return the names and figures that stand in the boxes of diagrams and beside the bars of charts */
    private static List<String> wordsOfDrawings(String html) {
        Matcher text = Pattern.compile("<text[^>]*>([a-z][a-z -]{3,})</text>").matcher(html);
        return text.results().map(m -> m.group(1)).distinct().toList();
    }

    private static String letters(String text) {
        return text.replaceAll("[^a-z]", "");
    }

    private static int drawings(PDDocument pdf) throws IOException {
        int count = 0;
        for (PDPage page : pdf.getPages()) {
            for (COSName name : page.getResources().getXObjectNames()) {
                var object = page.getResources().getXObject(name);
                assertThat(object).as("drawings are vectors").isNotInstanceOf(PDImageXObject.class);
                count += object instanceof PDFormXObject ? 1 : 0;
            }
        }
        return count;
    }

    private static List<String> bookmarks(PDDocument pdf) {
        List<String> names = new ArrayList<>();
        for (PDOutlineItem item : pdf.getDocumentCatalog().getDocumentOutline().children()) {
            names.add(item.getTitle());
        }
        return names;
    }

    private static List<String> headings(String html) {
        List<String> headings = new ArrayList<>();
        Matcher matcher =
                Pattern.compile("<h2 id=\"[a-z-]+-title\">([^<]+)</h2>\\s*<p>").matcher(html);
        while (matcher.find()) {
            headings.add(matcher.group(1));
        }
        if (headings.contains("Flow")) { // a concept's cautions stand on its first sheet
            headings.remove("Cautions");
            headings.add(0, "Cautions");
        }
        return headings;
    }

    private static int count(String text, String part) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }

    /** Text with the places of what leaves the margins. */
    private static final class Positions extends PDFTextStripper {

        private final List<String> outside = new ArrayList<>();
        private final List<Integer> empty = new ArrayList<>();
        private int signs;

        /** Stands between the texts of two sheets, where none has it. */
        private static final String END = "\f";

        Positions() {
            setPageEnd(END);
        }

        @Override
        protected void startPage(PDPage page) {
            signs = 0;
        }

        @Override
        protected void endPage(PDPage page) throws IOException {
            // the lines above and below a sheet have at most 200
            if (signs < 260 && !page.getResources().getXObjectNames().iterator().hasNext()) {
                empty.add(getCurrentPageNo());
            }
            super.endPage(page);
        }

        @Override
        protected void processTextPosition(TextPosition at) {
            signs++;
            double right = at.getXDirAdj() + at.getWidthDirAdj();
            boolean in = at.getXDirAdj() >= MARGIN
                    && right <= at.getPageWidth() - MARGIN
                    && at.getYDirAdj() >= MARGIN - 10
                    && at.getYDirAdj() <= at.getPageHeight() - MARGIN + 10;
            if (!in && !at.getUnicode().isBlank()) {
                outside.add("sheet " + getCurrentPageNo() + ": " + at.getUnicode() + " at " + at.getXDirAdj() + ", "
                        + at.getYDirAdj());
            }
            super.processTextPosition(at);
        }

        @Override
        protected void writePageEnd() throws IOException {
            Writer out = getOutput();
            out.write(getPageEnd());
        }
    }

    @Test
    void theHeadlineOfTheScreenIsThatOfThePaper() throws IOException {
        Matcher value = Pattern.compile("<a class=\"trail\" href=\"#t:engine.isp_vacuum_s\">([0-9.]+)</a>")
                .matcher(PAGES.get("concept"));
        assertThat(value.find()).isTrue();
        try (PDDocument pdf = Loader.loadPDF(PdfReport.of(PAGES.get("concept"), PaperSize.A4))) {
            PDFTextStripper first = new PDFTextStripper();
            first.setEndPage(1);
            assertThat(first.getText(pdf)).contains(value.group(1)).contains("It is not a design release");
            assertThat(bookmarks(pdf)).doesNotContain("Trail", "Models").contains("Evidence");
        }
    }

    @Test
    void printingTwiceGivesTheSameBytes() {
        String html = PAGES.get("vehicle");
        assertThat(PdfReport.of(html, PaperSize.LETTER)).isEqualTo(PdfReport.of(html, PaperSize.LETTER));
    }

    @Test
    void theEndingOrThePaperAsksForPdf() throws IOException {
        Path file = folder.resolve("new/engine.pdf");
        Run one = Run.of("balance", "dunlin", "--report", file.toString(), "--paper", "letter");
        assertThat(one.out()).contains("wrote " + file);
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            assertThat((double) pdf.getPage(0).getMediaBox().getWidth()).isCloseTo(612, within(0.1));
        }
        Path both = folder.resolve("both");
        Run two = Run.of("balance", "dunlin", "--report", both.toString(), "--paper", "A4");
        assertThat(two.out()).contains(both.resolve("dunlin.html").toString());
        assertThat(both.resolve("dunlin.pdf")).isNotEmptyFile();
    }

    @Test
    void paperOfAnotherNameIsToldBeforeAnythingRuns() {
        Run run = Run.of("balance", "dunlin", "--report", folder.toString(), "--paper", "foolscap");
        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(run.err()).contains("--paper").contains("foolscap").contains("a4 or letter");
    }
}
