package dev.penstock.claims.likelihood;

import dev.penstock.cooling.jacket.JacketLimit;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.ModelCard;
import java.util.Comparator;
import java.util.List;

/**
 * Engines that miss the limits of their hardware are not often built.
 * <pre>ln L = −½ (m/0.1)²,  m = margin of the tightest limit where it is below zero</pre>
 * The tenth is a choice: limits of common practice are known about that well. Limits of a cooling jacket do not count, since
 * its channels are the usual ones, laid out by nobody for this engine.
 */
final class LimitPenalty {

    static final double SOFTNESS = 0.1;

    private LimitPenalty() {}

    /** The tightest limit: its name, empty if there is none, and its margin (-). */
    record Tightest(String name, double margin) {}

    static Tightest of(EngineBalance balance) {
        return balance.limits().stream()
                .filter(l -> !(l.kind() instanceof JacketLimit))
                .min(Comparator.comparingDouble(LimitCheck::margin))
                .map(l -> new Tightest(l.name(), l.margin()))
                .orElse(new Tightest("", 1));
    }

    static double logLikelihood(double margin) {
        double missed = Math.min(0, margin) / SOFTNESS;
        return -0.5 * missed * missed;
    }

    static final ModelCard CARD = new ModelCard(
            "claims.limits",
            "Likelihood of an engine that misses a limit",
            "ln L = -(m/0.1)^2/2, m = margin of the tightest limit below zero",
            "limits of pumps, turbines and tanks; those of a jacket do not count",
            "the tenth is a choice",
            List.of("common practice, no source"));
}
