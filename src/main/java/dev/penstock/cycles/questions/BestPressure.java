package dev.penstock.cycles.questions;

import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.PenstockException;
import dev.penstock.provenance.CheckFigures;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The chamber pressure within the limits that is best for a merit: the best rung of the ladder, then the golden section between
 * its neighbours. The merit is flat at its best, so that a hundredth of pressure is near enough.
 */
final class BestPressure {

    private static final double GOLDEN = 0.5 * (Math.sqrt(5) - 1);
    private static final double TOLERANCE = 0.015;
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
        if (lower != null && higher != null) {
            best = golden(lower, higher, best);
        } else if (lower != null) {
            best = golden(lower, best.pressure(), best);
        }
        boolean atEnd = best.pressure() > reach.pressure() * (1 - TOLERANCE)
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
                        : why(found, reach));
    }

    private PressureTrial golden(double from, double to, PressureTrial start) {
        double a = Math.log(from);
        double b = Math.log(to);
        PressureTrial best = start;
        double x1 = b - GOLDEN * (b - a);
        double x2 = a + GOLDEN * (b - a);
        while (b - a > TOLERANCE) {
            PressureTrial low = trials.at(Math.exp(x1));
            PressureTrial high = trials.at(Math.exp(x2));
            best = Stream.of(best, low, high)
                    .max((s, t) -> Double.compare(value(s), value(t)))
                    .orElseThrow();
            if (value(low) >= value(high)) {
                b = x2;
                x2 = x1;
                x1 = b - GOLDEN * (b - a);
            } else {
                a = x1;
                x1 = x2;
                x2 = a + GOLDEN * (b - a);
            }
        }
        return best;
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
