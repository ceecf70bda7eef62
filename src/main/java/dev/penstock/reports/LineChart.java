package dev.penstock.reports;

import java.awt.BasicStroke;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Curves over one horizontal axis, in one or more panels above each other. */
public final class LineChart {

    /**
     * One panel.
     *
     * @param label label of the vertical axis, with its unit
     * @param weight share of the height
     * @param fromZero whether the vertical axis starts at zero
     * @param curves curves
     */
    public record Panel(String label, int weight, boolean fromZero, List<Curve> curves) {

        public Panel {
            curves = List.copyOf(curves);
        }
    }

    private static final BasicStroke SOLID = new BasicStroke(2.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    private static final BasicStroke DASHED =
            new BasicStroke(2.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {7, 4}, 0);
    private static final BasicStroke GRID = new BasicStroke(1f);

    private LineChart() {}

    /**
     * @param id identifier, unique in a page
     * @param title what the chart shows
     * @param xLabel label of the horizontal axis, with its unit
     * @param panels panels from top to bottom
     * @param height height (px)
     * @return SVG with the colours of light paper
     */
    public static String svg(String id, String title, String xLabel, List<Panel> panels, int height) {
        NumberAxis domain = ChartSvg.axis(xLabel);
        domain.setLowerMargin(0.01);
        domain.setUpperMargin(0.01);
        CombinedDomainXYPlot plot = new CombinedDomainXYPlot(domain);
        plot.setGap(14);
        for (Panel panel : panels) {
            plot.add(plotOf(panel), panel.weight());
        }
        return ChartSvg.draw(new JFreeChart(null, ChartFont.bold(13), plot, true), id, title, ChartSvg.WIDTH, height);
    }

    private static XYPlot plotOf(Panel panel) {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setLegendLine(new java.awt.geom.Line2D.Double(-13, 0, 13, 0));
        for (int i = 0; i < panel.curves().size(); i++) {
            Curve curve = panel.curves().get(i);
            XYSeries series = new XYSeries(curve.name(), false, true);
            curve.points()
                    .forEach(point -> series.add(point.x(), Double.isFinite(point.y()) ? (Double) point.y() : null));
            data.addSeries(series);
            renderer.setSeriesPaint(i, curve.ink().color());
            renderer.setSeriesStroke(i, curve.dashed() ? DASHED : SOLID);
            if (curve.points().size() == 1) {
                renderer.setSeriesShapesVisible(i, true);
            }
        }
        NumberAxis range = ChartSvg.axis(panel.label());
        range.setAutoRangeIncludesZero(panel.fromZero());
        XYPlot plot = new XYPlot(data, null, range, renderer);
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinePaint(Ink.RULE.color());
        plot.setRangeGridlinePaint(Ink.RULE.color());
        plot.setDomainGridlineStroke(GRID);
        plot.setRangeGridlineStroke(GRID);
        return plot;
    }
}
