package dev.penstock.cooling.gas;

import dev.penstock.errors.Require;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * How heat reaches the wall from the gas.
 *
 * @param model convection model
 * @param properties gas properties put into it
 * @param radiation whether gas radiation is added
 * @param soot whether a kerosene flame lays soot on the wall
 * @param sootResistance thermal resistance of the soot (m²·K/W); empty takes the measured one
 * @param sootFactor factor on that resistance (-); 1 is the measured one itself
 * @param heatReleaseLength distance from the injector face over which the flux develops (m); zero for none
 * @param film how a film enters, if the chamber has one
 */
public record GasSideDesign(
        Model model,
        Properties properties,
        boolean radiation,
        boolean soot,
        OptionalDouble sootResistance,
        double sootFactor,
        double heatReleaseLength,
        FilmDesign film) {

    /** Convection models. */
    public enum Model {
        BARTZ,
        BOUNDARY_LAYER,
        ACCELERATED_PIPE
    }

    /** Composition of the gas while it crosses the boundary layer. */
    public enum Properties {
        FROZEN,
        EQUILIBRIUM
    }

    public GasSideDesign {
        Objects.requireNonNull(model, "model");
        Objects.requireNonNull(properties, "properties");
        Objects.requireNonNull(film, "film");
        sootResistance.ifPresent(r -> Require.notNegative("gas side", "soot resistance (m²·K/W)", r));
        Require.notNegative("gas side", "factor on the soot (-)", sootFactor);
        Require.notNegative("gas side", "distance over which the flux develops (m)", heatReleaseLength);
    }

    /**
     * @param newFilm how a film enters
     * @return the same gas side with a film of that kind, if the chamber has one
     */
    public GasSideDesign withFilm(FilmDesign newFilm) {
        return new GasSideDesign(
                model, properties, radiation, soot, sootResistance, sootFactor, heatReleaseLength, newFilm);
    }

    /**
     * @param newModel convection model
     * @return the same gas side with that model
     */
    public GasSideDesign withModel(Model newModel) {
        return new GasSideDesign(
                newModel, properties, radiation, soot, sootResistance, sootFactor, heatReleaseLength, film);
    }

    /**
     * @param factor factor on the resistance of soot (-)
     * @return the same gas side with so much more soot
     */
    public GasSideDesign withSootFactor(double factor) {
        return new GasSideDesign(model, properties, radiation, soot, sootResistance, factor, heatReleaseLength, film);
    }

    /**
     * @param length distance from the injector face over which the flux develops (m); zero for none
     * @return the same gas side with that length
     */
    public GasSideDesign withHeatReleaseLength(double length) {
        return new GasSideDesign(model, properties, radiation, soot, sootResistance, sootFactor, length, film);
    }
}
