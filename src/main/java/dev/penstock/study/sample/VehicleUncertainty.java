package dev.penstock.study.sample;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.BuiltEngineMiss;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.questions.Uncertainty;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.NotClosed;
import dev.penstock.errors.PenstockException;
import dev.penstock.input.InputValue;
import dev.penstock.numerics.LowDiscrepancy;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Parallel;
import dev.penstock.study.Progress;
import dev.penstock.study.UncertainSamples;
import dev.penstock.vehicle.EngineSource;
import dev.penstock.vehicle.ScaledEngine;
import dev.penstock.vehicle.VehicleDoubts;
import dev.penstock.vehicle.VehicleSizer;
import dev.penstock.vehicle.VehicleSpread;
import dev.penstock.vehicle.engine.BalancedEngine;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;

/**
 * Samples the uncertain inputs of a vehicle's engines together with its own dry masses, losses and residuals, and sizes each sample:
 * percentiles of its start mass or payload; and samples each engine, and moves each of its own figures, by itself: what drives them.
 * Impulse and mass of an engine also hold what built engines miss beyond the spreads of its inputs ({@link BuiltEngineMiss}): two
 * deviates of each engine. All are independent of each other. Samples fill the space evenly and are the same at every run and on any number of threads.
 */
public final class VehicleUncertainty {

    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    /** Deviates of an engine for what built ones miss: impulse and mass. */
    private static final int MISSES = 2;

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private final EngineRuns runs;
    private final VehicleSizing likely;
    private final VehicleDoubts doubts;
    private final Map<Optional<Path>, Concept> concepts;
    private final VehicleSizer sizer = new VehicleSizer();

    /**
     * @param runs balances the engines
     * @param likely the vehicle with everything at its most likely value
     * @param flown whether its losses are those of its own flight
     * @param concepts its engines by concept file; by no file where the concept carries the vehicle
     */
    public VehicleUncertainty(
            EngineRuns runs, VehicleSizing likely, boolean flown, Map<Optional<Path>, Concept> concepts) {
        this.runs = runs;
        this.likely = likely;
        this.doubts = new VehicleDoubts(likely, flown);
        this.concepts = Collections.unmodifiableMap(new LinkedHashMap<>(concepts));
    }

    /** An engine with its uncertain inputs moved, or why there is none. */
    private record Sampled(Optional<EnginePerformance> engine, String failure) {}

    /** One engine to balance. */
    private record Job(Concept concept, Map<String, String> changes) {}

    private record Answer(OptionalDouble value, String failure) {}

    /**
     * @param samples number of samples
     * @param progress told of each engine that is balanced
     * @return what start mass or payload may turn out to be
     * @throws PenstockException if an engine does not close with every input at its most likely value
     */
    public VehicleSpread run(int samples, Progress progress) {
        EngineStudy study = runs.study();
        Map<Optional<Path>, EnginePerformance> centre = new LinkedHashMap<>();
        List<Map<String, InputValue>> inputs = new ArrayList<>();
        int dimensions = doubts.names().size();
        for (Map.Entry<Optional<Path>, Concept> entry : concepts.entrySet()) {
            EngineBalance balance = study.balance(entry.getValue());
            centre.put(entry.getKey(), new BalancedEngine(balance));
            inputs.add(Uncertainty.of(balance));
            dimensions += inputs.get(inputs.size() - 1).size();
        }
        List<List<Double>> points = LowDiscrepancy.points(dimensions + MISSES * concepts.size(), samples);
        List<Job> jobs = jobs(points, inputs);
        List<Sampled> engines = Parallel.map(jobs, j -> j.concept().name(), j -> sampled(study, j), progress);
        return spread(samples, points, centre, missed(engines, points, dimensions));
    }

    private List<Job> jobs(List<List<Double>> points, List<Map<String, InputValue>> inputs) {
        List<Job> jobs = new ArrayList<>();
        List<Concept> order = List.copyOf(concepts.values());
        for (List<Double> point : points) {
            int at = doubts.names().size();
            for (int e = 0; e < order.size(); e++) {
                List<Double> own = point.subList(at, at + inputs.get(e).size());
                jobs.add(new Job(order.get(e), UncertainSamples.at(inputs.get(e), own)));
                at += own.size();
            }
        }
        return jobs;
    }

    /** The same engines with what built ones miss of impulse and mass, by the last deviates of each point. */
    private List<Sampled> missed(List<Sampled> engines, List<List<Double>> points, int first) {
        List<Sampled> all = new ArrayList<>(engines);
        int at = 0;
        for (Concept concept : concepts.values()) {
            double impulse = beyond("engine.isp_vacuum_s", concept, engines, at, EnginePerformance::vacuumIsp);
            double mass = beyond("engine.mass_kg", concept, engines, at, EnginePerformance::mass);
            for (int i = 0; i < points.size(); i++) {
                int index = i * concepts.size() + at;
                List<Double> z = deviations(points.get(i).subList(first + MISSES * at, first + MISSES * (at + 1)));
                Optional<EnginePerformance> engine = engines.get(index)
                        .engine()
                        .map(e -> new ScaledEngine(e, Math.exp(impulse * z.get(0)), 1, Math.exp(mass * z.get(1))));
                all.set(index, new Sampled(engine, engines.get(index).failure()));
            }
            at++;
        }
        return all;
    }

