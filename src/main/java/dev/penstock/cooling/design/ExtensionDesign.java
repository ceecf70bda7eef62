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
 * @param liningEnd area ratio at which an ablative wall ends and a sheet that radiates follows (-); empty where one kind goes to the exit
 */
public record ExtensionDesign(ExtensionKind kind, String material, OptionalDouble liningEnd) {

    public ExtensionDesign {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(material, "material");
        liningEnd.ifPresent(e -> Require.within("nozzle extension", "area ratio where the lining ends (-)", e, 1, 1e4));
    }

    /** @return a radiating sheet of niobium C-103 */
    public static ExtensionDesign standard() {
        return new ExtensionDesign(
                JacketInputs.EXTENSION.standing().value(),
                JacketInputs.EXTENSION_MATERIAL.standing().value(),
                OptionalDouble.empty());
    }

    /**
     * @param areaRatio area ratio behind the throat (-)
     * @return what the wall is there
     */
    public ExtensionKind kindAt(double areaRatio) {
        return liningEnd.isPresent() && areaRatio > liningEnd.getAsDouble() ? ExtensionKind.RADIATING : kind;
    }
}
