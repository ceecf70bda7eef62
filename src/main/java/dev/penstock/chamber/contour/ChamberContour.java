package dev.penstock.chamber.contour;

import dev.penstock.errors.Require;
import java.util.List;
import java.util.Locale;

/**
 * Inner wall of a thrust chamber from the injector face to the exit. The origin of x is the throat.
 *
 * @param points wall points, x rising, dense enough for straight lines between them; one point lies at the throat
 * @param throatRadius throat radius (m)
 * @param throatCurvatureRadius mean of the wall's curvature radii upstream and downstream of the throat (m)
 * @param chamberRadius radius of the cylindrical part (m)
 * @param chamberLength injector face to throat (m)
 * @param nozzleLength throat to exit (m)
 */
public record ChamberContour(
        List<ContourPoint> points,
        double throatRadius,
        double throatCurvatureRadius,
        double chamberRadius,
        double chamberLength,
        double nozzleLength) {

    private static final String MODEL = "contour";

    public ChamberContour {
        Require.positive(MODEL, "throat radius (m)", throatRadius);
        Require.positive(MODEL, "throat curvature radius (m)", throatCurvatureRadius);
        Require.positive(MODEL, "chamber radius (m)", chamberRadius);
        Require.positive(MODEL, "chamber length (m)", chamberLength);
        Require.positive(MODEL, "nozzle length (m)", nozzleLength);
        points = List.copyOf(points);
        for (int i = 1; i < points.size(); i++) {
            Require.positive(
                    MODEL,
                    "step in x (m)",
                    points.get(i).x() - points.get(i - 1).x());
        }
    }

    /** @return radius at the exit (m) */
    public double exitRadius() {
        return points.get(points.size() - 1).radius();
    }

    /**
     * @param x distance from the throat (m), negative upstream
     * @return wall radius (m)
     * @throws dev.penstock.errors.OutsideValidity if x is not on the wall
     */
    public double radiusAt(double x) {
        int i = segment(x);
        ContourPoint a = points.get(i);
        ContourPoint b = points.get(i + 1);
        return a.radius() + (b.radius() - a.radius()) * (x - a.x()) / (b.x() - a.x());
    }

    /**
     * @param x distance from the throat (m), negative upstream
     * @return slope of the wall dr/dx (-)
     * @throws dev.penstock.errors.OutsideValidity if x is not on the wall
     */
    public double slopeAt(double x) {
        int i = segment(x);
        ContourPoint a = points.get(i);
        ContourPoint b = points.get(i + 1);
        return (b.radius() - a.radius()) / (b.x() - a.x());
    }

    /**
     * @param x distance from the throat (m), negative upstream
     * @return cross-section over throat area (-), at least 1
     * @throws dev.penstock.errors.OutsideValidity if x is not on the wall
     */
    public double areaRatioAt(double x) {
        return areaRatioOf(radiusAt(x));
    }

    /**
     * @param radius wall radius (m)
     * @return cross-section over throat area (-), at least 1
     */
    public double areaRatioOf(double radius) {
        double ratio = radius / throatRadius;
        return Math.max(1, ratio * ratio);
    }

    /**
     * @param areaRatio cross-section over throat area (-)
     * @return distance from the throat to that section of the divergent part (m)
     * @throws dev.penstock.errors.OutsideValidity if the nozzle does not have that section
     */
    public double divergentStation(double areaRatio) {
        double radius = throatRadius * Math.sqrt(areaRatio);
        Require.within(MODEL, "radius (m)", radius, throatRadius * (1 - 1e-9), exitRadius() * (1 + 1e-9));
        for (int i = points.size() - 1; i > 0; i--) {
            ContourPoint a = points.get(i - 1);
            ContourPoint b = points.get(i);
            if (a.radius() <= radius && a.x() >= 0) {
                double along = (radius - a.radius()) / (b.radius() - a.radius());
                return a.x() + Math.min(1, along) * (b.x() - a.x());
            }
        }
        return 0;
    }

    /** @return volume from the injector face to the throat (m³) */
    public double chamberVolume() {
        double volume = 0;
        for (int i = 1; i < points.size() && points.get(i).x() <= 1e-12; i++) {
            volume += frustum(points.get(i - 1), points.get(i));
        }
        return volume;
    }

    /** @return the wall points as CSV with a heading line: x and radius in m, and the area ratio */
    public String toCsv() {
        StringBuilder text = new StringBuilder("x_m,radius_m,area_ratio\n");
        for (ContourPoint point : points) {
            double ratio = point.radius() / throatRadius;
            text.append(String.format(Locale.ROOT, "%.7g,%.7g,%.6g\n", point.x(), point.radius(), ratio * ratio));
        }
        return text.toString();
    }

    /** Volume of the frustum between two points (m³). */
    static double frustum(ContourPoint a, ContourPoint b) {
        double squares = a.radius() * a.radius() + a.radius() * b.radius() + b.radius() * b.radius();
        return Math.PI / 3 * squares * (b.x() - a.x());
    }

    private int segment(double x) {
        int last = points.size() - 1;
        double low = points.get(0).x();
        double high = points.get(last).x();
        double slack = 1e-9 * (high - low);
        Require.within(MODEL, "x (m)", x, low - slack, high + slack);
        int a = 0;
        int b = last;
        while (b - a > 1) {
            int middle = (a + b) >>> 1;
            if (points.get(middle).x() <= x) {
                a = middle;
            } else {
                b = middle;
            }
        }
        return a;
    }
}
