package dev.penstock.reports.vehicle;

import static dev.penstock.quantities.Notation.significant;

import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.concept.InputsAndWarnings;
import dev.penstock.reports.engine.BalanceText;
import dev.penstock.reports.page.Cautions;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.page.Pages;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.Software;
import dev.penstock.reports.text.TextTable;
import dev.penstock.vehicle.cost.CostRelations;
import dev.penstock.vehicle.cost.CostTerms;
import dev.penstock.vehicle.cost.CostTrade;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Effort of a launch with and without coming back, as JSON document, terminal table and page. */
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
            .word("mode", "first stage", row -> ReuseView.name(row.mode()))
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
            .word("mode", "first stage", even -> ReuseView.name(even.mode()))
            .number("payload_lost", "payload lost", significant("", "%", 100, 3), CostTrade.BreakEven::payloadLost)
            .optional("uses_low", "cheap refurbishment", Notation.COUNT, even -> wide(even.cheap()))
            .optional("uses", "pays from flights", Notation.COUNT, even -> wide(even.usual()))
            .optional("uses_high", "dear refurbishment", Notation.COUNT, even -> wide(even.dear()))
            .optional("refurbishment", "pays up to refurbishment", EFFORT, CostTrade.BreakEven::share)
            .table();

    private static final FigureTable<CostTrade.Point> POINTS = FigureTable.<CostTrade.Point>ofOne()
            .number("at", "at", Notation.COUNT, CostTrade.Point::at)
            .number("low_work_years_per_tonne", "lowest", EFFORT, p -> p.perTonne()
                    .low())
            .number("work_years_per_tonne", "work-years/t", EFFORT, p -> p.perTonne()
                    .mode())
            .number("high_work_years_per_tonne", "highest", EFFORT, p -> p.perTonne()
                    .high())
            .table();

    private static final FigureTable<CostTrade.Line> LINES = FigureTable.<CostTrade.Line>ofOne()
            .word("mode", "first stage", line -> ReuseView.name(line.mode()))
            .each("points", CostTrade.Line::points, POINTS)
            .table();

    private static final List<Ink> INKS = List.of(Ink.STEEL, Ink.FUEL, Ink.OXIDIZER);

    private CostView() {}

    private static OptionalDouble wide(OptionalInt value) {
        return value.isPresent() ? OptionalDouble.of(value.getAsInt()) : OptionalDouble.empty();
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
        cost.put("by_uses", FigureJson.each(LINES, trade.byUses()));
        cost.put("by_launches_per_year", FigureJson.each(LINES, trade.byRate()));
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
        text.append(TextTable.of(rows("", trade)));
        text.append(line);
        text.append(TextTable.of(breakEvens("", trade)));
        text.append(line);
        return text.append(BalanceText.warnings(List.of(CostTrade.WEAKEST))).toString();
    }

    private static PageTable rows(String caption, CostTrade trade) {
        return FigureRows.list(
                        caption,
                        ROWS,
                        "rows",
                        trade.rows(),
                        "mode uses built building_work_years refurbishing_work_years launch_low_work_years launch_work_years"
                                + " launch_high_work_years payload_kg work_years_per_tonne")
                .untraced();
    }

    private static PageTable breakEvens(String caption, CostTrade trade) {
        return FigureRows.list(
                        caption,
                        BREAK_EVENS,
                        "break_even",
                        trade.breakEvens(),
                        "mode payload_lost uses_low uses uses_high refurbishment")
                .untraced();
    }

    /**
     * @param vehicle the vehicle as its file has it
     * @param trade effort of launches
     * @param software what the numbers were made with
     * @return the page
     */
    public static String html(VehicleSizing vehicle, CostTrade trade, Software software) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("title", vehicle.plan().name() + ": effort of a launch");
        model.put("subtitle", vehicle.plan().description());
        model.put("kind", "The weakest numbers of all");
        model.put("figures", headline(trade));
        model.put("warnings", FigureJson.each(CheckFigures.WARNINGS, List.of(CostTrade.WEAKEST)));
        model.put("parts", List.of(section(trade), InputsAndWarnings.of(vehicle.plan())));
        model.put("assumptions", Cautions.ofVehicle());
        model.put("cautions", Cautions.dangersOf(vehicle));
        model.put("software", software);
        return Pages.fill("vehicle.ftlh", model);
    }

    private static List<Map<String, String>> headline(CostTrade trade) {
        return trade.breakEvens().stream()
                .map(even -> Map.of(
                        "name",
                        "pays, " + ReuseView.name(even.mode()) + ", from",
                        "value",
                        even.usual().isPresent() ? Integer.toString(even.usual().getAsInt()) : "never",
                        "unit",
                        even.usual().isPresent() ? "flights" : ""))
                .toList();
    }

    private static PageSection section(CostTrade trade) {
        return new PageSection(
                "cost",
                "Effort of a launch",
                "From how many flights does coming back pay?",
                List.of(
                        "Effort is for each tonne of payload, so that the payload which coming back costs is in it. The strip about"
                                + " each line is its band; a line with its strip may lie anywhere in it, and ratios between lines are"
                                + " better known than either."),
                List.of(
                        chart(trade.byUses(), "c-uses", "flights of the first stage", "Effort over flights of a stage"),
                        chart(trade.byRate(), "c-rate", "launches per year", "Effort over launches per year")),
                List.of(rows("Launches", trade), breakEvens("From when coming back pays", trade)),
                List.of());
    }

    private static Drawing chart(List<CostTrade.Line> lines, String id, String axis, String title) {
        List<Curve> curves = new ArrayList<>();
        List<LineChart.Band> bands = new ArrayList<>();
        for (CostTrade.Line line : lines) {
            Ink ink = INKS.get(curves.size() % INKS.size());
            curves.add(new Curve(
                    ReuseView.name(line.mode()),
                    ink,
                    false,
                    line.points().stream()
                            .map(p -> new Curve.Point(p.at(), p.perTonne().mode()))
                            .toList()));
            bands.add(new LineChart.Band(
                    ink,
                    line.points().stream()
                            .map(p -> new LineChart.Band.Edge(
                                    p.at(), p.perTonne().low(), p.perTonne().high()))
                            .toList()));
        }
        LineChart.Panel panel = new LineChart.Panel("work-years per tonne of payload", 1, true, curves, bands);
        return new Drawing(
                LineChart.svg(id, title, axis, List.of(panel), 360),
                title + ", each line with its band: a factor of " + CostRelations.BAND
                        + " either way, with refurbishment at its lowest and highest share.",
                false);
    }
}
