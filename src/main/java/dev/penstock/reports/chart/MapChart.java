package dev.penstock.reports.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYShapeAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.LookupPaintScale;
import org.jfree.chart.renderer.xy.XYBlockRenderer;
import org.jfree.chart.title.PaintScaleLegend;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYZDataset;

/** A figure over two inputs, as a map: colour for the figure, crosses where a limit is missed, nothing without a solution. */
public final class MapChart {

    /** Room of a label at the side of a map, as a share of its width (-). */
    private static final double EDGE = 0.03;

    /**
     * A place of the map.
     *
     * @param x horizontal input, in the unit of the axis
     * @param y vertical input, in the unit of the axis
     * @param value figure there
     * @param withinLimits whether every limit is kept
     */
    public record Cell(double x, double y, double value, boolean withinLimits) {}

    /**
     * A line across the map.
     *
     * @param label short label, written once on the line
     * @param strong whether it bounds what is possible; otherwise it is a line of one value
     * @param points places it runs through
     */
    public record Line(String label, boolean strong, List<Curve.Point> points) {

        public Line {
            points = List.copyOf(points);
        }
    }

    /** The colours of the map are the same on light and dark paper, so those of what lies on it are too. */
    private static final Color LINE = new Color(0x101014);

    static final Color HALO = new Color(0xfcfcfc);
    static final Color MISSED = new Color(0xb02a1c);

    static final BasicStroke FINE = new BasicStroke(0.9f);
    private static final BasicStroke UNDER_FINE = new BasicStroke(2.4f);
    private static final BasicStroke UNDER_BOUNDARY = new BasicStroke(5f);
    static final BasicStroke BOUNDARY =
            new BasicStroke(2.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {7, 3}, 0);

    /** From low to high, light to dark, of even steps in lightness; also told apart without colour. */
    static final int[] SCALE = {
        0xf3f0d7, 0xdfe6b9, 0xbfd9a5, 0x98c99a, 0x6fb695, 0x4aa092, 0x2f888c, 0x226f81, 0x1f5672, 0x203d5c
    };

    private MapChart() {}

    /**
     * @param id identifier, unique in a page
     * @param title what the map shows
     * @param xLabel label of the horizontal axis, with its unit
     * @param yLabel label of the vertical axis, with its unit
     * @param valueLabel label of the colours, with their unit
     * @param cells places with a solution; at least one
     * @return SVG with the colours of light paper
     */
    public static String svg(
            String id, String title, String xLabel, String yLabel, String valueLabel, List<Cell> cells) {
        return svg(id, title, xLabel, yLabel, valueLabel, cells, List.of());
    }

    /**
     * @param id identifier, unique in a page
     * @param title what the map shows
     * @param xLabel label of the horizontal axis, with its unit
     * @param yLabel label of the vertical axis, with its unit
     * @param valueLabel label of the colours, with their unit
     * @param cells places with a solution; at least one
     * @param lines lines across the map
     * @return SVG with the colours of light paper
     */
    public static String svg(
            String id,
            String title,
            String xLabel,
            String yLabel,
            String valueLabel,
            List<Cell> cells,
            List<Line> lines) {
        double low = cells.stream().mapToDouble(Cell::value).min().orElseThrow();
        double high = cells.stream().mapToDouble(Cell::value).max().orElseThrow();
        LookupPaintScale scale = scale(low, high > low ? high : low + Math.max(1e-9, Math.abs(low) * 1e-9));
        double width = step(cells, Cell::x);
        double height = step(cells, Cell::y);
        XYBlockRenderer renderer = new XYBlockRenderer();
        renderer.setPaintScale(scale);
        renderer.setBlockWidth(width);
        renderer.setBlockHeight(height);
        XYPlot plot = plot(xLabel, yLabel);
        plot.setRenderer(renderer);
        plot.setDataset(data(cells));
        plot.setBackgroundPaint(null);
        for (Cell cell : cells) {
            if (!cell.withinLimits()) {
                cross(plot, cell, width, height);
            }
        }
        lines.forEach(line -> draw(plot, line));
        JFreeChart chart = new JFreeChart(null, ChartFont.bold(13), plot, false);
        chart.addSubtitle(legend(scale, valueLabel));
        return ChartSvg.draw(chart, id, title, ChartSvg.WIDTH, 520);
    }

