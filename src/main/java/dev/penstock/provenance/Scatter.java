package dev.penstock.provenance;

/**
 * How far a number may lie from the value in use, told without that value, so that a spread is always centred on what the
 * calculation really takes.
 * <pre>
 * lowest  = anchor + low (value − anchor) − below
 * highest = anchor + high (value − anchor) + above
 * </pre>
 *
 * @param anchor number that the value departs from, in its unit
 * @param low distance of the lowest from the anchor over that of the value (-)
 * @param high distance of the highest from the anchor over that of the value (-)
 * @param below further distance of the lowest, in the unit of the value
 * @param above further distance of the highest, in the unit of the value
 */
public record Scatter(double anchor, double low, double high, double below, double above) {

    /**
     * @param low lowest over the value in use (-), at most 1
     * @param high highest over the value in use (-), at least 1
     * @return bounds in proportion to the value
     */
    public static Scatter factors(double low, double high) {
        return from(0, low, high);
    }

    /**
     * @param below distance of the lowest from the value in use, in its unit
     * @param above distance of the highest from the value in use, in its unit
     * @return bounds at a distance from the value
     */
    public static Scatter offsets(double below, double above) {
        return new Scatter(0, 1, 1, below, above);
    }

    /**
     * @param anchor number that the value departs from, for example the efficiency 1 of a part without loss
     * @param low distance of the lowest from the anchor over that of the value in use (-)
     * @param high distance of the highest from the anchor over that of the value in use (-)
     * @return bounds in proportion to the distance of the value from the anchor
     */
    public static Scatter from(double anchor, double low, double high) {
        return new Scatter(anchor, low, high, 0, 0);
    }

    /**
     * @param value the value in use
     * @param least smallest value that the input allows
     * @param most largest value that the input allows
     * @return its spread, cut off at what is allowed; its most likely value is the value in use
     */
    public Spread around(double value, double least, double most) {
        double lowest = anchor + low * (value - anchor) - below;
        double highest = anchor + high * (value - anchor) + above;
        return new Spread(Math.min(value, Math.max(least, lowest)), value, Math.max(value, Math.min(most, highest)));
    }
}
