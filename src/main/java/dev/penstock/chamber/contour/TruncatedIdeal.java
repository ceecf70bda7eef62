package dev.penstock.chamber.contour;

import dev.penstock.chamber.design.NozzleDesign;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Truncated ideal wall with its performance, for one area ratio and length, kept once made: it takes about a second. Designed
 * and marched at γ = 1.2; a wall for another γ in the range of burnt gas differs by less than its boundary layer.
 *
 * @param points wall from the throat to the exit, in throat radii
 * @param efficiency vacuum impulse over that of one-dimensional flow (-)
 * @param exitWallPressure pressure at the wall's end over the one-dimensional one (-)
 */
public record TruncatedIdeal(List<ContourPoint> points, double efficiency, double exitWallPressure) {

    private static final double GAMMA = 1.2;
    private static final int CELLS = 24;
    private static final int MOST_KEPT = 64;
    private static final Map<Key, TruncatedIdeal> KEPT = new ConcurrentHashMap<>();

    private record Key(double areaRatio, double length, double upstream, double downstream) {}

    public TruncatedIdeal {
        points = List.copyOf(points);
    }

    public static TruncatedIdeal of(NozzleDesign nozzle, double areaRatio) {
        if (KEPT.size() > MOST_KEPT) {
            KEPT.clear();
        }
        Key key = new Key(areaRatio, nozzle.lengthFraction(), nozzle.upstreamCurvature(), nozzle.downstreamCurvature());
        return KEPT.computeIfAbsent(key, TruncatedIdeal::make);
    }

    private static TruncatedIdeal make(Key key) {
        List<ContourPoint> points =
                IdealContour.truncated(key.areaRatio, key.length, GAMMA, key.upstream, key.downstream);
        ContourPoint end = points.get(points.size() - 1);
        ChamberContour contour = new ChamberContour(points, 1, (key.upstream + key.downstream) / 2, 1.5, 1, end.x());
        TwoDimensionalFlow.Result flow = TwoDimensionalFlow.of(contour, key.upstream, GAMMA, CELLS);
        return new TruncatedIdeal(points, flow.efficiency(), flow.exitWallPressure());
    }

    /** Wall points downstream of the throat for a throat radius (m). */
    List<ContourPoint> scaled(double throatRadius) {
        List<ContourPoint> scaled = new ArrayList<>();
        for (ContourPoint point : points.subList(1, points.size())) {
            scaled.add(new ContourPoint(point.x() * throatRadius, point.radius() * throatRadius));
        }
        return scaled;
    }

    /** Wall angle at the exit (rad). */
    double exitAngle() {
        int n = points.size();
        ContourPoint a = points.get(n - 4);
        ContourPoint b = points.get(n - 1);
        return Math.atan((b.radius() - a.radius()) / (b.x() - a.x()));
    }
}
