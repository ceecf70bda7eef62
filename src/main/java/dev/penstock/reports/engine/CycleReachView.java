package dev.penstock.reports.engine;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.EngineSummary;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.Figure;
import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.CsvLine;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.CycleReach;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Chamber pressure against turbine temperature, one line per cycle: JSON object, CSV, terminal table, chart, section. */
public final class CycleReachView {

    private static final List<Ink> INKS =
            List.of(Ink.FUEL, Ink.GAS, Ink.OXIDIZER, Ink.GAIN, Ink.STEEL, Ink.MUTED, Ink.TEXT);
    private static final String NOTE =
            "Every cycle has the same propellants, mixture ratio, thrust, nozzle, feeds and pumps. Where a burner makes"
                    + " the turbine gas, the point is the highest chamber pressure within the limits at that temperature; a turbine"
                    + " whose own limit is lower runs at its limit. A cycle that dumps its turbine gas is taken no further than"
                    + " where the dumped gas costs what is allowed of the specific impulse. An expander has no temperature to choose: its line shows what"
                    + " the jacket gives as the chamber pressure rises, and ends at the highest pressure within the limits.";

    /**
     * A point with the line that it stands on.
     *
     * @param line the line
     * @param point the point
     */
    private record Spot(CycleReach.Line line, CycleReach.Point point) {

        static List<Spot> of(CycleReach.Line line) {
            return line.points().stream().map(point -> new Spot(line, point)).toList();
        }

        static Function<Spot, Optional<Double>> engine(Function<EngineSummary, Double> figure) {
            return spot -> spot.point().balance().map(EngineBalance::engine).map(figure);
        }
    }

    private static final Notation ISP = Notation.fixed("s", "s", 1, 1);

    /** Figures of a point. */
    private static final FigureTable<Spot> POINTS = FigureTable.<Spot>ofOne()
            .optional("turbine_temperature_K", "turbine", Notation.TEMPERATURE, s -> s.point()
                    .temperature())
            .leftOutIfAbsent()
            .optional("chamber_pressure_Pa", "chamber", Notation.PRESSURE, Spot.engine(EngineSummary::chamberPressure))
            .leftOutIfAbsent()
            .optional("isp_vacuum_s", "Isp vacuum", ISP, Spot.engine(EngineSummary::vacuumIsp))
            .leftOutIfAbsent()
            .optional("isp_sea_level_s", "Isp sea level", ISP, Spot.engine(EngineSummary::seaLevelIsp))
            .leftOutIfAbsent()
            .word("binding_limit", "limit", s -> s.point().limit())
            .word("explanation", "explanation", s -> s.point().why())
            .word("cycle", "cycle", s -> s.line().cycle().title())
            .outsideDocuments()
            .word(
                    "binds",
                    "binds",
                    s -> s.point().limit().isEmpty()
                            ? s.point().why()
                            : CheckFigures.title(s.point().limit()))
            .outsideDocuments()
            .table();

    /** Figures of a line. */
    private static final FigureTable<CycleReach.Line> LINES = FigureTable.<CycleReach.Line>ofOne()
            .word("cycle", "cycle", line -> line.cycle().id())
            .word("temperature_basis", "temperature", line -> line.basis()
                    .name()
                    .toLowerCase(Locale.ROOT))
            .word("failure", "failure", line -> Optional.of(line.failure()).filter(why -> !why.isEmpty()))
            .leftOutIfAbsent()
            .each("points", Spot::of, POINTS)
            .table();

    /** The whole search. */
    private static final FigureTable<CycleReach> ALL = FigureTable.<CycleReach>ofOne()
            .word("name", "concept", r -> r.concept().name())
            .word("complete", "complete", CycleReach::complete)
            .word("turbine_temperatures_K", "temperatures", CycleReach::temperatures)
            .each("lines", CycleReach::lines, LINES)
            .table();

    private final CycleReach reach;

    /** @param reach finished or cancelled search */
    public CycleReachView(CycleReach reach) {
        this.reach = reach;
    }

    /** @return JSON object */
    public Map<String, Object> json() {
        return FigureJson.of(ALL, reach);
    }

