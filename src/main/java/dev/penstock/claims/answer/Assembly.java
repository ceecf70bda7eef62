package dev.penstock.claims.answer;

import dev.penstock.claims.figure.ClaimFigure;
import dev.penstock.claims.figure.ClaimPaths;
import dev.penstock.claims.file.Claim;
import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.claims.prior.Unknown;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.numerics.sampling.Workers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Puts an answer together from what was sampled. */
final class Assembly {

    /** Fewer effective samples leave percentiles that move by a third of their distance: said to the reader. */
    private static final double FEW = 60;

    private static final int PAIRS = 5;
    private static final int PLOTTED = 300;

    private final ClaimsFile file;
    private final JudgeEffort effort;
    private final List<Judge.LeftOutClaim> held;
    private final Workers workers;
    private final Mixture mixture;

    /** The candidates of the prior that close, kinds alike. */
    private final List<Mixture.Weighted> drawn;

    private boolean complete;

    Assembly(
            ClaimsFile file,
            JudgeEffort effort,
            List<Cloud> clouds,
            List<Judge.LeftOutClaim> held,
            Workers workers,
            boolean complete) {
        this.file = file;
        this.effort = effort;
        this.held = held;
        this.workers = workers;
        this.mixture = new Mixture(clouds);
        this.drawn = drawn(mixture);
        this.complete = complete;
    }

    Judgement judgement(int balances, int impossible) {
        List<Judgement.Held> claims = claims();
        Judgement.Verdict verdict = verdict(claims);
        String about = Judge.about(file);
        List<Judgement.Finding> unknowns = unknowns();
        List<String> sentences = sentences(verdict, claims);
        return new Judgement(
                file.name(),
                verdict,
                sentences,
                kinds(),
                claims,
                unknowns,
                figures(),
                about,
                mixture.empty() ? List.of() : NextFacts.of(mixture, file, about),
                mixture.empty() ? List.of() : pairs(unknowns),
                mixture.empty() ? Optional.empty() : BestConcept.of(file.name(), mixture),
                mixture.effective(),
                balances,
                impossible,
                effort.seed(),
                complete,
                cautions());
    }

    private Judgement.Verdict verdict(List<Judgement.Held> claims) {
        boolean sampled = mixture.clouds().stream()
                .allMatch(c -> c.posterior().isPresent() || c.model().isEmpty());
        if (mixture.empty() && !sampled || !mixture.empty() && held.size() < claims.size()) {
            return Judgement.Verdict.UNDECIDED;
        }
        return mixture.empty() || missed().isPresent() ? Judgement.Verdict.IMPOSSIBLE : Verdicts.of(claims);
    }

    /** A hard range that every sample misses, far beyond its edge. */
    private Optional<Claim> missed() {
        return file.claims().stream()
                .filter(c -> c.value().isEmpty())
                .filter(c -> mixture.samples().stream()
                        .allMatch(s -> Math.abs(c.surplus(LeftOut.value(s, c))) > Claim.NINETY * 2))
                .findFirst();
    }

    private List<Judgement.Held> claims() {
        List<Judgement.Held> claims = new ArrayList<>();
        for (Claim claim : file.claims()) {
            Optional<Band> posterior = ClaimPaths.figure(claim.path())
                    .flatMap(f -> EngineBand.of(mixture.samples(), f.path(), Optional.of(claim), few(f.path())))
                    .or(() -> mixture.collected(s -> LeftOut.value(s, claim))
                            .band()
                            .map(few(claim.path())));
            Optional<Judge.LeftOutClaim> left =
                    held.stream().filter(h -> h.claim() == claim).findFirst();
            Optional<Band> predicted = left.flatMap(Judge.LeftOutClaim::predicted);
            claims.add(new Judgement.Held(
                    claim, Reasons.notation(claim), posterior, predicted, LeftOut.tension(claim, predicted)));
        }
        return claims;
    }

