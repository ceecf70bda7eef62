package dev.penstock.claims.answer;

import dev.penstock.claims.figure.ClaimPaths;
import dev.penstock.claims.file.Claim;
import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.claims.likelihood.EngineModel;
import dev.penstock.claims.likelihood.Sighting;
import dev.penstock.errors.PenstockException;
import dev.penstock.input.InputKind;
import dev.penstock.numerics.sampling.Workers;
import dev.penstock.quantities.Notation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The least change that would bring a claim together with the others: of the claim itself, of the losses, or of one input
 * about the engine that the other claims make likeliest.
 */
final class LeastChange {

    private static final String EFFICIENCY = "engine.impulse_efficiency";
    private static final Set<String> IMPULSES = Set.of("engine.isp_vacuum_s", "engine.isp_sea_level_s");
    private static final int STEPS = 6;
    private static final double BEYOND = 4;
    private static final int SHOWN = 3;

    private final ClaimsFile file;
    private final Workers workers;

    LeastChange(ClaimsFile file, Workers workers) {
        this.file = file;
        this.workers = workers;
    }

    /** A value of one input and what the claim's figure is there. */
    private record Tried(String path, double value, double reached) {}

    /** Sentences, the least change first. */
    List<String> sentences(Claim claim, Mixture others, Band predicted) {
        List<String> sentences = new ArrayList<>();
        Notation n = Reasons.notation(claim);
        sentences.add(String.format(
                Locale.ROOT,
                "the others predict %s for %s (%s to %s); stated as %s it would fit",
                n.writeWithUnit(predicted.p50()),
                claim.path(),
                n.writeWithUnit(predicted.p05()),
                n.writeWithUnit(predicted.p95()),
                n.writeWithUnit(predicted.p50() < claim.centre() ? predicted.p95() : predicted.p05())));
        losses(claim, others, predicted).ifPresent(sentences::add);
        sentences.addAll(inputs(claim, others, predicted));
        return sentences;
    }

    private Optional<String> losses(Claim claim, Mixture others, Band predicted) {
        boolean impulse = ClaimPaths.figure(claim.path())
                .filter(f -> IMPULSES.contains(f.path()))
                .isPresent();
        if (!impulse) {
            return Optional.empty();
        }
        Optional<Band> reached =
                others.collected(s -> Mixture.value(s, EFFICIENCY)).band();
        return reached.map(band -> String.format(
                Locale.ROOT,
                "%s needs efficiencies of %.3f together (combustion, nozzle and cycle); engines of this technology reach"
                        + " %.3f to %.3f",
                Reasons.notation(claim).writeWithUnit(claim.centre()),
                band.p50() * claim.centre() / predicted.p50(),
                band.p05(),
                band.p95()));
    }

    /** One input at a time, about the sample whose prediction is the middle one. */
    private List<String> inputs(Claim claim, Mixture others, Band predicted) {
        Optional<Mixture.Weighted> middle = others.samples().stream()
                .filter(s -> Double.isFinite(LeftOut.value(s, claim)) && s.weight() > 0)
                .min(Comparator.comparingDouble(s -> Math.abs(LeftOut.value(s, claim) - predicted.p50())));
        if (middle.isEmpty()) {
            return List.of();
        }
        EngineModel model = middle.get().cloud().model().orElseThrow();
        if (model.unknowns().stream().anyMatch(u -> u.path().equals(claim.path()))) {
            return List.of(); // an input of its own, which no other input moves
        }
        Sighting sighting = middle.get().sighting();
        List<Tried> questions = new ArrayList<>();
        Map<String, Double> now = new LinkedHashMap<>();
        for (int i = 0; i < model.unknowns().size(); i++) {
            now.put(model.unknowns().get(i).path(), sighting.unknowns().get(i));
        }
        file.given().forEach((path, text) -> ClaimPaths.dimension(path)
                .flatMap(d -> dev.penstock.quantities.Units.parse(text.replace("\"", ""), d))
                .ifPresent(value -> now.put(path, value)));
        now.forEach((path, value) -> ClaimPaths.input(path).ifPresent(input -> {
            if (input.belief().isPresent()
                    && input.kind() instanceof InputKind.Quantity kind
                    && value > 0
                    && !path.equals(claim.path())) {
                for (int k = -STEPS; k <= STEPS; k++) {
                    double tried = value * Math.pow(BEYOND, (double) k / STEPS);
                    if (k != 0 && kind.range().contains(tried)) {
                        questions.add(new Tried(path, tried, Double.NaN));
                    }
                }
            }
        }));
        Tried[] answers = new Tried[questions.size()];
        workers.forEach(answers.length, i -> answers[i] = tried(model, sighting, claim, questions.get(i)));
        double start = LeftOut.value(middle.get(), claim);
        List<String> sentences = new ArrayList<>();
        record Way(double factor, String sentence) {}
        List<Way> ways = new ArrayList<>();
        now.forEach((path, value) -> crossing(path, value, start, claim, answers)
                .ifPresent(at -> ways.add(new Way(Math.abs(Math.log(at / value)), words(path, value, at)))));
        ways.sort(Comparator.comparingDouble(Way::factor));
        ways.stream().limit(SHOWN).forEach(w -> sentences.add(w.sentence()));
        if (ways.isEmpty() && answers.length > 0) {
            nearest(answers, claim, now).ifPresent(sentences::add);
        }
        return sentences;
    }

