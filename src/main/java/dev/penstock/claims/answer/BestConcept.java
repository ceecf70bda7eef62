package dev.penstock.claims.answer;

import dev.penstock.claims.likelihood.EngineModel;
import dev.penstock.claims.likelihood.Sighting;
import dev.penstock.input.InputFile;
import dev.penstock.numerics.sampling.SampledPosterior;
import java.util.Map;
import java.util.Optional;

/** Writes the best-fitting engine of the most probable kind as a concept file. */
final class BestConcept {

    private BestConcept() {}

    static Optional<String> of(String name, Mixture mixture) {
        int leader = -1;
        for (int i = 0; i < mixture.clouds().size(); i++) {
            if (mixture.probability(i) > 0 && (leader < 0 || mixture.probability(i) > mixture.probability(leader))) {
                leader = i;
            }
        }
        if (leader < 0) {
            return Optional.empty();
        }
        Cloud cloud = mixture.clouds().get(leader);
        SampledPosterior.Sample<Sighting> best = Reasons.best(cloud);
        EngineModel model = cloud.model().orElseThrow();
        double[] point = best.point().stream().mapToDouble(x -> x).toArray();
        Map<String, String> changes = model.changes(point);
        changes.put("name", name + ", best fit");
        return Optional.of("# The engine that fits the claims best, of those that were sampled.\n"
                + InputFile.with(model.text(), changes));
    }
}