    private List<String> sentences(Judgement.Verdict verdict, List<Judgement.Held> claims) {
        List<String> sentences = new ArrayList<>();
        if (verdict == Judgement.Verdict.IMPOSSIBLE) {
            missed().filter(c -> !mixture.empty())
                    .ifPresent(c -> sentences.add(String.format(
                            Locale.ROOT,
                            "no engine of the kinds allowed has %s of %s; the nearest have %s",
                            c.path(),
                            Reasons.said(c),
                            mixture.collected(s -> LeftOut.value(s, c))
                                    .band()
                                    .map(b -> Reasons.notation(c).writeWithUnit(b.p50()))
                                    .orElse("none"))));
            if (mixture.empty()) {
                sentences.add(Reasons.nearest(drawn, file.claims())
                        .orElse("no engine of the kinds allowed was found that closes"));
            }
            return sentences;
        }
        if (verdict == Judgement.Verdict.UNDECIDED || claims.isEmpty()) {
            sentences.add("the claims were not held against each other");
            return sentences;
        }
        if (claims.size() == 1) {
            sentences.add("one claim alone can only be held against what is believed of any engine; little follows");
        }
        sentences.add(Verdicts.most(claims));
        if (verdict == Judgement.Verdict.STRAINED || verdict == Judgement.Verdict.CONTRADICTED) {
            try {
                for (Judgement.Held strained : Verdicts.strained(claims)) {
                    held.stream()
                            .filter(h -> h.claim() == strained.claim())
                            .forEach(h -> sentences.addAll(new LeastChange(file, workers)
                                    .sentences(
                                            h.claim(), h.others(), h.predicted().orElseThrow())));
                }
            } catch (CancellationException e) {
                complete = false;
            }
        }
        return sentences;
    }

    private List<Judgement.Kind> kinds() {
        List<Judgement.Kind> kinds = new ArrayList<>();
        Optional<Cloud> first = mixture.clouds().stream().max(Comparator.comparingDouble(Cloud::logEvidence));
        for (int i = 0; i < mixture.clouds().size(); i++) {
            Cloud cloud = mixture.clouds().get(i);
            Map<String, Double> medians = new LinkedHashMap<>();
            for (ClaimFigure f : WatchList.of(file)) {
                mixture.collected(s -> s.cloud() == cloud ? Mixture.value(s, f.path()) : Double.NaN)
                        .band()
                        .ifPresent(b -> medians.put(f.path(), b.p50()));
            }
            kinds.add(new Judgement.Kind(
                    cloud.hypothesis(),
                    mixture.probability(i),
                    cloud.logEvidence(),
                    cloud.posterior().map(p -> p.evidenceError()).orElse(0.0),
                    Reasons.of(cloud, first.orElseThrow()),
                    medians));
        }
        kinds.sort(Comparator.comparingDouble(k -> -k.probability()));
        return kinds;
    }

    private List<Judgement.Finding> unknowns() {
        List<Judgement.Finding> findings = new ArrayList<>();
        for (String path : Judge.unknowns(mixture.clouds())) {
            List<Unknown> ofKinds = mixture.clouds().stream()
                    .flatMap(c -> c.model().stream())
                    .flatMap(m -> m.unknowns().stream())
                    .filter(u -> u.path().equals(path))
                    .toList();
            Unknown unknown = ofKinds.get(0);
            mixture.collected(s -> Mixture.value(s, path))
                    .band()
                    .map(few(path))
                    .ifPresent(band -> findings.add(new Judgement.Finding(
                            path,
                            unknown.title(),
                            unknown.notation(),
                            unknown.prior().aboutModel() ? priorSeen(path) : Optional.of(ExactPrior.of(ofKinds)),
                            band,
                            ExactPrior.sources(ofKinds))));
        }
        return findings;
    }

    /**
     * Wider where samples are few, but no farther than any candidate that was seen before the claims or after, and not beyond a range that
     * is claimed.
     */
    private UnaryOperator<Band> few(String path) {
        DoubleSummaryStatistics seen = Stream.concat(drawn.stream(), mixture.samples().stream())
                .mapToDouble(s -> Mixture.value(s, path))
                .filter(Double::isFinite)
                .summaryStatistics();
        Optional<Claim> ranged = file.claims().stream()
                .filter(c -> c.path().equals(path) && c.value().isEmpty())
                .findFirst();
        double low = Math.max(
                seen.getMin(),
                ranged.map(c -> c.low().orElse(Double.NEGATIVE_INFINITY)).orElse(Double.NEGATIVE_INFINITY));
        double high = Math.min(
                seen.getMax(),
                ranged.map(c -> c.high().orElse(Double.POSITIVE_INFINITY)).orElse(Double.POSITIVE_INFINITY));
        return band -> band.ofFew(mixture.effective()).within(Math.min(low, band.p05()), Math.max(high, band.p95()));
    }

    private static List<Mixture.Weighted> drawn(Mixture mixture) {
        List<Mixture.Weighted> drawn = new ArrayList<>();
        for (Cloud cloud : mixture.clouds()) {
            cloud.prior()
                    .forEach(s -> drawn.add(
                            new Mixture.Weighted(cloud, s, 1.0 / cloud.prior().size())));
        }
        return drawn;
    }

