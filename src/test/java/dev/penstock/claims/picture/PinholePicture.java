package dev.penstock.claims.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;

/** Draws the nozzle of a pinhole camera, with a bar beside it. */
public final class PinholePicture {

    private PinholePicture() {}

    /** The picture as PNG: rings from throat to exit, and a bar between two points. */
    public static byte[] png(Pinhole p, double[] from, double[] to) throws IOException {
        BufferedImage image = new BufferedImage(p.width(), p.height(), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setColor(new Color(0xdfe6ea));
        pen.fillRect(0, 0, p.width(), p.height());
        int rings = 60;
        for (int i = 0; i <= rings; i++) {
            double along = p.length() * (rings - i) / rings;
            // A parabola from throat to exit.
            double diameter = p.throat() + (p.exit() - p.throat()) * Math.sqrt((double) i / rings);
            Path2D ring = path(p.ring(along, diameter));
            pen.setColor(i == rings ? new Color(0x333b40) : new Color(0x8b6f52));
            pen.fill(ring);
            pen.setColor(new Color(0x2a1f14));
            pen.setStroke(new BasicStroke(i == rings || i == 0 ? 2 : 0.4f));
            pen.draw(ring);
        }
        pen.setColor(Color.BLACK);
        pen.setStroke(new BasicStroke(4));
        pen.draw(new Line2D.Double(from[0], from[1], to[0], to[1]));
        pen.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }

    private static Path2D path(List<double[]> points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0)[0], points.get(0)[1]);
        points.forEach(q -> path.lineTo(q[0], q[1]));
        path.closePath();
        return path;
    }
}
