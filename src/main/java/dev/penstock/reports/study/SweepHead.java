package dev.penstock.reports.study;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.KeyPath;
import dev.penstock.quantities.Notation;
import dev.penstock.study.Axis;
import dev.penstock.study.Sweep;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What the page of a sweep says first: what was varied, how much of it closes and keeps every limit, and where that ends. */
final class SweepHead {

    private final Sweep.Result sweep;

    SweepHead(Sweep.Result sweep) {
        this.sweep = sweep;
    }

    /** @return what was varied */
    String varied() {
        return sweep.axes().stream().map(SweepHead::span).collect(Collectors.joining("; "));
    }

    private static String span(Axis axis) {
        Map<String, String> read = axis.read();
        List<String> values = axis.values();
        String first = read.get(values.get(0));
        String last = read.get(values.get(values.size() - 1));
        String name = KeyPath.words(axis.path());
        if (values.size() == 1) {
            return name + " " + first;
        }
        return axis.numeric()
                ? name + " " + first + " to " + last + ", " + values.size() + " values"
                : name + " " + values.stream().map(read::get).collect(Collectors.joining(", "));
    }

    /** @return how many combinations close and keep every limit, and where limits begin to be missed */
    String verdict() {
        int all = sweep.points().size();
        return "Of " + all + (all == 1 ? " combination, " : " combinations, ") + closed() + " close and " + kept()
                + " keep every limit." + edges();
    }

    /** @return name of the style of that sentence */
    String state() {
        return kept() == 0 ? "bad" : kept() < sweep.points().size() ? "doubt" : "good";
    }

    private long closed() {
        return sweep.points().stream().filter(p -> p.balance().isPresent()).count();
    }

    private long kept() {
        return sweep.points().stream()
                .filter(p -> p.balance().map(EngineBalance::withinLimits).orElse(false))
                .count();
    }

    private String edges() {
        if (sweep.axes().size() != 1 || !sweep.axes().get(0).numeric()) {
            return "";
        }
        String unit = sweep.axes().get(0).unit();
        List<String> edges = new SweepLimits(sweep.points())
                .boundaries(p -> Axis.numberOf(p.values().get(0)).orElseThrow()).stream()
                        .map(b -> words(b, unit))
                        .toList();
        return edges.isEmpty() ? "" : " Missed: " + String.join("; ", edges) + ".";
    }

    /** A limit and where it begins to be missed. */
    static String words(SweepLimits.Boundary boundary, String unit) {
        return CheckFigures.title(boundary.limit()) + ", " + (boundary.above() ? "above " : "below ")
                + Notation.significant(boundary.at(), 4) + (unit.isEmpty() ? "" : " " + unit);
    }
}
