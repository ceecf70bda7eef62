package dev.penstock.reports.chart;

import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.labels.CategoryItemLabelGenerator;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.CategoryItemRendererState;
import org.jfree.chart.renderer.category.IntervalBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultIntervalCategoryDataset;

/** Horizontal bars from one value to another: ladders, waterfalls, what gives and what takes. */
public final class SpanChart {

    /**
     * One bar.
     *
     * @param label name beside the bar
     * @param from where it starts, in the unit of the axis
     * @param to where it ends, in the unit of the axis
     * @param ink colour
     * @param text figure written at its end
     * @param mark a value marked on the bar, in the unit of the axis; NaN for none
     */
    public record Bar(String label, double from, double to, Ink ink, String text, double mark) {

        /** A bar with nothing marked on it. */
        public Bar(String label, double from, double to, Ink ink, String text) {
            this(label, from, to, ink, text, Double.NaN);
        }

        double low() {
            return Double.isNaN(mark) ? Math.min(from, to) : Math.min(mark, Math.min(from, to));
        }

        double high() {
            return Double.isNaN(mark) ? Math.max(from, to) : Math.max(mark, Math.max(from, to));
        }
    }

    /** How far a mark stands out of its bar (px). */
    private static final double MARK_BEYOND = 3;
    /** Room between a mark and the figure behind it (px). */
    private static final double MARK_ROOM = 4;
    /** Size of the figures (px). */
    private static final double FIGURE = 11.5;

    private SpanChart() {}

    /**
     * @param id identifier, unique in a page
     * @param title what the chart shows
     * @param axisLabel label of the value axis, with its unit
     * @param fromZero whether the value axis starts at zero
     * @param bars bars from top to bottom; at least one
     * @return SVG with the colours of light paper
     */
    public static String svg(String id, String title, String axisLabel, boolean fromZero, List<Bar> bars) {
        CategoryAxis categories = new CategoryAxis();
        ChartSvg.dress(categories);
        categories.setTickLabelFont(ChartFont.of(12));
        categories.setTickLabelPaint(Ink.TEXT.color());
        categories.setMaximumCategoryLabelWidthRatio(0.45f);
        categories.setMaximumCategoryLabelLines(1);
        categories.setLowerMargin(0.01);
        categories.setUpperMargin(0.01);
        categories.setAxisLineVisible(false);
        NumberAxis values = ChartSvg.axis(axisLabel);
        values.setAutoRangeIncludesZero(fromZero);
        range(values, bars, fromZero);
        CategoryPlot plot = new CategoryPlot(dataset(bars), categories, values, new Renderer(bars));
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setRangeGridlinePaint(Ink.RULE.color());
        plot.setRangeGridlineStroke(new java.awt.BasicStroke(1f));
        JFreeChart chart = new JFreeChart(null, ChartFont.bold(13), plot, false);
        return ChartSvg.draw(chart, id, title, ChartSvg.WIDTH, 62 + 27 * bars.size());
    }

    /** Room to the right of the longest bar for its figure. */
    private static void range(NumberAxis axis, List<Bar> bars, boolean fromZero) {
        double low = fromZero ? 0 : Double.POSITIVE_INFINITY;
        double high = fromZero ? 0 : Double.NEGATIVE_INFINITY;
        for (Bar bar : bars) {
            low = Math.min(low, bar.low());
            high = Math.max(high, bar.high());
        }
        double size = Math.max(high - low, 1e-9 * Math.max(1, Math.abs(high)));
        double start = fromZero && low >= 0 ? 0 : low - 0.05 * size;
        double names = bars.stream()
                .mapToDouble(b -> ChartFont.width(b.label(), 12))
                .max()
                .orElse(0);
        double room = Math.max(200, ChartSvg.WIDTH - names - 40);
        double end = high + 0.03 * size;
        for (Bar bar : bars) {
            // The figure starts at the bar's end, or behind the mark; the axis must reach as far as the figure does.
            double share = Math.min(0.6, (ChartFont.width(bar.text(), FIGURE) + 12) / room);
            end = Math.max(end, start + (bar.high() - start) / (1 - share));
        }
        axis.setRange(start, end);
    }

