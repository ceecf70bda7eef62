package dev.penstock.cycles.questions;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.solving.Balancer;
import dev.penstock.provenance.LimitCheck;
import java.util.List;
import java.util.Optional;

/**
 * How far a concept reaches: the highest chamber pressure within its limits, and the best one at or below it.
 *
 * @param chamberPressure highest chamber pressure (Pa)
 * @param balance the engine at that pressure
 * @param bindingLimit name of the limit that stops it there
 * @param explanation one sentence that says so with the numbers
 * @param settings what the search puts in the place of what the concept states, the chamber pressure first
 * @param best the best pressure, where it was asked for
 * @param held the limits that count, all of the balance but those left out, with their margins at that pressure
 * @param leftOut limits that do not count, and why
 * @param sensitivities what raising each limit would bring
 * @param points chamber pressures tried, rising
 * @param solutions solutions at those pressures, from which a search for a similar concept starts
 */
public record LimitResult(
        double chamberPressure,
        EngineBalance balance,
        String bindingLimit,
        String explanation,
        List<LimitSetting> settings,
        Optional<Best> best,
        List<LimitCheck> held,
        List<LeftOut> leftOut,
        List<Sensitivity> sensitivities,
        List<Point> points,
        List<Balancer.Solved> solutions) {

    /**
     * The chamber pressure that is best for something.
     *
     * @param chamberPressure that pressure (Pa)
     * @param balance the engine there
     * @param merit what it is best for
     * @param value its value, in {@code unit}
     * @param unit SI unit as text
     * @param limit the limit that ends it; "optimum" where it is worse beyond though the limits are kept
     * @param why one sentence on that
     */
    public record Best(
            double chamberPressure,
            EngineBalance balance,
            String merit,
            double value,
            String unit,
            String limit,
            String why) {}

    /**
     * A limit that does not count in a search.
     *
     * @param name its name
     * @param reason why
     */
    public record LeftOut(String name, String reason) {}

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
        leftOut = List.copyOf(leftOut);
        solutions = List.copyOf(solutions);
        sensitivities = List.copyOf(sensitivities);
        points = List.copyOf(points);
    }
}
