package dev.penstock.reports.engine;

import dev.penstock.cycles.questions.OperatingCommand;
import dev.penstock.cycles.questions.OperatingOutcome;
import dev.penstock.cycles.questions.OperatingPoint;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Figure;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
        map.put("design", FigureJson.of(EngineFigures.SUMMARY, design.engine()));
        map.put("points", outcomes.stream().map(OffDesignView::point).toList());
        return map;
    }

    private static Map<String, Object> point(OperatingOutcome outcome) {
        Map<String, Object> map = new LinkedHashMap<>();
        OperatingCommand command = outcome.command();
        map.put("throttle", command.throttle());
        command.mixtureRatio().ifPresent(r -> map.put("mixture_ratio_asked", r));
        if (outcome.point().isEmpty()) {
            map.put("failure", outcome.reason());
            return map;
        }
        OperatingPoint p = outcome.point().get();
        map.put("chamber_pressure_Pa", p.chamberPressure());
        map.put("mixture_ratio", p.mixtureRatio());
        map.put("thrust_vacuum_N", p.vacuumThrust());
        map.put("thrust_sea_level_N", p.seaLevelThrust());
        map.put("isp_vacuum_s", p.vacuumIsp());
        map.put("mass_flow_kg_s", p.massFlow());
        Map<String, Object> pumps = new LinkedHashMap<>();
        p.pumps().forEach((name, pump) -> {
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("speed_rad_s", pump.speed());
            entry.put("discharge_pressure_Pa", pump.dischargePressure());
            entry.put("efficiency", pump.efficiency());
            entry.put("power_W", pump.power());
            entry.put("flow_ratio", pump.flowRatio());
            entry.put("stall_margin", pump.stallMargin());
            entry.put("cavitation_margin", pump.cavitationMargin());
            pumps.put(name, entry);
        });
        map.put("pumps", pumps);
        map.put("gas_temperatures_K", p.gasTemperatures());
        p.coolantTemperatureRise().ifPresent(v -> map.put("coolant_temperature_rise_K", v));
        p.peakWallTemperature().ifPresent(v -> map.put("peak_wall_temperature_K", v));
        map.put("limits", FigureJson.each(CheckFigures.LIMITS, p.limits()));
        map.put("within_limits", p.withinLimits());
        map.put("residual_worst", p.residualWorst());
        return map;
    }

    /** @return table for a terminal */
    public String text() {
        TextTable table = new TextTable()
                .header(
                        "throttle",
                        "mixture ratio",
                        "chamber bar",
                        "kN vac",
                        "kN s.l.",
                        "Isp vac s",
                        "gas K",
                        "wall K",
                        "<tightest margin");
        StringBuilder notes = new StringBuilder();
        for (OperatingOutcome outcome : outcomes) {
            String throttle = Figures.percent(outcome.command().throttle());
            if (outcome.point().isEmpty()) {
                table.row(throttle, "-", "-", "-", "-", "-", "-", "-", "does not run");
                notes.append(throttle).append(": ").append(outcome.reason()).append(System.lineSeparator());
                continue;
            }
            OperatingPoint p = outcome.point().get();
            table.row(
                    throttle,
                    Figures.significant(p.mixtureRatio(), 4),
                    Figures.bar(p.chamberPressure()),
                    Figures.kilonewton(p.vacuumThrust()),
                    Figures.kilonewton(p.seaLevelThrust()),
                    Figures.fixed(p.vacuumIsp(), 1),
                    hottestGas(p),
                    hottestWall(p),
                    tightestMargin(p));
        }
        return design.concept().name() + " as built for "
                + Figures.bar(design.engine().chamberPressure()) + " bar" + System.lineSeparator()
                + System.lineSeparator() + table.text() + notes;
    }

    private static String hottestGas(OperatingPoint point) {
        return point.gasTemperatures().isEmpty() ? "-" : Figures.kelvin(hottest(point));
    }

    private static String hottestWall(OperatingPoint point) {
        return point.peakWallTemperature().isPresent()
                ? Figures.kelvin(point.peakWallTemperature().getAsDouble())
                : "-";
    }

    private static String tightestMargin(OperatingPoint point) {
        return tightest(point)
                .map(l -> Figures.limitName(l.name()) + " " + Figures.margin(l.margin()))
                .orElse("none");
    }

    private static double hottest(OperatingPoint point) {
        return point.gasTemperatures().values().stream()
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0);
    }

    private static Optional<LimitCheck> tightest(OperatingPoint point) {
        return point.limits().stream().min(Comparator.comparingDouble(LimitCheck::margin));
    }

    /** @return section of a page */
    public PageSection section() {
        List<OperatingPoint> points =
                outcomes.stream().flatMap(o -> o.point().stream()).toList();
        List<Figure> figures = points.size() < 2 ? List.of() : List.of(chart(points));
        PageTable.Builder table = PageTable.titled(
                "Operating points",
                "throttle",
                "mixture ratio",
                "chamber (bar)",
                "vacuum thrust (kN)",
                "Isp vacuum (s)",
                "hottest gas (K)",
                "hottest wall (K)",
                "<tightest margin");
        for (OperatingOutcome outcome : outcomes) {
            String throttle = Figures.percent(outcome.command().throttle());
            if (outcome.point().isEmpty()) {
                table.marked("missed", throttle, "-", "-", "-", "-", "-", "-", outcome.reason());
                continue;
            }
            OperatingPoint p = outcome.point().get();
            table.marked(
                    p.withinLimits() ? "" : "missed",
                    throttle,
                    Figures.significant(p.mixtureRatio(), 4),
                    Figures.bar(p.chamberPressure()),
                    Figures.kilonewton(p.vacuumThrust()),
                    Figures.fixed(p.vacuumIsp(), 1),
                    hottestGas(p),
                    hottestWall(p),
                    tightestMargin(p));
        }
        return new PageSection(
                "off-design",
                "Off design",
                "What does this engine, once built, do away from its design point?",
                List.of("Throat, nozzle, channels, pumps and turbine nozzles stay as they are; valves hold the"
                        + " commanded chamber pressure and mixture ratio."),
                figures,
                List.of(table.table()),
                List.of());
    }

    private Figure chart(List<OperatingPoint> points) {
        List<LineChart.Panel> panels = new ArrayList<>();
        panels.add(panel("specific impulse (s)", curve("vacuum", Ink.GAS, points, OperatingPoint::vacuumIsp)));
        if (points.stream().noneMatch(p -> p.gasTemperatures().isEmpty())) {
            panels.add(
                    panel("temperature (K)", curve("hottest turbine gas", Ink.FUEL, points, OffDesignView::hottest)));
        }
        panels.add(panel(
                "tightest margin (%)",
                curve(
                        "tightest margin",
                        Ink.STEEL,
                        points,
                        p -> 100 * tightest(p).map(LimitCheck::margin).orElse(0.0))));
        String svg = LineChart.svg(
                "o-line",
                "Off-design operation",
                "chamber pressure over that of the design (%)",
                panels,
                60 + 180 * panels.size());
        return new Figure(svg, "Along the commanded points, in their order.", true);
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
