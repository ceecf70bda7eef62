package dev.penstock.reports.chart;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The font in which charts measure and set their text: Liberation Sans as it comes with the PDF library, so that a chart
 * has the same layout on every machine, also on one that has no fonts at all.
 */
public final class ChartFont {

    /** Families with the same widths, in the order in which a browser should look for them. */
    public static final String FAMILIES = "\"Liberation Sans\", Arial, Helvetica, sans-serif";

    private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final String FONT_CONFIGURATION = "sun.awt.fontconfig";
    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);
    private static final Font BASE = load();

    private ChartFont() {}

    /**
     * @param size size in points
     * @return the font
     */
    public static Font of(double size) {
        return BASE.deriveFont((float) size);
    }

    /**
     * @param size size in points
     * @return the bold font
     */
    public static Font bold(double size) {
        return BASE.deriveFont(Font.BOLD, (float) size);
    }

    /**
     * @param text one line
     * @param size size in points
     * @return its width in the same unit
     */
    public static double width(String text, double size) {
        return text.isEmpty() ? 0 : of(size).getStringBounds(text, MEASURE).getWidth();
    }

    private static Font load() {
        try {
            return read();
        } catch (IOException | LinkageError e) {
            // Java looks up the fonts of the machine before it reads any, and gives up where there are none. A list of
            // fonts of our own keeps it from looking.
            System.setProperty(FONT_CONFIGURATION, fontList().toString());
        }
        try {
            return read();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @return the font as TrueType; the caller closes it */
    public static InputStream open() {
        InputStream in = ChartFont.class.getResourceAsStream(RESOURCE);
        if (in == null) {
            throw new IllegalStateException(RESOURCE + " is not on the class path");
        }
        return in;
    }

    private static Font read() throws IOException {
        try (InputStream in = open()) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (FontFormatException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Path fontList() {
        try {
            Path file = Files.createTempFile("penstock-fonts", ".properties");
            file.toFile().deleteOnExit();
            return Files.writeString(
                    file, "version=1\nsequence.allfonts=default\nallfonts.default=-misc-liberation-*\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
