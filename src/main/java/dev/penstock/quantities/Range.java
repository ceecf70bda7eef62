package dev.penstock.quantities;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/**
 * A closed range of allowed values.
 *
 * @param low lowest allowed value, SI; may be negative infinity
 * @param high highest allowed value, SI; may be positive infinity
 */
public record Range(double low, double high) {

    /** Every finite number. */
    public static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** Numbers above zero. */
    public static final Range POSITIVE = new Range(Double.MIN_VALUE, Double.POSITIVE_INFINITY);

    /** Zero and above. */
    public static final Range NOT_NEGATIVE = new Range(0, Double.POSITIVE_INFINITY);

    /** Zero to one. */
    public static final Range FRACTION = new Range(0, 1);

    public Range {
        if (!(low <= high)) {
            throw new IllegalArgumentException("range from " + low + " to " + high + " is empty");
        }
    }

    /**
     * @param low lowest allowed value, SI
     * @param high highest allowed value, SI
     * @return the closed range
     */
    public static Range of(double low, double high) {
        return new Range(low, high);
    }

    /**
     * @param value value to test
     * @return whether the value is finite and inside; false for NaN
     */
    public boolean contains(double value) {
        return Double.isFinite(value) && value >= low && value <= high;
    }

    /**
     * @param unit SI unit to print
     * @return the range in words, with the unit
     */
    public String describe(String unit) {
        String end = unit.isEmpty() ? "" : " " + unit;
        if (this.equals(ANY)) {
            return "any finite value" + end;
        }
        if (low == Double.MIN_VALUE) {
            return high == Double.POSITIVE_INFINITY ? "above 0" + end : "above 0 and at most " + text(high) + end;
        }
        if (high == Double.POSITIVE_INFINITY) {
            return text(low) + end + " or more";
        }
        if (low == Double.NEGATIVE_INFINITY) {
            return "at most " + text(high) + end;
        }
        return text(low) + " to " + text(high) + end;
    }

    /**
     * @param unit unit to print
     * @param inUnit gives a value in SI in that unit
     * @return the range in words, with the unit
     */
    public String describe(String unit, DoubleUnaryOperator inUnit) {
        double least = low == Double.MIN_VALUE ? low : Double.isInfinite(low) ? low : inUnit.applyAsDouble(low);
        double most = Double.isInfinite(high) ? high : inUnit.applyAsDouble(high);
        return new Range(least, most).describe(unit);
    }

    private static String text(double x) {
        return String.format(Locale.ROOT, "%.6g", x)
                .replaceAll("(\\.\\d*?)0+($|e)", "$1$2")
                .replaceAll("\\.($|e)", "$1");
    }
}
