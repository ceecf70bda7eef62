package dev.penstock.cycles.sheet;

import dev.penstock.errors.Require;

/**
 * One step of the pressure ladder from a tank to the chamber.
 *
 * @param line which propellant line or gas path, for example "fuel"
 * @param component what causes the step, for example "fuel pump" or "cooling jacket"
 * @param from pressure before it (Pa)
 * @param to pressure after it (Pa)
 */
public record PressureStep(String line, String component, double from, double to) {

    public PressureStep {
        Require.positive(component, "pressure (Pa)", from);
        Require.positive(component, "pressure (Pa)", to);
    }

    /** @return rise of pressure (Pa), negative for a loss */
    public double rise() {
        return to - from;
    }
}
