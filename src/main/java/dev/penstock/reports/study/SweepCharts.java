package dev.penstock.reports.study;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.KeyPath;
import dev.penstock.quantities.Notation;
import dev.penstock.quantities.Scale;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.FieldChart;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.chart.MapChart;
import dev.penstock.reports.chart.SmoothField;
import dev.penstock.reports.text.Markup;
import dev.penstock.study.Axis;
import dev.penstock.study.Measure;
import dev.penstock.study.Sweep;
import dev.penstock.study.SweepBand;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** The charts of a sweep: curves over one numeric input, a map over two. */
public final class SweepCharts {

    /** What differs by less over a whole map is the same everywhere (-). */
    private static final double FLAT = 1e-4;

    private static final String IMPULSE = "isp_vacuum_s";
    private static final String MARGIN = "tightest_margin";

    private static final Ink[] INKS = {Ink.GAS, Ink.OXIDIZER, Ink.FUEL, Ink.GAIN, Ink.STEEL, Ink.MUTED};

    /** About as many lines of one value as a map can carry. */
    private static final int LEVELS = 8;

    private static final int LETTERS = 26;
    private static final Scale PLAIN = new Scale("", 1);

    private final Sweep.Result sweep;
    private final CombinationText combinations;
    private final Measure asked;
    private final SweepLimits limits;
    private final List<Integer> numeric = new ArrayList<>();

    /** @param sweep finished or cancelled sweep */
    public SweepCharts(Sweep.Result sweep) {
        this(sweep, usual());
    }

    /**
     * @param sweep finished or cancelled sweep
     * @param asked figure that is asked for before others
     */
    public SweepCharts(Sweep.Result sweep, Measure asked) {
        this.asked = asked;
        this.sweep = sweep;
        this.combinations = new CombinationText(sweep);
        this.limits = new SweepLimits(sweep.points());
        for (int i = 0; i < sweep.axes().size(); i++) {
            if (sweep.axes().get(i).numeric() && sweep.axes().get(i).values().size() > 1) {
                numeric.add(i);
            }
        }
    }

    /** @return figure that is asked for where none is named */
    public static Measure usual() {
        return Measure.named(IMPULSE).orElseThrow();
    }

    /**
     * @param asked figure that is asked for
     * @return figures of which there are maps
     */
    public static List<Measure> mapped(Measure asked) {
        return Stream.of(asked, Measure.named(MARGIN).orElseThrow()).distinct().toList();
    }

    /** @return charts; none if no input is a number, or nothing has a solution */
    public List<Drawing> figures() {
        if (numeric.isEmpty()
                || sweep.points().stream().noneMatch(p -> p.balance().isPresent())) {
            return List.of();
        }
        return sweep.axes().size() == 2 && numeric.size() == 2
                ? mapped(asked).stream().flatMap(m -> map(m).stream()).toList()
                : curves();
    }

    /** A map; none where every combination has the same figure, to within what anybody would read off it. */
    private Optional<Drawing> map(Measure measure) {
        Scale scale = measure.notation().axis();
        SmoothField field = field(measure::of, scale);
        DoubleSummaryStatistics range = range(measure);
        if (flat(range)) {
            return Optional.empty();
        }
        String label = scale.label(measure.name());
        List<MapChart.Line> lines = new ArrayList<>();
        for (double level : levels(scale.of(range.getMin()), scale.of(range.getMax()))) {
            field.at(level).forEach(points -> lines.add(new MapChart.Line(plain(level), false, points)));
        }
        List<SmoothField> margins = new ArrayList<>();
        List<String> bounds = new ArrayList<>();
        for (String limit : limits.everMissed()) {
            SmoothField margin = field(b -> SweepLimits.margin(b, limit), PLAIN);
            margins.add(margin);
            if (limits.crossed().contains(limit)) {
                String letter = letter(bounds.size());
                bounds.add(letter + ": " + CheckFigures.title(limit) + " begins to be missed");
                margin.at(0).forEach(points -> lines.add(new MapChart.Line(letter, true, points)));
            }
        }
        String svg = FieldChart.svg(
                "map-" + measure.key().replaceAll("[^A-Za-z0-9]+", "-"),
                label,
                label(numeric.get(0)),
                label(numeric.get(1)),
                label,
                field,
                margins,
                lines,
                bounds);
        return Optional.of(new Drawing(
                svg,
                Markup.capitalized(measure.name()) + ", made smooth between "
                        + sweep.points().size() + " combinations.",
                true));
    }

