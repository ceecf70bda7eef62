package dev.penstock.cooling.design;

import java.util.Optional;

/** How the nozzle behind the jacket is kept from burning. One that tubes cool is a circuit of its own. */
public enum ExtensionKind {
    /** A sheet that radiates to the outside. */
    RADIATING("niobium-c103"),
    /** A sheet under turbine gas that is led into the nozzle where it begins or before; it radiates besides. */
    FILM_COOLED("inconel-625"),
    /** A liner that chars; how deep follows from the time of burning, see {@code protect}. */
    ABLATIVE("");

    private final String material;

    ExtensionKind(String material) {
        this.material = material;
    }

    /** @return id of the sheet's usual material; empty for what is no sheet */
    public Optional<String> usualMaterial() {
        return material.isEmpty() ? Optional.empty() : Optional.of(material);
    }
}