    /** A plot with two axes and nothing in it, neither outline nor grid. */
    static XYPlot plot(String xLabel, String yLabel) {
        XYPlot plot = new XYPlot(null, ChartSvg.axis(xLabel), ChartSvg.axis(yLabel), null);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        return plot;
    }

    static PaintScaleLegend legend(LookupPaintScale scale, String valueLabel) {
        NumberAxis values = ChartSvg.axis(valueLabel);
        PaintScaleLegend legend = new PaintScaleLegend(scale, values);
        legend.setPosition(RectangleEdge.RIGHT);
        legend.setBackgroundPaint(null);
        legend.setStripWidth(16);
        legend.setStripOutlineVisible(false);
        legend.setPadding(10, 14, 40, 4);
        legend.setSubdivisionCount(SCALE.length);
        return legend;
    }

    /** The label sits in the middle of the line, on paper of its own, so that it reads on any colour. */
    static void draw(XYPlot plot, Line line) {
        plot.addAnnotation(new LineAnnotation(line.points(), line.strong() ? UNDER_BOUNDARY : UNDER_FINE, HALO));
        plot.addAnnotation(new LineAnnotation(line.points(), line.strong() ? BOUNDARY : FINE, LINE));
        Curve.Point middle = line.points().get(line.points().size() / 2);
        XYTextAnnotation label = new XYTextAnnotation(" " + line.label() + " ", middle.x(), middle.y());
        label.setFont(line.strong() ? ChartFont.bold(13) : ChartFont.of(10.5));
        label.setPaint(LINE);
        label.setBackgroundPaint(HALO);
        label.setTextAnchor(inside(plot.getDomainAxis(), middle.x()));
        plot.addAnnotation(label);
    }

    /** A label stands in the middle of its line, but beside it where the drawing ends. */
    private static TextAnchor inside(ValueAxis axis, double at) {
        double place = (at - axis.getLowerBound()) / axis.getRange().getLength();
        return axis.isAutoRange() || place > EDGE && place < 1 - EDGE
                ? TextAnchor.CENTER
                : place < 0.5 ? TextAnchor.CENTER_LEFT : TextAnchor.CENTER_RIGHT;
    }

    private static void cross(XYPlot plot, Cell cell, double width, double height) {
        double dx = 0.2 * width;
        double dy = 0.2 * height;
        for (int side : new int[] {-1, 1}) {
            Line2D line = new Line2D.Double(cell.x() - dx, cell.y() - side * dy, cell.x() + dx, cell.y() + side * dy);
            plot.addAnnotation(new XYShapeAnnotation(line, new BasicStroke(3.6f), HALO));
            plot.addAnnotation(new XYShapeAnnotation(line, new BasicStroke(1.6f), MISSED));
        }
    }

    static LookupPaintScale scale(double low, double high) {
        LookupPaintScale scale = new LookupPaintScale(low, high, new Color(SCALE[SCALE.length - 1]));
        for (int i = 0; i < SCALE.length; i++) {
            scale.add(low + (high - low) * i / SCALE.length, new Color(SCALE[i]));
        }
        return scale;
    }

    private static DefaultXYZDataset data(List<Cell> cells) {
        double[][] columns = new double[3][cells.size()];
        for (int i = 0; i < cells.size(); i++) {
            columns[0][i] = cells.get(i).x();
            columns[1][i] = cells.get(i).y();
            columns[2][i] = cells.get(i).value();
        }
        DefaultXYZDataset data = new DefaultXYZDataset();
        data.addSeries("map", columns);
        return data;
    }

    /** Smallest distance of two different coordinates, so that blocks touch and do not overlap. */
    private static double step(List<Cell> cells, ToDoubleFunction<Cell> coordinate) {
        double[] sorted =
                cells.stream().mapToDouble(coordinate).distinct().sorted().toArray();
        double step = sorted.length < 2 ? Math.max(1e-9, 0.1 * Math.abs(sorted[0])) : Double.POSITIVE_INFINITY;
        for (int i = 1; i < sorted.length; i++) {
            step = Math.min(step, sorted[i] - sorted[i - 1]);
        }
        return step;
    }
}
