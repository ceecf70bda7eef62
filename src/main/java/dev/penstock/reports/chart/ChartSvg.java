package dev.penstock.reports.chart;

import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.Markup;
import java.awt.geom.Rectangle2D;
import java.text.NumberFormat;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.Axis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.title.LegendTitle;
import org.jfree.svg.SVGGraphics2D;

/** Draws a JFreeChart chart as SVG in the house style. */
final class ChartSvg {

    /** Width of every chart (px). */
    static final int WIDTH = 860;

    private ChartSvg() {}

    /**
     * @param chart chart in the colours of {@link Ink}
     * @param id identifier, unique in a page
     * @param title what the chart shows, for those who cannot see it
     * @param width width (px)
     * @param height height (px)
     * @return SVG with the colours of light paper
     */
    static String draw(JFreeChart chart, String id, String title, int width, int height) {
        chart.setBackgroundPaint(null);
        chart.setAntiAlias(true);
        chart.setPadding(new org.jfree.chart.ui.RectangleInsets(2, 2, 2, 8));
        LegendTitle legend = chart.getLegend();
        if (legend != null) {
            legend.setBackgroundPaint(null);
            legend.setFrame(org.jfree.chart.block.BlockBorder.NONE);
            legend.setItemFont(ChartFont.of(12));
            legend.setItemPaint(Ink.TEXT.color());
        }
        SVGGraphics2D graphics = new SVGGraphics2D((double) width, height);
        graphics.setDefsKeyPrefix(id + "-");
        graphics.setGeomDoubleConverter(ChartSvg::coordinate);
        graphics.setTransformDoubleConverter(ChartSvg::coordinate);
        graphics.setFontFunction(family -> ChartFont.FAMILIES.replace('"', '\''));
        chart.draw(graphics, new Rectangle2D.Double(0, 0, width, height));
        String svg = graphics.getSVGElement(id);
        int end = svg.indexOf('>');
        return "<svg id=\"" + id + "\" xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + width + " " + height
                + "\" width=\"" + width + "\" height=\"" + height + "\" role=\"img\" aria-labelledby=\"" + id
                + "-title\"><title id=\"" + id + "-title\">" + Markup.escape(title) + "</title>"
                + quoted(svg.substring(end + 1));
    }

    /** Attribute values come in single quotes, in which the font list's own quotes would end them. */
    private static String quoted(String svg) {
        return svg.replace(ChartFont.FAMILIES.replace('"', '\''), ChartFont.FAMILIES);
    }

    private static String coordinate(double value) {
        return Figures.fixed(value, 1);
    }

    static NumberAxis axis(String label) {
        NumberAxis axis = new NumberAxis(label);
        dress(axis);
        axis.setAutoRangeIncludesZero(false);
        NumberFormat plain = NumberFormat.getInstance(Locale.ROOT);
        plain.setGroupingUsed(false);
        axis.setNumberFormatOverride(plain);
        return axis;
    }

    static void dress(Axis axis) {
        axis.setLabelFont(ChartFont.of(12));
        axis.setTickLabelFont(ChartFont.of(11.5));
        axis.setLabelPaint(Ink.TEXT.color());
        axis.setTickLabelPaint(Ink.MUTED.color());
        axis.setAxisLinePaint(Ink.MUTED.color());
        axis.setTickMarkPaint(Ink.MUTED.color());
    }
}
