package dev.penstock.numerics.sampling;

import dev.penstock.numerics.LowDiscrepancy;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Tempered sequential Monte Carlo: points spread evenly over the prior are led to the posterior in steps, weighed, resampled
 * and moved at each; the weights add up to the evidence.
 * <pre>
 * bridge of level k:  prior × L(k−1)^(1−b) × L(k)^b,  b from 0 to 1
 * evidence = Π mean of (L(k)/L(k−1))^(step of b)
 * </pre>
 * Sources: [del-moral-2006]; moves by {@link DifferentialMoves}; a move is asked of the cheap levels first and goes to the
 * dear one only if those let it pass, which leaves the posterior what it is [christen-2005]. The same seed gives the same
 * bits whatever the number of threads. Not thread-safe.
 *
 * @param <T> kind of detail
 */
public final class TemperedSampler<T> {

    public static final ModelCard CARD = new ModelCard(
            "numerics.tempered-sampler",
            "Tempered sequential Monte Carlo over a ladder of likelihoods",
            "evidence = product over steps of the mean of (L_k/L_(k-1))^step; moves accepted by level in turn",
            "any number of modes that the first points reach",
            "that of Monte Carlo: standard error of the evidence and effective samples go with every answer",
            List.of("del-moral-2006", "christen-2005"));

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final int MOST_STEPS = 200;
    private static final int MOST_PAST = 20_000;

    private final Ladder<T> ladder;
    private final SamplerEffort effort;
    private final Workers workers;
    private final BooleanSupplier stopped;
    private final IntConsumer told;
    private final Streams streams;
    private final int[] evaluations;
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

