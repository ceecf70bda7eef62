package dev.penstock.cycles.questions;

import dev.penstock.cycles.solving.Balancer;
import java.util.List;
import java.util.NavigableMap;

/**
 * Whether solutions over chamber pressure end because they turn back: near such an end an unknown goes with the root of the
 * distance to it, x = x* ± a √(p* − p), so that three solutions tell where p* is. An end where no unknown does so is none that
 * the equations have, but one of the solver or of a model's range.
 */
final class SolutionFold {

    private static final int NEEDED = 3;
    private static final int HALVINGS = 60;

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
            if (turn <= failed + BEYOND * (failed - p[NEEDED - 1])) {
                return true;
            }
        }
        return false;
    }

    /**
     * @param p three pressures, falling (Pa)
     * @param x an unknown at each
     * @return the pressure at which it turns back (Pa); infinite if it does not
     */
    static double turn(double[] p, double[] x) {
        double near = (x[0] - x[1]) / (p[0] - p[1]);
        double far = (x[1] - x[2]) / (p[1] - p[2]);
        double ratio = near / far;
        if (!(ratio > 1)) {
            return Double.POSITIVE_INFINITY;
        }
        double low = p[0];
        double high = p[0] + 1e3 * (p[0] - p[2]);
        if (steepening(p, high) > ratio) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (steepening(p, middle) > ratio) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Slope of the nearer chord over that of the farther of √(turn − p). */
    private static double steepening(double[] p, double turn) {
        return (Math.sqrt(turn - p[1]) + Math.sqrt(turn - p[2])) / (Math.sqrt(turn - p[0]) + Math.sqrt(turn - p[1]));
    }
}
