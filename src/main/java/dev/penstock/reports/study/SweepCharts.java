package dev.penstock.reports.study;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Contours;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.chart.MapChart;
import dev.penstock.study.Axis;
import dev.penstock.study.Measure;
import dev.penstock.study.Sweep;
import dev.penstock.study.SweepBand;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The charts of a sweep: curves over one numeric input, a map over two. */
public final class SweepCharts {

    /** Seconds of impulse, or per cent of margin. */
    private static final double FLAT = 0.05;

    private static final Ink[] INKS = {Ink.GAS, Ink.OXIDIZER, Ink.FUEL, Ink.GAIN, Ink.STEEL, Ink.MUTED};

    /** About as many lines of one value as a map can carry. */
    private static final int LEVELS = 8;

    private static final int LETTERS = 26;

    private final Sweep.Result sweep;
    private final SweepLimits limits;
    private final List<Integer> numeric = new ArrayList<>();

    /** @param sweep finished or cancelled sweep */
    public SweepCharts(Sweep.Result sweep) {
        this.sweep = sweep;
        this.limits = new SweepLimits(sweep.points());
        for (int i = 0; i < sweep.axes().size(); i++) {
            if (sweep.axes().get(i).numeric() && sweep.axes().get(i).values().size() > 1) {
                numeric.add(i);
            }
        }
    }

    /** @return charts; none if no input is a number, or nothing has a solution */
    public List<Drawing> figures() {
        if (numeric.isEmpty()
                || sweep.points().stream().noneMatch(p -> p.balance().isPresent())) {
            return List.of();
        }
        return sweep.axes().size() == 2 && numeric.size() == 2
                ? Stream.of(
                                map("isp_vacuum_s", "specific impulse, vacuum (s)", 1),
                                map("tightest_margin", "margin of the tightest limit (%)", 0.01))
                        .flatMap(Optional::stream)
                        .toList()
                : curves();
    }

    /** A map; none where every combination has the same figure, to within what anybody would read off it. */
    private Optional<Drawing> map(String key, String label, double scale) {
        Measure measure = Measure.named(key).orElseThrow();
        List<MapChart.Cell> cells = new ArrayList<>();
        Contours levels = grid();
        for (Sweep.Point point : sweep.points()) {
            double x = number(point, numeric.get(0));
            double y = number(point, numeric.get(1));
            point.balance().ifPresent(b -> measure.of(b).ifPresent(v -> {
                cells.add(new MapChart.Cell(x, y, v / scale, b.withinLimits()));
                levels.put(x, y, v / scale);
            }));
        }
        DoubleSummaryStatistics range =
                cells.stream().mapToDouble(MapChart.Cell::value).summaryStatistics();
        if (range.getMax() - range.getMin() < FLAT) {
            return Optional.empty();
        }
        List<MapChart.Line> lines = new ArrayList<>();
        for (double level : levels(cells)) {
            levels.at(level).forEach(points -> lines.add(new MapChart.Line(plain(level), false, points)));
        }
        List<String> crossed = limits.crossed();
        for (int i = 0; i < crossed.size(); i++) {
            String letter = letter(i);
            boundary(crossed.get(i)).forEach(points -> lines.add(new MapChart.Line(letter, true, points)));
        }
        String svg = MapChart.svg(
                "map-" + key.replace('_', '-'),
                label,
                label(numeric.get(0)),
                label(numeric.get(1)),
                label,
                cells,
                lines);
        return Optional.of(new Drawing(
                svg,
                label + ". A cross marks a missed limit; where nothing is drawn there is no solution." + named(crossed),
                true));
    }

    /** Where the margin of a limit is zero. */
    private List<List<Curve.Point>> boundary(String limit) {
        Contours margins = grid();
        for (Sweep.Point point : sweep.points()) {
            SweepLimits.margin(point, limit)
                    .ifPresent(m -> margins.put(number(point, numeric.get(0)), number(point, numeric.get(1)), m));
        }
        return margins.at(0);
    }

    private Contours grid() {
        return new Contours(places(0), places(1));
    }

    private List<Double> places(int axis) {
        return sweep.axes().get(numeric.get(axis)).values().stream()
                .map(v -> Axis.numberOf(v).orElseThrow())
                .distinct()
                .sorted()
                .toList();
    }

    /** Some round levels between the lowest and the highest value. */
    private static List<Double> levels(List<MapChart.Cell> cells) {
        DoubleSummaryStatistics range =
                cells.stream().mapToDouble(MapChart.Cell::value).summaryStatistics();
        double span = range.getMax() - range.getMin();
        if (!(span > 1e-9 * Math.abs(range.getMax()))) {
            return List.of();
        }
        double decade = Math.pow(10, Math.floor(Math.log10(span / LEVELS)));
        double step = decade * (span / LEVELS / decade > 5 ? 10 : span / LEVELS / decade > 2 ? 5 : 2);
        List<Double> levels = new ArrayList<>();
        for (double k = Math.ceil(range.getMin() / step); k * step < range.getMax(); k++) {
            levels.add(k * step);
        }
        return levels;
    }

    private static String plain(double level) {
        return Notation.significant(level, 5).replaceAll("(\\.\\d*?)0+$", "$1").replaceAll("\\.$", "");
    }

    private static String letter(int i) {
        return String.valueOf((char) ('A' + i % LETTERS));
    }

