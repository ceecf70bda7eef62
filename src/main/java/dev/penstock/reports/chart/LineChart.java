package dev.penstock.reports.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Stream;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Curves over one horizontal axis, in one or more panels above each other. */
public final class LineChart {

    /**
     * One panel.
     *
     * @param label label of the vertical axis, with its unit
     * @param weight share of the height
     * @param fromZero whether the vertical axis starts at zero
     * @param curves curves
     * @param bands bands behind the curves
     * @param levels level lines, such as limits
     */
    public record Panel(
            String label, int weight, boolean fromZero, List<Curve> curves, List<Band> bands, List<Level> levels) {

        public Panel {
            curves = List.copyOf(curves);
            bands = List.copyOf(bands);
            levels = List.copyOf(levels);
        }

        public Panel(String label, int weight, boolean fromZero, List<Curve> curves, List<Band> bands) {
            this(label, weight, fromZero, curves, bands, List.of());
        }

        /**
         * @param lines level lines
         * @return this panel with them
         */
        public Panel with(List<Level> lines) {
            return new Panel(label, weight, fromZero, curves, bands, lines);
        }

        public Panel(String label, int weight, boolean fromZero, List<Curve> curves) {
            this(label, weight, fromZero, curves, List.of());
        }
    }

    /**
     * A strip between two curves.
     *
     * @param ink colour
     * @param edges edges from left to right, without a gap
     */
    public record Band(Ink ink, List<Edge> edges) {

        /**
         * @param x horizontal value, in the unit of the axis
         * @param low lower edge, in the unit of the axis
         * @param high upper edge, in the unit of the axis
         */
        public record Edge(double x, double low, double high) {}

        public Band {
            edges = List.copyOf(edges);
        }
    }

    /**
     * A level line across one panel.
     *
     * @param at value, in the unit of the vertical axis
     * @param label what it is
     * @param ink colour
     */
    public record Level(double at, String label, Ink ink) {}

    /**
     * A shaded stretch of the horizontal axis.
     *
     * @param from left end, in the unit of the axis
     * @param to right end, in the unit of the axis
     */
    public record Shade(double from, double to) {}

    /**
     * An upright line through all panels.
     *
     * @param at place, in the unit of the horizontal axis
     * @param label short label, shown in the panel on top
     */
    public record Mark(double at, String label) {}

    private static final BasicStroke SOLID = new BasicStroke(2.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    private static final BasicStroke DASHED =
            new BasicStroke(2.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {7, 4}, 0);
    private static final BasicStroke DOTTED =
            new BasicStroke(1.3f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {1.6f, 3}, 0);
    /** Height of a label over that of a panel (-), about. */
    private static final double LABEL_HEIGHT = 0.1;

    private static final BasicStroke THIN_DASHES =
            new BasicStroke(1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {3, 3}, 0);
    private static final Ellipse2D DOT = new Ellipse2D.Double(-3.5, -3.5, 7, 7);
    /** Shortest vertical axis over the values on it (-): below, a curve counts as level. */
    private static final double LEAST_SPAN = 1e-3;

    private static final double GAP = 14;
    /** Keys of curves: height of a row, room across, line with its space, space behind a name, size of letters (px). */
    private static final double KEY_ROW = 18;

    private static final double KEY_ROOM = 760;
    private static final double KEY_LINE = 32;
    private static final double KEY_SPACE = 20;
    private static final double KEY_SIZE = 12;

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
        return svg(id, title, xLabel, panels, height, List.of(), List.of());
    }

    /**
     * @param id identifier, unique in a page
     * @param title what the chart shows
     * @param xLabel label of the horizontal axis, with its unit
     * @param panels panels from top to bottom
     * @param height height (px)
     * @param shades shaded stretches
     * @param marks upright lines
     * @return SVG with the colours of light paper
     */
    public static String svg(
            String id,
            String title,
            String xLabel,
            List<Panel> panels,
            int height,
            List<Shade> shades,
            List<Mark> marks) {
        NumberAxis domain = ChartSvg.axis(xLabel);
        domain.setLowerMargin(0.01);
        domain.setUpperMargin(0.01);
        CombinedDomainXYPlot plot = new CombinedDomainXYPlot(domain);
        plot.setGap(GAP);
        if (panels.stream().allMatch(LineChart::whole)) {
            domain.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        }
        boolean keyed = panels.size() > 1;
        boolean legend = !keyed && panels.stream().anyMatch(p -> !keyed(p).isEmpty());
        if (keyed) {
            int most =
                    panels.stream().skip(1).mapToInt(LineChart::keyRows).max().orElse(0);
            plot.setGap(GAP + KEY_ROW * most);
            RectangleInsets own = plot.getInsets();
            double top = own.getTop() + KEY_ROW * keyRows(panels.get(0));
            plot.setInsets(new RectangleInsets(top, own.getLeft(), own.getBottom(), own.getRight()));
        }
        for (Panel panel : panels) {
            XYPlot part = plotOf(panel);
            shades.forEach(shade -> part.addDomainMarker(marker(shade), Layer.BACKGROUND));
            marks.forEach(mark -> part.addDomainMarker(marker(mark, panel == panels.get(0)), Layer.FOREGROUND));
            plot.add(part, panel.weight());
        }
        ChartRenderingInfo info = new ChartRenderingInfo();
        JFreeChart chart = new JFreeChart(null, ChartFont.bold(13), plot, legend);
        String svg = ChartSvg.draw(chart, id, title, ChartSvg.WIDTH, height, info, canvas -> {
            for (int i = 0; keyed && i < panels.size(); i++) {
                keys(canvas, panels.get(i), info.getPlotInfo().getSubplotInfo(i).getDataArea());
            }
        });
        return CurveData.into(svg, xLabel, plot, info, panels, marks);
    }