    /** Of the candidates of the prior that close, kinds alike. */
    private Optional<Band> priorSeen(String path) {
        return EngineBand.of(drawn, path, Optional.empty(), UnaryOperator.identity());
    }

    private Optional<Claim> claimOn(ClaimFigure figure) {
        return file.claims().stream()
                .filter(c -> ClaimPaths.figure(c.path())
                        .filter(f -> f.path().equals(figure.path()))
                        .isPresent())
                .findFirst();
    }

    private List<Judgement.Finding> figures() {
        List<Judgement.Finding> findings = new ArrayList<>();
        for (ClaimFigure f : WatchList.of(file)) {
            EngineBand.of(mixture.samples(), f.path(), claimOn(f), few(f.path()))
                    .ifPresent(band -> findings.add(
                            new Judgement.Finding(f.path(), f.title(), f.notation(), priorSeen(f.path()), band, "")));
        }
        return findings;
    }

    /** The unknowns that are tied to each other most. */
    private List<Judgement.Series> pairs(List<Judgement.Finding> unknowns) {
        record Tied(Judgement.Finding finding, double tie) {}
        List<Tied> tied = new ArrayList<>();
        for (Judgement.Finding one : unknowns) {
            double most = 0;
            for (Judgement.Finding other : unknowns) {
                if (other != one) {
                    most = Math.max(most, Math.abs(correlation(one.path(), other.path())));
                }
            }
            tied.add(new Tied(one, most));
        }
        tied.sort(Comparator.comparingDouble(t -> -t.tie()));
        List<Judgement.Series> series = new ArrayList<>();
        int step = Math.max(1, mixture.samples().size() / PLOTTED);
        tied.stream().limit(PAIRS).forEach(t -> {
            List<Double> values = new ArrayList<>();
            for (int i = 0; i < mixture.samples().size(); i += step) {
                Mixture.Weighted s = mixture.samples().get(i);
                values.add(s.weight() > 0 ? Mixture.value(s, t.finding().path()) : Double.NaN);
            }
            series.add(new Judgement.Series(t.finding().path(), t.finding().notation(), values));
        });
        return series;
    }

    private double correlation(String a, String b) {
        Band.Collected as = mixture.collected(s -> Mixture.value(s, a));
        Band.Collected bs = mixture.collected(s -> Mixture.value(s, b));
        double ma = as.mean();
        double mb = bs.mean();
        double scale = as.deviation() * bs.deviation();
        double product = mixture.collected(s -> (Mixture.value(s, a) - ma) * (Mixture.value(s, b) - mb))
                .mean();
        return scale > 0 && Double.isFinite(product) ? product / scale : 0;
    }

    private List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        cautions.add(
                "Impulses and dry mass are taken to be off as far as those of built engines are, all other models as right"
                        + " apart from the inputs listed; cycles are alike before the claims.");
        if (mixture.clouds().stream()
                        .anyMatch(c -> c.hypothesis().cycle().traits().pumped())
                && !file.given("cooling.")) {
            cautions.add("Nothing is given of cooling: engines with pumps are taken with a jacket cooled by the fuel.");
        }
        if (mixture.clouds().stream()
                        .anyMatch(c ->
                                c.hypothesis().cycle().traits().closure() == CycleTraits.Closure.RATIO_OR_TEMPERATURE)
                && !file.given("boost_pumps.")) {
            cautions.add("Nothing is given of boost pumps: engines with preburners are taken with them.");
        }
        int most = mixture.clouds().stream()
                .mapToInt(c -> c.samples().size())
                .max()
                .orElse(0);
        List<String> left = mixture.clouds().stream()
                .filter(c -> c.posterior().isPresent() && c.samples().size() < most)
                .map(c -> c.hypothesis().cycle().id())
                .distinct()
                .toList();
        if (!left.isEmpty()) {
            cautions.add("After a first answer these were too improbable to be followed further: "
                    + String.join(", ", left) + ".");
        }
        double effective = mixture.effective();
        if (!mixture.empty() && effective < FEW) {
            cautions.add(String.format(
                    Locale.ROOT,
                    "%.0f effective samples are few: percentiles are rough, and drawn wider for it; more engines of each kind make them sure.",
                    effective));
        }
        if (!complete) {
            cautions.add("It was stopped: this is the answer of what was done.");
        }
        return cautions;
    }
}
