package dev.penstock.reports.chart;

import java.awt.BasicStroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.DoubleFunction;

/** Numbers against each other, two by two: a cloud for each pair, told apart by row and column. */
public final class PairChart {

    private static final int LABELS = 20;
    private static final int GAP = 10;
    private static final int PAD = 8;
    private static final double DOT = 2.2;

    /**
     * Samples of one number.
     *
     * @param label what it is, with its unit
     * @param values the samples, in the order of those of the others; NaN where there is none
     * @param written number at the end of an axis
     */
    public record Series(String label, List<Double> values, DoubleFunction<String> written) {

        public Series {
            values = List.copyOf(values);
        }
    }

    private PairChart() {}

    /**
     * @param id identifier, unique in a page
     * @param title what the chart shows
     * @param series two numbers or more
     * @return SVG with the colours of light paper
     */
    public static String svg(String id, String title, List<Series> series) {
        int cells = series.size() - 1;
        SvgCanvas canvas = SvgCanvas.of(id);
        double size = Math.min(210, (double) (ChartSvg.WIDTH - 2 * LABELS) / cells - GAP);
        canvas.setFont(ChartFont.of(11));
        for (int row = 1; row <= cells; row++) {
            for (int column = 0; column < row; column++) {
                double x = 2 * LABELS + column * (size + GAP);
                double y = PAD + (row - 1) * (size + GAP);
                cell(canvas, series.get(column), series.get(row), x, y, size);
            }
        }
        canvas.setColor(Ink.TEXT.color());
        double bottom = PAD + cells * (size + GAP);
        for (int column = 0; column < cells; column++) {
            labelled(canvas, series.get(column), 2 * LABELS + column * (size + GAP), bottom, size);
        }
        for (int row = 1; row <= cells; row++) {
            double y = PAD + (row - 1) * (size + GAP);
            AffineTransform upright = canvas.getTransform();
            canvas.rotate(-Math.PI / 2, LABELS, y + size);
            labelled(canvas, series.get(row), LABELS, y + size - LABELS + 4, size);
            canvas.setTransform(upright);
        }
        return canvas.svg(title, ChartSvg.WIDTH, (int) Math.ceil(bottom + 2 * LABELS));
    }

    private static void cell(SvgCanvas canvas, Series across, Series up, double x, double y, double size) {
        canvas.setColor(Ink.RULE.color());
        canvas.setStroke(new BasicStroke(1f));
        canvas.draw(new Rectangle2D.Double(x, y, size, size));
        double[] xs = range(across);
        double[] ys = range(up);
        canvas.setColor(Ink.OXIDIZER.color());
        for (int i = 0; i < across.values().size(); i++) {
            double px = (across.values().get(i) - xs[0]) / (xs[1] - xs[0]);
            double py = (up.values().get(i) - ys[0]) / (ys[1] - ys[0]);
            if (px >= 0 && px <= 1 && py >= 0 && py <= 1) {
                double cx = x + PAD + px * (size - 2 * PAD);
                double cy = y + size - PAD - py * (size - 2 * PAD);
                canvas.fill(new Ellipse2D.Double(cx - DOT, cy - DOT, 2 * DOT, 2 * DOT));
            }
        }
    }

    /** Name and ends of an axis: the ends at both sides, the name between them. */
    private static void labelled(SvgCanvas canvas, Series series, double x, double y, double size) {
        double[] range = range(series);
        String low = series.written().apply(range[0]);
        String high = series.written().apply(range[1]);
        canvas.setFont(ChartFont.of(10.5));
        canvas.setColor(Ink.MUTED.color());
        canvas.drawString(low, (float) x, (float) (y + 8));
        canvas.drawString(high, (float) (x + size - ChartFont.width(high, 10.5)), (float) (y + 8));
        canvas.setColor(Ink.TEXT.color());
        canvas.setFont(ChartFont.of(11));
        double middle = x + 0.5 * (size - ChartFont.width(series.label(), 11));
        canvas.drawString(series.label(), (float) Math.max(x, middle), (float) (y + 22));
    }

    private static double[] range(Series series) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : series.values()) {
            if (Double.isFinite(value)) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
        }
        double least = 1e-9 * Math.max(1, Math.abs(low));
        return high - low > least ? new double[] {low, high} : new double[] {low - least, low + least};
    }
}
