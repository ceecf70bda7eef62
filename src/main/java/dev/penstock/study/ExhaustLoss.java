package dev.penstock.study;

import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.PenstockException;
import java.util.Locale;
import java.util.Optional;

/**
 * The chamber pressure at which the dumped turbine gas costs an allowed share of the specific impulse: the hardware would
 * often stand more, since more gas always makes more power, but nobody would build it. The loss rises with chamber
 * pressure, so halving the logarithmic interval finds it.
 */
final class ExhaustLoss {

    /** Name of the limit that ends a line where the loss is all that is allowed. */
    static final String LIMIT = "turbine exhaust loss";

    private static final int HALVINGS = 11;
    private static final int LONGEST_WAY_DOWN = 12;
    private static final double STEP = 1.5;

    private final EngineStudy study;
    private final double allowed;

    ExhaustLoss(EngineStudy study, double allowed) {
        this.study = study;
        this.allowed = allowed;
    }

    /** The reach itself, or where the loss is what is allowed if that lies below it. */
    CycleReach.Point upTo(Concept concept, CycleReach.Point reach) {
        EngineBalance highest = reach.balance().orElseThrow();
        double end = highest.engine().chamberPressure();
        double above = Math.min(concept.chamberPressure(), end);
        Optional<EngineBalance> kept = within(concept, above);
        for (int i = 0; i < LONGEST_WAY_DOWN && kept.isEmpty(); i++) {
            kept = within(concept, above / STEP);
            above = kept.isEmpty() ? above / STEP : above;
        }
        if (kept.isEmpty()) {
            return new CycleReach.Point(
                    reach.asked(),
                    Optional.empty(),
                    "",
                    "the turbine exhaust costs more than " + percent(allowed)
                            + " of the specific impulse at every chamber pressure tried");
        }
        // upwards: far beyond reason, where hardly any fuel is left for the chamber, the loss falls again
        while (kept.get().engine().chamberPressure() >= above && above < end) {
            above = Math.min(end, above * STEP);
            kept = Optional.of(within(concept, above).orElse(kept.get()));
        }
        if (kept.get().engine().chamberPressure() >= above) {
            return reach;
        }
        EngineBalance best = kept.get();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = Math.sqrt(best.engine().chamberPressure() * above);
            Optional<EngineBalance> there = within(concept, middle);
            above = there.isEmpty() ? middle : above;
            best = there.orElse(best);
        }
        String why = String.format(
                Locale.ROOT,
                "beyond %.4g MPa the turbine exhaust costs more than %s of the specific impulse; the limits of the"
                        + " hardware would allow %.4g MPa (%s), at a loss of %s",
                best.engine().chamberPressure() / 1e6,
                percent(allowed),
                highest.engine().chamberPressure() / 1e6,
                reach.limit(),
                percent(loss(highest)));
        return new CycleReach.Point(reach.asked(), Optional.of(best), LIMIT, why);
    }

    private Optional<EngineBalance> within(Concept concept, double pressure) {
        try {
            return Optional.of(study.balance(concept.withChamberPressure(pressure)))
                    .filter(balance -> loss(balance) <= allowed);
        } catch (PenstockException e) {
            return Optional.empty();
        }
    }

    private static double loss(EngineBalance balance) {
        return 1
                - balance.engineLosses().stream().mapToDouble(NamedLoss::factor).reduce(1, (a, b) -> a * b);
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.3g %%", 100 * share);
    }
}
