package dev.penstock.cycles.sheet;

import dev.penstock.errors.Require;

/**
 * What is left of one closing equation at the solution.
 *
 * @param name what the equation balances, for example "power of the fuel shaft"
 * @param unit SI unit of value and scale
 * @param value what is left, in {@code unit}
 * @param scale size of the terms that are balanced, in {@code unit}, above zero
 */
public record Residual(String name, String unit, double value, double scale) {

    public Residual {
        Require.finite(name, unit, value);
        Require.positive(name, unit, scale);
    }

    /** @return |value| over scale (-) */
    public double relative() {
        return Math.abs(value) / scale;
    }
}
