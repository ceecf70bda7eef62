package dev.penstock.claims.answer;

import dev.penstock.claims.figure.ClaimPaths;
import dev.penstock.claims.file.Claim;
import dev.penstock.claims.likelihood.EngineModel;
import dev.penstock.claims.likelihood.Sighting;
import dev.penstock.numerics.sampling.SampledPosterior;
import dev.penstock.quantities.Notation;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Says in words why a kind of engine is as probable as it is. */
final class Reasons {

    /** Below this a claim or limit does not weigh. */
    private static final double LIGHT = 1;

    private Reasons() {}

    static Notation notation(Claim claim) {
        return ClaimPaths.figure(claim.path())
                .map(f -> f.notation())
                .orElseGet(() -> Notation.ofUnit(
                        ClaimPaths.dimension(claim.path()).map(d -> d.siUnit()).orElse("")));
    }

    /** A claim as people state it. */
    static String said(Claim claim) {
        Notation n = notation(claim);
        if (claim.value().isPresent()) {
            return n.writeWithUnit(claim.value().getAsDouble()) + " ± "
                    + n.writeWithUnit(claim.high().getAsDouble() - claim.value().getAsDouble());
        }
        if (claim.low().isPresent() && claim.high().isPresent()) {
            return n.writeWithUnit(claim.low().getAsDouble()) + " to "
                    + n.writeWithUnit(claim.high().getAsDouble());
        }
        return claim.low().isPresent()
                ? "at least " + n.writeWithUnit(claim.low().getAsDouble())
                : "at most " + n.writeWithUnit(claim.high().orElseThrow());
    }

    /**
     * Why nothing was found although engines close: the claim that all of them miss most, and the nearest of them.
     *
     * @param drawn candidates of the prior that close
     * @param claims the claims
     * @return a sentence; empty if there is no candidate
     */
    static Optional<String> nearest(List<Mixture.Weighted> drawn, List<Claim> claims) {
        record Missed(Claim claim, double value) {
            double off() {
                return Math.abs(claim.surplus(value));
            }
        }
        return claims.stream()
                .flatMap(c -> drawn.stream()
                        .map(s -> new Missed(c, LeftOut.value(s, c)))
                        .filter(m -> Double.isFinite(m.value()))
                        .min(Comparator.comparingDouble(Missed::off))
                        .stream())
                .max(Comparator.comparingDouble(Missed::off))
                .map(m -> m.off() <= LIGHT
                        ? drawn.size()
                                + " engines drawn before any claim close and each claim is met by one of them, but none"
                                + " was found that meets all"
                        : String.format(
                                Locale.ROOT,
                                "no engine was found with %s of %s; of the %d drawn before any claim that close the nearest has %s",
                                m.claim().path(),
                                said(m.claim()),
                                drawn.size(),
                                notation(m.claim()).writeWithUnit(m.value())));
    }

    /** Why a kind is as probable as it is, beside the most probable one. */
    static String of(Cloud cloud, Cloud first) {
        if (cloud.samples().isEmpty()
                && cloud.posterior().isPresent()
                && !cloud.prior().isEmpty()) {
            return String.format(
                    Locale.ROOT,
                    "%d of %d engines drawn before any claim close, none was found near the claims",
                    cloud.prior().size(),
                    cloud.tried());
        }
        if (cloud.samples().isEmpty()) {
            String most = cloud.failures().foremost().orElse("no reason was given");
            return cloud.posterior().isPresent() || cloud.model().isEmpty()
                    ? "no engine of it was found, of "
                            + Math.max(cloud.tried(), cloud.failures().all()) + " tried; most often: " + most
                    : "it was not sampled to the end";
        }
        EngineModel model = cloud.model().orElseThrow();
        StringBuilder text = new StringBuilder();
        Sighting best = best(cloud).evaluation().detail().orElseThrow();
        int worst = 0;
        for (int i = 0; i < model.claims().size(); i++) {
            if (Math.abs(surplus(cloud, best, i)) > Math.abs(surplus(cloud, best, worst))) {
                worst = i;
            }
        }
        double off = surplus(cloud, best, worst);
        Claim claim = model.claims().get(worst);
        if (Math.abs(off) > LIGHT) {
            text.append(String.format(
                    Locale.ROOT,
                    "its best engine has %s of %s where %s is claimed (%.1f deviations %s)",
                    claim.path(),
                    notation(claim).writeWithUnit(best.claims().get(worst)),
                    said(claim),
                    Math.abs(off),
                    off > 0 ? "high" : "low"));
        } else {
            text.append("its best engine meets every claim");
        }
        if (best.margin() < 0) {
            text.append(", misses the limit " + best.limit() + " by " + Notation.share(-best.margin()));
        }
        if (first != cloud && !first.samples().isEmpty()) {
            text.append(String.format(
                    Locale.ROOT,
                    "; the claims and limits leave %.2g times as much of it as of the most probable kind",
                    Math.exp(cloud.logEvidence() - first.logEvidence())));
            FittingShare.lost(cloud, first).ifPresent(lost -> text.append(": ").append(lost));
        }
        if (cloud.tried() > 0) {
            text.append(String.format(
                    Locale.ROOT,
                    "; %d of %d engines drawn before any claim close",
                    cloud.prior().size(),
                    cloud.tried()));
        }
        return text.toString();
    }

    private static double surplus(Cloud cloud, Sighting sighting, int claim) {
        return cloud.model()
                .orElseThrow()
                .claims()
                .get(claim)
                .surplus(sighting.claims().get(claim));
    }

    static SampledPosterior.Sample<Sighting> best(Cloud cloud) {
        Optional<SampledPosterior.Sample<Sighting>> best = cloud.samples().stream()
                .max(Comparator.comparingDouble(s -> s.evaluation().logLikelihood()));
        return best.orElseThrow();
    }
}
