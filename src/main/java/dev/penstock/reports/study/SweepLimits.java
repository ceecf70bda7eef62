package dev.penstock.reports.study;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.study.Sweep;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/** Where a sweep begins to miss a limit: margins are taken as linear between neighbouring combinations. */
final class SweepLimits {

    private final List<Sweep.Point> points;

    SweepLimits(List<Sweep.Point> points) {
        this.points = List.copyOf(points);
    }

    /**
     * A place on the one axis where a limit begins to be missed.
     *
     * @param limit dotted name of the limit
     * @param at place, in the unit of the axis
     * @param above whether it is missed above that place; otherwise below
     */
    record Boundary(String limit, double at, boolean above) {}

    /** A stretch of the one axis where a limit is missed. */
    record Stretch(double from, double to) {}

    /** @return names of the limits that are kept at some combinations and missed at others, in the order of the engine */
    List<String> crossed() {
        Set<String> kept = new LinkedHashSet<>();
        Set<String> missed = new LinkedHashSet<>();
        points.forEach(
                p -> p.balance().ifPresent(b -> b.limits().forEach(l -> (l.met() ? kept : missed).add(l.name()))));
        kept.retainAll(missed);
        return List.copyOf(kept);
    }

    /** @return names of the limits that are missed at any combination, in the order of the engine */
    List<String> everMissed() {
        return points.stream()
                .flatMap(p -> p.balance().stream())
                .flatMap(b -> b.limits().stream())
                .filter(l -> !l.met())
                .map(LimitCheck::name)
                .distinct()
                .toList();
    }

    /**
     * @param point a combination
     * @param limit dotted name of a limit
     * @return margin there, what a solver leaves counted as none; empty without a balance or without such a limit
     */
    static OptionalDouble margin(Sweep.Point point, String limit) {
        return point.balance().map(b -> margin(b, limit)).orElse(OptionalDouble.empty());
    }

    /** The same of a balanced engine. */
    static OptionalDouble margin(EngineBalance balance, String limit) {
        return balance.limits().stream()
                .filter(l -> l.name().equals(limit))
                .mapToDouble(l -> l.met() ? Math.max(0, l.margin()) : l.margin())
                .findFirst();
    }

    /**
     * @param place place of a combination on the one axis
     * @return all boundaries, from left to right
     */
    List<Boundary> boundaries(ToDoubleFunction<Sweep.Point> place) {
        List<Sweep.Point> sorted = sorted(place);
        List<Boundary> list = new ArrayList<>();
        for (String limit : crossed()) {
            for (int i = 0; i + 1 < sorted.size(); i++) {
                OptionalDouble a = margin(sorted.get(i), limit);
                OptionalDouble b = margin(sorted.get(i + 1), limit);
                if (a.isPresent() && b.isPresent() && a.getAsDouble() >= 0 != b.getAsDouble() >= 0) {
                    double from = place.applyAsDouble(sorted.get(i));
                    double to = place.applyAsDouble(sorted.get(i + 1));
                    double share = a.getAsDouble() / (a.getAsDouble() - b.getAsDouble());
                    list.add(new Boundary(limit, from + share * (to - from), a.getAsDouble() >= 0));
                }
            }
        }
        list.sort(Comparator.comparingDouble(Boundary::at));
        return list;
    }

    /**
     * @param place place of a combination on the one axis
     * @return stretches where any limit is missed, from left to right, none touching another
     */
    List<Stretch> missed(ToDoubleFunction<Sweep.Point> place) {
        List<Sweep.Point> sorted = sorted(place);
        Set<String> names = new LinkedHashSet<>();
        sorted.forEach(p -> p.balance().ifPresent(b -> b.limits().forEach(l -> names.add(l.name()))));
        List<Stretch> all = new ArrayList<>();
        for (String limit : names) {
            for (int i = 0; i + 1 < sorted.size(); i++) {
                OptionalDouble a = margin(sorted.get(i), limit);
                OptionalDouble b = margin(sorted.get(i + 1), limit);
                if (a.isEmpty() || b.isEmpty() || a.getAsDouble() >= 0 && b.getAsDouble() >= 0) {
                    continue;
                }
                double from = place.applyAsDouble(sorted.get(i));
                double to = place.applyAsDouble(sorted.get(i + 1));
                double share = a.getAsDouble() / (a.getAsDouble() - b.getAsDouble());
                double edge = from + share * (to - from);
                all.add(new Stretch(a.getAsDouble() >= 0 ? edge : from, b.getAsDouble() >= 0 ? edge : to));
            }
        }
        return merged(all);
    }

    private List<Sweep.Point> sorted(ToDoubleFunction<Sweep.Point> place) {
        return points.stream().sorted(Comparator.comparingDouble(place)).toList();
    }

    private static List<Stretch> merged(List<Stretch> all) {
        List<Stretch> merged = new ArrayList<>();
        for (Stretch next :
                all.stream().sorted(Comparator.comparingDouble(Stretch::from)).toList()) {
            int end = merged.size() - 1;
            if (end >= 0 && next.from() <= merged.get(end).to()) {
                Stretch last = merged.get(end);
                merged.set(end, new Stretch(last.from(), Math.max(last.to(), next.to())));
            } else {
                merged.add(next);
            }
        }
        return merged;
    }
}
