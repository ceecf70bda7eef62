package dev.penstock.reports.chart;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.transcoder.image.PNGTranscoder;

/** Paints a drawing for programs that take no SVG. */
public final class Raster {

    private static final float WIDTH = 1720;

    private Raster() {}

    /**
     * @param svg drawing with the colours of light paper
     * @return a PNG picture of it on white, {@value #WIDTH} pixels wide
     */
    public static byte[] png(String svg) {
        ChartFont.of(12);
        PNGTranscoder transcoder = new PNGTranscoder();
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, WIDTH);
        transcoder.addTranscodingHint(ImageTranscoder.KEY_BACKGROUND_COLOR, Color.WHITE);
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_ALLOW_EXTERNAL_RESOURCES, false);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            transcoder.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput(bytes));
        } catch (TranscoderException e) {
            throw new IllegalStateException("a drawing of our own cannot be painted", e);
        }
        return bytes.toByteArray();
    }
}
