package dev.penstock.reports.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;

/**
 * A line over a plot, place by place through the axes. A shape of the chart library is stretched as a whole, and so vanishes
 * where it is upright or level.
 */
final class LineAnnotation extends AbstractXYAnnotation {

    private static final long serialVersionUID = 1L;

    private final transient List<Curve.Point> points;
    private final transient Stroke stroke;
    private final Color color;

    LineAnnotation(List<Curve.Point> points, Stroke stroke, Color color) {
        this.points = List.copyOf(points);
        this.stroke = stroke;
        this.color = color;
    }

    @Override
    public void draw(
            Graphics2D g2,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis across,
            ValueAxis up,
            int rendererIndex,
            PlotRenderingInfo info) {
        Path2D path = new Path2D.Double();
        for (Curve.Point p : points) {
            double x = across.valueToJava2D(p.x(), area, plot.getDomainAxisEdge());
            double y = up.valueToJava2D(p.y(), area, plot.getRangeAxisEdge());
            if (path.getCurrentPoint() == null) {
                path.moveTo(x, y);
            }
            path.lineTo(x, y);
        }
        g2.setStroke(stroke);
        g2.setPaint(color);
        g2.draw(path);
    }
}
