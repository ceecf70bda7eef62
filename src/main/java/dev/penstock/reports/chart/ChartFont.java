package dev.penstock.reports.chart;

import dev.penstock.errors.InvalidInput;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The font in which charts measure and set their text: Liberation Sans as it comes with the PDF library, so that a chart
 * has the same layout on every machine, also on one that has no fonts at all.
 */
public final class ChartFont {

    /** Families with the same widths, in the order in which a browser should look for them; pages hold the third. */
    public static final String FAMILIES =
            "\"Liberation Sans\", Arial, \"" + DrawingFont.FAMILY + "\", Helvetica, sans-serif";

    private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final String FONT_CONFIGURATION = "sun.awt.fontconfig";
    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);
    private static volatile Font base;

    private ChartFont() {}

    /**
     * @param size size in points
     * @return the font
     */
    public static Font of(double size) {
        return base().deriveFont((float) size);
    }

    /**
     * @param size size in points
     * @return the bold font
     */
    public static Font bold(double size) {
        return base().deriveFont(Font.BOLD, (float) size);
    }

    /**
     * @param text one line
     * @param size size in points
     * @return its width in the same unit
     */
    public static double width(String text, double size) {
        return text.isEmpty() ? 0 : of(size).getStringBounds(text, MEASURE).getWidth();
    }

    /**
     * Not when the class is loaded: Java puts fonts into temporary files, and a failure there would last as long as the
     * process.
     */
    private static Font base() {
        Font known = base;
        return known == null ? load() : known;
    }

    private static synchronized Font load() {
        if (base == null) {
            base = readWhateverFontsThereAre();
        }
        return base;
    }

    private static Font readWhateverFontsThereAre() {
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
            throw withoutTemporaryFiles(e);
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

    /** @return what to tell when a font cannot be put into a temporary file */
    public static InvalidInput withoutTemporaryFiles(IOException failure) {
        String folder = System.getProperty("java.io.tmpdir");
        return new InvalidInput(
                "",
                "java.io.tmpdir",
                folder,
                "fonts of drawings need a folder for temporary files that can be written (" + failure + ")");
    }

    private static Path fontList() {
        try {
            Path file = Files.createTempFile("penstock-fonts", ".properties");
            file.toFile().deleteOnExit();
            return Files.writeString(
                    file, "version=1\nsequence.allfonts=default\nallfonts.default=-misc-liberation-*\n");
        } catch (IOException e) {
            throw withoutTemporaryFiles(e);
        }
    }
}
