package dev.penstock.turbomachinery.mass;

import dev.penstock.errors.Require;
import java.util.Map;

/**
 * What the masses of the models are multiplied by, part by part: one unless a concept knows better or a study samples it.
 *
 * @param factors factor by part (-); parts that are absent have one
 */
public record MassFactors(Map<MassPart, Double> factors) {

    /** Masses as the models give them. */
    public static final MassFactors NONE = new MassFactors(Map.of());

    public MassFactors {
        factors.forEach((part, factor) -> Require.within("mass", part.factor().key() + " (-)", factor, 0.05, 20));
        factors = Map.copyOf(factors);
    }

    /**
     * @param part a part
     * @return its factor (-)
     */
    public double of(MassPart part) {
        return factors.getOrDefault(part, 1.0);
    }
}
