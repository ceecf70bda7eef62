package dev.penstock.reports.engine;

import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.cooling.jacket.JacketLimit;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketStation;
import dev.penstock.cycles.origin.LineKey;
import dev.penstock.cycles.origin.Machines;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.PressureStep;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.reports.diagram.FlowDiagram;
import dev.penstock.reports.text.Markup;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** The drawings of one balanced engine. */
public final class EngineCharts {

    private static final double HIGHEST = 60e3;
    private static final int STEPS = 120;
    /** How much a channel may change from one place to the next without being marked (-). */
    private static final double SAME_CHANNEL = 0.08;
    /** How far the change of a heat-transfer coefficient may lie from those beside it without being marked (-). */
    private static final double SAME_TREND = 0.06;

    private final EngineBalance balance;
    private final String prefix;

    /**
     * @param balance balanced engine
     * @param prefix start of the identifiers of the drawings, unique in a page
     */
    public EngineCharts(EngineBalance balance, String prefix) {
        this.balance = balance;
        this.prefix = prefix;
    }

    /** @return flow diagram of the cycle */
    public Drawing flow() {
        String title = "Flow diagram of " + balance.concept().name();
        String svg = FlowDiagram.svg(prefix + "-flow", title, components(), balance.stations(), shafts());
        return new Drawing(
                svg,
                "Flow runs from the tanks above to the chamber below. Numbered plates are the stations of the table:"
                        + " absolute pressure, temperature, flow. Blue is oxidizer, amber fuel, plum burnt gas; a"
                        + " dotted line is a shaft.",
                true);
    }

    /** @return components, each pump with the power at its shaft */
    public List<Component> components() {
        return balance.components().stream().map(this::withShaftPower).toList();
    }

    /** @return shafts by the ids of the parts that they join */
    public List<FlowDiagram.Shaft> shafts() {
        Machines machines = balance.machines();
        return machines.shafts().stream()
                .map(s -> new FlowDiagram.Shaft(s.name(), ids(machines.driven(s)), ids(machines.driving(s))))
                .toList();
    }

    /** A pump whose liquid drives a boost pump takes more at its shaft than its liquid keeps; readers expect the former. */
    private Component withShaftPower(Component c) {
        return balance.machines()
                .pump(c.key())
                .map(p -> new Component(c.key(), c.inlets(), c.outlets(), c.heatIn(), p.power()))
                .orElse(c);
    }

    private static List<String> ids(List<PartKey> parts) {
        return parts.stream().map(PartKey::id).toList();
    }

    /** @return pressure along every line */
    public Drawing pressures() {
        Map<LineKey, List<PressureStep>> lines = new LinkedHashMap<>();
        for (PressureStep step : balance.pressureLadder()) {
            lines.computeIfAbsent(step.line(), l -> new ArrayList<>()).add(step);
        }
        List<SpanChart.Bar> bars = new ArrayList<>();
        lines.forEach((line, steps) -> {
            bars.add(new SpanChart.Bar(line.title().toUpperCase(Locale.ROOT), 0, 0, Ink.MUTED, ""));
            Ink falling = Ink.of(line.content());
            for (PressureStep step : steps) {
                boolean rise = step.rise() > 0;
                String text = (rise ? "+" : "−") + Notation.PRESSURE.write(Math.abs(step.rise())) + " to "
                        + Notation.PRESSURE.write(step.to());
                bars.add(new SpanChart.Bar(
                        step.part().label(), step.from() / 1e5, step.to() / 1e5, rise ? Ink.GAIN : falling, text));
            }
        });
        String svg =
                SpanChart.svg(prefix + "-pressure", "Pressure along every line", "absolute pressure (bar)", true, bars);
        return new Drawing(
                svg,
                "Every step from tank to chamber, line by line: teal rises, blue, amber and plum fall. Beside each bar the"
                        + " step and the pressure after it, in bar.",
                true);
    }

