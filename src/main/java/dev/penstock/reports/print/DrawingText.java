package dev.penstock.reports.print;

import dev.penstock.reports.chart.ChartFont;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.batik.parser.AWTTransformProducer;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Text of a drawing as text that can be selected, searched and read aloud. Letters of drawings are printed as outlines; this lays
 * the same words over them without ink.
 */
final class DrawingText {

    private static final Color NO_INK = new Color(0, 0, 0, 0);
    private static final Pattern SIZE = Pattern.compile("font-size: ?([\\d.]+)");
    private static final Pattern WEIGHT = Pattern.compile("font-weight: ?(\\w+)");
    private static final Pattern ANCHOR = Pattern.compile("text-anchor: ?(\\w+)");
    private static final double USUAL_SIZE = 12;

    /** What text inherits from the elements around it. */
    private record Around(AffineTransform place, double size, boolean bold, String anchor) {}

    private final Graphics2D graphics;

    private DrawingText(Graphics2D graphics) {
        this.graphics = graphics;
    }

    /**
     * @param drawing the SVG
     * @param graphics where its words go
     * @param width width of the drawing there
     */
    static void write(Element drawing, Graphics2D graphics, double width) {
        double scale = width / Double.parseDouble(drawing.getAttribute("width"));
        Around around = new Around(AffineTransform.getScaleInstance(scale, scale), USUAL_SIZE, false, "start");
        graphics.setColor(NO_INK);
        new DrawingText(graphics).walk(drawing, around);
    }

    private void walk(Element element, Around outside) {
        Around inside = inside(element, outside);
        switch (element.getLocalName()) {
            case "text" -> write(element, inside);
            case "title", "desc", "defs", "style" -> {
                // not drawn
            }
            default -> {
                for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
                    if (child instanceof Element inner) {
                        walk(inner, inside);
                    }
                }
            }
        }
    }

    private static Around inside(Element element, Around outside) {
        AffineTransform place = new AffineTransform(outside.place());
        String transform = element.getAttribute("transform");
        if (!transform.isEmpty()) {
            place.concatenate(AWTTransformProducer.createAffineTransform(transform));
        }
        String style =
                element.getAttribute("style") + ";font-size:" + element.getAttribute("font-size") + ";font-weight:"
                        + element.getAttribute("font-weight") + ";text-anchor:" + element.getAttribute("text-anchor");
        Matcher size = SIZE.matcher(style);
        Matcher weight = WEIGHT.matcher(style);
        Matcher anchor = ANCHOR.matcher(style);
        return new Around(
                place,
                size.find() ? Double.parseDouble(size.group(1)) : outside.size(),
                weight.find() ? weight.group(1).equals("bold") : outside.bold(),
                anchor.find() ? anchor.group(1) : outside.anchor());
    }

    private void write(Element text, Around around) {
        String words = text.getTextContent().strip();
        if (words.isEmpty()) {
            return;
        }
        double width = ChartFont.width(words, around.size(), around.bold());
        double x = number(text, "x")
                - switch (around.anchor()) {
                    case "middle" -> width / 2;
                    case "end" -> width;
                    default -> 0;
                };
        AffineTransform before = graphics.getTransform();
        graphics.transform(around.place());
        graphics.setFont(around.bold() ? ChartFont.bold(around.size()) : ChartFont.of(around.size()));
        graphics.drawString(words, (float) x, (float) number(text, "y"));
        graphics.setTransform(before);
    }

    private static double number(Element element, String attribute) {
        String value = element.getAttribute(attribute);
        return value.isEmpty() ? 0 : Double.parseDouble(value);
    }
}
