package dev.penstock.turbomachinery.mass;

import dev.penstock.provenance.Spread;

/**
 * Mass of one part, or of a whole engine by one relation.
 *
 * @param part kind of part
 * @param owner name of the shaft, burner or line that it is a part of; its own name for a part of the engine
 * @param name what it is
 * @param mass mass with the scatter of the relation (kg)
 * @param source source key, or "common practice, no source"
 */
public record MassItem(MassPart part, String owner, String name, Spread mass, String source) {

    /** Several equal ones as one item, whose scatter is common to them. */
    MassItem times(int count) {
        return count == 1 ? this : new MassItem(part, owner, count + " × " + name, mass.times(count), source);
    }
}
