package dev.penstock;

/**
 * A design limit held against a computed value. A missed limit is part of an answer, not a failure.
 *
 * @param name what is limited
 * @param value computed value, in {@code unit}
 * @param bound bound, in {@code unit}
 * @param unit SI unit as text; empty for numbers without dimension
 * @param upper whether the bound is the highest allowed value; otherwise it is the lowest
 * @param source where the bound comes from
 * @param kept whether the value keeps the bound
 * @param margin distance to the bound as a fraction of it (-), negative when missed; where the bound is zero the distance itself
 */
public record Limit(
        String name,
        double value,
        double bound,
        String unit,
        boolean upper,
        String source,
        boolean kept,
        double margin) {}
