package dev.penstock.provenance;

import dev.penstock.errors.Require;

/**
 * How sure a number is: a triangular distribution between two bounds with its most likely value. A study samples it; an
 * estimate uses {@link #mode()}.
 *
 * @param low lowest value that is believed possible, in the unit of the quantity
 * @param mode most likely value, same unit
 * @param high highest value that is believed possible, same unit
 */
public record Spread(double low, double mode, double high) {

    public Spread {
        Require.finite("spread", "lowest value", low);
        Require.finite("spread", "highest value", high);
        Require.within("spread", "most likely value", mode, low, high);
    }

    /**
     * @param value a number taken as exact
     * @return the spread of zero width
     */
    public static Spread exactly(double value) {
        return new Spread(value, value, value);
    }

    /**
     * Inverse of the cumulative distribution, so that any stream of uniform numbers (random or low-discrepancy) samples it.
     *
     * @param probability cumulative probability (-), 0 to 1
     * @return the value below which that share of cases lies, same unit as the bounds
     */
    public double quantile(double probability) {
        Require.within("spread", "probability (-)", probability, 0, 1);
        double width = high - low;
        if (width == 0) {
            return mode;
        }
        double rise = (mode - low) / width;
        return probability < rise
                ? low + Math.sqrt(probability * width * (mode - low))
                : high - Math.sqrt((1 - probability) * width * (high - mode));
    }

    /**
     * Cumulative distribution, the inverse of {@link #quantile}.
     *
     * @param value any value, in the unit of the bounds
     * @return share of cases below it (-); of a spread without width 1/2 at its value
     */
    public double probability(double value) {
        if (value < low || value > high) {
            return value < low ? 0 : 1;
        }
        double width = high - low;
        if (width == 0) {
            return 0.5;
        }
        return value < mode
                ? (value - low) * (value - low) / (width * (mode - low))
                : high == mode ? 1 : 1 - (high - value) * (high - value) / (width * (high - mode));
    }

    /** @return mean of the distribution, same unit as the bounds */
    public double mean() {
        return (low + mode + high) / 3;
    }

    /** @return standard deviation, same unit as the bounds */
    public double standardDeviation() {
        double a = low;
        double b = high;
        double c = mode;
        return Math.sqrt(Math.max(0, a * a + b * b + c * c - a * b - a * c - b * c) / 18);
    }

    /**
     * @param factor positive number
     * @return all three values times the factor
     */
    public Spread times(double factor) {
        Require.positive("spread", "factor (-)", factor);
        return new Spread(low * factor, mode * factor, high * factor);
    }

    /**
     * @param value another most likely value, same unit
     * @return the spread about that value: bounds in proportion, or at the same distance from a most likely value of zero
     */
    public Spread about(double value) {
        double lowest = mode == 0 ? value + low : low * (value / mode);
        double highest = mode == 0 ? value + high : high * (value / mode);
        return new Spread(Math.min(value, lowest), value, Math.max(value, highest));
    }
}
