package dev.penstock.reports.engine;

import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.cycles.origin.LineKey;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.PressureStep;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Notation;
import dev.penstock.quantities.Scale;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.SpanChart;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The bars of one balanced engine: pressures, powers, losses; and the same bars with what they were before a change. */
final class EngineBars {

    /** What nobody would see has not moved (-). */
    private static final double UNSEEN = 1e-4;

    private EngineBars() {}

    /** @return every step of pressure from tank to chamber, line by line */
    static List<SpanChart.Bar> pressures(EngineBalance balance) {
        Map<LineKey, List<PressureStep>> lines = new LinkedHashMap<>();
        for (PressureStep step : balance.pressureLadder()) {
            lines.computeIfAbsent(step.line(), l -> new ArrayList<>()).add(step);
        }
        Scale pressure = Scale.of("bar");
        List<SpanChart.Bar> bars = new ArrayList<>();
        lines.forEach((line, steps) -> {
            bars.add(new SpanChart.Bar(line.title().toUpperCase(Locale.ROOT), 0, 0, Ink.MUTED, ""));
            Ink falling = Ink.of(line.content());
            for (PressureStep step : steps) {
                boolean rise = step.rise() > 0;
                String text = (rise ? "+" : "−") + Notation.PRESSURE.write(Math.abs(step.rise())) + " to "
                        + Notation.PRESSURE.write(step.to());
                bars.add(new SpanChart.Bar(
                        step.part().label(),
                        pressure.of(step.from()),
                        pressure.of(step.to()),
                        rise ? Ink.GAIN : falling,
                        text));
            }
        });
        return bars;
    }

    /** @return what turbines give and pumps take, by shaft: each bar begins where the one before ends */
    static List<SpanChart.Bar> powers(EngineBalance balance) {
        List<SpanChart.Bar> bars = new ArrayList<>();
        for (ShaftPowers powers : ShaftPowers.of(balance)) {
            bars.add(new SpanChart.Bar(powers.shaft().name().toUpperCase(Locale.ROOT), 0, 0, Ink.MUTED, ""));
            stack(bars, powers.gives());
            stack(bars, powers.takes());
        }
        return bars;
    }

    private static void stack(List<SpanChart.Bar> bars, List<ShaftPowers.Share> shares) {
        Scale scale = Scale.of("MW");
        double at = 0;
        for (ShaftPowers.Share share : shares) {
            double end = at + share.power();
            String text = Notation.POWER.write(share.power());
            bars.add(new SpanChart.Bar(share.label(), scale.of(at), scale.of(end), share.ink(), text));
            at = end;
        }
    }

    /** @return from the ideal to the engine's specific impulse, loss by loss */
    static List<SpanChart.Bar> losses(EngineBalance balance) {
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
        return bars;
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
     * @param bars bars of an engine
     * @param before the same bars before a change
     * @return the bars, each with the end that it had before marked on it where that has moved
     */
    static List<SpanChart.Bar> marked(List<SpanChart.Bar> bars, List<SpanChart.Bar> before) {
        Map<String, Double> ends = new HashMap<>();
        double size = walk(before, ends);
        String head = "";
        List<SpanChart.Bar> marked = new ArrayList<>();
        for (SpanChart.Bar bar : bars) {
            head = bar.text().isEmpty() ? bar.label() : head;
            Double end = ends.get(head + "/" + bar.label());
            boolean moved = end != null && !bar.text().isEmpty() && Math.abs(end - bar.to()) > UNSEEN * size;
            marked.add(new SpanChart.Bar(
                    bar.label(), bar.from(), bar.to(), bar.ink(), bar.text(), moved ? end : Double.NaN));
        }
        return marked;
    }

    /** Notes the end of every bar by the heading and the name that it has. */
    private static double walk(List<SpanChart.Bar> bars, Map<String, Double> ends) {
        String head = "";
        double size = 0;
        for (SpanChart.Bar bar : bars) {
            head = bar.text().isEmpty() ? bar.label() : head;
            ends.putIfAbsent(head + "/" + bar.label(), bar.to());
            size = Math.max(size, Math.abs(bar.to()));
        }
        return size;
    }
}
