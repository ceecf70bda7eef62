package dev.penstock.cooling.design;

import dev.penstock.cooling.wall.WallInputs;
import dev.penstock.errors.Require;
import java.util.OptionalDouble;

/**
 * Size of one channel at one place. Places between sections are interpolated over the logarithm of the area ratio, so
 * that a layout keeps its meaning when the throat changes size.
 *
 * @param areaRatio cross-section over throat area (-)
 * @param upstream whether the place is upstream of the throat
 * @param width channel width, or inner diameter of a tube (m)
 * @param height channel height; for a tube the same as the width (m)
 * @param wall thickness between gas and channel floor (m); empty takes the jacket's
 */
public record ChannelSection(double areaRatio, boolean upstream, double width, double height, OptionalDouble wall) {

    public ChannelSection {
        Require.within("channel section", "area ratio (-)", areaRatio, 1 - 1e-9, 1e4);
        Require.positive("channel section", "channel width (m)", width);
        Require.positive("channel section", "channel height (m)", height);
        wall.ifPresent(t -> Require.within(
                "channel section",
                "wall thickness (m)",
                t,
                WallInputs.THICKNESSES.low(),
                WallInputs.THICKNESSES.high()));
    }

    /** A channel under the jacket's own wall. */
    public ChannelSection(double areaRatio, boolean upstream, double width, double height) {
        this(areaRatio, upstream, width, height, OptionalDouble.empty());
    }

    /** @return place on one axis through the throat: logarithm of the area ratio, negative upstream */
    public double place() {
        double distance = Math.log(Math.max(areaRatio, 1));
        return upstream ? -distance : distance;
    }
}
