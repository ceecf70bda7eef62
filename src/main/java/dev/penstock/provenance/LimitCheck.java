package dev.penstock.provenance;

import dev.penstock.errors.Require;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A design limit held against a computed value. A missed limit is a result, not an error. A limit by which the sizing chose
 * a speed or bearings is kept by that choice, as nearly as the choice closes: it is no margin.
 *
 * @param kind what it bounds
 * @param owner name of the part that it is held against, for example "fuel pump"
 * @param value computed value, in {@code unit}
 * @param limit bound, in {@code unit}
 * @param unit SI unit as text
 * @param upper whether the bound is an upper one; otherwise a lower one
 * @param source where the bound comes from: the concept file, a source key, or "common practice, no source"
 * @param sizing whether the sizing chose something to keep it
 */
public record LimitCheck(
        LimitKind kind,
        String owner,
        double value,
        double limit,
        String unit,
        boolean upper,
        String source,
        boolean sizing) {

    /** The tightest first, those by which something was chosen last. */
    public static final Comparator<LimitCheck> TIGHTEST_FIRST =
            Comparator.<LimitCheck, Boolean>comparing(l -> l.sizing && l.met()).thenComparingDouble(LimitCheck::margin);

    /** What a solver leaves of a limit that it was held to (-). */
    public static final double ROUND_OFF = 1e-6;

    /** What the choice of a speed, made in the first rounds of a balance, leaves of the limits it was made by (-). */
    public static final double SIZING_SLACK = 5e-3;

    /** How far the smooth choice of a speed may stay inside the limit that sets it (-). */
    private static final double SETS_WITHIN = 0.03;

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
        return new LimitCheck(kind, owner, value, limit, unit, true, source, false);
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
        return new LimitCheck(kind, owner, value, limit, unit, false, source, false);
    }

    /**
     * @param bound another bound, in {@code unit}
     * @return the same value held against that
     */
    public LimitCheck against(double bound) {
        return new LimitCheck(kind, owner, value, bound, unit, upper, source, sizing);
    }

    /** @return the same limit, by which something was chosen */
    public LimitCheck asSizing() {
        return new LimitCheck(kind, owner, value, limit, unit, upper, source, true);
    }

    /** @return whether the limit is kept, but for what solver and sizing leave */
    public boolean met() {
        return slack() >= 0;
    }

    /** @return margin, with what solver and sizing leave (-); zero or more where the limit counts as kept */
    public double slack() {
        return margin() + (sizing ? SIZING_SLACK : ROUND_OFF);
    }

    /** @return what it sets: it is one of those by which that was chosen, and is used up */
    public LimitKind.Choice sets() {
        return sizing && met() && margin() < SETS_WITHIN ? kind.sets() : LimitKind.Choice.NOTHING;
    }

    /** @return what became of it, for people */
    public String verdict() {
        return !met() ? "MISSED" : sets() == LimitKind.Choice.NOTHING ? "kept" : "sets " + sets().title();
    }

    /**
     * @param limits limits
     * @return those by which nothing was chosen, or that are missed for all that: their margins tell engines apart
     */
    public static List<LimitCheck> margins(List<LimitCheck> limits) {
        return limits.stream().filter(l -> !l.sizing || !l.met()).toList();
    }

    /**
     * @param limits limits
     * @return the one with the least margin of those by which nothing was chosen
     */
    public static Optional<LimitCheck> tightest(List<LimitCheck> limits) {
        return margins(limits).stream().min(Comparator.comparingDouble(LimitCheck::margin));
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
