package dev.penstock.reports.study;

import dev.penstock.reports.chart.Curve;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.chart.LineChart;
import dev.penstock.reports.chart.SpanChart;
import dev.penstock.study.search.OptimumResult;
import dev.penstock.study.space.StudySpace;
import dev.penstock.study.space.Variable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a search for the best changed of the inputs, and how it went on the way. */
final class OptimumCharts {

    private static final Ink[] INKS = {Ink.GAS, Ink.STEEL, Ink.FUEL, Ink.OXIDIZER};

    /** A bar of no length is still seen (share of the range). */
    private static final double SEEN = 0.004;

    private final OptimumResult result;
    private final StudySpace space;

    OptimumCharts(OptimumResult result) {
        this.result = result;
        this.space = result.question().space();
    }

    /** From the file's value of each input to the best one, as places between the ends of its range. */
    Drawing inputs() {
        Optional<double[]> own = result.question().subject().own(space);
        List<SpanChart.Bar> bars = new ArrayList<>();
        for (int i = 0; i < space.size(); i++) {
            Variable variable = space.variables().get(i);
            double best = result.best().values()[i];
            int at = i;
            double to = variable.share(best);
            double from = own.map(o -> variable.share(o[at])).orElse(to);
            double widened = Math.abs(to - from) < SEEN ? SEEN : 0;
            String text =
                    own.map(o -> PointWords.text(variable, o[at]) + " to ").orElse("")
                            + PointWords.text(variable, best);
            bars.add(new SpanChart.Bar(
                    variable.words(), from - widened, to + widened, from <= to ? Ink.STEEL : Ink.GAS, text, to));
        }
        return new Drawing(
                SpanChart.svg("changes", "Change of the inputs", "place between the ends of its range (-)", true, bars),
                own.isPresent()
                        ? "From the file's value to the best one, which is marked: 0 is the lower end of the range, 1 the upper."
                                + " A best value at an end says that the range may hold it back."
                        : "Place of the best value, which is marked: 0 is the lower end of the range, 1 the upper. The file has"
                                + " no values of all inputs between their ends.",
                true);
    }

    /** The best of each start against the points that it had tried; nothing where no start found a feasible point. */
    Optional<Drawing> history() {
        FigureAxis axis =
                FrontierView.axis(result.question().objectives().get(0).figure());
        List<Curve> curves = new ArrayList<>();
        for (int s = 0; s < result.starts().size(); s++) {
            List<Curve.Point> points = points(result.starts().get(s), axis);
            if (!points.isEmpty()) {
                String name = s < INKS.length ? "start " + (s + 1) : "";
                curves.add(new Curve(name, INKS[s % INKS.length], s % (2 * INKS.length) >= INKS.length, points));
            }
        }
        if (curves.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Drawing(
                LineChart.svg(
                        "history",
                        "Search history",
                        "points tried by the start",
                        List.of(new LineChart.Panel(axis.label(), 1, false, curves)),
                        300),
                "The best that each start had by then, from its first point that keeps every constraint. Starts that end at"
                        + " different values say that there are several places where nothing near is better.",
                true));
    }

    private static List<Curve.Point> points(OptimumResult.Start start, FigureAxis axis) {
        List<Curve.Point> points = new ArrayList<>();
        double last = Double.NaN;
        for (OptimumResult.Step step : start.steps()) {
            if (step.feasible()) {
                if (!points.isEmpty()) {
                    points.add(new Curve.Point(step.evaluations(), last));
                }
                last = axis.at(step.objective());
                points.add(new Curve.Point(step.evaluations(), last));
            }
        }
        if (!points.isEmpty() && points.get(points.size() - 1).x() < start.evaluations()) {
            points.add(new Curve.Point(start.evaluations(), last));
        }
        return points;
    }
}
