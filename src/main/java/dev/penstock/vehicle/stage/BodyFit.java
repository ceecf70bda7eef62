package dev.penstock.vehicle.stage;

import dev.penstock.vehicle.mass.BodyShape;

/**
 * Whether the tanks of a stage fit into the body that it is given.
 *
 * @param body the body
 * @param tanks volume of all its tanks (m³)
 */
public record BodyFit(BodyShape body, double tanks) {

    /** @return whether they fit */
    public boolean fits() {
        return body.missing(tanks) <= 0;
    }
}