    /** @return what turbines give and pumps take, by shaft */
    public Drawing power() {
        List<SpanChart.Bar> bars = new ArrayList<>();
        for (ShaftBalance shaft : balance.shafts()) {
            double at = 0;
            for (TurbineSizing t : shaft.turbines()) {
                bars.add(power(t.name(), at, at + t.power(), Ink.GAIN));
                at += t.power();
            }
            if (at == 0 && shaft.powerDelivered() > 0) {
                String giver = balance.turbines().isEmpty() ? "motor" : "liquid or gear of the main pump";
                bars.add(power(shaft.name() + ": " + giver, 0, shaft.powerDelivered(), Ink.GAIN));
            }
            at = 0;
            for (PumpSizing p : shaft.pumps()) {
                boolean fuel = p.duty()
                        .propellant()
                        .id()
                        .equals(balance.concept().fuel().id());
                bars.add(power(p.name(), at, at + p.power(), fuel ? Ink.FUEL : Ink.OXIDIZER));
                at += p.power();
            }
            if (shaft.powerTakenOff() > 0) {
                bars.add(power("boost pump by gear", at, at + shaft.powerTakenOff(), Ink.FUEL));
                at += shaft.powerTakenOff();
            }
            bars.add(power(shaft.name() + ": mechanical loss", at, at + shaft.mechanicalLoss(), Ink.STEEL));
        }
        String svg = SpanChart.svg(prefix + "-power", "Power by shaft", "power (MW)", true, bars);
        return new Drawing(
                svg,
                "On each shaft what drives it gives what pumps, a geared boost pump and mechanical loss take. A main pump"
                        + " whose liquid drives a boost pump takes that power too.",
                false);
    }

    private static SpanChart.Bar power(String what, double from, double to, Ink ink) {
        return new SpanChart.Bar(what, from / 1e6, to / 1e6, ink, Notation.POWER.write(to - from));
    }