    /** Whether every place on the horizontal axis is a whole number: points tried, generations. */
    private static boolean whole(Panel panel) {
        return panel.curves().stream().flatMap(c -> c.points().stream()).allMatch(p -> p.x() == Math.rint(p.x()));
    }

    /** What is told by a key: not what was before, nor a lone curve that its axis names. */
    static List<Curve> keyed(Panel panel) {
        List<Curve> named = panel.curves().stream()
                .filter(c -> !c.name().isEmpty() && !c.before())
                .toList();
        boolean told =
                named.size() == 1 && panel.label().startsWith(named.get(0).name());
        return told ? List.of() : named;
    }

    private static double keyWidth(Curve curve) {
        return KEY_LINE + ChartFont.width(curve.name(), KEY_SIZE) + KEY_SPACE;
    }

    private static int keyRows(Panel panel) {
        double whole = keyed(panel).stream().mapToDouble(LineChart::keyWidth).sum();
        return (int) Math.ceil(whole / KEY_ROOM);
    }

    /** Which line is which, above its panel, so that the same look may mean another figure in the next. */
    private static void keys(Graphics2D canvas, Panel panel, Rectangle2D area) {
        double x = area.getMinX();
        double y = area.getMinY() - KEY_ROW * keyRows(panel) + 8;
        canvas.setFont(ChartFont.of(KEY_SIZE));
        for (Curve curve : keyed(panel)) {
            if (x + keyWidth(curve) > area.getMinX() + KEY_ROOM && x > area.getMinX()) {
                x = area.getMinX();
                y += KEY_ROW;
            }
            canvas.setPaint(curve.ink().color());
            canvas.setStroke(curve.dashed() ? DASHED : SOLID);
            canvas.draw(new Line2D.Double(x, y - 4, x + KEY_LINE - 6, y - 4));
            canvas.setPaint(Ink.TEXT.color());
            canvas.drawString(curve.name(), (float) (x + KEY_LINE), (float) y);
            x += keyWidth(curve);
        }
    }

    private static IntervalMarker marker(Shade shade) {
        IntervalMarker marker = new IntervalMarker(shade.from(), shade.to(), Ink.RULE.color());
        marker.setAlpha(0.55f);
        return marker;
    }

    /** The axis is as long as its curves, bands and level lines are, and never so short that its figures are all the same. */
    private static void fit(NumberAxis range, Panel panel) {
        DoubleSummaryStatistics all = Stream.of(
                        panel.curves().stream()
                                .flatMap(c -> c.points().stream())
                                .map(Curve.Point::y),
                        panel.bands().stream()
                                .flatMap(b -> b.edges().stream())
                                .flatMap(e -> Stream.of(e.low(), e.high())),
                        panel.levels().stream().map(Level::at),
                        panel.fromZero() ? Stream.of(0.0) : Stream.<Double>empty())
                .flatMap(values -> values)
                .filter(Double::isFinite)
                .mapToDouble(y -> y)
                .summaryStatistics();
        if (all.getCount() == 0) {
            return;
        }
        double least = Math.max(LEAST_SPAN * Math.max(Math.abs(all.getMax()), Math.abs(all.getMin())), 1e-9);
        double span = all.getMax() - all.getMin();
        if (span <= least) {
            // What a solver leaves is no slope: the axis is as long as anybody would read.
            double middle = 0.5 * (all.getMax() + all.getMin());
            range.setRange(middle - least, middle + least);
        } else if (!panel.levels().isEmpty()) {
            double room = 0.06 * span;
            double low = panel.fromZero() && all.getMin() == 0 ? 0 : all.getMin() - room;
            range.setRange(low, all.getMax() + 2 * room);
        }
    }

