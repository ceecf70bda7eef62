package dev.penstock.cycles.questions;

import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.PenstockException;
import dev.penstock.numerics.Minimizer;
import dev.penstock.provenance.CheckFigures;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The chamber pressure within the limits that is best for a merit: the best rung of the ladder, then Brent's minimiser
 * between its neighbours, to two thousandths of pressure; where the merit is flat around it, the range is told.
 */
final class BestPressure {

    private static final double TOLERANCE = 2e-3;
    private static final int MOST_EVALUATIONS = 60;
    private static final double AT_END = 0.015;

    /** Share of the merit that counts as alike, and the ratio of pressures from which such a range is worth a word (-). */
    private static final double ALIKE_SHARE = 1e-3;

    private static final double FLAT = 1.1;
    private static final double ALIKE = 2e-5;
    private static final double WORTH_NAMING = 5e-4;

    private final PressureTrials trials;
    private final Merit merit;
    private final Map<Double, Double> values = new HashMap<>();

    BestPressure(PressureTrials trials, Merit merit) {
        this.trials = trials;
        this.merit = merit;
    }

    /**
     * @param reach highest pressure within the limits
     * @param limit what stops it there
     * @return the best at or below it
     */
    LimitResult.Best below(PressureTrial reach, String limit) {
        NavigableMap<Double, PressureTrial> kept = new TreeMap<>(trials.tried().headMap(reach.pressure(), true));
        kept.values().removeIf(t -> !t.kept());
        PressureTrial best = reach;
        for (PressureTrial trial : kept.descendingMap().values()) {
            best = value(trial) > value(best) * (1 + ALIKE * Math.signum(value(best))) ? trial : best;
        }
        Double lower = kept.lowerKey(best.pressure());
        Double higher = kept.higherKey(best.pressure());
        if (lower != null) {
            best = maximum(lower, higher == null ? best.pressure() : higher, best);
        }
        boolean atEnd = best.pressure() > reach.pressure() * (1 - AT_END)
                && value(reach) >= value(best) * (1 - ALIKE * Math.signum(value(best)));
        PressureTrial found = atEnd ? reach : best;
        return new LimitResult.Best(
                found.pressure(),
                found.balance().orElseThrow(),
                merit.title(),
                merit.value().applyAsDouble(found.balance().orElseThrow()),
                merit.unit(),
                atEnd ? limit : "optimum",
                atEnd
                        ? merit.title() + " is best where " + CheckFigures.title(limit) + " stops the engine"
                                + alike(found, reach)
                        : why(found, reach) + alike(found, reach));
    }

    /**
     * Brent's minimiser over the logarithm of pressure: where it ends, or the best of what it asked and its start if that is better
     * by more than what two balances differ by for no reason.
     */
    private PressureTrial maximum(double from, double to, PressureTrial start) {
        double worst = Math.min(value(trials.at(from)), value(trials.at(to))) - Math.abs(value(start));
        List<PressureTrial> asked = new ArrayList<>(List.of(start));
        double end = Math.exp(Minimizer.between(
                        "best chamber pressure",
                        p -> {
                            PressureTrial trial = trials.at(Math.exp(p));
                            asked.add(trial);
                            return -Math.max(worst, value(trial));
                        },
                        Math.log(from),
                        Math.log(to),
                        TOLERANCE / Math.log(to),
                        MOST_EVALUATIONS)
                .point()
                .get(0));
        PressureTrial found = trials.at(end);
        PressureTrial best =
                asked.stream().max((s, t) -> Double.compare(value(s), value(t))).orElseThrow();
        return value(best) > value(found) + ALIKE * Math.abs(value(best)) ? best : found;
    }

    /**
     * How far the pressure may be from the best for no more than a thousandth of the merit, by a parabola in the logarithm of pressure
     * through the best and the nearest pressure tried that is worse by more.
     */
    private String alike(PressureTrial best, PressureTrial reach) {
        NavigableMap<Double, PressureTrial> kept = new TreeMap<>(trials.tried());
        kept.values().removeIf(t -> !t.kept());
        double from = edge(best, kept.headMap(best.pressure(), false).descendingMap(), kept.firstKey());
        double to = edge(best, kept.subMap(best.pressure(), false, reach.pressure(), true), reach.pressure());
        return to < FLAT * from
                ? ""
                : String.format(
                        Locale.ROOT,
                        "; the curve is flat: from about %.3g to %.3g MPa it is within 0.1 %% of that",
                        from / 1e6,
                        to / 1e6);
    }

    private double edge(PressureTrial best, NavigableMap<Double, PressureTrial> away, double otherwise) {
        double allowed = ALIKE_SHARE * Math.abs(value(best));
        double near = best.pressure();
        for (PressureTrial trial : away.values()) {
            double lost = value(best) - value(trial);
            if (lost > allowed) {
                double way = Math.log(trial.pressure() / best.pressure()) * Math.sqrt(allowed / lost);
                double edge = best.pressure() * Math.exp(way);
                return way > 0 ? Math.max(near, edge) : Math.min(near, edge);
            }
            near = trial.pressure();
        }
        return otherwise;
    }

    /** More is better; an engine outside its limits, or one that does not serve, is worst. */
    private double value(PressureTrial trial) {
        return values.computeIfAbsent(trial.pressure(), p -> {
            if (!trial.kept()) {
                return Double.NEGATIVE_INFINITY;
            }
            try {
                double value = merit.value().applyAsDouble(trial.balance().orElseThrow());
                return merit.least() ? -value : value;
            } catch (PenstockException e) {
                return Double.NEGATIVE_INFINITY;
            }
        });
    }

    /** Mass for a vehicle; else the loss that grows most from the best pressure to the highest. */
    private String why(PressureTrial best, PressureTrial reach) {
        Map<String, Double> before = losses(best.balance().orElseThrow());
        Map<String, Double> after = losses(reach.balance().orElseThrow());
        String worst = "";
        double fall = 0;
        for (Map.Entry<String, Double> e : after.entrySet()) {
            double lost = before.getOrDefault(e.getKey(), e.getValue()) - e.getValue();
            if (lost > fall) {
                fall = lost;
                worst = e.getKey();
            }
        }
        if (merit.least() && impulse(reach) > impulse(best)) {
            return String.format(
                    Locale.ROOT,
                    "beyond it the impulse still rises, by %.3g s up to %.4g MPa, but the heavier engine takes more than that brings",
                    impulse(reach) - impulse(best),
                    reach.pressure() / 1e6);
        }
        return fall < WORTH_NAMING
                ? merit.title() + " is worse above and below"
                : String.format(
                        Locale.ROOT,
                        "beyond it %s costs more than the higher pressure brings (%.3g %% more at %.4g MPa)",
                        worst,
                        100 * fall,
                        reach.pressure() / 1e6);
    }

    private static double impulse(PressureTrial trial) {
        return trial.balance().orElseThrow().engine().vacuumIsp();
    }

    private static Map<String, Double> losses(EngineBalance balance) {
        Map<String, Double> map = new HashMap<>();
        for (NamedLoss loss : Stream.of(
                        balance.engineLosses(), balance.chamber().losses())
                .flatMap(List::stream)
                .toList()) {
            map.merge(loss.name(), loss.factor(), (x, y) -> x * y);
        }
        return map;
    }
}
