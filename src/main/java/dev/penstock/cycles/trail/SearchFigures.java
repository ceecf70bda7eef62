package dev.penstock.cycles.trail;

import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import java.util.Optional;

/** What a search for the highest chamber pressure publishes. */
public final class SearchFigures {

    /** What a limit is worth. */
    public static final FigureTable<LimitResult.Sensitivity> SENSITIVITIES =
            FigureTable.<LimitResult.Sensitivity>ofOne()
                    .word("limit", "limit", LimitResult.Sensitivity::limit)
                    .number(
                            "elasticity",
                            "gain per change",
                            Notation.fixed("", "", 1, 2),
                            LimitResult.Sensitivity::elasticity)
                    .number("relative_change", "by", Notation.PERCENT, LimitResult.Sensitivity::change)
                    .number(
                            "chamber_pressure_Pa",
                            "chamber",
                            Notation.PRESSURE,
                            LimitResult.Sensitivity::chamberPressure)
                    .word("title", "limit changed", s -> CheckFigures.title(s.limit()))
                    .outsideDocuments()
                    .table();

    /** Chamber pressures tried. */
    public static final FigureTable<LimitResult.Point> POINTS = FigureTable.<LimitResult.Point>ofOne()
            .number("chamber_pressure_Pa", "chamber", Notation.PRESSURE, LimitResult.Point::chamberPressure)
            .word("within_limits", "within limits", LimitResult.Point::withinLimits)
            .word("limit", "limit", LimitResult.Point::limit)
            .word("kept", "within limits", p -> p.withinLimits() ? "yes" : "no")
            .outsideDocuments()
            .word("title", "tightest limit", p -> CheckFigures.title(p.limit()))
            .outsideDocuments()
            .table();

    /** Limits that do not count. */
    public static final FigureTable<LimitResult.LeftOut> LEFT_OUT = FigureTable.<LimitResult.LeftOut>ofOne()
            .word("limit", "limit", LimitResult.LeftOut::name)
            .word("reason", "reason", LimitResult.LeftOut::reason)
            .word("title", "limit left out", l -> CheckFigures.title(l.name()))
            .outsideDocuments()
            .table();

    /** The best chamber pressure. */
    public static final FigureTable<LimitResult.Best> BEST = FigureTable.<LimitResult.Best>ofOne()
            .number("chamber_pressure_Pa", "chamber pressure", Notation.PRESSURE, LimitResult.Best::chamberPressure)
            .word("merit", "best for", LimitResult.Best::merit)
            .number("value", "value", best -> Notation.ofUnit(best.unit()).namingUnit(), LimitResult.Best::value)
            .word("unit", "unit", LimitResult.Best::unit)
            .word("ends_at", "ended by", LimitResult.Best::limit)
            .word("explanation", "why", LimitResult.Best::why)
            .table();

    /** The search with the engine that it found. */
    public static final FigureTable<LimitResult> ALL = FigureTable.<LimitResult>ofOne()
            .word("name", "concept", r -> r.balance().concept().name())
            .number("chamber_pressure_Pa", "chamber pressure", Notation.PRESSURE, LimitResult::chamberPressure)
            .word("binding_limit", "binds", LimitResult::bindingLimit)
            .word("explanation", "explanation", LimitResult::explanation)
            .part("best", LimitResult::best, BEST)
            .each("held", LimitResult::held, CheckFigures.LIMITS)
            .each("left_out", LimitResult::leftOut, LEFT_OUT)
            .each("sensitivities", LimitResult::sensitivities, SENSITIVITIES)
            .each("points", LimitResult::points, POINTS)
            .part("balance", r -> Optional.of(r.balance()), EngineFigures.ALL)
            .table();

    private SearchFigures() {}
}
