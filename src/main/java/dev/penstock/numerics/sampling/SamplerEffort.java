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
    /** Moves of the first level for one of the second: it costs next to nothing. */
    private static final int FIRST_CHAIN = 10;
    /** Moves of any further level for one of the level above. */
    private static final int CHAIN = 2;

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
     * @param level a level, from 1
     * @return moves of the level below that make one of this level
     */
    int chain(int level) {
        return level == 1 ? FIRST_CHAIN : CHAIN;
    }

    /**
     * The usual effort: half of the points stay effective at each step, one to six sweeps after it, four at the end, all of them kept.
     *
     * @param seed what the random numbers start from
     * @param particles points at each level
     * @return the effort
     */
    public static SamplerEffort usual(long seed, Integer... particles) {
        return new SamplerEffort(List.of(particles), 0.5, 1, 6, 4, 4, seed);
    }

    /**
     * A second answer beside one at the usual effort: no more than three sweeps after each step, two at the end.
     *
     * @param seed what the random numbers start from
     * @param particles points at each level
     * @return the effort
     */
    public static SamplerEffort light(long seed, Integer... particles) {
        return new SamplerEffort(List.of(particles), 0.5, 1, 3, 2, 2, seed);
    }

    /**
     * A first answer: larger steps, one sweep after each, one at the end. The evidence says itself how rough it is.
     *
     * @param seed what the random numbers start from
     * @param particles points at each level
     * @return the effort
     */
    public static SamplerEffort swift(long seed, Integer... particles) {
        return new SamplerEffort(List.of(particles), 0.3, 1, 1, 1, 1, seed);
    }
}
