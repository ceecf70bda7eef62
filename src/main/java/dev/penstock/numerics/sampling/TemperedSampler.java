package dev.penstock.numerics.sampling;

import dev.penstock.numerics.LowDiscrepancy;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Tempered sequential Monte Carlo: points spread evenly over the prior are led to the posterior in steps, weighed, resampled
 * and moved at each; the weights add up to the evidence.
 * <pre>
 * bridge of level k:  prior × L(k−1)^(1−b) × L(k)^b,  b from 0 to 1
 * evidence = Π mean of (L(k)/L(k−1))^(step of b)
 * </pre>
 * Sources: [del-moral-2006]; moves by {@link DifferentialMoves}. A move of a dear level is where some moves of the level below lead,
 * accepted by what the dear level says beyond the other, b (gain there − gain here): a chain of moves that leave L(k−1) what it is may be
 * walked backwards as well, so that the posterior stays what it is too [christen-2005] [lykkegaard-2023]. One move in four is a single
 * difference of the level's own samples, asked of each level in turn, for where the level below misleads. The same seed gives the
 * same bits whatever the number of threads. Not thread-safe.
 *
 * @param <T> kind of detail
 */
public final class TemperedSampler<T> {

    public static final ModelCard CARD = new ModelCard(
            "numerics.tempered-sampler",
            "Tempered sequential Monte Carlo over a ladder of likelihoods",
            "evidence = product over steps of the mean of (L_k/L_(k-1))^step; a move of a level is a chain of moves of the one below",
            "any number of modes that the first points reach",
            "that of Monte Carlo: standard error of the evidence and effective samples go with every answer",
            List.of("del-moral-2006", "christen-2005", "lykkegaard-2023"));

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final int MOST_STEPS = 200;
    private static final int MOST_PAST = 20_000;
    /** A level that only leads is swept so many times as often where it costs next to nothing. */
    private static final int SWEPT_MORE = 3;

    private final Ladder<T> ladder;
    private final SamplerEffort effort;
    private final Workers workers;
    private final BooleanSupplier stopped;
    private final IntConsumer told;
    private final Streams streams;
    private final int[] evaluations;
    /** Samples of each level that moves take their differences from. */
    private final List<List<double[]>> past = new ArrayList<>();

    private int impossible;
    private int stage;
    private double logEvidence;
    private double variance;

    /**
     * @param ladder what is to be sampled
     * @param effort how much is spent
     * @param workers does the evaluations
     * @param stopped asked before each round of evaluations; once it says yes, no more are begun
     * @param told told of the number of evaluations at the last level after each round of them
     */
    public TemperedSampler(
            Ladder<T> ladder, SamplerEffort effort, Workers workers, BooleanSupplier stopped, IntConsumer told) {
        if (effort.particles().size() != ladder.levels()) {
            throw new IllegalArgumentException("each level of the ladder needs a number of particles");
        }
        this.ladder = ladder;
        this.effort = effort;
        this.workers = workers;
        this.stopped = stopped;
        this.told = told;
        this.streams = new Streams(effort.seed());
        this.evaluations = new int[ladder.levels()];
    }

    /**
     * Points spread evenly over the prior.
     *
     * @param dimensions number of unknowns
     * @param count number of points
     * @return the points in the standard normal space
     */
    public static List<double[]> prior(int dimensions, int count) {
        return LowDiscrepancy.points(dimensions, count).stream()
                .map(p -> p.stream()
                        .mapToDouble(NORMAL::inverseCumulativeProbability)
                        .toArray())
                .toList();
    }

    /** @return samples of the posterior, and its evidence */
    public SampledPosterior<T> run() {
        List<Particle<T>> cloud = new ArrayList<>();
        for (double[] point : prior(ladder.dimensions(), effort.particles().get(0))) {
            cloud.add(new Particle<>(point, List.of(), cloud.size()));
        }
        for (int level = 0; level < ladder.levels(); level++) {
            cloud = thinned(cloud, effort.particles().get(level));
            cloud = climbed(cloud, level);
            if (cloud.isEmpty()) {
                return ended(List.of(), 0, !stopped.getAsBoolean());
            }
        }
        return last(cloud);
    }

    private SampledPosterior<T> ended(List<SampledPosterior.Sample<T>> samples, double effective, boolean complete) {
        return new SampledPosterior<>(
                samples,
                logEvidence,
                Math.sqrt(variance),
                effective,
                Arrays.stream(evaluations).boxed().toList(),
                impossible,
                complete);
    }

