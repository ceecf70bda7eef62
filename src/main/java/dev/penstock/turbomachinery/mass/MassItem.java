package dev.penstock.turbomachinery.mass;

import dev.penstock.provenance.Spread;

/**
 * Mass of one part, or of a whole engine by one relation.
 *
 * @param name what it is
 * @param mass mass with the scatter of the relation (kg)
 * @param source source key, or "common practice, no source"
 */
public record MassItem(String name, Spread mass, String source) {}
