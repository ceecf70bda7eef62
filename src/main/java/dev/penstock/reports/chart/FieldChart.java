package dev.penstock.reports.chart;

import dev.penstock.provenance.LimitCheck;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.LookupPaintScale;

/**
 * A smooth figure over two inputs: colour for the figure, lines of one value, a hatch where a limit is missed, a plain shade
 * where nothing closes. The legend names what is drawn, and nothing else.
 */
public final class FieldChart {

    private static final Rectangle2D SWATCH = new Rectangle2D.Double(-9, -6, 18, 12);
    private static final BasicStroke HATCH = new BasicStroke(1.2f);
    private static final BasicStroke UNDER_HATCH = new BasicStroke(2.6f);

    private static final int HEIGHT = 560;
    /** A margin that a solver leaves is none (-). */
    private static final double MISSED = -LimitCheck.ROUND_OFF;

    private FieldChart() {}

    /**
     * @param id identifier, unique in a page
     * @param title what the map shows
     * @param xLabel label of the horizontal axis, with its unit
     * @param yLabel label of the vertical axis, with its unit
     * @param valueLabel label of the colours, with their unit
     * @param field the figure; with two different values at least
     * @param margins margins of limits that are missed somewhere
     * @param lines lines across the map
     * @param bounds what the legend says of the strong ones
     * @return SVG with the colours of light paper
     */
    public static String svg(
            String id,
            String title,
            String xLabel,
            String yLabel,
            String valueLabel,
            SmoothField field,
            List<SmoothField> margins,
            List<MapChart.Line> lines,
            List<String> bounds) {
        double[] range = field.range();
        LookupPaintScale scale = MapChart.scale(range[0], range[1]);
        XYPlot plot = MapChart.plot(xLabel, yLabel);
        plot.getDomainAxis().setRange(field.left(), field.right());
        plot.getRangeAxis().setRange(field.bottom(), field.top());
        plot.setBackgroundPaint(Ink.RULE.color());
        // Each colour lies on all lower ones, so that no seam shows between them.
        int steps = MapChart.SCALE.length;
        for (int i = 0; i < steps; i++) {
            double from = i == 0 ? Double.NEGATIVE_INFINITY : range[0] + (range[1] - range[0]) * i / steps;
            plot.addAnnotation(new RegionAnnotation(field.above(from), new Color(MapChart.SCALE[i]), List.of()));
        }
        List<List<Curve.Point>> missed =
                margins.stream().flatMap(m -> m.below(MISSED).stream()).toList();
        if (!missed.isEmpty()) {
            plot.addAnnotation(new RegionAnnotation(missed, MapChart.MISSED, List.of(UNDER_HATCH, HATCH)));
        }
        lines.forEach(line -> MapChart.draw(plot, line));
        plot.setFixedLegendItems(legend(field, !missed.isEmpty(), lines, bounds));
        JFreeChart chart = new JFreeChart(null, ChartFont.bold(13), plot, true);
        chart.addSubtitle(MapChart.legend(scale, valueLabel));
        return ChartSvg.draw(chart, id, title, ChartSvg.WIDTH, HEIGHT);
    }

    private static LegendItemCollection legend(
            SmoothField field, boolean missed, List<MapChart.Line> lines, List<String> bounds) {
        LegendItemCollection items = new LegendItemCollection();
        if (missed) {
            items.add(item("a limit is missed", hatched(), null, MapChart.MISSED, HATCH));
        }
        if (field.hasGaps()) {
            items.add(item("no solution", SWATCH, Ink.RULE.color(), Ink.MUTED.color(), new BasicStroke(0.6f)));
        }
        Line2D stroke = new Line2D.Double(-11, 0, 11, 0);
        if (lines.stream().anyMatch(l -> !l.strong())) {
            items.add(item("equal value", stroke, null, Ink.TEXT.color(), MapChart.FINE));
        }
        bounds.forEach(bound -> items.add(item(bound, stroke, null, Ink.TEXT.color(), MapChart.BOUNDARY)));
        return items;
    }

    private static Path2D hatched() {
        Path2D lines = new Path2D.Double(new Line2D.Double(-9, 6, 3, -6));
        lines.append(new Line2D.Double(-3, 6, 9, -6), false);
        lines.append(new Line2D.Double(-9, 0, -3, -6), false);
        lines.append(new Line2D.Double(3, 6, 9, 0), false);
        return lines;
    }

    private static LegendItem item(String label, Shape shape, Color fill, Paint line, BasicStroke stroke) {
        LegendItem item = new LegendItem(
                label,
                null,
                null,
                null,
                true,
                shape,
                fill != null,
                fill == null ? Ink.PAPER.color() : fill,
                true,
                line,
                stroke,
                false,
                new Line2D.Double(),
                stroke,
                line);
        item.setLabelFont(ChartFont.of(12));
        item.setLabelPaint(Ink.TEXT.color());
        return item;
    }
}
