package dev.penstock.claims.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Whether claims fit together: by the largest tension among them. */
final class Verdicts {

    /** Standard deviations from which claims strain, and contradict, each other: common practice, no source. */
    static final double STRAINS = 2;

    static final double CONTRADICTS = 3;

    /** A claim this near to the most strained one strains with it. */
    private static final double PAIRED = 0.7;

    private Verdicts() {}

    static Judgement.Verdict of(List<Judgement.Held> claims) {
        double most =
                claims.stream().mapToDouble(h -> Math.abs(h.tension())).max().orElse(0);
        return most > CONTRADICTS
                ? Judgement.Verdict.CONTRADICTED
                : most > STRAINS ? Judgement.Verdict.STRAINED : Judgement.Verdict.CONSISTENT;
    }

    /** The claim that strains most, and the one that strains with it, if any. */
    static List<Judgement.Held> strained(List<Judgement.Held> claims) {
        List<Judgement.Held> order = new ArrayList<>(claims);
        order.sort(Comparator.comparingDouble(h -> -Math.abs(h.tension())));
        double tension = Math.abs(order.get(0).tension());
        boolean pair =
                order.size() > 1 && tension > STRAINS && Math.abs(order.get(1).tension()) > PAIRED * tension;
        return order.subList(0, pair ? 2 : 1);
    }

    /** The claim or pair of claims that strains most, in words. */
    static String most(List<Judgement.Held> claims) {
        List<Judgement.Held> strained = strained(claims);
        Judgement.Held first = strained.get(0);
        double tension = Math.abs(first.tension());
        if (strained.size() > 1) {
            return String.format(
                    Locale.ROOT,
                    "the claims on %s and %s strain each other most, by %.1f and %.1f standard deviations",
                    first.claim().path(),
                    strained.get(1).claim().path(),
                    tension,
                    Math.abs(strained.get(1).tension()));
        }
        boolean alone = claims.size() == 1;
        return String.format(
                Locale.ROOT,
                "the claim on %s%s: stated as %s it lies %.1f standard deviations %s what %s",
                first.claim().path(),
                alone ? " stands alone" : " strains most",
                Reasons.said(first.claim()),
                tension,
                first.tension() >= 0 ? "above" : "below",
                alone ? "is believed of any such engine" : "the other claims predict");
    }
}
