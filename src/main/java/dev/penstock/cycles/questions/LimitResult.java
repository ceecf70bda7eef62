package dev.penstock.cycles.questions;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.LimitCheck;
import java.util.List;

/**
 * How far a concept reaches: the highest chamber pressure within its hardware limits.
 *
 * @param chamberPressure highest chamber pressure (Pa)
 * @param balance the engine at that pressure
 * @param bindingLimit name of the limit that stops it there
 * @param explanation one sentence that says so with the numbers
 * @param held the limits that the search kept, with their margins at that pressure
 * @param sensitivities what raising each limit would bring
 * @param points chamber pressures tried, rising
 */
public record LimitResult(
        double chamberPressure,
        EngineBalance balance,
        String bindingLimit,
        String explanation,
        List<LimitCheck> held,
        List<Sensitivity> sensitivities,
        List<Point> points) {

    /**
     * A chamber pressure that was tried.
     *
     * @param chamberPressure chamber pressure (Pa)
     * @param withinLimits whether the engine closes there within its limits
     * @param limit the limit with the least margin there
     */
    public record Point(double chamberPressure, boolean withinLimits, String limit) {}

    /**
     * What a limit is worth.
     *
     * @param limit name of the limit
     * @param elasticity relative gain of chamber pressure over relative change of the limit (-); zero where another binds
     * @param change relative change of the limit it was computed with (-)
     * @param chamberPressure highest chamber pressure with the limit changed (Pa)
     */
    public record Sensitivity(String limit, double elasticity, double change, double chamberPressure) {}

    public LimitResult {
        held = List.copyOf(held);
        sensitivities = List.copyOf(sensitivities);
        points = List.copyOf(points);
    }
}
