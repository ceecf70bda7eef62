package dev.penstock.study;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.BuiltEngineMiss;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.questions.Uncertainty;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.PenstockException;
import dev.penstock.input.InputValue;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;

/** Samples the uncertain inputs about one combination of a sweep. Inputs that the sweep varies count as exact. */
final class BandSampler {

    private static final double LOW = 5;
    private static final double HIGH = 95;

    private final EngineRuns runs;
    private final int samples;
    private final Set<String> exact;

    BandSampler(EngineRuns runs, int samples, Set<String> exact) {
        this.runs = runs;
        this.samples = samples;
        this.exact = Set.copyOf(exact);
    }

    /**
     * @param concept the engine at this combination
     * @param likely its balance with every input at its most likely value
     * @param study balances the samples
     * @param done told after each sample
     * @param cancelled asked before each sample
     * @return the band; empty if it was cancelled on the way
     */
    Optional<SweepBand> band(
            Concept concept, EngineBalance likely, EngineStudy study, Runnable done, BooleanSupplier cancelled) {
        Map<String, InputValue> inputs = new LinkedHashMap<>(Uncertainty.of(likely));
        inputs.keySet().removeAll(exact);
        Map<Measure, DescriptiveStatistics> figures = new HashMap<>();
        int closed = 0;
        for (Map<String, String> changes : UncertainSamples.of(inputs, samples)) {
            if (cancelled.getAsBoolean()) {
                return Optional.empty();
            }
            try {
                EngineBalance balance = study.balance(runs.reread(concept, changes));
                for (Measure measure : Measure.ALL) {
                    measure.of(balance)
                            .ifPresent(v -> figures.computeIfAbsent(measure, k -> new DescriptiveStatistics())
                                    .addValue(v));
                }
                closed++;
            } catch (PenstockException notClosed) {
                // Counted by its absence: the band says how many of the samples close.
            }
            done.run();
        }
        Map<String, SweepBand.Span> spans = new HashMap<>();
        figures.forEach((measure, values) -> {
            if (values.getN() > 1) {
                double beyond = BuiltEngineMiss.beyond(measure.path(), concept, values);
                spans.put(
                        measure.key(),
                        new SweepBand.Span(
                                BuiltEngineMiss.percentile(values, beyond, LOW),
                                BuiltEngineMiss.percentile(values, beyond, HIGH)));
            }
        });
        return Optional.of(new SweepBand(samples, closed, spans));
    }
}
