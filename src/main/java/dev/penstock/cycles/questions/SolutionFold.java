package dev.penstock.cycles.questions;

import dev.penstock.cycles.solving.Balancer;
import java.util.List;
import java.util.NavigableMap;
import org.apache.commons.math3.fitting.PolynomialCurveFitter;
import org.apache.commons.math3.fitting.WeightedObservedPoints;

/**
 * Whether solutions over chamber pressure end because they turn back: near such an end an unknown goes with the root of the
 * distance to it, x = x* ± a √(p* − p), or pressure with the square of the unknown's distance, so that a parabola through the
 * last solutions, on whichever side they lie, tells where p* is. An end where no unknown does so is none that the equations
 * have, but one of the solver or of a model's range.
 */
final class SolutionFold {

    private static final int NEEDED = 3;

    /** Solvers hop from side to side near a turn, so that three neighbours may say little: more are asked. */
    private static final int MOST = 6;

    private static final double ROUND_OFF = 1e-4;

    /** How far beyond the first pressure that failed the turn may lie, over the span of the last three solutions (-). */
    private static final double BEYOND = 0.5;

    /** The same over the pressure itself: near a turn rounds of chamber and jacket lose hold a little before it (-). */
    private static final double LOST_HOLD = 5e-3;

    private SolutionFold() {}

    /**
     * @param below what was tried up to the last pressure that closes
     * @param failed first pressure that does not close (Pa)
     * @return whether some unknown turns back between the two
     */
    static boolean endsAt(NavigableMap<Double, PressureTrial> below, double failed) {
        List<Balancer.Solved> last = below.descendingMap().values().stream()
                .takeWhile(PressureTrial::closed)
                .limit(MOST)
                .flatMap(t -> t.solved().stream())
                .toList();
        if (last.size() < NEEDED) {
            return false;
        }
        double[] p = last.stream()
                .mapToDouble(s -> s.balanceModels().concept().chamberPressure())
                .toArray();
        for (String name : last.get(0).names()) {
            double[] x = last.stream().mapToDouble(s -> value(s, name)).toArray();
            double turn = turn(p, x, failed);
            double farthest = failed + Math.max(BEYOND * (failed - p[NEEDED - 1]), LOST_HOLD * failed);
            if (turn >= p[0] * (1 - ROUND_OFF) && turn <= farthest) {
                return true;
            }
        }
        return false;
    }

    private static double value(Balancer.Solved solved, String name) {
        int index = solved.names().indexOf(name);
        return index < 0 ? Double.NaN : solved.values().get(index);
    }

    /**
     * Vertex of the parabola p(x) that fits solutions on either side of the turn, those near the end most closely.
     *
     * @param p three pressures or more, the highest first (Pa)
     * @param x an unknown at each
     * @param failed a pressure beyond them (Pa)
     * @return the highest pressure on the parabola (Pa); infinite if there is none
     */
    static double turn(double[] p, double[] x, double failed) {
        double span = 0;
        for (double other : x) {
            span = Math.max(span, Math.abs(other - x[0]));
        }
        if (!(span > 0) || !Double.isFinite(span)) {
            return Double.POSITIVE_INFINITY;
        }
        WeightedObservedPoints points = new WeightedObservedPoints();
        for (int i = 0; i < p.length; i++) {
            double distance = (failed - p[i]) + (failed - p[0]);
            points.add(1 / (distance * distance), (x[i] - x[0]) / span, p[i] - p[0]);
        }
        double[] fit = PolynomialCurveFitter.create(2).fit(points.toList());
        return fit[2] < 0 ? p[0] + fit[0] - fit[1] * fit[1] / (4 * fit[2]) : Double.POSITIVE_INFINITY;
    }
}
