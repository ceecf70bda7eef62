package dev.penstock.numerics.sampling;

import java.util.List;
import java.util.SplittableRandom;

/**
 * One move of one point over a ladder of likelihoods. Most moves of a dear level are where a chain of moves of the level below leads:
 * <pre>accepted with min(1, exp(b (g(y) − g(x)))),  g = ln L(k) − ln L(k−1)</pre>
 * The others are one difference of the dear level's own samples, asked of each level in turn. Holds the random numbers of this move.
 *
 * @param <T> kind of detail
 */
final class Move<T> {

    /** Share of the moves of a dear level that are one difference of its own samples (-). */
    private static final double OWN = 0.25;

    private static final int OF_EACH = -1;

    private final Ladder<T> ladder;
    private final SamplerEffort effort;
    private final List<List<double[]>> past;
    private final SplittableRandom random;
    private final int[] spent;

    /**
     * @param ladder likelihoods
     * @param effort says how long chains are
     * @param past samples of each level so far, which this move does not change
     * @param random random numbers of this move alone
     * @param spent counts evaluations by level, then impossible ones of the last
     */
    Move(Ladder<T> ladder, SamplerEffort effort, List<List<double[]>> past, SplittableRandom random, int[] spent) {
        this.ladder = ladder;
        this.effort = effort;
        this.past = past;
        this.random = random;
        this.spent = spent;
    }

    /**
     * @param from where it starts, known at this level
     * @param level level
     * @param temper how far the bridge from the level below to this one has been crossed (-)
     * @return the point that it leads to, known up to this level; the same object if it stays
     */
    Particle<T> of(Particle<T> from, int level, double temper) {
        return of(from, level, temper, OF_EACH);
    }

    private Particle<T> of(Particle<T> from, int level, double temper, int samplesOf) {
        if (level == 0) {
            return first(from, temper, past.get(Math.max(0, samplesOf)));
        }
        Particle<T> to = from;
        if (samplesOf != OF_EACH || random.nextDouble() < OWN) {
            to = of(to, level - 1, 1, samplesOf == OF_EACH ? level : samplesOf);
        } else {
            for (int i = 0; i < effort.chain(level); i++) {
                to = of(to, level - 1, 1, OF_EACH);
            }
        }
        if (to.point() == from.point()) {
            return from;
        }
        to = evaluated(to.below(level), level);
        double ratio = temper * (to.gain(level) - from.gain(level));
        return Math.log(random.nextDouble()) < ratio ? to : from;
    }

    private Particle<T> first(Particle<T> from, double temper, List<double[]> differences) {
        DifferentialMoves.Proposal proposal = DifferentialMoves.propose(from.point(), differences, random);
        Particle<T> to = evaluated(new Particle<>(proposal.point(), List.of(), from.ancestor()), 0);
        double ratio = Particle.logPrior(to.point())
                - Particle.logPrior(from.point())
                + proposal.logFactor()
                + temper * (to.gain(0) - from.gain(0));
        return Math.log(random.nextDouble()) < ratio ? to : from;
    }

    private Particle<T> evaluated(Particle<T> to, int level) {
        Evaluation<T> evaluation = ladder.evaluate(level, to.point().clone());
        spent[level]++;
        if (level == ladder.levels() - 1 && !evaluation.possible()) {
            spent[level + 1]++;
        }
        return to.with(evaluation);
    }
}
