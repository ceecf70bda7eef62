package dev.penstock.reports.engine;

import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.cooling.jacket.JacketLimit;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketStation;
import dev.penstock.cycles.concept.BoostDesign;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Scale;
import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.reports.diagram.DrawnEngine;
import dev.penstock.reports.diagram.FlowDiagram;
import dev.penstock.reports.text.Markup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;

/** The drawings of one balanced engine. */
public final class EngineCharts {

    private static final double HIGHEST = 60e3;
    private static final int STEPS = 120;
    private static final String DOTS = "Dotted: before the changes.";
    /** How much a channel may change from one place to the next without being marked (-). */
    private static final double SAME_CHANNEL = 0.08;
    /** Cells between two changes that are drawn apart. */
    private static final int FAR = 4;
    /** How far the change of a heat-transfer coefficient may lie from those beside it without being marked (-). */
    private static final double SAME_TREND = 0.06;

    private final EngineBalance balance;
    private final String prefix;
    private final Optional<EngineBalance> before;

    /**
     * @param balance balanced engine
     * @param prefix start of the identifiers of the drawings, unique in a page
     */
    public EngineCharts(EngineBalance balance, String prefix) {
        this(balance, prefix, Optional.empty());
    }

    /**
     * @param balance balanced engine
     * @param prefix start of the identifiers of the drawings, unique in a page
     * @param before the engine before it was changed, drawn into the charts
     */
    public EngineCharts(EngineBalance balance, String prefix, Optional<EngineBalance> before) {
        this.balance = balance;
        this.prefix = prefix;
        this.before = before;
    }

    private List<SpanChart.Bar> bars(Function<EngineBalance, List<SpanChart.Bar>> made) {
        List<SpanChart.Bar> bars = made.apply(balance);
        return before.map(b -> EngineBars.marked(bars, made.apply(b))).orElse(bars);
    }

    private String caption(String text, String old) {
        return before.isPresent() ? text + " " + old : text;
    }

    private static String marks(List<SpanChart.Bar> bars) {
        return bars.stream().anyMatch(b -> !Double.isNaN(b.mark()))
                ? "An upright stroke is the end of the bar before the changes."
                : "The changes move nothing here.";
    }

    /** Curves of this engine, and after them the same curves before the changes. */
    private List<Curve> curves(Function<EngineBalance, List<Curve>> made) {
        List<Curve> curves = new ArrayList<>(made.apply(balance));
        before.ifPresent(b -> made.apply(b).forEach(c -> curves.add(c.asBefore())));
        return curves;
    }

    /** @return flow diagram of the cycle */
    public Drawing flow() {
        return flow(Optional.empty());
    }

    /**
     * @param links gives the address of a numbered station
     * @return the same, whose plates lead there
     */
    public Drawing flow(IntFunction<String> links) {
        return flow(Optional.of(links));
    }

    private Drawing flow(Optional<IntFunction<String>> links) {
        String title = "Flow diagram of " + balance.concept().name();
        DrawnEngine engine = DrawnEngine.of(balance);
        String svg = FlowDiagram.svg(prefix + "-flow", title, engine, links);
        return new Drawing(
                svg,
                "Flow runs from the tanks above to the chamber below. Numbered plates are the stations of the table:"
                        + " absolute pressure, temperature, flow. Blue is oxidizer, amber fuel, plum burnt gas"
                        + (engine.hasPressurant() ? ", teal pressurant" : "")
                        + (diluted() ? ", indigo the third fluid" : "")
                        + (balance.shafts().isEmpty() ? "." : "; a dotted line is " + dotted() + ".")
                        + (engine.hasLiquidDrawnOff()
                                ? " Liquid that turns a boost pump passes its main pump twice; its plates have no number."
                                : ""),
                true);
    }

    private String dotted() {
        return balance.electric().isPresent() ? "a shaft, a gear or a cable" : "a shaft or a gear";
    }

    private boolean diluted() {
        return balance.concept().diluent().isPresent();
    }