    /** Every so-manieth point: after moves they stand in no order. */
    private List<Particle<T>> thinned(List<Particle<T>> cloud, int count) {
        List<Particle<T>> fewer = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            fewer.add(cloud.get((int) ((long) i * cloud.size() / count)));
        }
        return fewer;
    }

    /** Leads the points over the bridge of one level; none if no point is possible, or somebody stopped it. */
    private List<Particle<T>> climbed(List<Particle<T>> start, int level) {
        if (stopped.getAsBoolean()) {
            return List.of();
        }
        List<Particle<T>> cloud = evaluated(start, level);
        past.add(new ArrayList<>());
        double temper = 0;
        for (int i = 0; i < MOST_STEPS && temper < 1; i++) {
            double[] gain = cloud.stream().mapToDouble(p -> p.gain(level)).toArray();
            double step = i == MOST_STEPS - 1 ? 1 - temper : Tempering.step(gain, 1 - temper, effort.keptShare());
            double[] weights = Tempering.weights(gain, step);
            reached(gain, step);
            if (Tempering.effective(weights) == 0) {
                return List.of();
            }
            temper = Math.min(1, temper + step);
            List<Particle<T>> survived = new ArrayList<>();
            for (int k : Tempering.survivors(weights, streams.of(++stage, -1))) {
                survived.add(cloud.get(k).from(k));
            }
            cloud = moved(survived, level, temper);
            if (stopped.getAsBoolean()) {
                return List.of();
            }
        }
        return cloud;
    }

    /** Adds a step by the mean over points of its beginning. */
    private void reached(double[] gain, double step) {
        logEvidence += Tempering.logMean(gain, step);
        double effective = Tempering.effective(Tempering.weights(gain, step));
        variance += effective > 0 ? 1 / effective - 1.0 / gain.length : 0;
    }

    private List<Particle<T>> evaluated(List<Particle<T>> cloud, int level) {
        List<Particle<T>> known = new ArrayList<>(cloud);
        int[] failed = new int[cloud.size()];
        workers.forEach(cloud.size(), i -> {
            Evaluation<T> evaluation =
                    ladder.evaluate(level, cloud.get(i).point().clone());
            known.set(i, cloud.get(i).with(evaluation));
            failed[i] = evaluation.possible() ? 0 : 1;
        });
        evaluations[level] += cloud.size();
        if (level == ladder.levels() - 1) {
            impossible += Arrays.stream(failed).sum();
        }
        told.accept(evaluations[ladder.levels() - 1]);
        return known;
    }

    /** Sweeps of moves at one temper, until most points have moved about once or enough was tried. */
    private List<Particle<T>> moved(List<Particle<T>> start, int level, double temper) {
        List<Particle<T>> cloud = begun(start, level);
        int often = level == 0 && ladder.levels() > 1 ? SWEPT_MORE : 1;
        int accepted = 0;
        for (int sweep = 0; sweep < often * effort.mostSweeps() && !stopped.getAsBoolean(); sweep++) {
            List<Particle<T>> next = swept(cloud, level, temper, sweep);
            for (int i = 0; i < next.size(); i++) {
                accepted += next.get(i).point() == cloud.get(i).point() ? 0 : 1;
            }
            cloud = next;
            remember(cloud, level);
            if (sweep + 1 >= often * effort.leastSweeps() && accepted >= often * cloud.size()) {
                break;
            }
        }
        return cloud;
    }

    /** The samples of a level are those of its present temper only. */
    private List<Particle<T>> begun(List<Particle<T>> cloud, int level) {
        past.get(level).clear();
        cloud.forEach(p -> past.get(level).add(p.point()));
        return cloud;
    }

    private void remember(List<Particle<T>> cloud, int level) {
        if (past.get(level).size() + cloud.size() <= MOST_PAST) {
            cloud.forEach(p -> past.get(level).add(p.point()));
        }
    }

    private List<Particle<T>> swept(List<Particle<T>> cloud, int level, double temper, int sweep) {
        List<Particle<T>> next = new ArrayList<>(cloud);
        int[][] spent = new int[cloud.size()][];
        workers.forEach(cloud.size(), i -> {
            spent[i] = new int[ladder.levels() + 1];
            Move<T> move = new Move<>(ladder, effort, past, streams.of(stage, sweep, i), spent[i]);
            next.set(i, move.of(cloud.get(i), level, temper));
        });
        for (int[] one : spent) {
            for (int k = 0; k < evaluations.length; k++) {
                evaluations[k] += one[k];
            }
            impossible += one[evaluations.length];
        }
        told.accept(evaluations[ladder.levels() - 1]);
        return next;
    }

    /** Sweeps at the posterior itself, some of which are kept. */
    private SampledPosterior<T> last(List<Particle<T>> start) {
        int level = ladder.levels() - 1;
        List<Particle<T>> cloud = begun(start, level);
        List<Particle<T>> kept = new ArrayList<>();
        stage++;
        int every = effort.lastSweeps() / effort.records();
        for (int sweep = 0; sweep < effort.lastSweeps(); sweep++) {
            if (stopped.getAsBoolean()) {
                return ended(List.of(), 0, false);
            }
            cloud = swept(cloud, level, 1, sweep);
            remember(cloud, level);
            if ((sweep + 1) % every == 0) {
                kept.addAll(cloud);
            }
        }
        List<SampledPosterior.Sample<T>> samples = new ArrayList<>();
        for (Particle<T> p : kept) {
            samples.add(new SampledPosterior.Sample<>(
                    Arrays.stream(p.point()).boxed().toList(), p.evaluations().get(level)));
        }
        return ended(samples, effective(kept), true);
    }

    /** Samples of one ancestor count as one; the unknown that is known worst decides. */
    private double effective(List<Particle<T>> kept) {
        double least = kept.size();
        for (int d = 0; d < ladder.dimensions(); d++) {
            double mean = 0;
            for (Particle<T> p : kept) {
                mean += p.point()[d] / kept.size();
            }
            double spread = 0;
            double[] families = new double[kept.size()];
            for (Particle<T> p : kept) {
                spread += Math.pow(p.point()[d] - mean, 2);
                families[p.ancestor()] += p.point()[d] - mean;
            }
            double between = 0;
            for (double family : families) {
                between += family * family;
            }
            if (between > 0) {
                least = Math.min(least, kept.size() * (spread / between));
            }
        }
        return least;
    }
}
