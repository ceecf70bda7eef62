package dev.penstock.reports.diagram;

import dev.penstock.cycles.sheet.Component;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.ChartFont;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.text.Markup;
import java.util.Optional;
import java.util.function.IntFunction;

/** Writes the parts of a flow diagram as SVG. Not thread-safe. */
final class Pen {

    private static final double ROUND = 6;

    private final StringBuilder svg = new StringBuilder();
    private final Optional<IntFunction<String>> links;

    /** @param links gives the address of a numbered station; a drawing with links is no single picture to a reader */
    Pen(Optional<IntFunction<String>> links) {
        this.links = links;
    }

    void open(String id, String title, double width, double height) {
        svg.append("<svg id=\"").append(id).append("\" xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ");
        svg.append(n(width)).append(' ').append(n(height)).append("\" width=\"").append(n(width));
        svg.append("\" height=\"")
                .append(n(height))
                .append("\" role=\"")
                .append(links.isPresent() ? "group" : "img")
                .append("\" aria-labelledby=\"")
                .append(id);
        svg.append("-title\" style='font-family:")
                .append(ChartFont.FAMILIES)
                .append("'><title id=\"")
                .append(id);
        svg.append("-title\">").append(Markup.escape(title)).append("</title>");
    }

    String close() {
        return svg.append("</svg>").toString();
    }

    /** A line from box to box, down, across on its track, down again. */
    void route(Link link, double level, Ink ink, boolean shaft, boolean arrow) {
        double x1 = link.fromX;
        double x2 = link.toX;
        boolean upwards = link.upwards();
        double y1 = link.from.bottom() + (arrow && upwards ? 4 : 0);
        double y2 = link.to.top() - (arrow && !upwards ? 4 : 0);
        String path;
        if (!link.bends()) {
            path = "M" + n(x1) + " " + n(y1) + "V" + n(y2);
        } else {
            double r = Math.min(ROUND, Math.abs(x2 - x1) / 2);
            double sign = Math.signum(x2 - x1);
            path = "M" + n(x1) + " " + n(y1) + "V" + n(level - r) + "q0 " + n(r) + " " + n(sign * r) + " " + n(r) + "H"
                    + n(x2 - sign * r) + "q" + n(sign * r) + " 0 " + n(sign * r) + " " + n(r) + "V" + n(y2);
        }
        if (shaft) {
            svg.append("<path d=\"")
                    .append(path)
                    .append("\" style=\"fill:none;stroke:")
                    .append(ink.rgb());
            svg.append(";stroke-width:1.6;stroke-dasharray:2 3\"/>");
            return;
        }
        svg.append("<path d=\"")
                .append(path)
                .append("\" style=\"fill:none;stroke:")
                .append(ink.rgb());
        svg.append(";stroke-width:2.4\"/>");
        if (arrow) {
            double x = upwards ? x1 : x2;
            double y = upwards ? y1 + 3 : y2 - 3;
            svg.append("<path d=\"M")
                    .append(n(x - 4))
                    .append(' ')
                    .append(n(y))
                    .append(upwards ? "h8l-4 -7z" : "h8l-4 7z")
                    .append("\" style=\"fill:");
            svg.append(ink.rgb()).append("\"/>");
        }
    }

    /** Room on the left of a plate's text (px). */
    static double beside(StationPlate plate) {
        return plate.numbered() ? 29 : 11;
    }

    void plate(Node node, StationPlate plate, Ink ink) {
        Optional<String> link = links.filter(l -> plate.numbered()).map(l -> l.apply(plate.number()));
        String element = link.isPresent() ? "a" : "g";
        svg.append('<').append(element);
        link.ifPresent(to -> svg.append(" href=\"")
                .append(Markup.escape(to))
                .append("\" aria-label=\"station ")
                .append(plate.number())
                .append(", ")
                .append(Markup.escape(plate.name()))
                .append(": ")
                .append(plate.upper())
                .append(", ")
                .append(plate.lower())
                .append('"'));
        if (plate.numbered()) {
            svg.append(" data-station=\"").append(plate.number()).append('"');
        }
        svg.append('>');
        svg.append("<title>").append(Markup.escape(plate.name())).append("</title>");
        box(node, 9, Ink.PANEL, ink, 1);
        if (plate.numbered()) {
            number(node, plate.number(), ink);
        }
        double left = node.left() + beside(plate);
        text(left, node.y - 3, 10.5, Ink.TEXT, false, plate.upper());
        text(left, node.y + 10, 10.5, Ink.MUTED, false, plate.lower());
        svg.append("</").append(element).append('>');
    }

