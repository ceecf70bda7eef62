package dev.penstock.numerics.sampling;

/**
 * A posterior over a standard normal prior, reached by likelihoods of rising cost. Lower levels only lead the way: whatever
 * they say, the samples are those of the last one. Must be safe to share between threads.
 *
 * @param <T> kind of detail that an evaluation keeps
 */
public interface Ladder<T> {

    /** @return number of unknowns, 1 or more */
    int dimensions();

    /** @return number of levels, 1 or more */
    int levels();

    /**
     * @param level level, from 0
     * @param point a point of the standard normal space; not to be kept or changed
     * @return the likelihood there
     */
    Evaluation<T> evaluate(int level, double[] point);
}
