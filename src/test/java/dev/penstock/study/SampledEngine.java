package dev.penstock.study;

import dev.penstock.cycles.questions.Uncertainty;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.PenstockException;
import java.util.List;
import java.util.Optional;

/** An engine as it is most likely, and sampled over all that is uncertain about it, in the way of {@link UncertaintyRuns}. */
public record SampledEngine(EngineBalance likely, List<EngineBalance> samples) {

    public static SampledEngine of(EngineRuns runs, EngineBalance likely, int samples) {
        var changes = UncertainSamples.of(Uncertainty.of(likely), samples);
        List<Optional<EngineBalance>> answers = Parallel.map(
                changes,
                c -> likely.concept().name(),
                c -> {
                    try {
                        return Optional.of(runs.study().balance(runs.reread(likely.concept(), c)));
                    } catch (PenstockException e) {
                        return Optional.<EngineBalance>empty();
                    }
                },
                Progress.NONE);
        return new SampledEngine(
                likely, answers.stream().flatMap(Optional::stream).toList());
    }
}
