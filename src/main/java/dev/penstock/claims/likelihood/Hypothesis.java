package dev.penstock.claims.likelihood;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.fluids.Propellant;

/**
 * A kind of engine that it may have been.
 *
 * @param cycle its cycle
 * @param oxidizer its oxidizer
 * @param fuel its fuel
 */
public record Hypothesis(Cycle cycle, Propellant oxidizer, Propellant fuel) {

    /** @return name for people */
    public String title() {
        return cycle.title() + ", " + oxidizer.id() + " / " + fuel.id();
    }
}
