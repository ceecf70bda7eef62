package dev.penstock.chamber;

import dev.penstock.chamber.flow.NearExpansion;
import dev.penstock.chamber.loss.NearLosses;
import java.util.OptionalDouble;

/**
 * Where the search for a chamber has come by, for that of nearly the same chamber to start from. It moves along with each chamber that
 * is sized with it; one that is sized with a new one starts afresh. What is found does not depend on it beyond the tolerances of
 * {@link ThrustChamber} and {@link NearExpansion}.
 */
public final class NearChamber {

    private final NearExpansion gas = new NearExpansion();
    private final NearLosses losses = new NearLosses();
    private OptionalDouble throatArea = OptionalDouble.empty();
    private double slope;

    NearExpansion gas() {
        return gas;
    }

    NearLosses losses() {
        return losses;
    }

    /** Throat area found last (m²). */
    OptionalDouble throatArea() {
        return throatArea;
    }

    void foundThroatArea(double area) {
        throatArea = OptionalDouble.of(area);
    }

    /** Change of the throat area that the losses ask for with the one that they were computed for, as last seen (-). */
    double slope() {
        return slope;
    }

    void foundSlope(double seen) {
        slope = seen;
    }
}
