package dev.penstock.reports.study;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.Figure;
import dev.penstock.provenance.KeyPath;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.reports.concept.InputsAndWarnings;
import dev.penstock.reports.page.Cautions;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.page.Pages;
import dev.penstock.reports.text.CsvLine;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.Software;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.Measure;
import dev.penstock.study.Sweep;
import dev.penstock.study.SweepBand;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A sweep as JSON document, CSV, terminal table and page. */
public final class SweepView {

    /** Figures that fit side by side in a terminal. */
    private static final List<String> COLUMNS = List.of(
            "isp_vacuum_s",
            "isp_sea_level_s",
            "chamber_pressure_Pa",
            "mass_flow_kg_s",
            "turbine_temperature_K",
            "discharge_pressure_Pa",
            "peak_wall_temperature_K");

    private final Sweep.Result sweep;
    private final CombinationText combinations;
    private final List<Measure> measures;
    /** Why combinations have no solution, each reason once. */
    private final List<String> reasons;

    /** @param sweep finished or cancelled sweep */
    public SweepView(Sweep.Result sweep) {
        this(sweep, List.of());
    }

    /**
     * @param sweep finished or cancelled sweep
     * @param further figures to show beside the usual ones
     */
    public SweepView(Sweep.Result sweep, List<Measure> further) {
        this.sweep = sweep;
        this.combinations = new CombinationText(sweep);
        this.measures =
                Stream.concat(Measure.ALL.stream(), further.stream()).distinct().toList();
        this.reasons = sweep.points().stream()
                .flatMap(p -> p.failure().stream())
                .distinct()
                .toList();
    }

