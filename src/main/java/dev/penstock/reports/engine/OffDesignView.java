package dev.penstock.reports.engine;

import dev.penstock.cycles.questions.OperatingOutcome;
import dev.penstock.cycles.questions.OperatingPoint;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.cycles.trail.OperatingFigures;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** A built engine away from its design point: JSON document, terminal table, section of a page. */
public final class OffDesignView {

    private final EngineBalance design;
    private final List<OperatingOutcome> outcomes;

    /**
     * @param design engine as balanced
     * @param outcomes what became of each command
     */
    public OffDesignView(EngineBalance design, List<OperatingOutcome> outcomes) {
        this.design = design;
        this.outcomes = List.copyOf(outcomes);
    }

    /** @return JSON document */
    public Map<String, Object> json() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", design.concept().name());
        map.put("design", FigureJson.of(EngineFigures.SUMMARY, design));
        map.put("points", outcomes.stream().map(OffDesignView::point).toList());
        return map;
    }

    private static Map<String, Object> point(OperatingOutcome outcome) {
        Map<String, Object> map = FigureJson.of(OperatingFigures.COMMAND, outcome.command());
        outcome.point()
                .ifPresentOrElse(
                        p -> map.putAll(FigureJson.of(OperatingFigures.POINT, p)),
                        () -> map.put("failure", outcome.reason()));
        return map;
    }

    /** @return table for a terminal */
    public String text() {
        StringBuilder notes = new StringBuilder();
        for (OperatingOutcome outcome : outcomes) {
            if (outcome.point().isEmpty()) {
                notes.append(throttle(outcome)).append(": ").append(outcome.reason());
                notes.append(System.lineSeparator());
            }
        }
        PageTable table = table(outcome -> "does not run");
        return design.concept().name() + " as built for "
                + Notation.PRESSURE.writeWithUnit(design.engine().chamberPressure()) + System.lineSeparator()
                + System.lineSeparator() + TextTable.of(table) + notes;
    }

    private static String throttle(OperatingOutcome outcome) {
        return OperatingFigures.COMMAND.figure("throttle").text(outcome.command());
    }

    /** One line for each command; where the engine does not follow, the last cell says so. */
    private PageTable table(Function<OperatingOutcome, String> failure) {
        PageTable points = FigureRows.list(
                "Operating points",
                OperatingFigures.POINT,
                "points",
                outcomes.stream().flatMap(o -> o.point().stream()).toList(),
                "mixture_ratio chamber_pressure_Pa thrust_vacuum_N thrust_sea_level_N isp_vacuum_s gas_temperature_K"
                        + " peak_wall_temperature_K tightest");
        List<PageTable.Column> columns = new ArrayList<>(List.of(new PageTable.Column("throttle", false)));
        columns.addAll(points.columns());
        Iterator<PageTable.Row> found = points.rows().iterator();
        List<PageTable.Row> rows = new ArrayList<>();
        for (OperatingOutcome outcome : outcomes) {
            List<String> cells = new ArrayList<>(List.of(throttle(outcome)));
            if (outcome.point().isPresent()) {
                cells.addAll(found.next().cells());
            } else {
                cells.addAll(Collections.nCopies(columns.size() - 2, "-"));
                cells.add(failure.apply(outcome));
            }
            boolean good = outcome.point().map(OperatingPoint::withinLimits).orElse(false);
            rows.add(new PageTable.Row(cells, List.of(), good ? "" : "missed"));
        }
        return new PageTable(points.caption(), columns, rows);
    }

    /** @return section of a page */
    public PageSection section() {
        List<OperatingPoint> points =
                outcomes.stream().flatMap(o -> o.point().stream()).toList();
        List<Drawing> figures = points.size() < 2 ? List.of() : List.of(chart(points));
        return new PageSection(
                "off-design",
                "Off design",
                "What does this engine, once built, do away from its design point?",
                List.of("Throat, nozzle, channels, pumps and turbine nozzles stay as they are; valves hold the"
                        + " commanded chamber pressure and mixture ratio."),
                figures,
                List.of(table(OperatingOutcome::reason)),
                List.of());
    }

    private Drawing chart(List<OperatingPoint> points) {
        List<LineChart.Panel> panels = new ArrayList<>();
        panels.add(panel("specific impulse (s)", curve("vacuum", Ink.GAS, points, OperatingPoint::vacuumIsp)));
        if (points.stream().noneMatch(p -> p.hottestGas().isEmpty())) {
            panels.add(panel("temperature (K)", curve("hottest turbine gas", Ink.FUEL, points, p -> p.hottestGas()
                    .orElse(0))));
        }
        panels.add(panel(
                "tightest margin (%)",
                curve(
                        "tightest margin",
                        Ink.STEEL,
                        points,
                        p -> 100
                                * OperatingFigures.tightest(p)
                                        .map(LimitCheck::margin)
                                        .orElse(0.0))));
        String svg = LineChart.svg(
                "o-line",
                "Off-design operation",
                "chamber pressure over that of the design (%)",
                panels,
                60 + 180 * panels.size());
        return new Drawing(svg, "Along the commanded points, in their order.", true);
    }

    private static LineChart.Panel panel(String label, Curve curve) {
        return new LineChart.Panel(label, 1, false, List.of(curve));
    }

    private static Curve curve(
            String name, Ink ink, List<OperatingPoint> points, ToDoubleFunction<OperatingPoint> value) {
        return new Curve(
                name,
                ink,
                false,
                points.stream()
                        .map(p -> new Curve.Point(100 * p.command().throttle(), value.applyAsDouble(p)))
                        .toList());
    }
}
