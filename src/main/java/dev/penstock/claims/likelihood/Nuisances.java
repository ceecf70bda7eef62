package dev.penstock.claims.likelihood;

import dev.penstock.chamber.design.LossKind;
import dev.penstock.claims.figure.Candidate;
import dev.penstock.claims.figure.ClaimFigure;
import dev.penstock.claims.file.Claim;
import dev.penstock.claims.prior.Prior;
import dev.penstock.claims.prior.Unknown;
import dev.penstock.cycles.questions.Uncertainty;
import dev.penstock.errors.FailureTally;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import dev.penstock.input.InputKind;
import dev.penstock.input.InputValue;
import dev.penstock.numerics.sampling.TemperedSampler;
import dev.penstock.numerics.sampling.Workers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The inputs that an engine is only known by within bounds. Those that move a claimed figure by much become unknowns; what
 * all others do together widens the predictions, and so does what the model misses built engines by beyond all of them
 * ({@link ModelError}).
 * <pre>h² = Σ (Δ/1.645)²,  m² = max(0, e² − Σ all (Δ/(1.645 p))²),  Δ = change of the prediction from the most likely to the 95th percentile of an input</pre>
 */
public final class Nuisances {

    private static final double HIGH = 0.95;
    /** Share of a claim's deviation that makes an input worth following. */
    private static final double WORTH = 0.2;
    /** More unknowns than that cost more than they tell. */
    private static final int MOST = 6;

    private static final int TRIES = 32;

    /**
     * What came of it.
     *
     * @param model the model with all unknowns; empty if no candidate closes
     * @param claims doubt of the prediction of each claim
     * @param figures doubt of each watched figure
     * @param failures why candidates did not close on the way
     */
    public record Result(Optional<EngineModel> model, List<Doubt> claims, List<Doubt> figures, FailureTally failures) {}

    private final EngineModel model;
    private final Workers workers;

    /**
     * @param model model with its main unknowns
     * @param workers does the balances
     */
    public Nuisances(EngineModel model, Workers workers) {
        this.model = model;
        this.workers = workers;
    }

    /** What an input moves: the predictions of the claims, then the watched figures, SI. */
    private record Effect(InputValue input, double[] moved) {}

    /** @return the model with all its unknowns */
    public Result find() {
        FailureTally failures = new FailureTally();
        Optional<double[]> centre = centre(failures);
        if (centre.isEmpty()) {
            return new Result(Optional.empty(), List.of(), List.of(), failures);
        }
        double[] values = centre.get();
        Candidate likely = model.candidate(values, Map.of());
        double[] predicted = predictions(values, likely);
        List<InputValue> inputs = Uncertainty.of(likely.balance()).values().stream()
                .filter(i -> !model.settled().contains(i.key()))
                .toList();
        Effect[] effects = new Effect[inputs.size()];
        workers.forEach(inputs.size(), i -> effects[i] = effect(values, predicted, inputs.get(i)));
        List<Effect> byWeight = new ArrayList<>(Arrays.asList(effects));
        byWeight.sort(Comparator.<Effect>comparingDouble(e -> -weight(e))
                .thenComparing(e -> e.input().key()));
        List<Unknown> all = new ArrayList<>(model.unknowns());
        double[] held = new double[predicted.length];
        double[] explained = new double[held.length];
        for (int i = 0; i < byWeight.size(); i++) {
            Effect effect = byWeight.get(i);
            boolean followed = i < MOST && weight(effect) > WORTH;
            if (followed) {
                all.add(unknown(effect.input()));
            }
            for (int k = 0; k < held.length; k++) {
                double square = Math.pow(effect.moved()[k] / Claim.NINETY, 2);
                explained[k] += square;
                held[k] += followed ? 0 : square;
            }
        }
        List<Doubt> doubts = doubts(predicted, held, explained);
        int claims = model.claims().size();
        return new Result(
                Optional.of(model.with(all)),
                doubts.subList(0, claims),
                doubts.subList(claims, doubts.size()),
                failures);
    }

    /**
     * A place that closes, the middle of the prior first.
     *
     * @throws InvalidInput if nothing can even be tried: then it is what is given that cannot be used
     */
    private Optional<double[]> centre(FailureTally failures) {
        List<double[]> tries =
                new ArrayList<>(List.of(new double[model.unknowns().size()]));
        tries.addAll(TemperedSampler.prior(model.unknowns().size(), TRIES));
        Optional<InvalidInput> refusal = Optional.empty();
        boolean tried = false;
        for (double[] point : tries) {
            try {
                double[] values = model.values(point, Optional.empty());
                model.candidate(values, Map.of());
                return Optional.of(values);
            } catch (InvalidInput e) {
                refusal = refusal.or(() -> Optional.of(e));
                failures.count(e.problems().get(0).sentence());
            } catch (PenstockException e) {
                tried = true;
                failures.count(e.getMessage());
            }
        }
        if (!tried && refusal.isPresent()) {
            throw refusal.get();
        }
        return Optional.empty();
    }

    private Effect effect(double[] values, double[] before, InputValue input) {
        double[] moved = new double[before.length];
        Optional<Candidate> high = Optional.empty();
        try {
            high = Optional.of(model.candidate(values, Map.of(input.key(), input.written(input.quantile(HIGH)))));
        } catch (PenstockException notClosed) {
            // An input that may keep the engine from closing says nothing of how the figures move.
        }
        if (high.isPresent()) {
            double[] after = predictions(values, high.get());
            for (int k = 0; k < moved.length; k++) {
                double change = after[k] - before[k];
                moved[k] = Double.isFinite(change) ? Math.abs(change) : 0;
            }
        }
        return new Effect(input, moved);
    }

    /** What a candidate has for the claims, then its watched figures, SI. */
    private double[] predictions(double[] values, Candidate candidate) {
        Sighting sighting = model.sighting(values, candidate);
        return Stream.concat(sighting.claims().stream(), sighting.figures().stream())
                .mapToDouble(v -> v)
                .toArray();
    }

    private List<Doubt> doubts(double[] predicted, double[] held, double[] explained) {
        List<String> paths = new ArrayList<>();
        model.claims().forEach(c -> paths.add(path(c)));
        model.watched().forEach(f -> paths.add(f.path()));
        List<Doubt> doubts = new ArrayList<>();
        for (int k = 0; k < held.length; k++) {
            double whole = ModelError.whole(paths.get(k));
            doubts.add(Doubt.of(paths.get(k), predicted[k], Math.sqrt(held[k]), Math.sqrt(explained[k]), whole));
        }
        return doubts;
    }

    private double weight(Effect effect) {
        double most = 0;
        for (int k = 0; k < model.claims().size(); k++) {
            most = Math.max(most, effect.moved()[k] / model.claims().get(k).sigma());
        }
        return most;
    }

    /** Path of the figure of a claim; empty for an input. */
    private String path(Claim claim) {
        return model.figureOf(claim).map(ClaimFigure::path).orElse("");
    }

    private static Unknown unknown(InputValue input) {
        InputKind.Quantity kind = (InputKind.Quantity) input.input().kind();
        boolean loss =
                Arrays.stream(LossKind.values()).anyMatch(k -> input.input().equals(k.efficiency()));
        Prior prior = loss
                ? new Prior.About(input.input().scatter().orElseThrow(), kind.range(), input.spreadSource())
                : new Prior.Triangle(input.spread().orElseThrow(), input.spreadSource());
        return new Unknown(input.key(), input.input().title(), kind, prior);
    }
}
