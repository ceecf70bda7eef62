package dev.penstock.claims.answer;

import dev.penstock.claims.file.Claim;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * What the engine has for a figure, not only its model: candidates with the doubt of what is predicted for them.
 * <pre>
 * y = (p/s² + c/σ²)/(1/s² + 1/σ²),  variance 1/(1/s² + 1/σ²):  prediction p within s, claimed as c within σ
 * </pre>
 * Without a claim on the figure y = p within s. A range that is claimed bounds the percentiles.
 */
final class EngineBand {

    private EngineBand() {}

    /**
     * @param samples candidates with weights
     * @param path path of the figure
     * @param claim claim on that figure; empty if nobody states it, or before it is heard
     * @param few what becomes of percentiles of the candidates because there are few of them
     * @return percentiles of what the engine has; empty where no candidate has that figure
     */
    static Optional<Band> of(
            List<Mixture.Weighted> samples, String path, Optional<Claim> claim, UnaryOperator<Band> few) {
        Band.Collected centres = new Band.Collected();
        Band.Collected variances = new Band.Collected();
        for (Mixture.Weighted s : samples) {
            double value = Mixture.value(s, path);
            double variance = Math.pow(Mixture.doubt(s, path), 2);
            boolean valued = claim.isPresent() && claim.get().value().isPresent();
            double share = valued ? variance / (variance + Math.pow(claim.get().sigma(), 2)) : 0;
            centres.add(valued ? value + share * (claim.get().centre() - value) : value, s.weight());
            variances.add(variance * (1 - share) / (value * value), s.weight());
        }
        return centres.band()
                .map(b -> bounded(b, few.apply(b).widened(Math.abs(b.p50()) * Math.sqrt(variances.mean())), claim));
    }

    /** A range that is claimed keeps what lies beyond its ends from being counted, unless the candidates themselves lie there. */
    private static Band bounded(Band of, Band widened, Optional<Claim> claim) {
        if (claim.isEmpty() || claim.get().value().isPresent()) {
            return widened;
        }
        double low = Math.min(claim.get().low().orElse(Double.NEGATIVE_INFINITY), of.p05());
        double high = Math.max(claim.get().high().orElse(Double.POSITIVE_INFINITY), of.p95());
        return widened.within(low, high);
    }
}
