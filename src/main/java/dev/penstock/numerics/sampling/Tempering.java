package dev.penstock.numerics.sampling;

import java.util.SplittableRandom;

/** How far one step of a tempering goes, and which points survive it. */
final class Tempering {

    private static final int HALVINGS = 60;

    private Tempering() {}

    /**
     * The largest step that leaves a share of the possible points effective.
     *
     * @param gain gain of the log-likelihood from the beginning of the bridge to its end, by point
     * @param left what is left of the bridge (-), up to 1
     * @param share share to leave effective (-)
     */
    static double step(double[] gain, double left, double share) {
        int possible = 0;
        for (double g : gain) {
            possible += g > Double.NEGATIVE_INFINITY ? 1 : 0;
        }
        double wanted = share * possible;
        if (effective(weights(gain, left)) >= wanted) {
            return left;
        }
        double low = 0;
        double high = left;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (effective(weights(gain, middle)) >= wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low > 0 ? low : high;
    }

    /** Weights with a sum of one; all zero if no point is possible. */
    static double[] weights(double[] gain, double step) {
        double most = most(gain);
        double[] weights = new double[gain.length];
        double sum = 0;
        for (int i = 0; i < gain.length; i++) {
            weights[i] = gain[i] > Double.NEGATIVE_INFINITY ? Math.exp(step * (gain[i] - most)) : 0;
            sum += weights[i];
        }
        for (int i = 0; i < gain.length && sum > 0; i++) {
            weights[i] /= sum;
        }
        return weights;
    }

    private static double most(double[] gain) {
        double most = Double.NEGATIVE_INFINITY;
        for (double g : gain) {
            most = Math.max(most, g);
        }
        return most;
    }

    /** Logarithm of the mean of exp(step gain). */
    static double logMean(double[] gain, double step) {
        double most = most(gain);
        if (most == Double.NEGATIVE_INFINITY) {
            return most;
        }
        double sum = 0;
        for (double g : gain) {
            sum += g > Double.NEGATIVE_INFINITY ? Math.exp(step * (g - most)) : 0;
        }
        return step * most + Math.log(sum / gain.length);
    }

    /** Effective number of points of these weights: one over the sum of their squares. */
    static double effective(double[] weights) {
        double squares = 0;
        for (double w : weights) {
            squares += w * w;
        }
        return squares > 0 ? 1 / squares : 0;
    }

    /** Systematic resampling: which point each survivor is. */
    static int[] survivors(double[] weights, SplittableRandom random) {
        int count = weights.length;
        int[] chosen = new int[count];
        double at = random.nextDouble() / count;
        double sum = weights[0];
        int point = 0;
        for (int i = 0; i < count; i++) {
            while (at > sum && point < count - 1) {
                sum += weights[++point];
            }
            chosen[i] = point;
            at += 1.0 / count;
        }
        return chosen;
    }
}
