package dev.penstock.cooling.wall;

import dev.penstock.errors.Require;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Wall between gas and coolant, and the shell outside the channels.
 *
 * @param material id of the inner wall's material, a file in {@code fluids/walls}
 * @param thickness thickness between gas and channel floor (m); empty takes the default of the kind of channel
 * @param closeoutMaterial id of the outer shell's material
 * @param closeoutThickness thickness of the outer shell (m); empty sizes it for the coolant pressure
 * @param coating layer on the gas side, if any
 */
public record WallDesign(
        String material,
        OptionalDouble thickness,
        String closeoutMaterial,
        OptionalDouble closeoutThickness,
        Optional<Coating> coating) {

    public WallDesign {
        Objects.requireNonNull(material, "material");
        Objects.requireNonNull(closeoutMaterial, "closeoutMaterial");
        Objects.requireNonNull(coating, "coating");
        thickness.ifPresent(t -> Require.within(
                "wall", "thickness (m)", t, WallInputs.THICKNESSES.low(), WallInputs.THICKNESSES.high()));
        closeoutThickness.ifPresent(t -> Require.within("wall", "closeout thickness (m)", t, 1e-5, 0.5));
    }
}
