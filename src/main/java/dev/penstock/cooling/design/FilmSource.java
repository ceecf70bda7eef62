package dev.penstock.cooling.design;

import dev.penstock.errors.Require;
import dev.penstock.fluids.Propellant;
import java.util.Objects;

/**
 * What a film along the wall is made of.
 *
 * @param propellant propellant
 * @param enthalpy its enthalpy, on the fluid model's own zero (J/kg)
 */
public record FilmSource(Propellant propellant, double enthalpy) {

    public FilmSource {
        Objects.requireNonNull(propellant, "propellant");
        Require.finite("film", "enthalpy (J/kg)", enthalpy);
    }
}
