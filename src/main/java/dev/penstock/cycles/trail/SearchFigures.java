package dev.penstock.cycles.trail;

import static dev.penstock.provenance.Place.Role.BEFORE;
import static dev.penstock.provenance.Place.fixed;
import static dev.penstock.provenance.Place.own;
import static dev.penstock.provenance.Place.values;

import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.cycles.origin.InputPaths;
import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.questions.LimitSearch;
import dev.penstock.cycles.questions.LimitSetting;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Place;
import dev.penstock.quantities.Notation;
import java.util.List;
import java.util.Optional;

/** What a search for the highest chamber pressure publishes. */
public final class SearchFigures {

    static final ModelCard SEARCH = ModelCard.definition(
            "cycles.limit-search",
            "Highest chamber pressure that keeps every limit that counts",
            "p_c such that the least margin of the limits that count is zero, or where solutions turn back",
            "one crossing between the last pressure that keeps them and the first that does not",
            "tolerance of the search");
    private static final ModelCard BEST_PRESSURE = ModelCard.definition(
            "cycles.best-pressure",
            "Best chamber pressure within the limits",
            "p_c at or below the highest at which impulse is greatest, or start mass over payload least",
            "one best pressure between two rungs of the search",
            "1.5 % of the pressure; impulse is flat there");
    private static final ModelCard WORTH = ModelCard.definition(
            "cycles.limit-worth",
            "What a limit is worth",
            "(Δp_c/p_c)/(Δlimit/limit), the search run again with that limit changed",
            "small changes, all other limits as they are",
            "that of the search");

    /** Chamber pressure that the search found, where the engine's own figures begin. */
    static final String PRESSURE = InputPaths.path(ConceptTables.ENGINE.of(EngineInputs.CHAMBER_PRESSURE));

    private static final String CHANGE = "relative_change";
    private static final String FOUND = "chamber_pressure_Pa";
    private static final Origin STATED = Origin.given("concept", "as the concept states it");
    private static final Origin STEP = Origin.given("step of the search", "chosen here");

    /** A limit that counts, as the engine publishes it. */
    private static final FigureTable<LimitCheck> HELD = CheckFigures.LIMITS.again(ModelCard.SAME, LimitCheck::path);

    /** What a limit is worth. */
    public static final FigureTable<LimitResult.Sensitivity> SENSITIVITIES =
            FigureTable.<LimitResult.Sensitivity>ofOne()
                    .word("limit", "limit", LimitResult.Sensitivity::limit)
                    .number(
                            "elasticity",
                            "gain per change",
                            Notation.fixed("", "", 1, 2),
                            LimitResult.Sensitivity::elasticity)
                    .by(WORTH, own(FOUND), fixed(FOUND), own(CHANGE))
                    .number(CHANGE, "by", Notation.PERCENT, LimitResult.Sensitivity::change)
                    .from((s, at) -> STEP)
                    .number(FOUND, "chamber", Notation.PRESSURE, LimitResult.Sensitivity::chamberPressure)
                    .by(SEARCH, values(BEFORE), own(CHANGE))
                    .word("title", "limit changed", s -> CheckFigures.title(s.limit()))
                    .outsideDocuments()
                    .table();

    /** Chamber pressures tried. */
    public static final FigureTable<LimitResult.Point> POINTS = FigureTable.<LimitResult.Point>ofOne()
            .number(FOUND, "chamber", Notation.PRESSURE, LimitResult.Point::chamberPressure)
            .from((point, at) -> STEP)
            .word("within_limits", "within limits", LimitResult.Point::withinLimits)
            .word("limit", "limit", LimitResult.Point::limit)
            .word("kept", "within limits", p -> p.withinLimits() ? "yes" : "no")
            .outsideDocuments()
            .word("title", "tightest limit", p -> CheckFigures.title(p.limit()))
            .outsideDocuments()
            .table();

    /** What the search puts in the place of what the concept states. */
    public static final FigureTable<LimitSetting> SETTINGS = FigureTable.<LimitSetting>ofOne()
            .word("key", "key", LimitSetting::key)
            .number("value", "taken", s -> Notation.ofUnit(s.unit()).namingUnit(), LimitSetting::value)
            .by(SEARCH, fixed(FOUND))
            .number("stated", "stated", s -> Notation.ofUnit(s.unit()).namingUnit(), LimitSetting::stated)
            .from((s, at) -> STATED)
            .word("unit", "unit", LimitSetting::unit)
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
            .number(FOUND, "chamber pressure", Notation.PRESSURE, LimitResult.Best::chamberPressure)
            .by(BEST_PRESSURE, fixed(FOUND))
            .word("merit", "best for", LimitResult.Best::merit)
            .number("value", "value", best -> Notation.ofUnit(best.unit()).namingUnit(), LimitResult.Best::value)
            .by(BEST_PRESSURE, own(FOUND))
            .word("unit", "unit", LimitResult.Best::unit)
            .word("ends_at", "ended by", LimitResult.Best::limit)
            .word("explanation", "why", LimitResult.Best::why)
            .table();

    /** The search itself. */
    static final FigureTable<LimitResult> SEARCHED = search().table();

    /** The search with the engine that it found. */
    public static final FigureTable<LimitResult> ALL = search().part(
                    "balance", r -> Optional.of(r.balance()), EngineFigures.ALL)
            .table();

    private SearchFigures() {}

    private static FigureTable.Builder<LimitResult> search() {
        return FigureTable.<LimitResult>ofOne()
                .word("name", "concept", r -> r.balance().concept().name())
                .number(FOUND, "chamber pressure", Notation.PRESSURE, LimitResult::chamberPressure)
                .by(ModelCard.SAME, fixed(PRESSURE))
                .word("binding_limit", "binds", LimitResult::bindingLimit)
                .word("explanation", "explanation", LimitResult::explanation)
                .each("settings", LimitResult::settings, SETTINGS)
                .part("best", LimitResult::best, BEST)
                .each("held", LimitResult::held, HELD)
                .each("left_out", LimitResult::leftOut, LEFT_OUT)
                .each("sensitivities", LimitResult::sensitivities, SENSITIVITIES, SearchFigures::changed)
                .each("points", LimitResult::points, POINTS);
    }

    /** Bounds of the limits that count, where the engine publishes them. */
    static List<String> bounds(List<LimitCheck> limits) {
        return limits.stream().map(limit -> limit.path() + ".limit").toList();
    }

    /** The limits that are changed together, since one key of the concept sets them. */
    private static Place changed(LimitResult result, LimitResult.Sensitivity sensitivity, Place at) {
        return at.with(
                BEFORE,
                bounds(result.held().stream()
                        .filter(limit -> LimitSearch.key(limit).equals(sensitivity.limit()))
                        .toList()));
    }
}
