package dev.penstock.reports.chart;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import javax.imageio.ImageIO;

/** A drawing made by hand, as SVG with text that can be selected, and as PNG of the same size. */
public final class Plate {

    private Plate() {}

    /**
     * @param id identifier, unique in a page
     * @param title what the drawing shows
     * @param width width (px)
     * @param height height (px)
     * @param painter draws it
     * @return SVG
     */
    public static String svg(String id, String title, int width, int height, Consumer<Graphics2D> painter) {
        SvgCanvas canvas = SvgCanvas.of(id);
        painter.accept(canvas);
        return canvas.svg(title, width, height);
    }

    /**
     * @param width width (px)
     * @param height height (px)
     * @param painter draws it
     * @return PNG
     */
    public static byte[] png(int width, int height, Consumer<Graphics2D> painter) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        painter.accept(g);
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
