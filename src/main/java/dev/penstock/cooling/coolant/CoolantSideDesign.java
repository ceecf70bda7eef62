package dev.penstock.cooling.coolant;

import java.util.Objects;

/**
 * How heat reaches the coolant from the wall.
 *
 * @param correlation heat transfer correlation
 * @param curvature whether the curvature of the throat raises friction and heat transfer
 * @param roughWall whether a rough wall raises heat transfer along with friction
 */
public record CoolantSideDesign(Correlation correlation, boolean curvature, boolean roughWall) {

    /** Heat transfer correlations. */
    public enum Correlation {
        /** What {@code [cooling]} of the coolant's file names, by the side of the critical pressure on which it enters. */
        AUTOMATIC,
        DITTUS_BOELTER,
        SIEDER_TATE,
        GNIELINSKI,
        MCCARTHY_WOLF,
        TAYLOR,
        HESS_KUNZ,
        SCHACHT_QUENTMEYER,
        SPENCER_ROUSAR,
        JACKSON,
        KEROSENE
    }

    public CoolantSideDesign {
        Objects.requireNonNull(correlation, "correlation");
    }
}
