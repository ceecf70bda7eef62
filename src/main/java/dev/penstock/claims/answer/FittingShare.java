package dev.penstock.claims.answer;

import dev.penstock.claims.file.Claim;
import dev.penstock.claims.likelihood.ClaimLadder;
import dev.penstock.claims.likelihood.Sighting;
import dev.penstock.quantities.Notation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Where a kind of engine loses to a more probable one: shares of its engines, drawn before any claim, that close, keep their limits, and
 * fit each claim by itself. The step at which the other kind keeps most is told.
 */
final class FittingShare {

    /** A step at which the other keeps less than that many times more is not told (-). */
    private static final double TOLD = 1.5;
    /** A share of nothing counts as half an engine of those that were drawn. */
    private static final double HALF = 0.5;

    private FittingShare() {}

    /**
     * One step of the comparison.
     *
     * @param own share that is left of a kind (-)
     * @param other share that is left of the more probable kind (-)
     * @param words what is left, as the middle of a sentence
     */
    record Step(double own, double other, String words) {

        double ratio() {
            return other / own;
        }

        @Override
        public String toString() {
            return Notation.share(own) + " " + words + ", " + Notation.share(other) + " of the most probable kind";
        }
    }

    /** The step at which a kind loses most against another; empty if it loses little at any of them. */
    static Optional<Step> lost(Cloud cloud, Cloud other) {
        if (cloud.prior().isEmpty() || other.prior().isEmpty()) {
            return Optional.empty();
        }
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(cloud.closing(), other.closing(), "of the engines drawn before any claim close"));
        steps.add(new Step(
                mean(cloud, ClaimLadder::limitsLogLikelihood),
                mean(other, ClaimLadder::limitsLogLikelihood),
                "of those that close keep their limits"));
        List<Claim> claims = cloud.model().orElseThrow().claims();
        for (int i = 0; i < claims.size(); i++) {
            steps.add(new Step(
                    fitting(cloud, i),
                    fitting(other, i),
                    "of those that close fit the claim on " + claims.get(i).path()));
        }
        return worst(steps);
    }

    /** The step of the largest ratio, if that is worth telling. */
    static Optional<Step> worst(List<Step> steps) {
        return steps.stream().max(Comparator.comparingDouble(Step::ratio)).filter(s -> s.ratio() >= TOLD);
    }

    private static double fitting(Cloud cloud, int claim) {
        ClaimLadder ladder = cloud.ladder().orElseThrow().claims();
        return mean(cloud, s -> ladder.logLikelihood(claim, s));
    }

    private static double mean(Cloud cloud, ToDoubleFunction<Sighting> logLikelihood) {
        double sum = 0;
        for (Sighting s : cloud.prior()) {
            double log = logLikelihood.applyAsDouble(s);
            sum += Double.isNaN(log) ? 0 : Math.exp(log);
        }
        return Math.max(sum, HALF) / cloud.prior().size();
    }
}
