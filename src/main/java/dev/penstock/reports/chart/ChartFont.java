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
 * The font in which charts measure and set their text: Liberation Sans, its regular cut as it comes with the PDF library and its
 * bold one as it lies here, so that a chart has the same layout on every machine, also on one that has no fonts at all.
 */
public final class ChartFont {

    /** Families with the same widths, in the order in which a browser should look for them; pages hold the third. */
    public static final String FAMILIES =
            "\"Liberation Sans\", Arial, \"" + DrawingFont.FAMILY + "\", Helvetica, sans-serif";

    private static final String REGULAR = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final String BOLD = "LiberationSans-Bold.ttf";
    private static final String FONT_CONFIGURATION = "sun.awt.fontconfig";
    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);
    private static volatile Cuts cuts;

    /** Both cuts, of one point. */
    private record Cuts(Font regular, Font bold) {}

    private ChartFont() {}

    /**
     * @param size size in points
     * @return the font
     */
    public static Font of(double size) {
        return cuts().regular().deriveFont((float) size);
    }

    /**
     * @param size size in points
     * @return the bold font
     */
    public static Font bold(double size) {
        return cuts().bold().deriveFont(Font.BOLD, (float) size);
    }

    /**
     * @param text one line
     * @param size size in points
     * @return its width in the same unit
     */
    public static double width(String text, double size) {
        return width(text, size, false);
    }

    /**
     * @param text one line
     * @param size size in points
     * @param bold whether it is set in the bold font
     * @return its width in the same unit
     */
    public static double width(String text, double size, boolean bold) {
        Font font = bold ? bold(size) : of(size);
        return text.isEmpty() ? 0 : font.getStringBounds(text, MEASURE).getWidth();
    }

    /**
     * Not when the class is loaded: Java puts fonts into temporary files, and a failure there would last as long as the
     * process.
     */
    private static Cuts cuts() {
        Cuts known = cuts;
        return known == null ? load() : known;
    }

    private static synchronized Cuts load() {
        if (cuts == null) {
            cuts = readWhateverFontsThereAre();
        }
        return cuts;
    }

    private static Cuts readWhateverFontsThereAre() {
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
        return open(REGULAR);
    }

    /** @return the bold font as TrueType; the caller closes it */
    public static InputStream openBold() {
        return open(BOLD);
    }

    private static InputStream open(String resource) {
        InputStream in = ChartFont.class.getResourceAsStream(resource);
        if (in == null) {
            throw new IllegalStateException(resource + " is not on the class path");
        }
        return in;
    }

    private static Cuts read() throws IOException {
        return new Cuts(read(REGULAR), read(BOLD));
    }

    private static Font read(String resource) throws IOException {
        try (InputStream in = open(resource)) {
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
