package dev.penstock.cooling.design;

import java.util.Objects;

/**
 * What follows the jacket towards the nozzle exit: a sheet that radiates, under whatever film the chamber has.
 *
 * @param material id of its material
 */
public record ExtensionDesign(String material) {

    public ExtensionDesign {
        Objects.requireNonNull(material, "material");
    }

    /** @return niobium C-103 */
    public static ExtensionDesign standard() {
        return new ExtensionDesign(JacketInputs.EXTENSION_MATERIAL.standing().value());
    }
}
