package dev.penstock.cooling.gas;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Rise of the convective coefficient from the injector face to where the flame is developed.
 * <pre>h = h_model min(1, s/L),   s distance from the face, L = 90 mm, at most half of the chamber's length</pre>
 * Measured: within 127 mm of the injector of a chamber of 144 mm and 61 elements the flux follows the distance from the face, further on
 * the velocity [dexter-2004]; with one element in a chamber of 38 mm the flux is largest 51 to 76 mm from the face [marshall-2005]. L is
 * the geometric mean of the two; a straight line is the simplest rise that begins at nothing (own choice).
 */
public final class HeatRelease {

    public static final ModelCard CARD = new ModelCard(
            "cooling.heat-release",
            "Heat flux developing from the injector face",
            "h = h_model min(1, s/L), L = 90 mm",
            "injectors of many small elements; L from 51 to 127 mm measured",
            "a factor of 1.5 in L",
            List.of("dexter-2004", "marshall-2005"));

    /** Distance over which the flux develops (m). */
    public static final double LENGTH = 0.09;

    /** Largest share of the chamber's length that it may take (-). */
    private static final double LARGEST_SHARE = 0.5;

    private HeatRelease() {}

    /**
     * @param distance distance from the injector face (m)
     * @param length distance over which the flux develops (m)
     * @param chamber distance from the injector face to the throat (m)
     * @return coefficient over that of the developed flow (-)
     */
    public static double share(double distance, double length, double chamber) {
        double developed = Math.min(length, LARGEST_SHARE * chamber);
        return developed > 0 ? Math.max(0, Math.min(1, distance / developed)) : 1;
    }
}
