package dev.penstock.reports.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.function.Consumer;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.Axis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.title.LegendTitle;

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
        return draw(chart, id, title, width, height, null, canvas -> {});
    }

    /** As above; where everything was drawn is noted, unless nobody asks, and more may be drawn there. */
    static String draw(
            JFreeChart chart,
            String id,
            String title,
            int width,
            int height,
            ChartRenderingInfo info,
            Consumer<Graphics2D> more) {
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
        SvgCanvas canvas = SvgCanvas.of(id);
        chart.draw(canvas, new Rectangle2D.Double(0, 0, width, height), info);
        more.accept(canvas);
        return canvas.svg(title, width, height);
    }

    static NumberAxis axis(String label) {
        NumberAxis axis = new NumberAxis(label);
        dress(axis);
        axis.setAutoRangeIncludesZero(false);
        NumberFormat plain = NumberFormat.getInstance(Locale.ROOT);
        plain.setGroupingUsed(false);
        // Ticks are round; what is short must not round to the same figure everywhere.
        plain.setMaximumFractionDigits(9);
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