    private static String named(List<String> crossed) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < crossed.size(); i++) {
            text.append(i == 0 ? " Dashed, where a limit begins to be missed: " : "; ")
                    .append(letter(i))
                    .append(" ")
                    .append(CheckFigures.title(crossed.get(i)));
        }
        return text.isEmpty() ? "" : text + ".";
    }

    private List<Drawing> curves() {
        boolean single = sweep.axes().size() == 1;
        List<LineChart.Panel> panels = new ArrayList<>();
        if (single) {
            panels.add(panel("specific impulse (s)", 1, "isp_vacuum_s", "isp_sea_level_s"));
            panels.add(panel("temperature (K)", 1, "turbine_temperature_K", "peak_wall_temperature_K"));
            panels.add(panel("pressure (bar)", 1e5, "discharge_pressure_Pa", "coolant_pressure_drop_Pa"));
        } else {
            panels.add(panel("specific impulse, vacuum (s)", 1, "isp_vacuum_s"));
        }
        panels.add(panel("margin of the tightest limit (%)", 0.01, "tightest_margin"));
        panels.removeIf(p -> p.curves().isEmpty());
        List<LineChart.Shade> shades = new ArrayList<>();
        List<LineChart.Mark> marks = new ArrayList<>();
        StringBuilder caption =
                new StringBuilder("A gap is a combination without a solution; below zero margin a limit is missed.");
        if (single) {
            limits.missed(this::place).forEach(s -> shades.add(new LineChart.Shade(s.from(), s.to())));
            mark(marks, caption);
            if (sweep.banded()) {
                caption.append(" Coloured bands hold nine tenths of the sampled engines, the twentieth above and the")
                        .append(" twentieth below left out.");
            }
        }
        String svg = LineChart.svg(
                "curves",
                "Results against " + label(numeric.get(0)),
                label(numeric.get(0)),
                panels,
                60 + 190 * panels.size(),
                shades,
                marks);
        return List.of(new Drawing(svg, caption.toString(), true));
    }

    private void mark(List<LineChart.Mark> marks, StringBuilder caption) {
        List<SweepLimits.Boundary> boundaries = limits.boundaries(this::place);
        String unit = sweep.axes().get(numeric.get(0)).unit();
        for (int i = 0; i < boundaries.size(); i++) {
            SweepLimits.Boundary boundary = boundaries.get(i);
            marks.add(new LineChart.Mark(boundary.at(), letter(i)));
            caption.append(i == 0 ? " Shaded, where a limit is missed: " : "; ")
                    .append(letter(i))
                    .append(" ")
                    .append(CheckFigures.title(boundary.limit()))
                    .append(boundary.above() ? ", above " : ", below ")
                    .append(Notation.significant(boundary.at(), 4))
                    .append(unit.isEmpty() ? "" : " " + unit);
        }
        if (!boundaries.isEmpty()) {
            caption.append(".");
        } else if (sweep.points().stream().flatMap(p -> p.balance().stream()).noneMatch(EngineBalance::withinLimits)) {
            caption.append(" Every combination misses a limit.");
        }
    }

    private double place(Sweep.Point point) {
        return number(point, numeric.get(0));
    }

    private LineChart.Panel panel(String label, double scale, String... keys) {
        List<Curve> curves = new ArrayList<>();
        List<LineChart.Band> bands = new ArrayList<>();
        for (String key : keys) {
            Measure measure = Measure.named(key).orElseThrow();
            Map<String, List<Sweep.Point>> lines = new LinkedHashMap<>();
            sweep.points().forEach(p -> lines.computeIfAbsent(others(p), o -> new ArrayList<>())
                    .add(p));
            lines.forEach((others, points) -> {
                List<Curve.Point> curve =
                        points.stream().map(p -> point(p, measure, scale)).toList();
                if (curve.stream().anyMatch(p -> Double.isFinite(p.y()))) {
                    int i = curves.size();
                    Ink ink = INKS[i % INKS.length];
                    curves.add(new Curve(others.isEmpty() ? measure.name() : others, ink, i % 2 == 1, curve));
                    bands.addAll(bands(points, measure, scale, ink));
                }
            });
        }
        return new LineChart.Panel(label, 1, false, curves, bands);
    }

    private Curve.Point point(Sweep.Point point, Measure measure, double scale) {
        OptionalDouble value = point.balance().map(measure::of).orElse(OptionalDouble.empty());
        return new Curve.Point(place(point), value.isPresent() ? value.getAsDouble() / scale : Double.NaN);
    }

    /** Bands of neighbouring points; a point without one ends a band. */
    private List<LineChart.Band> bands(List<Sweep.Point> points, Measure measure, double scale, Ink ink) {
        List<LineChart.Band> bands = new ArrayList<>();
        List<LineChart.Band.Edge> edges = new ArrayList<>();
        for (Sweep.Point point : points) {
            Optional<SweepBand.Span> span = point.band().flatMap(b -> b.of(measure));
            span.ifPresent(s -> edges.add(new LineChart.Band.Edge(place(point), s.low() / scale, s.high() / scale)));
            if (span.isEmpty() && !edges.isEmpty()) {
                bands.add(new LineChart.Band(ink, edges));
                edges.clear();
            }
        }
        if (!edges.isEmpty()) {
            bands.add(new LineChart.Band(ink, edges));
        }
        return bands;
    }

    /** The values of all inputs but the one along the axis. */
    private String others(Sweep.Point point) {
        List<String> names = new ArrayList<>(point.values());
        names.remove((int) numeric.get(0));
        return String.join(", ", names);
    }

    private static double number(Sweep.Point point, int axis) {
        return Axis.numberOf(point.values().get(axis)).orElseThrow();
    }

    private String label(int axis) {
        Axis a = sweep.axes().get(axis);
        return a.path() + (a.unit().isEmpty() ? "" : " (" + a.unit() + ")");
    }
}
