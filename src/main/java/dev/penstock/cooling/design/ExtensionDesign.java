package dev.penstock.cooling.design;

import java.util.Objects;

/**
 * The wall that no jacket cools, under whatever film the chamber has: what follows the last jacket towards the nozzle exit, or, of a
 * chamber without a jacket, all of it.
 *
 * @param kind how it is kept from burning
 * @param material id of the material of its sheet; of no meaning for an ablative one
 */
public record ExtensionDesign(ExtensionKind kind, String material) {

    public ExtensionDesign {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(material, "material");
    }

    /** @return a radiating sheet of niobium C-103 */
    public static ExtensionDesign standard() {
        return new ExtensionDesign(
                JacketInputs.EXTENSION.standing().value(),
                JacketInputs.EXTENSION_MATERIAL.standing().value());
    }
}