    private Tried tried(EngineModel model, Sighting sighting, Claim claim, Tried question) {
        double[] values = sighting.unknowns().stream().mapToDouble(v -> v).toArray();
        try {
            double reached = model.predictedWith(values, question.path(), question.value(), claim);
            return new Tried(question.path(), question.value(), reached);
        } catch (PenstockException notClosed) {
            return question;
        }
    }

    /** Where the figure crosses the claim, between two values that were tried; the nearest such place. */
    private static Optional<Double> crossing(String path, double now, double start, Claim claim, Tried[] answers) {
        double wanted = claim.centre();
        List<Tried> line = new ArrayList<>(List.of(new Tried(path, now, start)));
        for (Tried t : answers) {
            if (t.path().equals(path) && Double.isFinite(t.reached())) {
                line.add(t);
            }
        }
        line.sort(Comparator.comparingDouble(Tried::value));
        Optional<Double> nearest = Optional.empty();
        for (int i = 1; i < line.size(); i++) {
            Tried a = line.get(i - 1);
            Tried b = line.get(i);
            if ((a.reached() - wanted) * (b.reached() - wanted) <= 0 && a.reached() != b.reached()) {
                double share = (wanted - a.reached()) / (b.reached() - a.reached());
                double at = a.value() * Math.pow(b.value() / a.value(), share);
                if (nearest.isEmpty() || Math.abs(Math.log(at / now)) < Math.abs(Math.log(nearest.get() / now))) {
                    nearest = Optional.of(at);
                }
            }
        }
        return nearest;
    }

    private static String words(String path, double now, double at) {
        Notation n = Notation.ofUnit(ClaimPaths.dimension(path).orElseThrow().siUnit());
        return String.format(
                Locale.ROOT,
                "%s of %s instead of %s would do, all else as the other claims make it",
                path,
                n.writeWithUnit(at),
                n.writeWithUnit(now));
    }

    private static Optional<String> nearest(Tried[] answers, Claim claim, Map<String, Double> now) {
        Optional<Tried> best = java.util.Arrays.stream(answers)
                .filter(t -> Double.isFinite(t.reached()))
                .min(Comparator.comparingDouble(t -> Math.abs(t.reached() - claim.centre())));
        return best.map(t -> {
            Notation n =
                    Notation.ofUnit(ClaimPaths.dimension(t.path()).orElseThrow().siUnit());
            return String.format(
                    Locale.ROOT,
                    "no single input does it within a factor of %.0f; nearest comes %s of %s (now %s), with %s",
                    BEYOND,
                    t.path(),
                    n.writeWithUnit(t.value()),
                    n.writeWithUnit(now.get(t.path())),
                    Reasons.notation(claim).writeWithUnit(t.reached()));
        });
    }
}
