package dev.penstock.reports.chart;

import dev.penstock.reports.text.Markup;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.regex.Matcher;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.Range;

/**
 * The numbers of a chart of curves, written into its drawing beside where they are drawn, so that a page can read values off
 * without asking anybody.
 */
final class CurveData {

    /** Digits that anybody reads off. */
    private static final MathContext READ = new MathContext(6);

    private CurveData() {}

    /**
     * @param svg drawing of the chart
     * @param xLabel label of the horizontal axis
     * @param plot the plot, as drawn
     * @param info where it was drawn
     * @param panels what it shows
     * @param marks upright lines
     * @return the drawing with its numbers
     */
    static String into(
            String svg,
            String xLabel,
            CombinedDomainXYPlot plot,
            ChartRenderingInfo info,
            List<LineChart.Panel> panels,
            List<LineChart.Mark> marks) {
        Rectangle2D whole = info.getPlotInfo().getPlotArea();
        StringBuilder json = new StringBuilder(
                "{\"top\":" + number(whole.getMinY()) + ",\"bottom\":" + number(whole.getMaxY()) + ",\"marks\":[");
        for (int i = 0; i < marks.size(); i++) {
            json.append(i == 0 ? "" : ",")
                    .append("{\"at\":")
                    .append(number(marks.get(i).at()));
            json.append(",\"label\":").append(text(marks.get(i).label())).append('}');
        }
        json.append("],\"x\":{");
        ValueAxis domain = plot.getDomainAxis();
        Rectangle2D first = info.getPlotInfo().getSubplotInfo(0).getDataArea();
        json.append("\"label\":").append(text(xLabel)).append(',');
        ends(json, domain.getRange(), first.getMinX(), first.getMaxX());
        json.append("},\"panels\":[");
        for (int i = 0; i < panels.size(); i++) {
            LineChart.Panel panel = panels.get(i);
            Rectangle2D area = info.getPlotInfo().getSubplotInfo(i).getDataArea();
            XYPlot part = (XYPlot) plot.getSubplots().get(i);
            json.append(i == 0 ? "{" : ",{")
                    .append("\"label\":")
                    .append(text(panel.label()))
                    .append(',');
            ends(json, part.getRangeAxis().getRange(), area.getMaxY(), area.getMinY());
            json.append(",\"curves\":[");
            List<Curve> keyed = panels.size() > 1 ? LineChart.keyed(panel) : List.of();
            for (int k = 0; k < panel.curves().size(); k++) {
                Curve curve = panel.curves().get(k);
                curve(json.append(k == 0 ? "" : ","), curve, keyed.contains(curve));
            }
            json.append("],\"levels\":[");
            for (int k = 0; k < panel.levels().size(); k++) {
                LineChart.Level level = panel.levels().get(k);
                json.append(k == 0 ? "" : ",").append("{\"at\":").append(number(level.at()));
                json.append(",\"label\":").append(text(level.label()));
                json.append(",\"ink\":").append(text(level.ink().css())).append('}');
            }
            json.append("]}");
        }
        json.append("]}");
        return svg.replaceFirst(
                "<svg ", Matcher.quoteReplacement("<svg data-read=\"" + Markup.escape(json.toString()) + "\" "));
    }

    private static void ends(StringBuilder json, Range range, double from, double to) {
        json.append("\"low\":").append(number(range.getLowerBound()));
        json.append(",\"high\":").append(number(range.getUpperBound()));
        json.append(",\"from\":").append(number(from)).append(",\"to\":").append(number(to));
    }

    private static void curve(StringBuilder json, Curve curve, boolean keyed) {
        json.append("{\"name\":").append(text(curve.name()));
        json.append(",\"ink\":").append(text(curve.ink().css()));
        json.append(",\"line\":").append(text(curve.before() ? "dotted" : curve.dashed() ? "dashed" : ""));
        json.append(keyed ? ",\"keyed\":true" : "");
        json.append(",\"points\":[");
        boolean more = false;
        for (Curve.Point p : curve.points()) {
            json.append(more ? "," : "").append('[').append(number(p.x())).append(',');
            json.append(Double.isFinite(p.y()) ? number(p.y()) : "null").append(']');
            more = true;
        }
        json.append("]}");
    }

    private static String number(double value) {
        return value == 0
                ? "0"
                : new BigDecimal(value, READ).stripTrailingZeros().toString();
    }

    private static String text(String text) {
        return '"' + text.replace("\\", "").replace("\"", "'") + '"';
    }
}