    /** What built engines miss of a figure beyond the samples of one engine (-). */
    private double beyond(
            String path, Concept concept, List<Sampled> engines, int at, ToDoubleFunction<EnginePerformance> figure) {
        DescriptiveStatistics values = new DescriptiveStatistics();
        for (int i = at; i < engines.size(); i += concepts.size()) {
            engines.get(i).engine().ifPresent(e -> values.addValue(figure.applyAsDouble(e)));
        }
        return BuiltEngineMiss.beyond(path, concept, values);
    }

    private Sampled sampled(EngineStudy study, Job job) {
        try {
            return new Sampled(
                    Optional.of(new BalancedEngine(study.balance(runs.reread(job.concept(), job.changes())))), "");
        } catch (PenstockException none) {
            return new Sampled(Optional.empty(), none.getMessage());
        }
    }

    private VehicleSpread spread(
            int samples,
            List<List<Double>> points,
            Map<Optional<Path>, EnginePerformance> centre,
            List<Sampled> engines) {
        int own = doubts.names().size();
        List<Double> still = doubts.none();
        List<String> failures = new ArrayList<>();
        DescriptiveStatistics all = new DescriptiveStatistics();
        List<DescriptiveStatistics> byEngine = new ArrayList<>();
        concepts.forEach((file, concept) -> byEngine.add(new DescriptiveStatistics()));
        for (int i = 0; i < samples; i++) {
            Map<Optional<Path>, EnginePerformance> together = new LinkedHashMap<>();
            String failure = "";
            int e = 0;
            for (Optional<Path> file : concepts.keySet()) {
                Sampled engine = engines.get(i * concepts.size() + e);
                if (engine.engine().isPresent()) {
                    together.put(file, engine.engine().get());
                    Map<Optional<Path>, EnginePerformance> alone = new LinkedHashMap<>(centre);
                    alone.put(file, engine.engine().get());
                    answer(still, alone).value().ifPresent(byEngine.get(e)::addValue);
                } else {
                    failure = engine.failure();
                }
                e++;
            }
            Answer answer = failure.isEmpty()
                    ? answer(doubts.factors(points.get(i).subList(0, own)), together)
                    : new Answer(OptionalDouble.empty(), failure);
            answer.value().ifPresent(all::addValue);
            if (answer.value().isEmpty()) {
                failures.add(answer.failure());
            }
        }
        return new VehicleSpread(
                VehicleSpread.Figure.of(likely.plan()),
                samples,
                (int) all.getN(),
                NotClosed.grouped(failures),
                VehicleSpread.Figure.of(likely.plan()).value(likely),
                percentile(all, LOW),
                percentile(all, 0.5),
                percentile(all, HIGH),
                drivers(centre, byEngine));
    }

    private static double percentile(DescriptiveStatistics values, double share) {
        return values.getN() == 0 ? Double.NaN : values.getPercentile(100 * share);
    }

    private static List<Double> deviations(List<Double> shares) {
        return shares.stream().map(NORMAL::inverseCumulativeProbability).toList();
    }

    private Answer answer(List<Double> factors, Map<Optional<Path>, EnginePerformance> engines) {
        EngineSource source = engines::get;
        try {
            VehicleSizing sizing = sizer.size(doubts.plan(factors), source);
            return new Answer(
                    OptionalDouble.of(VehicleSpread.Figure.of(likely.plan()).value(sizing)), "");
        } catch (PenstockException none) {
            return new Answer(OptionalDouble.empty(), none.getMessage());
        }
    }

    /** All factors most likely but one. */
    private List<Double> one(int doubt, double probability) {
        List<Double> factors = new ArrayList<>(doubts.none());
        factors.set(
                doubt,
                doubts.factors(Collections.nCopies(factors.size(), probability)).get(doubt));
        return factors;
    }

    private List<VehicleSpread.Driver> drivers(
            Map<Optional<Path>, EnginePerformance> centre, List<DescriptiveStatistics> byEngine) {
        List<VehicleSpread.Driver> drivers = new ArrayList<>();
        int e = 0;
        for (Concept concept : concepts.values()) {
            DescriptiveStatistics values = byEngine.get(e++);
            if (values.getN() > 1) {
                drivers.add(new VehicleSpread.Driver(
                        "uncertain inputs of " + concept.name() + ", and what built engines miss beyond them",
                        percentile(values, LOW),
                        percentile(values, HIGH)));
            }
        }
        List<String> names = doubts.names();
        for (int i = 0; i < names.size(); i++) {
            OptionalDouble atLow = answer(one(i, LOW), centre).value();
            OptionalDouble atHigh = answer(one(i, HIGH), centre).value();
            if (atLow.isPresent() && atHigh.isPresent()) {
                drivers.add(new VehicleSpread.Driver(names.get(i), atLow.getAsDouble(), atHigh.getAsDouble()));
            }
        }
        drivers.sort(Comparator.comparingDouble(VehicleSpread.Driver::length).reversed());
        return drivers;
    }
}
