package dev.penstock.reports.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import dev.penstock.reports.chart.ChartFont;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;

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
        EnumSet<FSFontUseCase> drawings = EnumSet.of(FSFontUseCase.SVG);
        builder.useFont(DrawingFonts.REGULAR, DRAWING, 400, FontStyle.NORMAL, true, drawings);
        builder.useFont(DrawingFonts.BOLD, DRAWING, 700, FontStyle.NORMAL, true, drawings);
    }

    private static InputStream open(String name) {
        InputStream in = PrintFonts.class.getResourceAsStream(name);
        if (in == null) {
            throw new IllegalStateException(name + " is not on the class path");
        }
        return in;
    }

    /** The drawing library takes fonts from files only. */
    private static final class DrawingFonts {

        static final File REGULAR = file(ChartFont.open());
        static final File BOLD = file(PrintFonts.open("DejaVuSansCondensed-Bold.ttf"));

        private static File file(InputStream font) {
            try (font) {
                Path file = Files.createTempFile("penstock-font", ".ttf");
                file.toFile().deleteOnExit();
                Files.write(file, font.readAllBytes());
                return file.toFile();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
