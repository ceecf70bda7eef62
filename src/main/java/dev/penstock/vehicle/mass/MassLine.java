package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;

/**
 * One line of a mass table.
 *
 * @param name what it is, for example "oxidizer tank"
 * @param mass mass without growth margin (kg)
 * @param scatter relative scatter of the relation (-): about two vehicles in three lie within ± this
 * @param source source key, or where the figure comes from
 */
public record MassLine(String name, double mass, double scatter, String source) {

    public MassLine {
        Require.notNegative(name, "mass (kg)", mass);
        Require.within(name, "scatter (-)", scatter, 0, 10);
    }
}