    /** @return pressure along every line */
    public Drawing pressures() {
        Scale pressure = Scale.of("bar");
        List<SpanChart.Bar> bars = bars(EngineBars::pressures);
        String svg = SpanChart.svg(
                prefix + "-pressure", "Pressure along every line", pressure.label("absolute pressure"), true, bars);
        return new Drawing(
                svg,
                caption(
                        "Every step from tank to chamber, line by line: teal rises, blue, amber"
                                + (diluted() ? ", indigo" : "")
                                + " and plum fall. Beside each bar the step and the pressure after it, in "
                                + pressure.unit() + ".",
                        marks(bars)),
                true);
    }

    /** @return what turbines give and pumps take, by shaft */
    public Drawing power() {
        List<SpanChart.Bar> bars = bars(EngineBars::powers);
        String svg = SpanChart.svg(
                prefix + "-power", "Power by shaft", Scale.of("MW").label("power"), true, bars);
        return new Drawing(
                svg,
                caption(
                        "On each shaft the teal bars, what drives it, are together as long as those below them: pumps"
                                + (balance.shafts().stream().anyMatch(s -> s.powerTakenOff() > 0) ? ", gear" : "")
                                + " and mechanical loss."
                                + (boosted()
                                        ? " Power that a main pump's liquid carries to a boost pump stands apart, and again on"
                                                + " the shaft of that pump."
                                        : ""),
                        marks(bars)),
                false);
    }

    /** Whether a main pump's liquid turns a boost pump. */
    private boolean boosted() {
        return balance.concept().boostedBy(BoostDesign.Drive.LIQUID);
    }

    /** @return thrust and specific impulse against altitude */
    public Drawing altitude() {
        Scale height = Scale.of("km");
        Scale force = Scale.of("kN");
        String svg = LineChart.svg(
                prefix + "-altitude",
                "Specific impulse and thrust against altitude",
                height.label("altitude") + ", standard atmosphere of 1976",
                List.of(
                        new LineChart.Panel(
                                "specific impulse (s)",
                                1,
                                false,
                                curves(b -> List.of(new Curve(
                                        "specific impulse",
                                        Ink.GAS,
                                        false,
                                        climb(
                                                b,
                                                height,
                                                f -> f / b.engine().massFlow() / Constants.STANDARD_GRAVITY))))),
                        new LineChart.Panel(
                                force.label("thrust"),
                                1,
                                false,
                                curves(b ->
                                        List.of(new Curve("thrust", Ink.STEEL, true, climb(b, height, force::of)))))),
                420);
        return new Drawing(
                svg,
                caption("Whole engine at full thrust, turbine exhaust and flow separation included.", DOTS),
                false);
    }

