package dev.penstock.numerics.sampling;

import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Proposes moves from differences of past samples, so that size and direction of the moves follow the posterior by
 * themselves.
 * <pre>
 * parallel: x' = x + g (z₁ − z₂) + e,  g = 2.38 / √(2 d'),  every tenth time g = 1
 * snooker:  x' = x + s (P(z₁) − P(z₂)), P onto the line from z to x, s uniform on 1.2 to 2.2,
 *           accepted times (|x' − z| / |x − z|)^(d−1)
 * </pre>
 * A parallel move changes a random part d' of the d unknowns. Source: [ter-braak-2008], with the random part of
 * [vrugt-2009] (from memory). Every tenth move is a snooker.
 */
public final class DifferentialMoves {

    public static final ModelCard CARD = new ModelCard(
            "numerics.differential-moves",
            "Moves by differences of past samples, with a snooker update",
            "x' = x + g (z1 - z2) + e, g = 2.38/sqrt(2 d'); snooker: x' = x + s (P(z1) - P(z2)), s = 1.2 to 2.2",
            "any posterior over a standard normal prior",
            "that of Monte Carlo: the effective number of samples goes with every answer",
            List.of("ter-braak-2008", "vrugt-2009"));

    private static final double SNOOKER_SHARE = 0.1;
    private static final double LONG_SHARE = 0.1;
    private static final double SNOOKER_LEAST = 1.2;
    private static final double SNOOKER_SPAN = 1.0;
    private static final double OPTIMUM = 2.38;
    private static final double JITTER = 1e-3;
    private static final int TRIES = 20;

    private DifferentialMoves() {}

    /** A proposal and the logarithm of the factor that its acceptance takes. */
    record Proposal(double[] point, double logFactor) {}

    /**
     * @param from where the move starts
     * @param past past samples, at least three of them different
     * @param random random numbers of this move alone
     */
    static Proposal propose(double[] from, List<double[]> past, SplittableRandom random) {
        boolean snooker = from.length > 1 && random.nextDouble() < SNOOKER_SHARE;
        return snooker ? snooker(from, past, random) : parallel(from, past, random);
    }

    private static Proposal parallel(double[] from, List<double[]> past, SplittableRandom random) {
        double[] a = past.get(random.nextInt(past.size()));
        double[] b = other(a, past, random);
        double share = (1 + random.nextInt(3)) / 3.0;
        boolean[] moved = new boolean[from.length];
        int count = 0;
        for (int i = 0; i < from.length; i++) {
            moved[i] = random.nextDouble() < share;
            count += moved[i] ? 1 : 0;
        }
        if (count == 0) {
            moved[random.nextInt(from.length)] = true;
            count = 1;
        }
        double size = random.nextDouble() < LONG_SHARE ? 1 : OPTIMUM / Math.sqrt(2.0 * count);
        double[] to = from.clone();
        for (int i = 0; i < from.length; i++) {
            if (moved[i]) {
                to[i] += size * (a[i] - b[i]) + JITTER * random.nextGaussian();
            }
        }
        return new Proposal(to, 0);
    }

    private static Proposal snooker(double[] from, List<double[]> past, SplittableRandom random) {
        double[] anchor = other(from, past, random);
        double length2 = distance2(from, anchor);
        if (!(length2 > 0)) {
            return parallel(from, past, random);
        }
        double[] a = past.get(random.nextInt(past.size()));
        double[] b = other(a, past, random);
        double along = 0;
        for (int i = 0; i < from.length; i++) {
            along += (a[i] - b[i]) * (from[i] - anchor[i]);
        }
        double step = (SNOOKER_LEAST + SNOOKER_SPAN * random.nextDouble()) * along / length2;
        double[] to = from.clone();
        for (int i = 0; i < from.length; i++) {
            to[i] += step * (from[i] - anchor[i]);
        }
        double factor = 0.5 * (from.length - 1) * Math.log(distance2(to, anchor) / length2);
        return new Proposal(to, factor);
    }

    /** A past sample that is not the same point. */
    private static double[] other(double[] than, List<double[]> past, SplittableRandom random) {
        double[] found = than;
        for (int i = 0; i < TRIES && distance2(found, than) == 0; i++) {
            found = past.get(random.nextInt(past.size()));
        }
        return found;
    }

    private static double distance2(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += (a[i] - b[i]) * (a[i] - b[i]);
        }
        return sum;
    }
}
