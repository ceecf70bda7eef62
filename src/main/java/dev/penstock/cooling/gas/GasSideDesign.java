package dev.penstock.cooling.gas;

import dev.penstock.errors.Require;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How heat reaches the wall from the gas.
 *
 * @param model convection model
 * @param properties gas properties put into it
 * @param radiation whether gas radiation is added
 * @param soot whether a kerosene flame lays soot on the wall
 * @param sootResistance thermal resistance of the soot (m²·K/W); empty takes the published curve
 * @param film film of coolant along the wall, if any
 */
public record GasSideDesign(
        Model model,
        Properties properties,
        boolean radiation,
        boolean soot,
        OptionalDouble sootResistance,
        Optional<FilmDesign> film) {

    /** Convection models. */
    public enum Model {
        BARTZ,
        BOUNDARY_LAYER
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
    }

    /** A gas side without a film; the parameters are those of the full constructor. */
    public GasSideDesign(
            Model model, Properties properties, boolean radiation, boolean soot, OptionalDouble sootResistance) {
        this(model, properties, radiation, soot, sootResistance, Optional.empty());
    }

    /**
     * @param newFilm film along the wall
     * @return the same gas side with that film
     */
    public GasSideDesign withFilm(FilmDesign newFilm) {
        return new GasSideDesign(model, properties, radiation, soot, sootResistance, Optional.of(newFilm));
    }

    /**
     * @param newModel convection model
     * @return the same gas side with that model
     */
    public GasSideDesign withModel(Model newModel) {
        return new GasSideDesign(newModel, properties, radiation, soot, sootResistance, film);
    }

    /** @return closed-form Bartz with frozen properties, gas radiation and, in a kerosene flame, soot */
    public static GasSideDesign standard() {
        return new GasSideDesign(
                GasSideInputs.GAS_SIDE.standing().value(),
                GasSideInputs.GAS_PROPERTIES.standing().value(),
                GasSideInputs.RADIATION.standing().value(),
                GasSideInputs.SOOT.standing().value(),
                OptionalDouble.empty());
    }
}
