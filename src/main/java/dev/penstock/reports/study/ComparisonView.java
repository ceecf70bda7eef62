package dev.penstock.reports.study;

import dev.penstock.cooling.jacket.JacketFigures;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.Figure;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.reports.concept.InputsAndWarnings;
import dev.penstock.reports.page.Cautions;
import dev.penstock.reports.page.Pages;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.Software;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.Measure;
import dev.penstock.study.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Several concepts side by side: JSON document, terminal table, page. */
public final class ComparisonView {

    /** Figures that fit side by side in a terminal. */
    private static final List<String> COLUMNS = List.of(
            "isp_vacuum_s",
            "isp_sea_level_s",
            "chamber_pressure_Pa",
            "thrust_vacuum_N",
            "mass_flow_kg_s",
            "turbine_temperature_K",
            "discharge_pressure_Pa",
            "pump_power_W",
            "hardware.parts",
            "hardware.moving_parts");

    /** Figures of the page beside the usual ones. */
    private static final List<Measure> COUNTED = Stream.of(
                    "hardware.parts",
                    "hardware.machines",
                    "hardware.burners",
                    "hardware.valves",
                    "hardware.moving_parts",
                    "hardware.hot_joints")
            .map(path -> Measure.named(path).orElseThrow())
            .toList();

    /** Figures that stand side by side on a sheet. */
    private static final int ABREAST = 7;

    /** Those of the first table, beside cycle and propellants. */
    private static final int FIRST = 5;

    private final List<Outcome> outcomes;

    /** @param outcomes the concepts, in the order to show them */
    public ComparisonView(List<Outcome> outcomes) {
        this.outcomes = List.copyOf(outcomes);
    }

