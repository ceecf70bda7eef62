package dev.penstock.reports.engine;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.CsvLine;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.CycleReach;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** Chamber pressure against turbine temperature, one line per cycle: JSON object, CSV, terminal table, chart, section. */
public final class CycleReachView {

    private static final List<Ink> INKS =
            List.of(Ink.FUEL, Ink.GAS, Ink.OXIDIZER, Ink.GAIN, Ink.STEEL, Ink.MUTED, Ink.TEXT);
    private static final String NOTE =
            "Every cycle has the same propellants, mixture ratio, thrust, nozzle, feeds and pumps. Where a burner makes"
                    + " the turbine gas, the point is the highest chamber pressure within the limits at that temperature; a turbine"
                    + " whose own limit is lower runs at its limit. A cycle that dumps its turbine gas is taken no further than"
                    + " where the dumped gas costs what is allowed of the specific impulse. An expander has no temperature to choose: its line shows what"
                    + " the jacket gives as the chamber pressure rises, and ends at the reach.";

    private final CycleReach reach;

    /** @param reach finished or cancelled search */
    public CycleReachView(CycleReach reach) {
        this.reach = reach;
    }

    /** @return JSON object */
    public Map<String, Object> json() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", reach.concept().name());
        map.put("complete", reach.complete());
        map.put("turbine_temperatures_K", reach.temperatures());
        map.put("lines", reach.lines().stream().map(CycleReachView::line).toList());
        return map;
    }

    private static Map<String, Object> line(CycleReach.Line line) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("cycle", line.cycle().id());
        map.put("temperature_basis", line.basis().name().toLowerCase(Locale.ROOT));
        if (!line.failure().isEmpty()) {
            map.put("failure", line.failure());
        }
        map.put(
                "points",
                line.points().stream()
                        .map(p -> {
                            Map<String, Object> point = new LinkedHashMap<>();
                            p.temperature().ifPresent(t -> point.put("turbine_temperature_K", t));
                            p.balance().ifPresent(b -> {
                                point.put("chamber_pressure_Pa", b.engine().chamberPressure());
                                point.put("isp_vacuum_s", b.engine().vacuumIsp());
                                point.put("isp_sea_level_s", b.engine().seaLevelIsp());
                            });
                            point.put("binding_limit", p.limit());
                            point.put("explanation", p.why());
                            return point;
                        })
                        .toList());
        return map;
    }

    /** @return table with a heading line, comma-separated, SI units */
    public String csv() {
        StringBuilder text = new StringBuilder(
                "cycle,turbine_temperature_K,chamber_pressure_Pa,isp_vacuum_s,isp_sea_level_s,binding_limit,explanation\n");
        for (CycleReach.Line line : reach.lines()) {
            if (line.points().isEmpty()) {
                CsvLine.add(text, List.of(line.cycle().id(), "", "", "", "", "", line.failure()));
            }
            for (CycleReach.Point p : line.points()) {
                CsvLine.add(
                        text,
                        List.of(
                                line.cycle().id(),
                                p.temperature().isPresent()
                                        ? Double.toString(p.temperature().getAsDouble())
                                        : "",
                                p.balance()
                                        .map(b -> Double.toString(b.engine().chamberPressure()))
                                        .orElse(""),
                                p.balance()
                                        .map(b -> Double.toString(b.engine().vacuumIsp()))
                                        .orElse(""),
                                p.balance()
                                        .map(b -> Double.toString(b.engine().seaLevelIsp()))
                                        .orElse(""),
                                p.limit(),
                                p.why()));
            }
        }
        return text.toString();
    }

    /** @return table for a terminal */
    public String text() {
        TextTable table = new TextTable().header("<cycle", "turbine K", "chamber bar", "Isp vac s", "<binds");
        for (CycleReach.Line line : reach.lines()) {
            line.points().stream().filter(p -> p.balance().isPresent()).forEach(p -> table.row(cells(line, p)));
        }
        StringBuilder text = new StringBuilder(table.text());
        notes().forEach(note -> text.append(note).append(System.lineSeparator()));
        return text.toString();
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
                                    ? " at " + Figures.kelvin(p.asked().getAsDouble()) + " K"
                                    : "")
                            + ": " + p.why()));
        }
        if (!reach.complete()) {
            notes.add("Cancelled: not everything was tried.");
        }
        return notes;
    }

    private static String[] cells(CycleReach.Line line, CycleReach.Point p) {
        EngineBalance b = p.balance().orElseThrow();
        return new String[] {
            line.cycle().title(),
            Figures.kelvin(p.temperature().orElse(0)),
            Figures.bar(b.engine().chamberPressure()),
            Figures.fixed(b.engine().vacuumIsp(), 1),
            p.limit().isEmpty() ? p.why() : Figures.limitName(p.limit())
        };
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
        PageTable.Builder table = PageTable.titled(
                "Reach by cycle", "<cycle", "turbine (K)", "chamber (bar)", "Isp vacuum (s)", "<binds");
        reach.lines().forEach(line -> line.closed().forEach(p -> table.row(cells(line, p))));
        boolean none = reach.lines().stream().allMatch(l -> l.closed().isEmpty());
        return new PageSection(
                "cycles",
                "Cycles",
                "What would the other cycles reach, with how hot a turbine?",
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
                List.of(table.table()),
                List.of());
    }
}
