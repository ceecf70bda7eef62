package dev.penstock.claims.answer;

import dev.penstock.claims.file.Claim;
import dev.penstock.claims.prior.Unknown;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.math3.distribution.NormalDistribution;

/** What is believed of an unknown over all kinds of engines, kinds alike: its prior may differ by cycle and propellants. */
final class ExactPrior {

    private static final int PARTS = 400;

    private ExactPrior() {}

    /**
     * @param ofKinds the unknown of each kind; none lies about a value that a model finds
     * @return percentiles over all of them
     */
    static Band of(List<Unknown> ofKinds) {
        Unknown first = ofKinds.get(0);
        if (ofKinds.stream().allMatch(u -> u.prior().equals(first.prior()))) {
            return new Band(first.value(-Claim.NINETY, 0), first.value(0, 0), first.value(Claim.NINETY, 0));
        }
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        Band.Collected all = new Band.Collected();
        for (int i = 0; i < PARTS; i++) {
            double coordinate = normal.inverseCumulativeProbability((i + 0.5) / PARTS);
            ofKinds.forEach(u -> all.add(u.value(coordinate, 0), 1));
        }
        return all.band().orElseThrow();
    }

    /** Where the priors come from, each source once. */
    static String sources(List<Unknown> ofKinds) {
        return ofKinds.stream().map(u -> u.prior().source()).distinct().collect(Collectors.joining("; "));
    }
}