    /** @return table with a heading line, comma-separated, SI units */
    public String csv() {
        List<Figure<Spot>> figures = POINTS.documented();
        StringBuilder text = new StringBuilder();
        CsvLine.add(text, joined("cycle", figures.stream().map(Figure::key).toList()));
        for (CycleReach.Line line : reach.lines()) {
            if (line.points().isEmpty()) {
                List<String> cells = new ArrayList<>(Collections.nCopies(figures.size() - 1, ""));
                cells.add(line.failure());
                CsvLine.add(text, joined(line.cycle().id(), cells));
            }
            for (Spot spot : Spot.of(line)) {
                CsvLine.add(
                        text,
                        joined(
                                line.cycle().id(),
                                figures.stream()
                                        .map(figure -> figure.plain(spot))
                                        .toList()));
            }
        }
        return text.toString();
    }

    private static List<String> joined(String first, List<String> others) {
        List<String> all = new ArrayList<>(List.of(first));
        all.addAll(others);
        return all;
    }

    /** @return table for a terminal */
    public String text() {
        StringBuilder text = new StringBuilder(TextTable.of(closed("")));
        notes().forEach(note -> text.append(note).append(System.lineSeparator()));
        return text.toString();
    }

    private PageTable closed(String caption) {
        return FigureRows.list(
                        caption,
                        POINTS,
                        "",
                        reach.lines().stream()
                                .flatMap(line -> Spot.of(line).stream())
                                .filter(spot -> spot.point().balance().isPresent())
                                .toList(),
                        "cycle turbine_temperature_K chamber_pressure_Pa isp_vacuum_s binds")
                .untraced();
    }

    /** Why cycles or points are missing, a sentence each. */
    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        for (CycleReach.Line line : reach.lines()) {
            if (!line.failure().isEmpty()) {
                notes.add(line.cycle().title() + " has no line: " + line.failure());
                continue;
            }
            line.points().stream()
                    .filter(p -> p.balance().isEmpty())
                    .forEach(p -> notes.add(line.cycle().title() + " has no point"
                            + (p.asked().isPresent()
                                    ? " at "
                                            + Notation.TEMPERATURE.write(
                                                    p.asked().getAsDouble()) + " K"
                                    : "")
                            + ": " + p.why()));
        }
        if (!reach.complete()) {
            notes.add("Cancelled: not everything was tried.");
        }
        return notes;
    }

    /** @return the chart as SVG with the colours of light paper */
    public String svg() {
        List<Curve> pressures = new ArrayList<>();
        List<Curve> impulses = new ArrayList<>();
        for (int i = 0; i < reach.lines().size(); i++) {
            CycleReach.Line line = reach.lines().get(i);
            if (!line.closed().isEmpty()) {
                Ink ink = INKS.get(i % INKS.size());
                boolean dashed = i >= INKS.size();
                pressures.add(curve(line, ink, dashed, true));
                impulses.add(curve(line, ink, dashed, false).unnamed());
            }
        }
        List<LineChart.Panel> panels = List.of(
                new LineChart.Panel("chamber pressure (bar)", 3, true, pressures),
                new LineChart.Panel("specific impulse, vacuum (s)", 2, false, impulses));
        return LineChart.svg(
                "cycle-reach",
                reach.concept().name() + ": chamber pressure within the limits, by cycle",
                "temperature before the hottest turbine (K)",
                panels,
                560);
    }

    private static Curve curve(CycleReach.Line line, Ink ink, boolean dashed, boolean pressure) {
        List<Curve.Point> points = new ArrayList<>();
        for (CycleReach.Point p : line.points()) {
            OptionalDouble x = p.temperature();
            double y = p.balance()
                    .map(b -> pressure
                            ? b.engine().chamberPressure() / 1e5
                            : b.engine().vacuumIsp())
                    .orElse(Double.NaN);
            x.ifPresent(t -> points.add(new Curve.Point(t, y)));
        }
        return new Curve(line.cycle().title(), ink, dashed, points).marked();
    }

    /** @return section of a page */
    public PageSection section() {
        List<String> paragraphs = new ArrayList<>();
        paragraphs.add(NOTE);
        paragraphs.addAll(notes());
        boolean none = reach.lines().stream().allMatch(l -> l.closed().isEmpty());
        return new PageSection(
                "cycles",
                "Cycles",
                "What chamber pressure would the other cycles have, with how hot a turbine?",
                paragraphs,
                none
                        ? List.of()
                        : List.of(new Drawing(
                                svg(),
                                "Highest chamber pressure within the hardware limits, and within the loss allowed where turbine gas is"
                                        + " dumped, against the temperature before the"
                                        + " turbines, and the specific impulse there. The line of an expander follows what"
                                        + " the jacket gives.",
                                true)),
                List.of(closed("Highest chamber pressure by cycle")),
                List.of());
    }
}