    private static ValueMarker marker(Level level, boolean left, boolean below) {
        ValueMarker marker = new ValueMarker(level.at(), level.ink().color(), THIN_DASHES);
        marker.setAlpha(1f);
        marker.setLabel(level.label());
        marker.setLabelFont(ChartFont.of(11));
        marker.setLabelPaint(level.ink().color());
        marker.setLabelBackgroundColor(Ink.PAPER.color());
        if (below) {
            marker.setLabelAnchor(left ? RectangleAnchor.BOTTOM_LEFT : RectangleAnchor.BOTTOM_RIGHT);
            marker.setLabelTextAnchor(left ? TextAnchor.TOP_LEFT : TextAnchor.TOP_RIGHT);
        } else {
            marker.setLabelAnchor(left ? RectangleAnchor.TOP_LEFT : RectangleAnchor.TOP_RIGHT);
            marker.setLabelTextAnchor(left ? TextAnchor.BOTTOM_LEFT : TextAnchor.BOTTOM_RIGHT);
        }
        return marker;
    }

    private static ValueMarker marker(Mark mark, boolean labelled) {
        ValueMarker marker = new ValueMarker(mark.at(), Ink.TEXT.color(), THIN_DASHES);
        marker.setAlpha(1f);
        if (labelled) {
            marker.setLabel(mark.label());
            marker.setLabelFont(ChartFont.bold(13));
            marker.setLabelPaint(Ink.TEXT.color());
            marker.setLabelBackgroundColor(Ink.PAPER.color());
            marker.setLabelAnchor(RectangleAnchor.TOP_RIGHT);
            marker.setLabelTextAnchor(TextAnchor.TOP_LEFT);
        }
        return marker;
    }

    /** Bands are data of their own, drawn first; their edges have no line and no place in the legend. */
    private static void addBands(XYPlot plot, List<Band> bands) {
        YIntervalSeriesCollection data = new YIntervalSeriesCollection();
        DeviationRenderer renderer = new DeviationRenderer(false, false);
        renderer.setAlpha(0.2f);
        for (int i = 0; i < bands.size(); i++) {
            YIntervalSeries series = new YIntervalSeries("band " + i, false, true);
            bands.get(i).edges().forEach(e -> series.add(e.x(), 0.5 * (e.low() + e.high()), e.low(), e.high()));
            data.addSeries(series);
            renderer.setSeriesFillPaint(i, bands.get(i).ink().color());
            renderer.setSeriesVisibleInLegend(i, false);
        }
        plot.setDataset(1, data);
        plot.setRenderer(1, renderer);
    }

    private static XYPlot plotOf(Panel panel) {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setLegendLine(new java.awt.geom.Line2D.Double(-13, 0, 13, 0));
        for (int i = 0; i < panel.curves().size(); i++) {
            Curve curve = panel.curves().get(i);
            boolean named = !curve.name().isEmpty() && !curve.before();
            XYSeries series = new XYSeries(named ? curve.name() : "line " + i, false, true);
            renderer.setSeriesVisibleInLegend(i, named);
            curve.points()
                    .forEach(point -> series.add(point.x(), Double.isFinite(point.y()) ? (Double) point.y() : null));
            data.addSeries(series);
            renderer.setSeriesPaint(i, curve.ink().color());
            renderer.setSeriesStroke(i, curve.before() ? DOTTED : curve.dashed() ? DASHED : SOLID);
            if (curve.points().size() == 1 || curve.marks()) {
                renderer.setSeriesShape(i, DOT);
                renderer.setSeriesShapesVisible(i, true);
            }
        }
        NumberAxis range = ChartSvg.axis(panel.label());
        range.setAutoRangeIncludesZero(panel.fromZero());
        XYPlot plot = new XYPlot(data, null, range, renderer);
        if (!panel.bands().isEmpty()) {
            addBands(plot, panel.bands());
        }
        fit(range, panel);
        // Neighbouring levels have their labels at opposite ends, so that none lies on another, and outside of both
        // lines.
        for (int i = 0; i < panel.levels().size(); i++) {
            Level level = panel.levels().get(i);
            double near = level.at() + LABEL_HEIGHT * range.getRange().getLength();
            boolean below = panel.levels().stream().anyMatch(o -> o.at() > level.at() && o.at() < near);
            plot.addRangeMarker(marker(level, i % 2 == 0, below), Layer.FOREGROUND);
        }
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinePaint(Ink.RULE.color());
        plot.setRangeGridlinePaint(Ink.RULE.color());
        plot.setDomainGridlineStroke(GRID);
        plot.setRangeGridlineStroke(GRID);
        return plot;
    }
}
