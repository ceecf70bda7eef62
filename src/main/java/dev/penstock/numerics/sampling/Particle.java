package dev.penstock.numerics.sampling;

import java.util.ArrayList;
import java.util.List;

/**
 * A point with what is known of it. Immutable: moves make new ones.
 *
 * @param point place in the standard normal space; never changed
 * @param evaluations likelihoods by level, as far as they are known
 * @param ancestor number of the point it stems from at the last resampling
 */
record Particle<T>(double[] point, List<Evaluation<T>> evaluations, int ancestor) {

    Particle {
        evaluations = List.copyOf(evaluations);
    }

    /** Its likelihood at a level; that of the prior alone, one, below the first. */
    double logLikelihood(int level) {
        return level < 0 ? 0 : evaluations.get(level).logLikelihood();
    }

    Particle<T> with(Evaluation<T> next) {
        List<Evaluation<T>> more = new ArrayList<>(evaluations);
        more.add(next);
        return new Particle<>(point, more, ancestor);
    }

    Particle<T> from(int number) {
        return new Particle<>(point, evaluations, number);
    }

    /** Natural logarithm of the standard normal prior but for a constant. */
    static double logPrior(double[] point) {
        double sum = 0;
        for (double x : point) {
            sum += x * x;
        }
        return -0.5 * sum;
    }

    /** What it gains by a level over the one below. */
    double gain(int level) {
        double now = logLikelihood(level);
        return now == Double.NEGATIVE_INFINITY ? now : now - logLikelihood(level - 1);
    }

    /** The same as far as it is known below a level. */
    Particle<T> below(int level) {
        return evaluations.size() == level ? this : new Particle<>(point, evaluations.subList(0, level), ancestor);
    }
}