    /** @return JSON document */
    public Map<String, Object> json() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", sweep.name());
        map.put("complete", sweep.complete());
        map.put(
                "vary",
                sweep.axes().stream()
                        .map(a -> {
                            Map<String, Object> axis = new LinkedHashMap<>();
                            axis.put("path", a.path());
                            axis.put("values", a.values());
                            return axis;
                        })
                        .toList());
        map.put("points", sweep.points().stream().map(this::point).toList());
        return map;
    }

    private Map<String, Object> point(Sweep.Point point) {
        Map<String, Object> inputs = new LinkedHashMap<>();
        for (int i = 0; i < sweep.axes().size(); i++) {
            inputs.put(sweep.axes().get(i).path(), point.values().get(i));
        }
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("inputs", inputs);
        point.failure().ifPresent(why -> map.put("failure", why));
        point.balance().ifPresent(b -> {
            Map<String, Object> results = new LinkedHashMap<>();
            measures.forEach(m -> m.of(b).ifPresent(v -> results.put(m.key(), v)));
            map.put("results", results);
            point.band().ifPresent(band -> map.put("band", band(band)));
            map.put("within_limits", b.withinLimits());
            map.put("tightest_limit", Measure.tightest(b).map(l -> (Object) l.name()));
        });
        return map;
    }

    private Map<String, Object> band(SweepBand band) {
        Map<String, Object> figures = new LinkedHashMap<>();
        measures.forEach(m -> band.of(m).ifPresent(s -> figures.put(m.key(), Map.of("p5", s.low(), "p95", s.high()))));
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("samples", band.samples());
        map.put("closed", band.closed());
        map.put("figures", figures);
        return map;
    }

    /** @return table with a heading line, comma-separated, SI units */
    public String csv() {
        StringBuilder text = new StringBuilder();
        List<String> head = new ArrayList<>();
        sweep.axes().forEach(a -> head.add(a.path()));
        measures.forEach(m -> head.add(m.key()));
        head.addAll(List.of("within_limits", "tightest_limit", "failure"));
        if (sweep.banded()) {
            head.addAll(List.of("samples", "samples_closed"));
            measures.forEach(m -> head.addAll(List.of(m.key() + "_p5", m.key() + "_p95")));
        }
        CsvLine.add(text, head);
        for (Sweep.Point point : sweep.points()) {
            List<String> cells = new ArrayList<>(point.values());
            for (Measure measure : measures) {
                OptionalDouble value = point.balance().map(measure::of).orElse(OptionalDouble.empty());
                cells.add(value.isPresent() ? Double.toString(value.getAsDouble()) : "");
            }
            cells.add(
                    point.balance().map(b -> Boolean.toString(b.withinLimits())).orElse(""));
            cells.add(point.balance()
                    .flatMap(Measure::tightest)
                    .map(LimitCheck::name)
                    .orElse(""));
            cells.add(point.failure().orElse(""));
            if (sweep.banded()) {
                cells.addAll(bandCells(point.band()));
            }
            CsvLine.add(text, cells);
        }
        return text.toString();
    }

    private List<String> bandCells(Optional<SweepBand> band) {
        List<String> cells = new ArrayList<>();
        cells.add(band.map(b -> Integer.toString(b.samples())).orElse(""));
        cells.add(band.map(b -> Integer.toString(b.closed())).orElse(""));
        for (Measure measure : measures) {
            Optional<SweepBand.Span> span = band.flatMap(b -> b.of(measure));
            cells.add(span.map(s -> Double.toString(s.low())).orElse(""));
            cells.add(span.map(s -> Double.toString(s.high())).orElse(""));
        }
        return cells;
    }

    /** @return table for a terminal */
    public String text() {
        List<String> head = new ArrayList<>();
        sweep.axes().forEach(a -> head.add(a.path()));
        List<Figure<EngineBalance>> figures = new ArrayList<>(Measure.figures(COLUMNS));
        measures.stream().skip(Measure.ALL.size()).forEach(m -> figures.add(m.figure()));
        figures.forEach(figure -> head.add(figure.heading()));
        head.add("<tightest limit");
        TextTable table = new TextTable().header(head.toArray(String[]::new));
        for (Sweep.Point point : sweep.points()) {
            List<String> cells = combinations.of(point);
            if (point.balance().isPresent()) {
                EngineBalance b = point.balance().get();
                figures.forEach(figure -> cells.add(figure.text(b)));
                cells.add(Measure.tightest(b).map(CheckFigures::verdict).orElse("none"));
            } else {
                cells.addAll(Collections.nCopies(figures.size(), "-"));
                cells.add(noSolution(point));
            }
            table.row(cells.toArray(String[]::new));
        }
        StringBuilder text = new StringBuilder(table.text());
        for (int i = 0; i < reasons.size(); i++) {
            text.append("reason ")
                    .append(i + 1)
                    .append(": ")
                    .append(reasons.get(i))
                    .append(System.lineSeparator());
        }
        if (!sweep.complete()) {
            text.append("cancelled: ").append(sweep.points().size()).append(" combinations were done");
            text.append(System.lineSeparator());
        }
        return text.toString();
    }

    private String noSolution(Sweep.Point point) {
        return "no solution, reason " + (1 + reasons.indexOf(point.failure().orElse("")));
    }

    /**
     * @param software what the numbers were made with
     * @return the page
     */
    public String html(Software software) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("title", sweep.name() + ", swept");
        model.put("estimate", "engines swept");
        SweepHead head = new SweepHead(sweep);
        model.put("kind", head.varied());
        model.put("verdict", head.verdict());
        model.put("state", head.state());
        model.put("subtitle", sweep.complete() ? "" : "Cancelled: not all combinations were tried.");
        List<PageSection> sections = new ArrayList<>(List.of(
                new PageSection(
                        "charts",
                        "Charts",
                        "What changes, and where does it stop?",
                        List.of(),
                        new SweepCharts(sweep).figures(),
                        List.of(),
                        List.of()),
                new PageSection(
                        "points",
                        "Points",
                        "What was found at each combination?",
                        IntStream.range(0, reasons.size())
                                .mapToObj(i -> "Reason " + (i + 1) + ": " + reasons.get(i))
                                .toList(),
                        List.of(),
                        List.of(table()),
                        List.of())));
        sections.addAll(InputsAndWarnings.of(sweep));
        model.put("sections", sections);
        model.put(
                "assumptions",
                sweep.points().stream()
                        .flatMap(p -> p.balance().stream())
                        .limit(1)
                        .flatMap(b -> Cautions.of(b).stream())
                        .toList());
        model.put("cautions", Cautions.dangersOf(sweep.points().stream().flatMap(p -> p.balance().stream())));
        model.put("software", software);
        return Pages.fill("sweep.ftlh", model);
    }

    private PageTable table() {
        List<String> titles = new ArrayList<>();
        sweep.axes().forEach(a -> titles.add("<" + KeyPath.words(a.path())));
        measures.forEach(m -> titles.add(m.name()));
        titles.add("<tightest limit");
        PageTable.Builder table = PageTable.titled("All combinations", titles.toArray(String[]::new));
        for (Sweep.Point point : sweep.points()) {
            List<String> cells = combinations.of(point);
            for (Measure m : measures) {
                OptionalDouble value = point.balance().map(m::of).orElse(OptionalDouble.empty());
                cells.add(value.isPresent() ? m.notation().writeWithUnit(value.getAsDouble()) : "-");
            }
            cells.add(point.balance()
                    .map(b -> Measure.tightest(b).map(CheckFigures::verdict).orElse("none"))
                    .orElseGet(() -> noSolution(point)));
            boolean kept = point.balance().map(EngineBalance::withinLimits).orElse(false);
            table.marked(kept ? "" : "missed", cells.toArray(String[]::new));
        }
        return table.table();
    }
}