    /**
     * Samples of the posterior, led from those of one that heard a further likelihood, by letting go of it in steps.
     * <pre>bridge:  prior × L × H^(1−b), b from 0 to 1;  evidence = Z(L H)/Π mean of H^(step of b)</pre>
     *
     * @param narrower the posterior that heard it, with samples
     * @param held natural logarithm of the further likelihood H of a detail; NaN where it has none
     * @return samples of the posterior
     */
    public SampledPosterior<T> relaxed(SampledPosterior<T> narrower, ToDoubleFunction<T> held) {
        int top = ladder.levels() - 1;
        List<Particle<T>> known = new ArrayList<>();
        for (SampledPosterior.Sample<T> s : narrower.samples()) {
            double[] point = s.point().stream().mapToDouble(x -> x).toArray();
            known.add(new Particle<>(point, List.of(), known.size()));
        }
        List<Particle<T>> cloud = thinned(known, effort.particles().get(top));
        for (int level = 0; level <= top && !stopped.getAsBoolean(); level++) {
            cloud = evaluated(cloud, level);
        }
        if (stopped.getAsBoolean()) {
            return ended(List.of(), 0, false);
        }
        logEvidence = narrower.logEvidence();
        variance = narrower.evidenceError() * narrower.evidenceError();
        cloud = led(cloud, new Bridge<>(top, Optional.of(held)));
        return cloud.isEmpty() ? ended(List.of(), 0, !stopped.getAsBoolean()) : last(cloud);
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

    /**
     * What lies between two distributions of the points.
     *
     * @param level level whose likelihood it leads to, or stands at
     * @param held a further likelihood that it lets go of; empty if it leads from the level before to this one
     */
    private record Bridge<T>(int level, Optional<ToDoubleFunction<T>> held) {

        /** What a point gains from one end to the other. */
        double gain(Particle<T> p) {
            double now = p.logLikelihood(level);
            if (now == Double.NEGATIVE_INFINITY) {
                return now;
            }
            return held.isPresent() ? -held(p) : now - p.logLikelihood(level - 1);
        }

        /** What a level adds to the logarithm of the distribution at a point of the bridge. */
        double share(Particle<T> p, int k, double temper) {
            double before = p.logLikelihood(k - 1);
            double whole = k == level && held.isEmpty() ? temper : 1;
            double added = Particle.bridge(before, p.logLikelihood(k), whole) - before;
            return k == level && held.isPresent() && added > Double.NEGATIVE_INFINITY
                    ? added + (1 - temper) * held(p)
                    : added;
        }

        private double held(Particle<T> p) {
            return held.orElseThrow()
                    .applyAsDouble(p.evaluations().get(level).detail().orElseThrow());
        }
    }

    /** Leads the points over the bridge of one level; none if no point is possible, or somebody stopped it. */
    private List<Particle<T>> climbed(List<Particle<T>> start, int level) {
        return stopped.getAsBoolean() ? List.of() : led(evaluated(start, level), new Bridge<>(level, Optional.empty()));
    }

    private List<Particle<T>> led(List<Particle<T>> start, Bridge<T> bridge) {
        List<Particle<T>> cloud = start;
        double temper = 0;
        for (int i = 0; i < MOST_STEPS && temper < 1; i++) {
            double[] gain = cloud.stream().mapToDouble(bridge::gain).toArray();
            double step = i == MOST_STEPS - 1 ? 1 - temper : Tempering.step(gain, 1 - temper, effort.keptShare());
            double[] weights = Tempering.weights(gain, step);
            if (bridge.held().isEmpty()) {
                reached(gain, step, 1);
            }
            if (Tempering.effective(weights) == 0) {
                return List.of();
            }
            temper = Math.min(1, temper + step);
            List<Particle<T>> survived = new ArrayList<>();
            for (int k : Tempering.survivors(weights, streams.of(++stage, -1))) {
                survived.add(cloud.get(k).from(k));
            }
            cloud = moved(survived, bridge, temper);
            if (stopped.getAsBoolean()) {
                return List.of();
            }
            if (bridge.held().isPresent()) {
                // Looked back from the wider distribution: its points cover the narrower one, not the other way round.
                reached(cloud.stream().mapToDouble(p -> -bridge.gain(p)).toArray(), step, -1);
            }
        }
        return cloud;
    }

    /** Adds a step, or takes it away, by the mean over points of its wider end. */
    private void reached(double[] gain, double step, int sign) {
        logEvidence += sign * Tempering.logMean(gain, step);
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
    private List<Particle<T>> moved(List<Particle<T>> start, Bridge<T> bridge, double temper) {
        List<Particle<T>> cloud = start;
        List<double[]> past = new ArrayList<>();
        start.forEach(p -> past.add(p.point()));
        int accepted = 0;
        for (int sweep = 0; sweep < effort.mostSweeps() && !stopped.getAsBoolean(); sweep++) {
            List<Particle<T>> next = swept(cloud, past, bridge, temper, sweep);
            for (int i = 0; i < next.size(); i++) {
                accepted += next.get(i).point() == cloud.get(i).point() ? 0 : 1;
            }
            cloud = next;
            remember(past, cloud);
            if (sweep + 1 >= effort.leastSweeps() && accepted >= cloud.size()) {
                break;
            }
        }
        return cloud;
    }

    private void remember(List<double[]> past, List<Particle<T>> cloud) {
        if (past.size() + cloud.size() <= MOST_PAST) {
            cloud.forEach(p -> past.add(p.point()));
        }
    }

    private List<Particle<T>> swept(
            List<Particle<T>> cloud, List<double[]> past, Bridge<T> bridge, double temper, int sweep) {
        List<Particle<T>> next = new ArrayList<>(cloud);
        int[][] spent = new int[cloud.size()][];
        workers.forEach(cloud.size(), i -> {
            spent[i] = new int[ladder.levels() + 1];
            SplittableRandom random = streams.of(stage, sweep, i);
            next.set(i, move(cloud.get(i), past, bridge, temper, random, spent[i]));
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

    /** One move, asked of each level in turn; the place itself if any of them turns it down. */
    private Particle<T> move(
            Particle<T> from,
            List<double[]> past,
            Bridge<T> bridge,
            double temper,
            SplittableRandom random,
            int[] spent) {
        DifferentialMoves.Proposal proposal = DifferentialMoves.propose(from.point(), past, random);
        double ratio = Particle.logPrior(proposal.point()) - Particle.logPrior(from.point()) + proposal.logFactor();
        Particle<T> to = new Particle<>(proposal.point(), List.of(), from.ancestor());
        for (int k = 0; k <= bridge.level(); k++) {
            Evaluation<T> evaluation = ladder.evaluate(k, proposal.point().clone());
            spent[k]++;
            if (k == ladder.levels() - 1 && !evaluation.possible()) {
                spent[k + 1]++;
            }
            to = to.with(evaluation);
            ratio += bridge.share(to, k, temper) - bridge.share(from, k, temper);
            if (!(Math.log(random.nextDouble()) < ratio)) {
                return from;
            }
            ratio = 0;
        }
        return to;
    }

    /** Sweeps at the posterior itself, some of which are kept. */
    private SampledPosterior<T> last(List<Particle<T>> start) {
        List<Particle<T>> cloud = start;
        List<double[]> past = new ArrayList<>();
        start.forEach(p -> past.add(p.point()));
        List<Particle<T>> kept = new ArrayList<>();
        stage++;
        int level = ladder.levels() - 1;
        Bridge<T> posterior = new Bridge<>(level, Optional.empty());
        int every = effort.lastSweeps() / effort.records();
        for (int sweep = 0; sweep < effort.lastSweeps(); sweep++) {
            if (stopped.getAsBoolean()) {
                return ended(List.of(), 0, false);
            }
            cloud = swept(cloud, past, posterior, 1, sweep);
            remember(past, cloud);
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