    /** What the thrust of an engine comes to, from the ground up. */
    private static List<Curve.Point> climb(EngineBalance engine, Scale height, DoubleUnaryOperator ofThrust) {
        StandardAtmosphere1976 air = new StandardAtmosphere1976();
        List<Curve.Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double altitude = HIGHEST * i / STEPS;
            double thrust = engine.thrustAt(air.at(altitude).pressure());
            points.add(new Curve.Point(height.of(altitude), ofThrust.applyAsDouble(thrust)));
        }
        return points;
    }

    /** @return from the ideal to the engine's specific impulse, loss by loss */
    public Drawing losses() {
        List<SpanChart.Bar> bars = bars(EngineBars::losses);
        String svg = SpanChart.svg(
                prefix + "-losses",
                "From ideal to delivered specific impulse",
                "specific impulse in vacuum (s)",
                false,
                bars);
        return new Drawing(
                svg,
                caption(
                        "What each loss takes off the ideal vacuum specific impulse. The axis does not start at zero.",
                        marks(bars)),
                false);
    }

    /**
     * @param jacket jacket
     * @return heat flux, wall temperature and contour along the axis
     */
    public Drawing jacket(JacketResult jacket) {
        Scale metre = Scale.of("m");
        Scale heat = Scale.of("MW/m²");
        Scale temperature = Scale.of("K");
        List<JacketStation> s = jacket.stations();
        List<LineChart.Mark> marks = changes(s);
        String svg = LineChart.svg(
                prefix + "-" + jacket.circuit().id("jacket").replace('.', '-'),
                "Heat flux and wall temperature along the axis",
                metre.label("distance from the throat") + ", flow to the right",
                List.of(
                        new LineChart.Panel(
                                heat.label("heat flux"),
                                3,
                                true,
                                along(
                                        jacket,
                                        c -> List.of(
                                                line("heat flux", Ink.GAS, false, c, heat, JacketStation::heatFlux)))),
                        new LineChart.Panel(
                                        temperature.label("temperature"),
                                        4,
                                        false,
                                        along(jacket, c -> temperatures(c, temperature)))
                                .with(limits(jacket)),
                        new LineChart.Panel(
                                metre.label("radius"),
                                2,
                                true,
                                curves(b -> List.of(new Curve("inner wall", Ink.MUTED, false, contour(b, metre)))))),
                560,
                List.of(),
                marks);
        String where = jacket.circuit().word();
        return new Drawing(
                svg,
                caption(
                        (where.isEmpty() ? "" : Markup.capitalized(where + "jacket: "))
                                + "Along the chamber from the injector (left) to the nozzle exit (right)."
                                + (marks.isEmpty()
                                        ? ""
                                        : " At a dashed upright line the wall temperature steps: C, the channels change in size; H,"
                                                + " heat transfer to the coolant passes from one regime, or one end of its data, to another."),
                        DOTS),
                true);
    }

    /** Curves along a jacket, and along the same jacket before the changes. */
    private List<Curve> along(JacketResult jacket, Function<List<JacketStation>, List<Curve>> made) {
        List<Curve> curves = new ArrayList<>(made.apply(jacket.stations()));
        before.stream()
                .flatMap(b -> b.cooling().stream())
                .filter(old -> old.circuit().equals(jacket.circuit()))
                .forEach(old -> made.apply(old.stations()).forEach(c -> curves.add(c.asBefore())));
        return curves;
    }

    private static List<Curve> temperatures(List<JacketStation> s, Scale scale) {
        return List.of(
                line("wall, gas side", Ink.FUEL, false, s, scale, JacketStation::gasSideWallTemperature),
                line("wall, coolant side", Ink.STEEL, true, s, scale, JacketStation::coolantSideWallTemperature),
                line("coolant", Ink.OXIDIZER, false, s, scale, JacketStation::coolantTemperature));
    }

    private static List<Curve.Point> contour(EngineBalance engine, Scale metre) {
        return engine.chamber().contour().points().stream()
                .map(p -> new Curve.Point(metre.of(p.x()), metre.of(p.radius())))
                .toList();
    }

    /** Where the channels change, and where the law of heat transfer does; a change over several cells is one. */
    private static List<LineChart.Mark> changes(List<JacketStation> s) {
        List<LineChart.Mark> marks = new ArrayList<>();
        int channels = -FAR;
        int heat = -FAR;
        for (int i = 1; i < s.size(); i++) {
            JacketStation a = s.get(i - 1);
            JacketStation b = s.get(i);
            double width = Math.abs(Math.log(b.channelWidth() / a.channelWidth()));
            double height = Math.abs(Math.log(b.channelHeight() / a.channelHeight()));
            double at = Scale.of("m").of(0.5 * (a.x() + b.x()));
            if (Math.max(width, height) > SAME_CHANNEL) {
                if (i - channels >= FAR) {
                    marks.add(new LineChart.Mark(at, "C"));
                }
                channels = i;
            } else if (Math.abs(change(s, i) - 0.5 * (change(s, i - 1) + change(s, i + 1))) > SAME_TREND) {
                if (i - heat >= FAR) {
                    marks.add(new LineChart.Mark(at, "H"));
                }
                heat = i;
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
                levels.add(new LineChart.Level(Scale.of("K").of(limit.limit()), label, gasSide ? Ink.FUEL : Ink.STEEL));
            }
        }
        return levels;
    }

    private static Curve line(
            String name,
            Ink ink,
            boolean dashed,
            List<JacketStation> cells,
            Scale scale,
            ToDoubleFunction<JacketStation> value) {
        Scale metre = Scale.of("m");
        return new Curve(
                name,
                ink,
                dashed,
                cells.stream()
                        .map(cell -> new Curve.Point(metre.of(cell.x()), scale.of(value.applyAsDouble(cell))))
                        .toList());
    }
}