    private static CategoryDataset dataset(List<Bar> bars) {
        Number[][] starts = new Number[1][bars.size()];
        Number[][] ends = new Number[1][bars.size()];
        List<String> names = new ArrayList<>();
        for (int i = 0; i < bars.size(); i++) {
            Bar bar = bars.get(i);
            starts[0][i] = Math.min(bar.from(), bar.to());
            ends[0][i] = Math.max(bar.from(), bar.to());
            // Categories must differ; trailing no-break spaces keep equal labels apart without being seen.
            String name = bar.label();
            while (names.contains(name)) {
                name += '\u00a0';
            }
            names.add(name);
        }
        DefaultIntervalCategoryDataset data = new DefaultIntervalCategoryDataset(starts, ends);
        data.setCategoryKeys(names.toArray(String[]::new));
        return data;
    }

    /**
     * Where the figure of a bar begins.
     *
     * @param end end of the bar (px)
     * @param width width of the figure (px)
     * @param mark place of the mark (px); NaN for none
     * @return the end of the bar, or a place behind the mark that would strike through the figure
     */
    static double behind(double end, double width, double mark) {
        boolean through = mark + MARK_ROOM > end && mark - MARK_ROOM < end + width + MARK_ROOM;
        return through ? mark + MARK_ROOM : end;
    }

    /** Paints each bar in its own colour and writes its figure to the right of it. */
    private static final class Renderer extends IntervalBarRenderer {

        private static final long serialVersionUID = 1L;

        private final transient List<Bar> bars;
        /** Where the mark of the bar in hand stands (px); NaN for none. */
        private double markAt = Double.NaN;

        Renderer(List<Bar> bars) {
            this.bars = bars;
            setBarPainter(new StandardBarPainter());
            setShadowVisible(false);
            setDrawBarOutline(false);
            setMaximumBarWidth(0.2);
            setDefaultItemLabelsVisible(true);
            setDefaultItemLabelFont(ChartFont.of(FIGURE));
            setDefaultItemLabelPaint(Ink.TEXT.color());
            setDefaultItemLabelGenerator(new Generator());
            ItemLabelPosition right = new ItemLabelPosition(ItemLabelAnchor.OUTSIDE3, TextAnchor.CENTER_LEFT);
            setDefaultPositiveItemLabelPosition(right);
            setDefaultNegativeItemLabelPosition(right);
            setPositiveItemLabelPositionFallback(right);
            setNegativeItemLabelPositionFallback(right);
        }

        @Override
        public Paint getItemPaint(int row, int column) {
            return bars.get(column).ink().color();
        }

        /** The bar, then the value that is marked on it. */
        @Override
        public void drawItem(
                Graphics2D g2,
                CategoryItemRendererState state,
                Rectangle2D area,
                CategoryPlot plot,
                CategoryAxis across,
                ValueAxis values,
                CategoryDataset data,
                int row,
                int column,
                int pass) {
            Bar bar = bars.get(column);
            double x = Double.isNaN(bar.mark())
                    ? Double.NaN
                    : values.valueToJava2D(bar.mark(), area, plot.getRangeAxisEdge());
            markAt = x;
            super.drawItem(g2, state, area, plot, across, values, data, row, column, pass);
            if (Double.isNaN(x)) {
                return;
            }
            double y = across.getCategoryMiddle(column, data.getColumnCount(), area, plot.getDomainAxisEdge());
            double half = state.getBarWidth() / 2 + MARK_BEYOND;
            g2.setPaint(Ink.PAPER.color());
            g2.fill(new Rectangle2D.Double(x - 3, y - half, 6, 2 * half));
            g2.setPaint(Ink.TEXT.color());
            g2.fill(new Rectangle2D.Double(x - 1.5, y - half, 3, 2 * half));
        }

        /** A figure that the mark would strike through stands behind the mark. */
        @Override
        protected void drawItemLabel(
                Graphics2D g2,
                CategoryDataset data,
                int row,
                int column,
                CategoryPlot plot,
                CategoryItemLabelGenerator generator,
                Rectangle2D bar,
                boolean negative) {
            double width = ChartFont.width(bars.get(column).text(), FIGURE);
            double moved = behind(bar.getMaxX(), width, markAt) - bar.getMaxX();
            Rectangle2D end = new Rectangle2D.Double(bar.getX() + moved, bar.getY(), bar.getWidth(), bar.getHeight());
            super.drawItemLabel(g2, data, row, column, plot, generator, end, negative);
        }

        /** Writes the figures of the bars. */
        private final class Generator implements CategoryItemLabelGenerator {

            @Override
            public String generateRowLabel(CategoryDataset data, int row) {
                return "";
            }

            @Override
            public String generateColumnLabel(CategoryDataset data, int column) {
                return "";
            }

            @Override
            public String generateLabel(CategoryDataset data, int row, int column) {
                return bars.get(column).text();
            }
        }
    }
}
