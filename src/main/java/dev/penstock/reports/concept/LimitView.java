package dev.penstock.reports.concept;

import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.reports.chart.Figure;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.reports.engine.BalanceText;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.table.EngineTables;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** How far a concept reaches, as JSON document, terminal tables and section of a page. */
public final class LimitView {

    private LimitView() {}

    /**
     * @param result result of the search
     * @return JSON document: the reach, and the whole balance there
     */
    public static Map<String, Object> json(LimitResult result) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", result.balance().concept().name());
        map.put("chamber_pressure_Pa", result.chamberPressure());
        map.put("binding_limit", result.bindingLimit());
        map.put("explanation", result.explanation());
        map.put("held", FigureJson.each(CheckFigures.LIMITS, result.held()));
        map.put(
                "sensitivities",
                result.sensitivities().stream()
                        .map(s -> {
                            Map<String, Object> entry = new LinkedHashMap<>();
                            entry.put("limit", s.limit());
                            entry.put("elasticity", s.elasticity());
                            entry.put("relative_change", s.change());
                            entry.put("chamber_pressure_Pa", s.chamberPressure());
                            return entry;
                        })
                        .toList());
        map.put(
                "points",
                result.points().stream()
                        .map(p -> {
                            Map<String, Object> entry = new LinkedHashMap<>();
                            entry.put("chamber_pressure_Pa", p.chamberPressure());
                            entry.put("within_limits", p.withinLimits());
                            entry.put("limit", p.limit());
                            return entry;
                        })
                        .toList());
        map.put("balance", FigureJson.of(EngineFigures.ALL, result.balance()));
        return map;
    }

    /**
     * @param result result of the search
     * @return tables for a terminal
     */
    public static String text(LimitResult result) {
        EngineBalance balance = result.balance();
        String line = System.lineSeparator();
        StringBuilder text = new StringBuilder();
        text.append(balance.concept().name()).append(" reaches ").append(Figures.bar(result.chamberPressure()));
        text.append(" bar; ")
                .append(Figures.limitName(result.bindingLimit()))
                .append(" binds")
                .append(line);
        text.append(result.explanation()).append(line).append(line);
        text.append(BalanceText.limits(result.held())).append(line);
        TextTable table = new TextTable().header("limit changed", "by", "chamber bar", "gain per change");
        result.sensitivities()
                .forEach(s -> table.row(
                        Figures.limitName(s.limit()),
                        Figures.percent(s.change()),
                        Figures.bar(s.chamberPressure()),
                        Figures.fixed(s.elasticity(), 2)));
        if (!table.isEmpty()) {
            text.append(table.text()).append(line);
        }
        TextTable engine = new TextTable().header("engine there", "value", "<unit");
        engine.row("specific impulse, vacuum", Figures.fixed(balance.engine().vacuumIsp(), 1), "s");
        engine.row("specific impulse, sea level", Figures.fixed(balance.engine().seaLevelIsp(), 1), "s");
        engine.row("thrust, vacuum", Figures.kilonewton(balance.engine().vacuumThrust()), "kN");
        engine.row("mass flow", Figures.massFlow(balance.engine().massFlow()), "kg/s");
        balance.turbines()
                .forEach(t -> engine.row(
                        t.name() + ", inlet", Figures.kelvin(t.inlet().temperature()), "K"));
        return text.append(engine.text()).toString();
    }

    /**
     * @param result result of the search
     * @return section of a page
     */
    static PageSection section(LimitResult result) {
        List<SpanChart.Bar> bars = new ArrayList<>();
        double base = result.chamberPressure() / 1e5;
        result.sensitivities()
                .forEach(s -> bars.add(new SpanChart.Bar(
                        Figures.limitName(s.limit()),
                        base,
                        s.chamberPressure() / 1e5,
                        Ink.GAIN,
                        "+" + Figures.bar(s.chamberPressure() - result.chamberPressure()) + " bar")));
        List<Figure> figures = bars.isEmpty()
                ? List.of()
                : List.of(new Figure(
                        SpanChart.svg("l-worth", "What each limit is worth", "chamber pressure (bar)", false, bars),
                        "Chamber pressure gained when one limit is changed by "
                                + Figures.percent(result.sensitivities().get(0).change())
                                + " and all others stay. The axis does not start at zero.",
                        false));
        PageTable.Builder points =
                PageTable.titled("Chamber pressures tried", "bar", "<within limits", "<tightest limit");
        for (int i = 0; i < result.points().size(); i++) {
            LimitResult.Point p = result.points().get(i);
            points.row(Figures.bar(p.chamberPressure()), p.withinLimits() ? "yes" : "no", Figures.limitName(p.limit()))
                    .traced("points." + i + ".chamber_pressure_Pa");
        }
        return new PageSection(
                "reach",
                "Reach",
                "How high can the chamber pressure go, and what stops it?",
                List.of(result.explanation() + turbines(result.balance())),
                figures,
                List.of(EngineTables.limits(result.held())),
                List.of(points.table()));
    }

    /** How hot the gas before each turbine is there, since the search may choose it. */
    private static String turbines(EngineBalance balance) {
        String list = balance.turbines().stream()
                .map(t -> t.name() + " " + Figures.kelvin(t.inlet().temperature()) + " K")
                .collect(Collectors.joining(", "));
        return list.isEmpty() ? "" : "; gas before the turbine: " + list;
    }
}
