package dev.penstock.provenance;

import dev.penstock.errors.Require;

/**
 * A design limit held against a computed value. A missed limit is a result, not an error.
 *
 * @param kind what it bounds
 * @param owner name of the part that it is held against, for example "fuel pump"
 * @param value computed value, in {@code unit}
 * @param limit bound, in {@code unit}
 * @param unit SI unit as text
 * @param upper whether the bound is an upper one; otherwise a lower one
 * @param source where the bound comes from: the concept file, a source key, or "common practice, no source"
 */
public record LimitCheck(
        LimitKind kind, String owner, double value, double limit, String unit, boolean upper, String source) {

    public LimitCheck {
        Require.finite(owner + "." + kind.key(), unit, value);
        Require.finite(owner + "." + kind.key(), unit, limit);
    }

    /** @return dotted name, for example "fuel pump.tip_speed" */
    public String name() {
        return owner + "." + kind.key();
    }

    /** @return path of its value, bound and margin in a trail */
    public String path() {
        return "limits." + Trail.slug(name());
    }

    /**
     * @param kind what it bounds
     * @param owner name of the part that it is held against
     * @param value computed value
     * @param limit highest allowed value, same unit
     * @param unit SI unit as text
     * @param source where the bound comes from
     * @return the check
     */
    public static LimitCheck atMost(
            LimitKind kind, String owner, double value, double limit, String unit, String source) {
        return new LimitCheck(kind, owner, value, limit, unit, true, source);
    }

    /**
     * @param kind what it bounds
     * @param owner name of the part that it is held against
     * @param value computed value
     * @param limit lowest allowed value, same unit
     * @param unit SI unit as text
     * @param source where the bound comes from
     * @return the check
     */
    public static LimitCheck atLeast(
            LimitKind kind, String owner, double value, double limit, String unit, String source) {
        return new LimitCheck(kind, owner, value, limit, unit, false, source);
    }

    /** @return whether the limit is kept */
    public boolean met() {
        return upper ? value <= limit : value >= limit;
    }

    /**
     * @return distance to the bound as a fraction of it (-): positive when kept, negative when missed; where the bound is
     *     zero, the distance itself
     */
    public double margin() {
        double distance = upper ? limit - value : value - limit;
        return limit == 0 ? distance : distance / Math.abs(limit);
    }
}
