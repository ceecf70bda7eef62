package dev.penstock.reports.vehicle;

import static dev.penstock.quantities.Notation.significant;

import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.engine.BalanceText;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.TextTable;
import dev.penstock.vehicle.cost.CostTerms;
import dev.penstock.vehicle.cost.CostTrade;
import dev.penstock.vehicle.plan.Recovery;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Effort of a launch with and without coming back, as JSON document and terminal table. */
public final class CostView {

    private static final Notation EFFORT = significant("", 3);

    /** Figures of what was asked. */
    private static final FigureTable<CostTerms> TERMS = FigureTable.<CostTerms>ofOne()
            .count("uses", "flights of a stage", CostTerms::uses)
            .number("refurbishment_low", "refurbishment, lowest", EFFORT, t -> t.refurbishment()
                    .low())
            .number("refurbishment", "refurbishment", EFFORT, t -> t.refurbishment()
                    .mode())
            .number("refurbishment_high", "refurbishment, highest", EFFORT, t -> t.refurbishment()
                    .high())
            .number("launches_per_year", "launches of a year", EFFORT, CostTerms::launchesPerYear)
            .number("years", "years", EFFORT, CostTerms::years)
            .number("learning", "learning slope", EFFORT, CostTerms::learning)
            .table();

    /** Figures of a row. */
    private static final FigureTable<CostTrade.Row> ROWS = FigureTable.<CostTrade.Row>ofOne()
            .word("mode", "first stage", row -> name(row.mode()))
            .count("uses", "flights of it", row -> row.cost().uses())
            .number("built", "built", EFFORT, row -> row.cost().built())
            .number("building_work_years", "building", EFFORT, row -> row.cost().building())
            .number("refurbishing_work_years", "refurbishing", EFFORT, row -> row.cost()
                    .refurbishing()
                    .mode())
            .number("launch_low_work_years", "launch, lowest", EFFORT, row -> row.cost()
                    .total()
                    .low())
            .number("launch_work_years", "launch (work-years)", EFFORT, row -> row.cost()
                    .total()
                    .mode())
            .number("launch_high_work_years", "launch, highest", EFFORT, row -> row.cost()
                    .total()
                    .high())
            .number("payload_kg", "payload", Notation.MASS, row -> row.cost().payload())
            .number("work_years_per_tonne", "work-years/t", EFFORT, row -> row.cost()
                    .perTonne())
            .table();

    /** Figures of a break-even. */
    private static final FigureTable<CostTrade.BreakEven> BREAK_EVENS = FigureTable.<CostTrade.BreakEven>ofOne()
            .word("mode", "first stage", even -> name(even.mode()))
            .number("payload_lost", "payload lost", significant("", "%", 100, 3), CostTrade.BreakEven::payloadLost)
            .optional("uses_low", "cheap refurbishment", Notation.COUNT, even -> wide(even.cheap()))
            .optional("uses", "pays from flights", Notation.COUNT, even -> wide(even.usual()))
            .optional("uses_high", "dear refurbishment", Notation.COUNT, even -> wide(even.dear()))
            .table();

    private CostView() {}

    private static OptionalDouble wide(OptionalInt value) {
        return value.isPresent() ? OptionalDouble.of(value.getAsInt()) : OptionalDouble.empty();
    }

    private static String name(Recovery.Mode mode) {
        return mode == Recovery.Mode.NONE ? "lost" : mode.key().replace('-', ' ');
    }

    /**
     * @param trade effort of launches
     * @return JSON document
     */
    public static Map<String, Object> json(CostTrade trade) {
        Map<String, Object> cost = new LinkedHashMap<>();
        cost.put("asked", FigureJson.of(TERMS, trade.terms()));
        cost.put("rows", FigureJson.each(ROWS, trade.rows()));
        cost.put("break_even", FigureJson.each(BREAK_EVENS, trade.breakEvens()));
        cost.put("warnings", FigureJson.each(CheckFigures.WARNINGS, List.of(CostTrade.WEAKEST)));
        return Map.of("cost", cost);
    }

    /**
     * @param trade effort of launches
     * @return tables for a terminal
     */
    public static String text(CostTrade trade) {
        String line = System.lineSeparator();
        StringBuilder text = new StringBuilder("Effort of a launch: the weakest numbers of all")
                .append(line)
                .append(line);
        text.append(TextTable.of(FigureRows.list(
                "",
                ROWS,
                "rows",
                trade.rows(),
                "mode uses built building_work_years refurbishing_work_years launch_low_work_years launch_work_years"
                        + " launch_high_work_years payload_kg work_years_per_tonne")));
        text.append(line);
        text.append(TextTable.of(FigureRows.list(
                "", BREAK_EVENS, "break_even", trade.breakEvens(), "mode payload_lost uses_low uses uses_high")));
        text.append(line);
        return text.append(BalanceText.warnings(List.of(CostTrade.WEAKEST))).toString();
    }
}
