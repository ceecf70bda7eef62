package dev.penstock.claims.answer;

import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.claims.likelihood.ClaimLadder;
import dev.penstock.claims.likelihood.EngineModel;
import dev.penstock.claims.likelihood.Hypothesis;
import dev.penstock.claims.likelihood.Nuisances;
import dev.penstock.claims.likelihood.ScoutedLadder;
import dev.penstock.claims.likelihood.Sighting;
import dev.penstock.claims.likelihood.Workshop;
import dev.penstock.claims.prior.MainUnknowns;
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
                MainUnknowns.of(file, hypothesis.cycle(), hypothesis.oxidizer(), hypothesis.fuel()),
                WatchList.of(file));
        Nuisances.Result found = new Nuisances(main, workers).find();
        if (found.model().isEmpty()) {
            return Cloud.none(hypothesis, found.failures());
        }
        EngineModel model = found.model().get();
        ClaimLadder claims = new ClaimLadder(model, found.claims(), found.failures());
        List<double[]> points = TemperedSampler.prior(model.unknowns().size(), effort.prior());
        List<Optional<Sighting>> seen = new ArrayList<>();
        points.forEach(p -> seen.add(Optional.empty()));
        workers.forEach(
                points.size(),
                i -> seen.set(
                        i, claims.evaluate(claims.levels() - 1, points.get(i)).detail()));
        ScoutedLadder ladder = ScoutedLadder.of(claims.led(points, seen, workers), workers);
        List<Sighting> closed = seen.stream().flatMap(Optional::stream).toList();
        count(points.size(), points.size() - closed.size());
        return new Cloud(
                hypothesis,
                Optional.of(model),
                Optional.of(ladder),
                found.figures(),
                closed,
                points.size(),
                Optional.empty(),
                found.failures());
    }

    /** The posterior of a kind of engine. */
    SampledPosterior<Sighting> sampled(Cloud cloud, int points) {
        return counted(sampler(cloud.ladder().orElseThrow(), usual(points)).run());
    }

    /** Roughly, before anything else is known. */
    SampledPosterior<Sighting> rough(Cloud cloud, int points) {
        return counted(sampler(
                        cloud.ladder().orElseThrow(),
                        SamplerEffort.swift(effort.seed(), effort.scouts(points), effort.chambers(points), points))
                .run());
    }

    private SamplerEffort usual(int points) {
        return SamplerEffort.usual(effort.seed(), effort.scouts(points), effort.chambers(points), points);
    }

    /** What all claims but one predict for that one, of one kind of engine, so many times as probable as the most probable one. */
    SampledPosterior<Sighting> without(Cloud cloud, int claim, double share) {
        int points = effort.leftOut(share);
        return counted(sampler(
                        cloud.ladder().orElseThrow().without(claim),
                        SamplerEffort.light(effort.seed(), effort.scouts(points), effort.chambers(points), points))
                .run());
    }

    private TemperedSampler<Sighting> sampler(ScoutedLadder ladder, SamplerEffort spent) {
        int before = balances.get();
        return new TemperedSampler<>(ladder, spent, workers, stopped, n -> told.accept(before + n));
    }

    private SampledPosterior<Sighting> counted(SampledPosterior<Sighting> posterior) {
        List<Integer> evaluations = posterior.evaluations();
        count(evaluations.get(evaluations.size() - 1), posterior.impossible());
        return posterior;
    }
}
