package dev.penstock.reports.slide;

import dev.penstock.reports.chart.ChartFont;
import dev.penstock.reports.chart.Ink;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Draws in the colours of one theme, with text that is measured before it is set. Not thread-safe. */
public final class Pencil {

    /** Height of a line over the size of its letters. */
    static final double LEADING = 1.28;

    /** A blank that does not follow a number. */
    private static final Pattern BETWEEN_WORDS = Pattern.compile("(?<![0-9]) ");

    private static final int EVEN_STEPS = 10;

    private final Graphics2D g;
    private final boolean light;

    Pencil(Graphics2D g, boolean light) {
        this.g = g;
        this.light = light;
    }

    Color color(Ink ink) {
        return ink.on(light);
    }

    /** A colour between paper and ink: a tint that needs no transparency. */
    Color tint(Ink ink, double share) {
        Color a = color(Ink.PAPER);
        Color b = color(ink);
        return new Color(
                mix(a.getRed(), b.getRed(), share),
                mix(a.getGreen(), b.getGreen(), share),
                mix(a.getBlue(), b.getBlue(), share));
    }

    private static int mix(int a, int b, double share) {
        return (int) Math.round(a + share * (b - a));
    }

    void fill(Shape shape, Color color) {
        g.setPaint(color);
        g.fill(shape);
    }

    void line(Shape shape, Color color, double width) {
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setPaint(color);
        g.draw(shape);
    }

    void dashed(Shape shape, Color color, double width, double dash) {
        float[] pattern = {(float) dash, (float) dash};
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, pattern, 0));
        g.setPaint(color);
        g.draw(shape);
    }

    void box(double x, double y, double width, double height, double round, Color fill, Color edge, double stroke) {
        Shape shape = new RoundRectangle2D.Double(x, y, width, height, round, round);
        fill(shape, fill);
        line(shape, edge, stroke);
    }

    static double width(String text, double size, boolean bold) {
        return ChartFont.width(text, size, bold);
    }

    /** Text from its left end, on its base line. */
    void text(String text, double x, double y, double size, boolean bold, Color color) {
        if (text.isEmpty()) {
            return;
        }
        g.setFont(bold ? ChartFont.bold(size) : ChartFont.of(size));
        g.setPaint(color);
        g.drawString(text, (float) x, (float) y);
    }

    /** Text about its middle. */
    void middle(String text, double x, double y, double size, boolean bold, Color color) {
        text(text, x - width(text, size, bold) / 2, y, size, bold, color);
    }

    /** Text to its right end. */
    void right(String text, double x, double y, double size, boolean bold, Color color) {
        text(text, x - width(text, size, bold), y, size, bold, color);
    }

    /** @return the words in as few lines of at most a width as hold them, all about equally long; a number keeps its unit */
    static List<String> wrapped(String text, double width, double size, boolean bold) {
        List<String> lines = filled(text, width, size, bold);
        double narrow = 0;
        double wide = width;
        for (int i = 0; i < EVEN_STEPS && lines.size() > 1; i++) {
            double middle = (narrow + wide) / 2;
            List<String> even = filled(text, middle, size, bold);
            if (even.size() > lines.size()) {
                narrow = middle;
            } else {
                wide = middle;
                lines = even;
            }
        }
        return lines;
    }

    /** @return how many lines {@link #wrapped} makes */
    static int lines(String text, double width, double size, boolean bold) {
        return filled(text, width, size, bold).size();
    }

    private static List<String> filled(String text, double width, double size, boolean bold) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : BETWEEN_WORDS.split(text)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, size, bold) > width) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }

    /** Lines from a first base line down. */
    void lines(List<String> lines, double x, double y, double size, boolean bold, Color color) {
        for (int i = 0; i < lines.size(); i++) {
            text(lines.get(i), x, y + i * size * LEADING, size, bold, color);
        }
    }

    /** Lines about their middle, from a first base line down. */
    void middleLines(List<String> lines, double x, double y, double size, Color color) {
        for (int i = 0; i < lines.size(); i++) {
            middle(lines.get(i), x, y + i * size * LEADING, size, false, color);
        }
    }

    /** A measure between two points with bars at its ends. */
    void measure(Point2D a, Point2D b, Color color) {
        double dx = b.getX() - a.getX();
        double dy = b.getY() - a.getY();
        double length = Math.hypot(dx, dy);
        double nx = -dy / length * 9;
        double ny = dx / length * 9;
        line(new Line2D.Double(a, b), color, 2);
        for (Point2D end : List.of(a, b)) {
            line(new Line2D.Double(end.getX() - nx, end.getY() - ny, end.getX() + nx, end.getY() + ny), color, 2);
        }
    }

    /** A way round rounded corners. */
    static Path2D rounded(List<Point2D> corners, double radius) {
        Path2D path = new Path2D.Double();
        path.moveTo(corners.get(0).getX(), corners.get(0).getY());
        for (int i = 1; i < corners.size() - 1; i++) {
            Point2D before = toward(corners.get(i), corners.get(i - 1), radius);
            Point2D after = toward(corners.get(i), corners.get(i + 1), radius);
            path.lineTo(before.getX(), before.getY());
            path.quadTo(corners.get(i).getX(), corners.get(i).getY(), after.getX(), after.getY());
        }
        Point2D last = corners.get(corners.size() - 1);
        path.lineTo(last.getX(), last.getY());
        return path;
    }

    private static Point2D toward(Point2D from, Point2D to, double distance) {
        double length = from.distance(to);
        double share = length == 0 ? 0 : Math.min(0.5, distance / length);
        return new Point2D.Double(
                from.getX() + share * (to.getX() - from.getX()), from.getY() + share * (to.getY() - from.getY()));
    }

    /** A head whose point is here, pointing down; up for a size below zero. */
    void arrow(double x, double y, double size, Color color) {
        Path2D head = new Path2D.Double();
        head.moveTo(x - size, y - 1.6 * size);
        head.lineTo(x + size, y - 1.6 * size);
        head.lineTo(x, y);
        head.closePath();
        fill(head, color);
    }
}