    /** @return JSON document */
    public Map<String, Object> json() {
        List<Map<String, Object>> concepts = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("name", outcome.name());
            map.put("file", outcome.file().toString());
            outcome.failure().ifPresent(f -> map.put("failure", f.getMessage()));
            outcome.balance().ifPresent(b -> {
                Map<String, Object> all = FigureJson.of(EngineFigures.ALL, b);
                for (String key : List.of(
                        "oxidizer", "fuel", "engine", "pumps", "turbines", "shafts", "hardware", "within_limits")) {
                    map.put(key, all.get(key));
                }
                List<Map<String, Object>> jackets = FigureJson.each(JacketFigures.ALL, b.cooling());
                jackets.forEach(jacket -> jacket.remove("profile"));
                jackets.stream().findFirst().ifPresent(first -> map.put("cooling", first));
                if (jackets.size() > 1) {
                    map.put("circuits", jackets.subList(1, jackets.size()));
                }
                map.put("tightest_limit", Measure.tightest(b).map(l -> (Object) FigureJson.of(CheckFigures.LIMITS, l)));
                map.put("residual_worst", b.residualWorst());
            });
            concepts.add(map);
        }
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("concepts", concepts);
        return document;
    }

    /** @return table for a terminal */
    public String text() {
        List<Figure<EngineBalance>> figures = Measure.figures(COLUMNS).stream()
                .map(figure -> figure.column(engines()))
                .toList();
        List<String> head = new ArrayList<>(List.of("concept", "<cycle"));
        figures.forEach(figure -> head.add(figure.heading()));
        head.add("<tightest limit");
        TextTable table = new TextTable().header(head.toArray(String[]::new));
        for (Outcome outcome : outcomes) {
            if (outcome.balance().isEmpty()) {
                table.row(outcome.name(), "no solution");
                continue;
            }
            EngineBalance b = outcome.balance().get();
            List<String> cells =
                    new ArrayList<>(List.of(outcome.name(), b.engine().cycle()));
            figures.forEach(figure -> cells.add(figure.text(b)));
            cells.add(Measure.tightest(b).map(CheckFigures::verdict).orElse("none"));
            table.row(cells.toArray(String[]::new));
        }
        StringBuilder text = new StringBuilder(table.text());
        for (Outcome outcome : outcomes) {
            outcome.failure().ifPresent(f -> text.append(System.lineSeparator())
                    .append(outcome.name())
                    .append(": ")
                    .append(f.getMessage())
                    .append(System.lineSeparator()));
        }
        return text.toString();
    }

    /**
     * @param software what the numbers were made with
     * @param pages name of the page of each concept that has one, by concept name
     * @return the page
     */
    public String html(Software software, Map<String, String> pages) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("title", "Concepts side by side");
        model.put("kind", outcomes.size() + " concepts");
        model.put("subtitle", "");
        model.put("pages", pages);
        model.put("tables", tables(pages));
        model.put("common", common());
        List<Map<String, String>> failures = new ArrayList<>();
        for (Outcome o : outcomes) {
            o.failure().ifPresent(f -> failures.add(Map.of("name", o.name(), "why", f.getMessage())));
        }
        model.put("failures", failures);
        model.put("charts", charts());
        model.put("binding", binding(pages));
        model.put("grounds", InputsAndWarnings.of(outcomes));
        model.put("assumptions", assumptions());
        model.put("cautions", Cautions.dangersOf(outcomes.stream().flatMap(o -> o.balance().stream())));
        model.put("software", software);
        return Pages.fill("comparison.ftlh", model);
    }

    /** What any of the concepts takes for granted. */
    private List<String> assumptions() {
        return outcomes.stream()
                .flatMap(o -> o.balance().stream())
                .flatMap(b -> Cautions.of(b).stream())
                .distinct()
                .toList();
    }

    /** Where a figure of a concept opens: on the concept's own page, if it has one. */
    private static String trail(Map<String, String> pages, Outcome outcome, String path) {
        return pages.containsKey(outcome.name()) ? pages.get(outcome.name()) + "#t:" + path : "";
    }

    private List<EngineBalance> engines() {
        return outcomes.stream().flatMap(o -> o.balance().stream()).toList();
    }

    /** Rows are concepts; columns are the figures in which they differ, as many to a table as a sheet bears. */
    private List<Map<String, Object>> tables(Map<String, String> pages) {
        List<Measure> left = new ArrayList<>(measures().filter(m -> !alike(m)).toList());
        List<Map<String, Object>> tables = new ArrayList<>();
        do {
            boolean first = tables.isEmpty();
            List<Measure> columns = left.subList(0, Math.min(left.size(), first ? FIRST : ABREAST));
            tables.add(table(pages, List.copyOf(columns), first));
            columns.clear();
        } while (!left.isEmpty());
        return tables;
    }

    /** What all concepts have in common, which needs no column. */
    private List<String> common() {
        return engines().size() < 2
                ? List.of()
                : measures()
                        .filter(this::alike)
                        .map(m -> m.name() + " " + m.text(engines().get(0)))
                        .toList();
    }

    /** Figures that at least one of the concepts has. */
    private Stream<Measure> measures() {
        return Stream.concat(Measure.ALL.stream(), COUNTED.stream())
                .filter(m -> engines().stream().anyMatch(b -> m.of(b).isPresent()));
    }

    private boolean alike(Measure measure) {
        return engines().size() > 1
                && engines().stream().map(measure::text).distinct().count() == 1;
    }

    private Map<String, Object> table(Map<String, String> pages, List<Measure> measures, boolean first) {
        List<Figure<EngineBalance>> figures =
                measures.stream().map(m -> m.figure().column(engines())).toList();
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            List<Map<String, Object>> cells = new ArrayList<>();
            if (first) {
                cells.add(words(outcome, b -> b.concept().cycle().title()));
                cells.add(words(
                        outcome,
                        b -> b.concept().oxidizer().fluid().name() + " / "
                                + b.concept().fuel().fluid().name()));
            }
            for (int i = 0; i < measures.size(); i++) {
                cells.add(cell(pages, outcome, measures.get(i), figures.get(i)));
            }
            rows.add(Map.of("name", outcome.name(), "cells", cells));
        }
        return Map.of(
                "words",
                first ? List.of("cycle", "propellants") : List.of(),
                "heads",
                figures.stream().map(Figure::heading).toList(),
                "rows",
                rows);
    }

    private Map<String, Object> cell(
            Map<String, String> pages, Outcome outcome, Measure measure, Figure<EngineBalance> figure) {
        Optional<EngineBalance> balance = outcome.balance();
        boolean there = balance.filter(b -> measure.of(b).isPresent()).isPresent();
        return Map.of(
                "text",
                balance.map(b -> figure.text(b) + (measure.separated(b) ? ", flow separated" : ""))
                        .orElse("-"),
                "best",
                balance.filter(b -> measure.best(b, engines())).isPresent(),
                "trail",
                there ? trail(pages, outcome, measure.path()) : "",
                "figures",
                true);
    }

    private static Map<String, Object> words(Outcome outcome, Function<EngineBalance, String> text) {
        return Map.of("text", outcome.balance().map(text).orElse("-"), "best", false, "trail", "", "figures", false);
    }

    private List<Drawing> charts() {
        List<SpanChart.Bar> impulse = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            outcome.balance().ifPresent(b -> {
                double sea = b.engine().seaLevelIsp();
                double vacuum = b.engine().vacuumIsp();
                String text = Notation.fixed(sea, 0) + " to " + Notation.fixed(vacuum, 0) + " s";
                impulse.add(new SpanChart.Bar(outcome.name(), sea, vacuum, Ink.GAS, text));
            });
        }
        if (impulse.isEmpty()) {
            return List.of();
        }
        return List.of(new Drawing(
                SpanChart.svg("k-isp", "Specific impulse", "specific impulse (s), sea level to vacuum", false, impulse),
                "From sea level (left end) to vacuum (right end). The axis does not start at zero.",
                true));
    }

    private PageTable binding(Map<String, String> pages) {
        PageTable.Builder table = PageTable.titled(
                "What binds each concept", "<concept", "<limit", "value", "<bound", "margin", "<source");
        outcomes.stream()
                .filter(o -> o.balance().isPresent())
                .sorted(Comparator.comparingDouble(
                        o -> Measure.tightest(o.balance().get())
                                .map(LimitCheck::margin)
                                .orElse(Double.MAX_VALUE)))
                .forEach(o -> Measure.tightest(o.balance().get()).ifPresent(l -> {
                    String at = l.path();
                    table.marked(
                                    l.met() ? "" : "missed",
                                    o.name(),
                                    CheckFigures.title(l),
                                    CheckFigures.value(l),
                                    CheckFigures.boundary(l),
                                    Notation.MARGIN.write(l.margin()),
                                    l.source())
                            .traced(
                                    "",
                                    "",
                                    trail(pages, o, at + ".value"),
                                    trail(pages, o, at + ".limit"),
                                    trail(pages, o, at + ".margin"));
                }));
        return table.table();
    }
}
