package dev.penstock.reports.concept;

import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.cycles.trail.SearchFigures;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.reports.engine.BalanceText;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.table.EngineTables;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How far a concept reaches, as JSON document, terminal tables and section of a page. */
public final class LimitView {

    private LimitView() {}

    /**
     * @param result result of the search
     * @return JSON document: the reach, and the whole balance there
     */
    public static Map<String, Object> json(LimitResult result) {
        return FigureJson.of(SearchFigures.ALL, result);
    }

    /**
     * @param result result of the search
     * @return tables for a terminal
     */
    public static String text(LimitResult result) {
        EngineBalance balance = result.balance();
        String line = System.lineSeparator();
        StringBuilder text = new StringBuilder();
        text.append(balance.concept().name())
                .append(" reaches ")
                .append(Notation.PRESSURE.write(result.chamberPressure()));
        text.append(" bar; ")
                .append(CheckFigures.title(result.bindingLimit()))
                .append(" binds")
                .append(line);
        text.append(result.explanation()).append(line);
        settings(result).ifPresent(sentence -> text.append(sentence).append(line));
        best(result).ifPresent(sentence -> text.append(sentence).append(line));
        text.append(line);
        text.append(BalanceText.limits(result.held())).append(line);
        if (!result.sensitivities().isEmpty()) {
            text.append(TextTable.of(FigureRows.list(
                            "",
                            SearchFigures.SENSITIVITIES,
                            "sensitivities",
                            result.sensitivities(),
                            "title relative_change chamber_pressure_Pa elasticity")))
                    .append(line);
        }
        PageTable engine = FigureRows.sheet(
                "engine there",
                EngineFigures.SUMMARY,
                balance,
                "engine",
                "isp_vacuum_s isp_sea_level_s thrust_vacuum_N mass_flow_kg_s");
        PageTable.Builder inlets = PageTable.titled("");
        balance.turbines()
                .forEach(t -> inlets.row(
                        t.name() + ", inlet",
                        Notation.TEMPERATURE.write(t.inlet().temperature()),
                        "K"));
        return text.append(TextTable.of(engine.and(inlets.table()))).toString();
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
                        CheckFigures.title(s.limit()),
                        base,
                        s.chamberPressure() / 1e5,
                        Ink.GAIN,
                        "+" + Notation.PRESSURE.write(s.chamberPressure() - result.chamberPressure()) + " bar")));
        List<Drawing> figures = bars.isEmpty()
                ? List.of()
                : List.of(new Drawing(
                        SpanChart.svg("l-worth", "What each limit is worth", "chamber pressure (bar)", false, bars),
                        "Chamber pressure gained when one limit is changed by "
                                + Notation.PERCENT.write(
                                        result.sensitivities().get(0).change())
                                + " and all others stay. The axis does not start at zero.",
                        false));
        return new PageSection(
                "highest-pressure",
                "Highest chamber pressure",
                "How high can the chamber pressure go, what stops it, and where is it best?",
                Stream.of(
                                Optional.of(result.explanation() + turbines(result.balance())),
                                settings(result),
                                best(result))
                        .flatMap(Optional::stream)
                        .toList(),
                figures,
                List.of(EngineTables.limits(result.held())),
                List.of(FigureRows.list(
                        "Chamber pressures tried",
                        SearchFigures.POINTS,
                        "points",
                        result.points(),
                        "chamber_pressure_Pa kept title")));
    }

    /** What a balance of the same concept has to be asked for to be that engine, where that is more than the pressure. */
    private static Optional<String> settings(LimitResult result) {
        String gas = result.settings().stream()
                .skip(1)
                .map(s -> s.key() + " " + Notation.ofUnit(s.unit()).writeWithUnit(s.value()) + " ("
                        + Notation.ofUnit(s.unit()).writeWithUnit(s.stated()) + " stated)")
                .collect(Collectors.joining(", "));
        return gas.isEmpty()
                ? Optional.empty()
                : Optional.of("Gas is taken at the temperature limit of the turbine behind it: " + gas
                        + "; as stated, the engine may not close there");
    }

    /** The best pressure, and what ends it. */
    private static Optional<String> best(LimitResult result) {
        return result.best()
                .map(b -> "Best for " + b.merit() + ": " + Notation.PRESSURE.writeWithUnit(b.chamberPressure()) + " ("
                        + Notation.ofUnit(b.unit()).writeWithUnit(b.value()) + "); " + b.why());
    }

    /** How hot the gas before each turbine is there, since the search may choose it. */
    private static String turbines(EngineBalance balance) {
        String list = balance.turbines().stream()
                .map(t -> t.name() + " " + Notation.TEMPERATURE.write(t.inlet().temperature()) + " K")
                .collect(Collectors.joining(", "));
        return list.isEmpty() ? "" : "; gas before the turbine: " + list;
    }
}
