package dev.penstock.claims.likelihood;

import java.util.List;

/**
 * What is kept of a candidate: numbers, no engine.
 *
 * @param unknowns values of the unknowns, SI, in their order
 * @param figures values of the watched figures, SI, in their order; NaN where the engine does not have one
 * @param claims predicted values of the claims, SI, in their order
 * @param margin margin of the tightest limit that counts (-)
 * @param limit name of that limit
 */
public record Sighting(List<Double> unknowns, List<Double> figures, List<Double> claims, double margin, String limit) {

    public Sighting {
        unknowns = List.copyOf(unknowns);
        figures = List.copyOf(figures);
        claims = List.copyOf(claims);
    }
}
