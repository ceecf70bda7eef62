package dev.penstock.claims.answer;

import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.claims.likelihood.ClaimLadder;
import dev.penstock.claims.likelihood.EngineModel;
import dev.penstock.claims.likelihood.Failures;
import dev.penstock.claims.likelihood.Hypothesis;
import dev.penstock.claims.likelihood.Nuisances;
import dev.penstock.claims.likelihood.Sighting;
import dev.penstock.claims.likelihood.Workshop;
import dev.penstock.claims.prior.MainUnknowns;
import dev.penstock.numerics.sampling.Evaluation;
import dev.penstock.numerics.sampling.SampledPosterior;
import dev.penstock.numerics.sampling.SamplerEffort;
import dev.penstock.numerics.sampling.TemperedSampler;
import dev.penstock.numerics.sampling.Workers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;

/** Samples kinds of engines: the prior through the balance, then the posterior. */
final class Sampling {

    private final Workshop workshop;
    private final ClaimsFile file;
    private final JudgeEffort effort;
    private final Workers workers;
    private final BooleanSupplier stopped;
    private final IntConsumer told;
    private final AtomicInteger balances = new AtomicInteger();
    private final AtomicInteger impossible = new AtomicInteger();

    Sampling(
            Workshop workshop,
            ClaimsFile file,
            JudgeEffort effort,
            Workers workers,
            BooleanSupplier stopped,
            IntConsumer told) {
        this.workshop = workshop;
        this.file = file;
        this.effort = effort;
        this.workers = workers;
        this.stopped = stopped;
        this.told = told;
    }

    int balances() {
        return balances.get();
    }

    int impossible() {
        return impossible.get();
    }

    private void count(int more, int of) {
        impossible.addAndGet(of);
        told.accept(balances.addAndGet(more));
    }

    /** Unknowns, and candidates of the prior; no posterior yet. */
    Cloud begun(Hypothesis hypothesis) {
        EngineModel main = new EngineModel(
                workshop,
                file,
                hypothesis,
                MainUnknowns.of(file, hypothesis.oxidizer(), hypothesis.fuel()),
                WatchList.of(file));
        Nuisances.Result found = new Nuisances(main, workers).find();
        if (found.model().isEmpty()) {
            return new Cloud(hypothesis, found.model(), List.of(), List.of(), 0, Optional.empty(), found.failures());
        }
        EngineModel model = found.model().get();
        Failures failures = found.failures();
        ClaimLadder ladder = new ClaimLadder(model, found.further(), failures);
        List<double[]> points = TemperedSampler.prior(model.unknowns().size(), effort.prior());
        List<Optional<Sighting>> seen = new ArrayList<>();
        points.forEach(p -> seen.add(Optional.empty()));
        workers.forEach(points.size(), i -> {
            Evaluation<Sighting> e = ladder.evaluate(1, points.get(i));
            seen.set(i, e.detail());
        });
        List<Sighting> closed = seen.stream().flatMap(Optional::stream).toList();
        count(points.size(), points.size() - closed.size());
        return new Cloud(
                hypothesis, Optional.of(model), found.further(), closed, points.size(), Optional.empty(), failures);
    }

    /** The posterior of a kind of engine. */
    SampledPosterior<Sighting> sampled(EngineModel model, List<Double> further, Failures failures, int points) {
        return counted(
                sampler(new ClaimLadder(model, further, failures), points).run());
    }

    /** What all claims but one predict for that one, of one kind of engine whose posterior of all claims is known. */
    SampledPosterior<Sighting> without(Cloud cloud, int claim) {
        ClaimLadder all = new ClaimLadder(cloud.model().orElseThrow(), cloud.further(), new Failures());
        SampledPosterior<Sighting> known = cloud.posterior().orElseThrow();
        int points = Math.min(effort.leftOut(), known.samples().size());
        return counted(sampler(all.without(claim), points).relaxed(known, s -> all.logLikelihood(claim, s)));
    }

    private TemperedSampler<Sighting> sampler(ClaimLadder ladder, int points) {
        int before = balances.get();
        return new TemperedSampler<>(
                ladder,
                SamplerEffort.usual(effort.seed(), effort.chambers(points), points),
                workers,
                stopped,
                n -> told.accept(before + n));
    }

    private SampledPosterior<Sighting> counted(SampledPosterior<Sighting> posterior) {
        count(posterior.evaluations().get(1), posterior.impossible());
        return posterior;
    }
}
