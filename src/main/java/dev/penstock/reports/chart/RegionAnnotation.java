package dev.penstock.reports.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;

/** Regions of a plot, filled with a colour or hatched with lines. */
final class RegionAnnotation extends AbstractXYAnnotation {

    private static final long serialVersionUID = 1L;

    /** Distance of the lines of a hatch (px). */
    private static final double APART = 9;

    private final transient List<List<Curve.Point>> polygons;
    private final Color color;
    private final transient List<BasicStroke> hatch;

    /**
     * @param polygons parts of the region
     * @param color colour
     * @param hatch strokes of the lines of a hatch, with the colour for the last and paper for the others; empty to fill
     */
    RegionAnnotation(List<List<Curve.Point>> polygons, Color color, List<BasicStroke> hatch) {
        this.polygons = List.copyOf(polygons);
        this.color = color;
        this.hatch = List.copyOf(hatch);
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
        Path2D region = new Path2D.Double(Path2D.WIND_NON_ZERO);
        for (List<Curve.Point> polygon : polygons) {
            boolean first = true;
            for (Curve.Point p : polygon) {
                double x = across.valueToJava2D(p.x(), area, plot.getDomainAxisEdge());
                double y = up.valueToJava2D(p.y(), area, plot.getRangeAxisEdge());
                if (first) {
                    region.moveTo(x, y);
                } else {
                    region.lineTo(x, y);
                }
                first = false;
            }
            region.closePath();
        }
        if (hatch.isEmpty()) {
            g2.setPaint(color);
            g2.fill(region);
            return;
        }
        Shape clip = g2.getClip();
        g2.clip(region);
        for (int i = 0; i < hatch.size(); i++) {
            g2.setStroke(hatch.get(i));
            g2.setPaint(i == hatch.size() - 1 ? color : MapChart.HALO);
            g2.draw(lines(area));
        }
        g2.setClip(clip);
    }

    /** Lines that rise to the right, over all of an area. */
    private static Path2D lines(Rectangle2D area) {
        Path2D lines = new Path2D.Double();
        for (double x = area.getMinX() - area.getHeight(); x < area.getMaxX(); x += APART) {
            lines.append(new Line2D.Double(x, area.getMaxY(), x + area.getHeight(), area.getMinY()), false);
        }
        return lines;
    }
}
