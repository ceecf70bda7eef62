package dev.penstock.study;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.BuiltEngineMiss;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.questions.Uncertainty;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.NotClosed;
import dev.penstock.errors.PenstockException;
import dev.penstock.input.InputValue;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;

/**
 * Samples the uncertain inputs of an engine and balances each sample: percentiles of its figures; and moves each input by
 * itself between its 5th and 95th percentile: what drives them. Inputs are independent of each other; percentiles hold what built
 * engines miss beyond them ({@link BuiltEngineMiss}). The samples fill the space evenly and are the same at every run. Safe to share
 * between threads.
 */
public final class UncertaintyRuns {

    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    private final EngineRuns runs;

    /** @param runs reads and balances concepts */
    public UncertaintyRuns(EngineRuns runs) {
        this.runs = runs;
    }

    /** One balance with some inputs moved: the engine, or why there is none. */
    private record Run(Optional<EngineBalance> balance, String failure) {}

    /**
     * @param concept the engine
     * @param samples number of samples, 2 or more
     * @param progress told of each balance that is done
     * @return percentiles and tornados of every figure that the engine has
     * @throws PenstockException if the engine does not close with every input at its most likely value
     */
    public UncertaintyResult run(Concept concept, int samples, Progress progress) {
        EngineStudy study = runs.study();
        return run(concept, study.balance(concept), samples, study::balance, progress);
    }

    /**
     * The same for the highest chamber pressure that each sample reaches within its limits.
     *
     * @param concept the engine
     * @param samples number of samples, 2 or more
     * @param progress told of each search that is done
     * @return percentiles and tornados of every figure at the reach, chamber pressure among them
     * @throws PenstockException if nothing is reached with every input at its most likely value
     */
    public UncertaintyResult runReach(Concept concept, int samples, Progress progress) {
        EngineStudy study = runs.study();
        LimitResult likely = study.reach(concept);
        return run(
                concept, likely.balance(), samples, c -> study.reach(c, likely).balance(), progress);
    }

    private UncertaintyResult run(
            Concept concept,
            EngineBalance likely,
            int samples,
            Function<Concept, EngineBalance> question,
            Progress progress) {
        if (samples < 2) {
            throw new InvalidInput("", "samples", Integer.toString(samples), "2 or more are needed");
        }
        Map<String, InputValue> inputs = Uncertainty.of(likely);
        List<String> keys = List.copyOf(inputs.keySet());
        List<Map<String, String>> changes = new ArrayList<>(UncertainSamples.of(inputs, samples));
        for (String key : keys) {
            InputValue input = inputs.get(key);
            changes.add(Map.of(key, input.written(input.quantile(LOW))));
            changes.add(Map.of(key, input.written(input.quantile(HIGH))));
        }
        List<Run> answers = Parallel.map(changes, c -> concept.name(), c -> answer(concept, c, question), progress);
        List<Run> sampled = answers.subList(0, samples);
        List<EngineBalance> closed =
                sampled.stream().flatMap(r -> r.balance().stream()).toList();
        Map<String, Integer> failures = NotClosed.grouped(sampled.stream()
                .filter(r -> r.balance().isEmpty())
                .map(Run::failure)
                .toList());
        return new UncertaintyResult(
                inputs,
                samples,
                closed.size(),
                failures,
                distributions(likely, closed),
                tornados(likely, inputs, keys, answers.subList(samples, answers.size())));
    }

    private Run answer(Concept concept, Map<String, String> changes, Function<Concept, EngineBalance> question) {
        try {
            return new Run(Optional.of(question.apply(runs.reread(concept, changes))), "");
        } catch (PenstockException e) {
            return new Run(Optional.empty(), e.getMessage());
        }
    }

    private static List<UncertaintyResult.Distribution> distributions(
            EngineBalance likely, List<EngineBalance> closed) {
        List<UncertaintyResult.Distribution> list = new ArrayList<>();
        for (Measure measure : Measure.ALL) {
            OptionalDouble value = measure.of(likely);
            DescriptiveStatistics statistics = new DescriptiveStatistics();
            closed.forEach(b -> measure.of(b).ifPresent(statistics::addValue));
            if (value.isPresent() && statistics.getN() > 1) {
                list.add(distribution(measure, value.getAsDouble(), statistics, likely.concept()));
            }
        }
        return list;
    }

    private static UncertaintyResult.Distribution distribution(
            Measure measure, double likely, DescriptiveStatistics samples, Concept concept) {
        Optional<BuiltEngineMiss> miss = BuiltEngineMiss.of(measure.path(), concept);
        double beyond = miss.map(m -> m.beyond(samples)).orElse(0.0);
        return new UncertaintyResult.Distribution(
                measure,
                likely,
                samples.getMean(),
                Math.hypot(samples.getStandardDeviation(), beyond * samples.getMean()),
                beyond,
                miss,
                BuiltEngineMiss.percentile(samples, beyond, 5),
                BuiltEngineMiss.percentile(samples, beyond, 25),
                BuiltEngineMiss.percentile(samples, beyond, 50),
                BuiltEngineMiss.percentile(samples, beyond, 75),
                BuiltEngineMiss.percentile(samples, beyond, 95));
    }

    private static List<UncertaintyResult.Tornado> tornados(
            EngineBalance likely, Map<String, InputValue> inputs, List<String> keys, List<Run> runs) {
        List<UncertaintyResult.Tornado> list = new ArrayList<>();
        for (Measure measure : Measure.ALL) {
            List<UncertaintyResult.Bar> bars = new ArrayList<>();
            double size = Math.abs(measure.of(likely).orElse(0));
            for (int i = 0; i < keys.size(); i++) {
                OptionalDouble low = valueOf(measure, runs.get(2 * i));
                OptionalDouble high = valueOf(measure, runs.get(2 * i + 1));
                InputValue input = inputs.get(keys.get(i));
                if (low.isPresent() && high.isPresent()) {
                    UncertaintyResult.Bar bar = new UncertaintyResult.Bar(
                            keys.get(i),
                            input.shown(input.quantile(LOW)),
                            input.shown(input.quantile(HIGH)),
                            low.getAsDouble(),
                            high.getAsDouble());
                    if (bar.length() > 1e-6 * size) {
                        bars.add(bar);
                    }
                }
            }
            bars.sort(Comparator.comparingDouble(UncertaintyResult.Bar::length).reversed());
            if (!bars.isEmpty()) {
                list.add(new UncertaintyResult.Tornado(measure, bars));
            }
        }
        return list;
    }

    private static OptionalDouble valueOf(Measure measure, Run run) {
        return run.balance().isPresent() ? measure.of(run.balance().get()) : OptionalDouble.empty();
    }
}