    private void number(Node node, int number, Ink ink) {
        double cx = node.left() + 15;
        svg.append("<circle cx=\"")
                .append(n(cx))
                .append("\" cy=\"")
                .append(n(node.y))
                .append("\" r=\"10\" style=\"fill:");
        svg.append(ink.rgb()).append("\"/>");
        svg.append("<text x=\"").append(n(cx)).append("\" y=\"").append(n(node.y + 3.8));
        svg.append("\" text-anchor=\"middle\" style=\"font-size:10.5px;font-weight:bold;fill:");
        svg.append(Ink.PAPER.rgb()).append("\">").append(number).append("</text>");
    }

    void component(Node node, Component component, String figure, boolean fitting, String sign, Ink ink) {
        svg.append("<g data-component=\"").append(Markup.escape(component.id())).append("\">");
        double middle = node.left() + (fitting ? 13 : 21);
        if (FlowDiagram.isJunction(component)) {
            middle = node.x;
        } else if (!fitting) {
            box(node, 5, Ink.PANEL, Ink.TEXT, 1.3);
        } else {
            svg.append("<rect x=\"").append(n(node.left())).append("\" y=\"").append(n(node.top()));
            svg.append("\" width=\"")
                    .append(n(node.width))
                    .append("\" height=\"")
                    .append(n(node.height));
            svg.append("\" rx=\"4\" style=\"fill:").append(Ink.PANEL.rgb()).append("\"/>");
        }
        svg.append("<g transform=\"translate(")
                .append(n(middle))
                .append(' ')
                .append(n(node.y))
                .append(")")
                .append(fitting ? " scale(0.7)" : "");
        svg.append("\" style=\"fill:none;stroke:")
                .append(ink.rgb())
                .append(";stroke-width:1.8;stroke-linejoin:round\">");
        svg.append(sign).append("</g>");
        if (FlowDiagram.isJunction(component)) {
            svg.append("<title>").append(Markup.escape(component.label())).append("</title>");
        } else if (fitting) {
            text(node.left() + 26, node.y + 3.7, 10.5, Ink.MUTED, false, component.label());
        } else if (figure.isEmpty()) {
            text(node.left() + 42, node.y + 4, 12, Ink.TEXT, true, component.label());
        } else {
            text(node.left() + 42, node.y - 3, 12, Ink.TEXT, true, component.label());
            text(node.left() + 42, node.y + 12, 11, Ink.MUTED, false, figure);
        }
        svg.append("</g>");
    }

    private void box(Node node, double radius, Ink fill, Ink line, double stroke) {
        svg.append("<rect x=\"")
                .append(n(node.left()))
                .append("\" y=\"")
                .append(n(node.top()))
                .append("\" width=\"");
        svg.append(n(node.width))
                .append("\" height=\"")
                .append(n(node.height))
                .append("\" rx=\"")
                .append(n(radius));
        svg.append("\" style=\"fill:")
                .append(fill.rgb())
                .append(";stroke:")
                .append(line.rgb())
                .append(";stroke-width:");
        svg.append(n(stroke)).append("\"/>");
    }

    private void text(double x, double y, double size, Ink ink, boolean bold, String text) {
        svg.append("<text x=\"").append(n(x)).append("\" y=\"").append(n(y)).append("\" style=\"font-size:");
        svg.append(n(size))
                .append("px;fill:")
                .append(ink.rgb())
                .append(bold ? ";font-weight:bold" : "")
                .append("\">");
        svg.append(Markup.escape(text)).append("</text>");
    }

    private static String n(double value) {
        return Notation.fixed(value, 1);
    }
}
