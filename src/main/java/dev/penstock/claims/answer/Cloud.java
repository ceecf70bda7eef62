package dev.penstock.claims.answer;

import dev.penstock.claims.likelihood.Doubt;
import dev.penstock.claims.likelihood.EngineModel;
import dev.penstock.claims.likelihood.Hypothesis;
import dev.penstock.claims.likelihood.ScoutedLadder;
import dev.penstock.claims.likelihood.Sighting;
import dev.penstock.errors.FailureTally;
import dev.penstock.numerics.sampling.SampledPosterior;
import java.util.List;
import java.util.Optional;

/**
 * What was sampled of one kind of engine.
 *
 * @param hypothesis the kind
 * @param model its model with all unknowns; empty if no candidate closes
 * @param ladder likelihoods of the claims; empty if no candidate closes
 * @param doubts how far an engine may be from each watched figure of its candidate
 * @param prior candidates of the prior that close
 * @param tried candidates of the prior that were tried
 * @param posterior samples of the posterior
 * @param failures why candidates do not close
 */
record Cloud(
        Hypothesis hypothesis,
        Optional<EngineModel> model,
        Optional<ScoutedLadder> ladder,
        List<Doubt> doubts,
        List<Sighting> prior,
        int tried,
        Optional<SampledPosterior<Sighting>> posterior,
        FailureTally failures) {

    /** A kind of which no candidate closes. */
    static Cloud none(Hypothesis hypothesis, FailureTally failures) {
        return new Cloud(
                hypothesis, Optional.empty(), Optional.empty(), List.of(), List.of(), 0, Optional.empty(), failures);
    }

    Cloud with(SampledPosterior<Sighting> newer) {
        return new Cloud(hypothesis, model, ladder, doubts, prior, tried, Optional.of(newer), failures);
    }

    /** Share of the candidates of the prior that close (-). */
    double closing() {
        return (double) prior.size() / Math.max(1, tried);
    }

    double logEvidence() {
        return posterior
                .filter(p -> !p.samples().isEmpty())
                .map(SampledPosterior::logEvidence)
                .orElse(Double.NEGATIVE_INFINITY);
    }

    List<SampledPosterior.Sample<Sighting>> samples() {
        return posterior.map(SampledPosterior::samples).orElse(List.of());
    }
}
