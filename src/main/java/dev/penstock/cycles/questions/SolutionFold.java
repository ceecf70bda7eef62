package dev.penstock.cycles.questions;

import dev.penstock.cycles.solving.Balancer;
import java.util.List;
import java.util.NavigableMap;

/**
 * Whether solutions over chamber pressure end because they turn back: near such an end an unknown goes with the root of the
 * distance to it, x = x* ± a √(p* − p), or pressure with the square of the
 * unknown's distance, so that three solutions on whichever side tell where p* is. An end where no unknown does so is none that
 * the equations have, but one of the solver or of a model's range.
 */
final class SolutionFold {

    private static final int NEEDED = 3;
    private static final double ROUND_OFF = 1e-4;

    /** How far beyond the first pressure that failed the turn may lie, over the span of the three solutions (-). */
    private static final double BEYOND = 0.5;

    private SolutionFold() {}

    /**
     * @param below what was tried up to the last pressure that closes
     * @param failed first pressure that does not close (Pa)
     * @return whether some unknown turns back between the two
     */
    static boolean endsAt(NavigableMap<Double, PressureTrial> below, double failed) {
        List<Balancer.Solved> last = below.descendingMap().values().stream()
                .takeWhile(PressureTrial::closed)
                .limit(NEEDED)
                .flatMap(t -> t.solved().stream())
                .toList();
        if (last.size() < NEEDED) {
            return false;
        }
        double[] p = last.stream()
                .mapToDouble(s -> s.balanceModels().concept().chamberPressure())
                .toArray();
        List<String> names = last.get(0).names();
        for (int i = 0; i < names.size(); i++) {
            double[] x = new double[NEEDED];
            for (int j = 0; j < NEEDED; j++) {
                int index = last.get(j).names().indexOf(names.get(i));
                x[j] = index < 0 ? Double.NaN : last.get(j).values().get(index);
            }
            double turn = turn(p, x);
            if (turn >= p[0] * (1 - ROUND_OFF) && turn <= failed + BEYOND * (failed - p[NEEDED - 1])) {
                return true;
            }
        }
        return false;
    }

    /**
     * Vertex of the parabola p(x) through three solutions, on either side of the turn.
     *
     * @param p three pressures (Pa)
     * @param x an unknown at each
     * @return the highest pressure on the parabola (Pa); infinite if there is none
     */
    static double turn(double[] p, double[] x) {
        double first = (p[1] - p[0]) / (x[1] - x[0]);
        double second = (p[2] - p[1]) / (x[2] - x[1]);
        double curvature = (second - first) / (x[2] - x[0]);
        if (!(curvature < 0) || !Double.isFinite(curvature)) {
            return Double.POSITIVE_INFINITY;
        }
        double slope = first + curvature * (x[0] - x[1]);
        return p[0] - slope * slope / (4 * curvature);
    }
}
