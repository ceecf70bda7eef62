package dev.penstock.reports;

import dev.penstock.cycles.EngineBalance;
import dev.penstock.study.Axis;
import dev.penstock.study.Measure;
import dev.penstock.study.Sweep;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The charts of a sweep: curves over one numeric input, a map over two. */
public final class SweepCharts {

    private static final Ink[] INKS = {Ink.GAS, Ink.OXIDIZER, Ink.FUEL, Ink.GAIN, Ink.STEEL, Ink.MUTED};

    private final Sweep.Result sweep;
    private final List<Integer> numeric = new ArrayList<>();

    /** @param sweep finished or cancelled sweep */
    public SweepCharts(Sweep.Result sweep) {
        this.sweep = sweep;
        for (int i = 0; i < sweep.axes().size(); i++) {
            if (sweep.axes().get(i).numeric() && sweep.axes().get(i).values().size() > 1) {
                numeric.add(i);
            }
        }
    }

    /** @return charts; none if no input is a number, or nothing has a solution */
    public List<Figure> figures() {
        if (numeric.isEmpty()
                || sweep.points().stream().noneMatch(p -> p.balance().isPresent())) {
            return List.of();
        }
        return sweep.axes().size() == 2 && numeric.size() == 2
                ? List.of(
                        map("isp_vacuum_s", "specific impulse, vacuum (s)", 1),
                        map("tightest_margin", "margin of the tightest limit (%)", 0.01))
                : curves();
    }

    private Figure map(String key, String label, double scale) {
        Measure measure = Measure.named(key).orElseThrow();
        List<MapChart.Cell> cells = new ArrayList<>();
        for (Sweep.Point point : sweep.points()) {
            point.balance().ifPresent(b -> measure.value()
                    .apply(b)
                    .ifPresent(v -> cells.add(new MapChart.Cell(
                            number(point, numeric.get(0)),
                            number(point, numeric.get(1)),
                            v / scale,
                            b.withinLimits()))));
        }
        String svg = MapChart.svg(
                "map-" + key.replace('_', '-'), label, label(numeric.get(0)), label(numeric.get(1)), label, cells);
        return new Figure(
                svg, label + ". A cross marks a missed limit; where nothing is drawn there is no solution.", true);
    }

    private List<Figure> curves() {
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
        String svg = LineChart.svg(
                "curves",
                "Results against " + label(numeric.get(0)),
                label(numeric.get(0)),
                panels,
                60 + 190 * panels.size());
        return List.of(new Figure(
                svg, "A gap is a combination without a solution; below zero margin a limit is missed.", true));
    }

    private LineChart.Panel panel(String label, double scale, String... keys) {
        List<Curve> curves = new ArrayList<>();
        for (String key : keys) {
            Measure measure = Measure.named(key).orElseThrow();
            Map<String, List<Curve.Point>> lines = new LinkedHashMap<>();
            for (Sweep.Point point : sweep.points()) {
                Optional<EngineBalance> balance = point.balance();
                OptionalDouble value = balance.map(measure.value()).orElse(OptionalDouble.empty());
                lines.computeIfAbsent(others(point), o -> new ArrayList<>())
                        .add(new Curve.Point(
                                number(point, numeric.get(0)),
                                value.isPresent() ? value.getAsDouble() / scale : Double.NaN));
            }
            lines.forEach((others, points) -> {
                if (points.stream().anyMatch(p -> Double.isFinite(p.y()))) {
                    String name = others.isEmpty() ? measure.name() : others;
                    int i = curves.size();
                    curves.add(new Curve(name, INKS[i % INKS.length], i % 2 == 1, points));
                }
            });
        }
        return new LineChart.Panel(label, 1, false, curves);
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
