package dev.penstock.reports.chart;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The signs that drawings use, out of {@link ChartFont}, as a style sheet that any page or drawing can hold: where a machine has
 * neither that font nor one of its widths, words would run out of their boxes.
 */
public final class DrawingFont {

    /** Name of the font in {@link ChartFont#FAMILIES}. */
    static final String FAMILY = "Penstock Drawing";
    /** Beside Latin letters and Greek: signs of figures and units, and arrows. */
    private static final String SIGNS =
            "\u2013\u2014\u2018\u2019\u201c\u201d\u2022\u2026\u2032\u2033\u2212\u2215\u221a\u221e\u2248"
                    + "\u2260\u2264\u2265\u2190\u2191\u2192\u2193\u2070\u2074\u2075\u2076\u2077\u2078\u2079\u207a\u207b\u2080\u2081\u2082\u2083\u2084\u2126";

    /** What a browser needs; pairs of letters that stand closer are not drawn so by the others either. */
    private static final List<String> TABLES = List.of(
            "OS/2", "cmap", "cvt ", "fpgm", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name", "post", "prep");

    private DrawingFont() {}

    private static final class Made {
        static final String FACES = face("400", ChartFont.open()) + face("700", ChartFont.openBold());
    }

    /** @return the rules that make both cuts of the font known to a browser */
    public static String css() {
        return Made.FACES;
    }

    /**
     * @param svg a drawing
     * @return the same with its font in it, so that it stands alone
     */
    public static String into(String svg) {
        int end = svg.indexOf('>', svg.indexOf("<svg")) + 1;
        return svg.substring(0, end) + "<style>" + css() + "</style>" + svg.substring(end);
    }

    private static String face(String weight, InputStream cut) {
        return "@font-face{font-family:\"" + FAMILY + "\";font-weight:" + weight + ";src:url(data:font/ttf;base64,"
                + Base64.getEncoder().encodeToString(subset(cut)) + ")}";
    }

    private static byte[] subset(InputStream cut) {
        try (RandomAccessReadBuffer in = new RandomAccessReadBuffer(cut);
                TrueTypeFont font = new TTFParser().parse(in)) {
            TTFSubsetter subsetter = new TTFSubsetter(font, TABLES);
            Stream.of(
                            IntStream.rangeClosed(' ', '~'),
                            IntStream.rangeClosed('\u00a0', '\u00ff'),
                            IntStream.rangeClosed('\u0391', '\u03c9'),
                            SIGNS.chars())
                    .flatMapToInt(signs -> signs)
                    .forEach(subsetter::add);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            subsetter.writeToStream(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