    private DoubleSummaryStatistics range(Measure measure) {
        return sweep.points().stream()
                .flatMap(p -> p.balance().stream())
                .flatMapToDouble(b -> measure.of(b).stream())
                .summaryStatistics();
    }

    private static boolean flat(DoubleSummaryStatistics range) {
        double most = Math.max(Math.abs(range.getMax()), Math.abs(range.getMin()));
        return range.getCount() < 2 || range.getMax() - range.getMin() < FLAT * most;
    }

    /** @return whether the figure that is asked for is the same at every combination that closes, or there is none */
    public boolean flat() {
        return flat(range(asked));
    }

    /** A figure at every combination, on the grid of the two inputs. */
    private SmoothField field(Function<EngineBalance, OptionalDouble> figure, Scale scale) {
        double[] xs = places(0);
        double[] ys = places(1);
        double[][] values = new double[ys.length][xs.length];
        for (double[] row : values) {
            Arrays.fill(row, Double.NaN);
        }
        for (Sweep.Point point : sweep.points()) {
            int i = Arrays.binarySearch(xs, number(point, numeric.get(0)));
            int j = Arrays.binarySearch(ys, number(point, numeric.get(1)));
            point.balance().ifPresent(b -> figure.apply(b).ifPresent(v -> values[j][i] = scale.of(v)));
        }
        return SmoothField.through(xs, ys, values);
    }

    private double[] places(int axis) {
        return sweep.axes().get(numeric.get(axis)).values().stream()
                .mapToDouble(v -> Axis.numberOf(v).orElseThrow())
                .distinct()
                .sorted()
                .toArray();
    }

    /** Some round levels between the lowest and the highest value. */
    private static List<Double> levels(double low, double high) {
        double span = high - low;
        double decade = Math.pow(10, Math.floor(Math.log10(span / LEVELS)));
        double step = decade * (span / LEVELS / decade > 5 ? 10 : span / LEVELS / decade > 2 ? 5 : 2);
        List<Double> levels = new ArrayList<>();
        for (double k = Math.ceil(low / step); k * step < high; k++) {
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

    private List<Drawing> curves() {
        boolean single = sweep.axes().size() == 1;
        List<LineChart.Panel> panels = new ArrayList<>();
        if (!single || !asked.key().equals(IMPULSE)) {
            panels.add(panel(asked.name(), asked.key()));
        } else {
            panels.add(panel("specific impulse", IMPULSE, "isp_sea_level_s"));
            panels.add(panel("temperature", "turbine_temperature_K", "peak_wall_temperature_K"));
            panels.add(panel("pressure", "discharge_pressure_Pa", "coolant_pressure_drop_Pa"));
        }
        if (!asked.key().equals(MARGIN)) {
            panels.add(panel("margin of the tightest limit", MARGIN));
        }
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
                    .append(SweepHead.words(boundary, unit));
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

    private LineChart.Panel panel(String name, String... keys) {
        Scale scale = Measure.named(keys[0]).orElseThrow().notation().axis();
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
        LineChart.Panel panel = new LineChart.Panel(scale.label(name), 1, false, curves, bands);
        boolean bounded = List.of(keys).contains(MARGIN) && !curves.isEmpty();
        return bounded ? panel.with(List.of(new LineChart.Level(0, "limit", Ink.MUTED))) : panel;
    }

    private Curve.Point point(Sweep.Point point, Measure measure, Scale scale) {
        OptionalDouble value = point.balance().map(measure::of).orElse(OptionalDouble.empty());
        return new Curve.Point(place(point), value.isPresent() ? scale.of(value.getAsDouble()) : Double.NaN);
    }

    /** Bands of neighbouring points; a point without one ends a band. */
    private List<LineChart.Band> bands(List<Sweep.Point> points, Measure measure, Scale scale, Ink ink) {
        List<LineChart.Band> bands = new ArrayList<>();
        List<LineChart.Band.Edge> edges = new ArrayList<>();
        for (Sweep.Point point : points) {
            Optional<SweepBand.Span> span = point.band().flatMap(b -> b.of(measure));
            span.ifPresent(
                    s -> edges.add(new LineChart.Band.Edge(place(point), scale.of(s.low()), scale.of(s.high()))));
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
        List<String> names = combinations.of(point);
        names.remove((int) numeric.get(0));
        return String.join(", ", names);
    }

    private static double number(Sweep.Point point, int axis) {
        return Axis.numberOf(point.values().get(axis)).orElseThrow();
    }

    private String label(int axis) {
        Axis a = sweep.axes().get(axis);
        return KeyPath.words(a.path()) + (a.unit().isEmpty() ? "" : " (" + a.unit() + ")");
    }
}