    /** @return thrust and specific impulse against altitude */
    public Drawing altitude() {
        StandardAtmosphere1976 air = new StandardAtmosphere1976();
        List<Curve.Point> thrust = new ArrayList<>();
        List<Curve.Point> impulse = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double altitude = HIGHEST * i / STEPS;
            double force = balance.thrustAt(air.at(altitude).pressure());
            thrust.add(new Curve.Point(altitude / 1e3, force / 1e3));
            double isp = force / balance.engine().massFlow() / Constants.STANDARD_GRAVITY;
            impulse.add(new Curve.Point(altitude / 1e3, isp));
        }
        String svg = LineChart.svg(
                prefix + "-altitude",
                "Specific impulse and thrust against altitude",
                "altitude (km), standard atmosphere of 1976",
                List.of(
                        new LineChart.Panel(
                                "specific impulse (s)",
                                1,
                                false,
                                List.of(new Curve("specific impulse", Ink.GAS, false, impulse))),
                        new LineChart.Panel(
                                "thrust (kN)", 1, false, List.of(new Curve("thrust", Ink.STEEL, true, thrust)))),
                420);
        return new Drawing(svg, "Whole engine at full thrust, turbine exhaust and flow separation included.", false);
    }

    /** @return from the ideal to the engine's specific impulse, loss by loss */
    public Drawing losses() {
        double g = Constants.STANDARD_GRAVITY;
        double ideal = balance.chamber().ideal().vacuumImpulse() / g;
        double last = balance.engine().vacuumIsp();
        double base = Math.min(last, ideal) - 0.25 * Math.max(Math.abs(ideal - last), 0.02 * ideal);
        List<SpanChart.Bar> bars = new ArrayList<>();
        bars.add(new SpanChart.Bar("ideal expansion", base, ideal, Ink.GAIN, Notation.fixed(ideal, 1) + " s"));
        double at = ideal;
        for (NamedLoss loss : balance.chamber().losses()) {
            at = step(bars, loss, at, Ink.GAS);
        }
        if (!balance.engineLosses().isEmpty()) {
            bars.add(new SpanChart.Bar("main chamber", base, at, Ink.GAIN, Notation.fixed(at, 1) + " s"));
            for (NamedLoss loss : balance.engineLosses()) {
                at = step(bars, loss, at, Ink.STEEL);
            }
        }
        bars.add(new SpanChart.Bar("engine, vacuum", base, last, Ink.GAIN, Notation.fixed(last, 1) + " s"));
        String svg = SpanChart.svg(
                prefix + "-losses",
                "From ideal to delivered specific impulse",
                "specific impulse in vacuum (s)",
                false,
                bars);
        return new Drawing(
                svg,
                "What each loss takes off the ideal vacuum specific impulse. The axis does not start at" + " zero.",
                false);
    }

    private static double step(List<SpanChart.Bar> bars, NamedLoss loss, double from, Ink ink) {
        double to = from - loss.impulseLoss() / Constants.STANDARD_GRAVITY;
        String size = Notation.fixed(Math.abs(from - to), 2);
        String sign = size.equals("0.00") ? "" : loss.impulseLoss() > 0 ? "−" : "+";
        String text = sign + size + " s";
        bars.add(new SpanChart.Bar(loss.name(), from, to, ink, text));
        return to;
    }

    /**
     * @param jacket jacket
     * @return heat flux, wall temperature and contour along the axis
     */
    public Drawing jacket(JacketResult jacket) {
        List<JacketStation> s = jacket.stations();
        List<LineChart.Mark> marks = changes(s);
        List<Curve.Point> contour = balance.chamber().contour().points().stream()
                .map(p -> new Curve.Point(p.x(), p.radius()))
                .toList();
        String svg = LineChart.svg(
                prefix + "-" + jacket.circuit().id("jacket").replace('.', '-'),
                "Heat flux and wall temperature along the axis",
                "distance from the throat (m), flow to the right",
                List.of(
                        panel("heat flux (MW/m²)", 3, line("heat flux", Ink.GAS, false, s, c -> c.heatFlux() / 1e6)),
                        new LineChart.Panel(
                                        "temperature (K)",
                                        4,
                                        false,
                                        List.of(
                                                line(
                                                        "wall, gas side",
                                                        Ink.FUEL,
                                                        false,
                                                        s,
                                                        JacketStation::gasSideWallTemperature),
                                                line(
                                                        "wall, coolant side",
                                                        Ink.STEEL,
                                                        true,
                                                        s,
                                                        JacketStation::coolantSideWallTemperature),
                                                line(
                                                        "coolant",
                                                        Ink.OXIDIZER,
                                                        false,
                                                        s,
                                                        JacketStation::coolantTemperature)))
                                .with(limits(jacket)),
                        panel("radius (m)", 2, new Curve("inner wall", Ink.MUTED, false, contour))),
                560,
                List.of(),
                marks);
        String where = jacket.circuit().word();
        return new Drawing(
                svg,
                (where.isEmpty() ? "" : Markup.capitalized(where + "jacket: "))
                        + "Along the chamber from the injector (left) to the nozzle exit (right)."
                        + (marks.isEmpty()
                                ? ""
                                : " At a dashed upright line the wall temperature steps: C, the channels change in size; H,"
                                        + " heat transfer to the coolant passes from one regime, or one end of its data, to another."),
                true);
    }

    private static List<LineChart.Mark> changes(List<JacketStation> s) {
        List<LineChart.Mark> marks = new ArrayList<>();
        for (int i = 1; i < s.size(); i++) {
            JacketStation a = s.get(i - 1);
            JacketStation b = s.get(i);
            double width = Math.abs(Math.log(b.channelWidth() / a.channelWidth()));
            double height = Math.abs(Math.log(b.channelHeight() / a.channelHeight()));
            double at = 0.5 * (a.x() + b.x());
            if (Math.max(width, height) > SAME_CHANNEL) {
                marks.add(new LineChart.Mark(at, "C"));
            } else if (Math.abs(change(s, i) - 0.5 * (change(s, i - 1) + change(s, i + 1))) > SAME_TREND) {
                marks.add(new LineChart.Mark(at, "H"));
            }
        }
        return marks;
    }

    /** How much the heat transfer to the coolant grows up to a place from the one before (-); zero beyond the ends. */
    private static double change(List<JacketStation> s, int i) {
        return i < 1 || i >= s.size()
                ? 0
                : Math.log(s.get(i).coolantSideCoefficient() / s.get(i - 1).coolantSideCoefficient());
    }

    /** Limits of temperatures that are drawn, as level lines. */
    private static List<LineChart.Level> limits(JacketResult jacket) {
        List<LineChart.Level> levels = new ArrayList<>();
        for (LimitCheck limit : jacket.limits()) {
            boolean gasSide = limit.kind() == JacketLimit.WALL_TEMPERATURE;
            if (gasSide || limit.kind() == JacketLimit.COOLANT_WALL_TEMPERATURE) {
                String label = "limit, " + (gasSide ? "wall" : "channel floor") + ": " + CheckFigures.boundary(limit);
                levels.add(new LineChart.Level(limit.limit(), label, gasSide ? Ink.FUEL : Ink.STEEL));
            }
        }
        return levels;
    }

    private static LineChart.Panel panel(String label, int weight, Curve... curves) {
        return new LineChart.Panel(label, weight, true, List.of(curves));
    }

    private static Curve line(
            String name, Ink ink, boolean dashed, List<JacketStation> cells, ToDoubleFunction<JacketStation> value) {
        return new Curve(
                name,
                ink,
                dashed,
                cells.stream()
                        .map(cell -> new Curve.Point(cell.x(), value.applyAsDouble(cell)))
                        .toList());
    }
}
