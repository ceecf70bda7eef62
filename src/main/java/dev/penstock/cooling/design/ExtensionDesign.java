package dev.penstock.cooling.design;

import dev.penstock.errors.Require;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The wall that no jacket cools, under whatever film the chamber has: what follows the last jacket towards the nozzle exit, or, of a
 * chamber without a jacket, all of it.
 *
 * @param kind how it is kept from burning
 * @param material id of the material of its sheet; of no meaning for an ablative one
 * @param parting area ratio at which an extendible nozzle parts (-); empty for one in one piece
 */
public record ExtensionDesign(ExtensionKind kind, String material, OptionalDouble parting) {

    public ExtensionDesign {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(material, "material");
        parting.ifPresent(e -> Require.within("nozzle extension", "area ratio where it parts (-)", e, 1, 1e4));
    }

    /** @return a radiating sheet of niobium C-103 */
    public static ExtensionDesign standard() {
        return new ExtensionDesign(
                JacketInputs.EXTENSION.standing().value(),
                JacketInputs.EXTENSION_MATERIAL.standing().value(),
                OptionalDouble.empty());
    }
}
