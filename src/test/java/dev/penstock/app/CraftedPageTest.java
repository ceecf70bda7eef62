package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.app.console.ExitCode;
import dev.penstock.reports.print.PdfReport;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A page from somebody else is data: whatever its record says, nothing outside the page is read. */
class CraftedPageTest {

    private static final Pattern RECORD = Pattern.compile("data:application/json;base64,([A-Za-z0-9+/=]+)");

    @TempDir
    static Path folder;

    @BeforeAll
    static void pages() {
        Run engine = Run.of(
                "balance", "dunlin", "--report", folder.resolve("dunlin.html").toString());
        assertThat(engine.code()).as(engine.err()).isZero();
        Run vehicle = Run.of(
                "size",
                "skerry",
                "--report",
                folder.resolve("vehicle-skerry.html").toString());
        assertThat(vehicle.code()).as(vehicle.err()).isZero();
    }

    @Test
    void aPageFromElsewhereReadsOnlyWhatItHolds() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.toml"), Files.readString(Path.of("cycles/dunlin.toml")));
        String path = secret.toString();
        refused(
                json -> json.replaceFirst("(\"cases\" : \\[\\s*)\"dunlin.toml\"", "$1\"" + path + "\""),
                "files of its cases");
        for (String words :
                List.of("@" + path, path, "--report=" + path, "--report\", \"" + path, "--set\", \"name=x")) {
            refused(
                    json -> json.replaceFirst("\"options\" : \\[ ]", "\"options\" : [ \"" + words + "\" ]"),
                    "options of a page");
        }
        refused(file("../secret.toml"), "outside its own folder");
        refused(file("a\\\\u0000b.toml"), "control characters");
        refused(file("n".repeat(300)), "more than 200 characters");
        refused(file("dunlin.toml/b"), "one name for a file and a folder");
        String many =
                IntStream.range(0, 70).mapToObj(i -> "\"f" + i + "\" : \"\", ").collect(Collectors.joining());
        refused(json -> json.replaceFirst("\"files\" : \\{", "\"files\" : { " + many), "a page may hold 64");
    }

    private static UnaryOperator<String> file(String name) {
        return json -> json.replaceFirst("\"files\" : \\{", "\"files\" : { \"" + name + "\" : \"\", ");
    }

    private static void refused(UnaryOperator<String> change, String why) throws IOException {
        Run run = Run.of(
                "reproduce", rewritten("dunlin.html", "crafted.html", change).toString());
        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(run.problems())
                .singleElement(InstanceOfAssertFactories.STRING)
                .contains(why);
    }

    /** Some kilobytes that unpack to more than a page may hold, as they could to more than memory holds. */
    @Test
    void aPackedPageThatNeverEndsIsRefused() throws IOException {
        Path file = folder.resolve("packed.pdf");
        try (PDDocument pdf = new PDDocument()) {
            pdf.addPage(new PDPage());
            PDComplexFileSpecification page = new PDComplexFileSpecification();
            page.setFile("page.html");
            page.setEmbeddedFile(new PDEmbeddedFile(
                    pdf, new ByteArrayInputStream(new byte[PdfReport.LARGEST_PAGE + 1]), COSName.FLATE_DECODE));
            PDEmbeddedFilesNameTreeNode files = new PDEmbeddedFilesNameTreeNode();
            files.setNames(Map.of("page.html", page));
            PDDocumentNameDictionary names = new PDDocumentNameDictionary(pdf.getDocumentCatalog());
            names.setEmbeddedFiles(files);
            pdf.getDocumentCatalog().setNames(names);
            pdf.save(file.toFile());
        }
        assertThat(Files.size(file)).isLessThan(1 << 20);
        Run run = Run.of("reproduce", file.toString());
        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(run.problems())
                .singleElement(InstanceOfAssertFactories.STRING)
                .contains("a page may hold 64 MiB");
    }

    @Test
    void aVehicleInAPageTakesNoEngineFromOutside() throws IOException {
        String engine = Path.of("cycles/heron.toml").toAbsolutePath().toString();
        Path page = rewritten("vehicle-skerry.html", "outside-engine.html", json -> {
            Matcher names = Pattern.compile("engine = \\\\\"[^\"]*\\\\\"").matcher(json);
            return names.replaceFirst(Matcher.quoteReplacement("engine = \\\"" + engine + "\\\""));
        });
        for (String command : List.of("reproduce", "size")) {
            Run run = Run.of(command, page.toString());
            assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT);
            assertThat(run.err()).contains("a page must hold the engines of its vehicles");
        }
    }

    private static Path rewritten(String page, String name, UnaryOperator<String> change) throws IOException {
        String html = Files.readString(folder.resolve(page));
        Matcher matcher = RECORD.matcher(html);
        assertThat(matcher.find()).isTrue();
        String json = new String(Base64.getDecoder().decode(matcher.group(1)), StandardCharsets.UTF_8);
        String changed = change.apply(json);
        assertThat(changed).isNotEqualTo(json);
        String data = Base64.getEncoder().encodeToString(changed.getBytes(StandardCharsets.UTF_8));
        return Files.writeString(
                folder.resolve(name), html.substring(0, matcher.start(1)) + data + html.substring(matcher.end(1)));
    }
}
