package dev.penstock.cycles.sheet;

import dev.penstock.errors.Require;
import java.util.List;

/**
 * What is left of one closing equation at the solution.
 *
 * @param name what the equation balances, for example "power of the fuel shaft"
 * @param unit SI unit of value and scale
 * @param value what is left, in {@code unit}
 * @param scale size of the terms that are balanced, in {@code unit}, above zero
 * @param terms paths of what is balanced, as in the trail
 */
public record Residual(String name, String unit, double value, double scale, List<String> terms) {

    public Residual {
        Require.finite(name, unit, value);
        Require.positive(name, unit, scale);
        terms = List.copyOf(terms);
    }

    /** @return |value| over scale (-) */
    public double relative() {
        return Math.abs(value) / scale;
    }
}
