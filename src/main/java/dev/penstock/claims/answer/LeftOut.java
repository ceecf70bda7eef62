package dev.penstock.claims.answer;

import dev.penstock.claims.file.Claim;
import dev.penstock.claims.likelihood.EngineModel;
import dev.penstock.claims.likelihood.Sighting;
import dev.penstock.numerics.sampling.SampledPosterior;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What all claims but one predict for that one, and how far the claim is from it.
 * <pre>
 * tension = (claim − median)/√(σ² + s²),  s = (p95 − p50)/1.645 above the median, (p50 − p05)/1.645 below
 * </pre>
 * A range that holds the median has no tension. Kinds of engines that all claims together make improbable are left out, so
 * that a claim which alone rules a kind out is not blamed for it.
 */
final class LeftOut {

    static final ModelCard CARD = new ModelCard(
            "claims.tension",
            "Tension of a claim with the others, by left-out prediction",
            "T = (claim - p50)/sqrt(sigma^2 + s^2), s from the percentiles on the claim's side",
            "predictions with one hump",
            "that of the samples",
            List.of("gelfand-1992"));

    /** Kinds less probable than this do not count for the predictions. */
    private static final double COUNTS = 0.05;

    private static final int MOST_KINDS = 3;

    private LeftOut() {}

    /** The kinds that count, each with its share. */
    static List<Cloud> counted(Mixture mixture) {
        List<Cloud> counted = new ArrayList<>();
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < mixture.clouds().size(); i++) {
            order.add(i);
        }
        order.sort((a, b) -> Double.compare(mixture.probability(b), mixture.probability(a)));
        for (int i : order) {
            if (counted.size() < MOST_KINDS && mixture.probability(i) >= COUNTS) {
                counted.add(mixture.clouds().get(i));
            }
        }
        return counted;
    }

    /** The mixture of the counted kinds without one claim; that of the prior where no other claim is left. */
    static Mixture without(Sampling sampling, List<Cloud> counted, int claim, int claims) {
        List<Cloud> clouds = new ArrayList<>();
        for (Cloud cloud : counted) {
            double share = Math.exp(cloud.logEvidence() - counted.get(0).logEvidence());
            clouds.add(claims == 1 ? cloud.with(prior(cloud)) : cloud.with(sampling.without(cloud, claim, share)));
        }
        return new Mixture(clouds);
    }

    private static SampledPosterior<Sighting> prior(Cloud cloud) {
        List<SampledPosterior.Sample<Sighting>> samples = cloud.prior().stream()
                .map(s -> new SampledPosterior.Sample<>(
                        List.of(), new dev.penstock.numerics.sampling.Evaluation<>(0, Optional.of(s))))
                .toList();
        return new SampledPosterior<>(samples, Math.log(cloud.closing()), 0, samples.size(), List.of(0, 0), 0, true);
    }

    /** What a mixture predicts for a claim, with what its engines may be off by. */
    static Optional<Band> predicted(Mixture mixture, Claim claim) {
        Band.Collected squares = mixture.collected(s -> Math.pow(doubt(s, claim) / value(s, claim), 2));
        return mixture.collected(s -> value(s, claim))
                .band()
                .map(b -> b.widened(Math.abs(b.p50()) * Math.sqrt(squares.mean())));
    }

    private static double doubt(Mixture.Weighted sample, Claim claim) {
        EngineModel model = sample.cloud().model().orElseThrow();
        return sample.cloud()
                .ladder()
                .orElseThrow()
                .claims()
                .doubtOf(model.claims().indexOf(claim), value(sample, claim));
    }

    /** Value of a sample for a claim, whether it was sampled by that or not. */
    static double value(Mixture.Weighted sample, Claim claim) {
        EngineModel model = sample.cloud().model().orElseThrow();
        return sample.sighting().claims().get(model.claims().indexOf(claim));
    }

    static double tension(Claim claim, Optional<Band> predicted) {
        if (predicted.isEmpty()) {
            return 0;
        }
        Band band = predicted.get();
        double surplus = claim.surplus(band.p50());
        if (surplus == 0) {
            return 0;
        }
        boolean above = surplus < 0;
        double spread = claim.distance(band.p50(), above ? band.p95() : band.p05()) / Claim.NINETY;
        double distance = -surplus * claim.sigma();
        return distance / Math.sqrt(claim.sigma() * claim.sigma() + spread * spread);
    }
}
