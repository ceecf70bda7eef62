package dev.penstock.numerics.sampling;

import java.util.List;

/**
 * How much is spent on a posterior.
 *
 * @param particles points carried at each level of the ladder; not more at a level than at the one before
 * @param keptShare share of the possible points that a step of the tempering leaves effective (-), 0.1 to 0.95
 * @param leastSweeps sweeps of moves after each step at least
 * @param mostSweeps sweeps of moves after each step at most, where few moves are accepted
 * @param lastSweeps sweeps of moves at the posterior itself
 * @param records how many of the last sweeps are kept as samples, evenly spaced
 * @param seed what the random numbers start from
 */
public record SamplerEffort(
        List<Integer> particles,
        double keptShare,
        int leastSweeps,
        int mostSweeps,
        int lastSweeps,
        int records,
        long seed) {

    private static final int FEWEST = 8;

    public SamplerEffort {
        particles = List.copyOf(particles);
        int before = Integer.MAX_VALUE;
        for (int count : particles) {
            if (count < FEWEST || count > before) {
                throw new IllegalArgumentException(
                        "particles must be " + FEWEST + " or more and not rise: " + particles);
            }
            before = count;
        }
        if (!(keptShare >= 0.1 && keptShare <= 0.95)
                || leastSweeps < 1
                || mostSweeps < leastSweeps
                || lastSweeps < 1
                || records < 1
                || records > lastSweeps) {
            throw new IllegalArgumentException("the sweeps and the share that is kept do not fit together");
        }
    }

    /**
     * The usual effort: half of the points stay effective at each step, two to six sweeps after it, eight at the end.
     *
     * @param seed what the random numbers start from
     * @param particles points at each level
     * @return the effort
     */
    public static SamplerEffort usual(long seed, Integer... particles) {
        return new SamplerEffort(List.of(particles), 0.5, 2, 6, 8, 4, seed);
    }

    /**
     * A first answer: larger steps, one or two sweeps after each, two at the end. The evidence says itself how rough it is.
     *
     * @param seed what the random numbers start from
     * @param particles points at each level
     * @return the effort
     */
    public static SamplerEffort swift(long seed, Integer... particles) {
        return new SamplerEffort(List.of(particles), 0.3, 1, 2, 2, 2, seed);
    }
}
