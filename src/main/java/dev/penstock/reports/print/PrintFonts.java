package dev.penstock.reports.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import dev.penstock.reports.chart.ChartFont;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.function.Supplier;

/**
 * The fonts on paper. DejaVu has every sign of the reports, Greek, indices and arrows included; the drawings are laid out
 * in Liberation Sans and printed in it.
 */
final class PrintFonts {

    static final String TEXT = "DejaVu Sans Condensed";
    static final String CODE = "DejaVu Sans Mono";

    private static final String DRAWING = "Liberation Sans";

    private PrintFonts() {}

    static void addTo(PdfRendererBuilder builder) {
        builder.useFont(() -> open("DejaVuSansCondensed.ttf"), TEXT, 400, FontStyle.NORMAL, true);
        builder.useFont(() -> open("DejaVuSansCondensed-Bold.ttf"), TEXT, 700, FontStyle.NORMAL, true);
        builder.useFont(() -> open("DejaVuSansMono.ttf"), CODE, 400, FontStyle.NORMAL, true);
        EnumSet<FSFontUseCase> words = EnumSet.of(FSFontUseCase.SVG, FSFontUseCase.DOCUMENT);
        builder.useFont(DrawingFonts.REGULAR.file(), DRAWING, 400, FontStyle.NORMAL, true, words);
        builder.useFont(DrawingFonts.BOLD.file(), DRAWING, 700, FontStyle.NORMAL, true, words);
    }

    private static InputStream open(String name) {
        InputStream in = PrintFonts.class.getResourceAsStream(name);
        if (in == null) {
            throw new IllegalStateException(name + " is not on the class path");
        }
        return in;
    }

    /** The drawing library takes fonts from files only: temporary ones, made anew if somebody has cleared them away. */
    private enum DrawingFonts {
        REGULAR(ChartFont::open),
        BOLD(ChartFont::openBold);

        private final Supplier<InputStream> font;
        private Path made;

        DrawingFonts(Supplier<InputStream> font) {
            this.font = font;
        }

        synchronized File file() {
            if (made == null || !Files.exists(made)) {
                made = make();
            }
            return made.toFile();
        }

        private Path make() {
            try (InputStream in = font.get()) {
                Path file = Files.createTempFile("penstock-font", ".ttf");
                file.toFile().deleteOnExit();
                return Files.write(file, in.readAllBytes());
            } catch (IOException e) {
                throw ChartFont.withoutTemporaryFiles(e);
            }
        }
    }
}
