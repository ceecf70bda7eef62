package dev.penstock.cycles.sheet;

import dev.penstock.cycles.origin.LineKey;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.errors.Require;

/**
 * One step of the pressure ladder from a tank to the chamber.
 *
 * @param line which propellant line or gas path
 * @param part what causes the step
 * @param from pressure before it (Pa)
 * @param to pressure after it (Pa)
 */
public record PressureStep(LineKey line, PartKey part, double from, double to) {

    public PressureStep {
        Require.positive(part.label(), "pressure (Pa)", from);
        Require.positive(part.label(), "pressure (Pa)", to);
    }

    /** @return rise of pressure (Pa), negative for a loss */
    public double rise() {
        return to - from;
    }
}
