package dev.penstock.chamber.design;

import dev.penstock.input.Input;
import dev.penstock.provenance.Scatter;
import dev.penstock.quantities.Range;

/**
 * Where a thrust chamber falls short of its ideal, in the order in which the losses are taken off. The first two act on
 * the characteristic velocity, the others on the thrust coefficient.
 */
public enum LossKind {
    /** Incomplete vaporisation, mixing and reaction in the combustor. */
    ENERGY_RELEASE("energy_release", "energy release", true),
    /** Fuel spent on a cool zone along the wall. */
    FILM_COOLING("film_cooling", "film-cooling zone", true),
    /** Recombination that does not keep up with the expansion. */
    KINETICS("kinetics", "finite-rate kinetics", false),
    /** Exit velocity not parallel to the axis. */
    DIVERGENCE("divergence", "divergence", false),
    /** Friction along the wall. */
    BOUNDARY_LAYER("boundary_layer", "boundary layer", false),
    /** Condensed particles that lag behind the gas in velocity and temperature. */
    TWO_PHASE("two_phase", "two-phase flow", false);

    private final String key;
    private final String title;
    private final boolean onCharacteristicVelocity;

    LossKind(String key, String title, boolean onCharacteristicVelocity) {
        this.key = key;
        this.title = title;
        this.onCharacteristicVelocity = onCharacteristicVelocity;
    }

    /**
     * What the loss leaves, stated by a file in place of its model. The model may be off by half the loss either way, that of
     * energy release by two and a half points, as most published vacuum impulses lie within that of the computed ones
     * (docs/validation/performance.md, decision 0173).
     *
     * @return the input
     */
    public Input<Double> efficiency() {
        return Input.ratio(key, Range.of(0.1, 1), "What is left of the ideal value behind the loss by " + title)
                .computed("by the model of this loss")
                .scatter(this == ENERGY_RELEASE ? Scatter.offsets(0.025, 0.025) : Scatter.from(1, 1.5, 0.5));
    }

    /** @return key in files */
    public String key() {
        return key;
    }

    /** @return name for people */
    public String title() {
        return title;
    }

    /** @return whether it lowers the characteristic velocity; otherwise it lowers the thrust coefficient */
    public boolean onCharacteristicVelocity() {
        return onCharacteristicVelocity;
    }
}
