package dev.penstock.claims.likelihood;

import dev.penstock.chamber.design.LossKind;
import dev.penstock.claims.figure.Candidate;
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

/**
 * The inputs that an engine is only known by within bounds. Those that move a claimed figure by much become unknowns; what
 * all others do together widens the predictions.
 * <pre>σ² = Σ (Δ/1.645)²,  Δ = change of the prediction from the most likely to the 95th percentile of an input</pre>
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
     * @param further standard deviation of the prediction of each claim, SI
     * @param failures why candidates did not close on the way
     */
    public record Result(Optional<EngineModel> model, List<Double> further, FailureTally failures) {}

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

    private record Effect(InputValue input, List<Double> moved) {}

    /** @return the model with all its unknowns */
    public Result find() {
        FailureTally failures = new FailureTally();
        Optional<double[]> centre = centre(failures);
        if (centre.isEmpty()) {
            return new Result(Optional.empty(), List.of(), failures);
        }
        double[] values = centre.get();
        Candidate likely = model.candidate(values, Map.of());
        List<InputValue> inputs = Uncertainty.of(likely.balance()).values().stream()
                .filter(i -> !model.settled().contains(i.key()))
                .toList();
        Effect[] effects = new Effect[inputs.size()];
        workers.forEach(inputs.size(), i -> effects[i] = effect(values, likely, inputs.get(i)));
        List<Effect> byWeight = new ArrayList<>(Arrays.asList(effects));
        byWeight.sort(Comparator.<Effect>comparingDouble(e -> -weight(e))
                .thenComparing(e -> e.input().key()));
        List<Unknown> all = new ArrayList<>(model.unknowns());
        double[] squares = new double[model.claims().size()];
        for (int i = 0; i < byWeight.size(); i++) {
            Effect effect = byWeight.get(i);
            if (i < MOST && weight(effect) > WORTH) {
                all.add(unknown(effect.input()));
            } else {
                for (int k = 0; k < squares.length; k++) {
                    squares[k] += Math.pow(effect.moved().get(k) / Claim.NINETY, 2);
                }
            }
        }
        List<Double> further = Arrays.stream(squares).map(Math::sqrt).boxed().toList();
        return new Result(Optional.of(model.with(all)), further, failures);
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

    private Effect effect(double[] values, Candidate likely, InputValue input) {
        List<Double> moved = new ArrayList<>();
        Optional<Candidate> high = Optional.empty();
        try {
            high = Optional.of(model.candidate(values, Map.of(input.key(), input.written(input.quantile(HIGH)))));
        } catch (PenstockException notClosed) {
            // An input that may keep the engine from closing says nothing of how the figures move.
        }
        for (Claim claim : model.claims()) {
            double change = high.map(h -> model.predicted(claim, values, h) - model.predicted(claim, values, likely))
                    .orElse(0.0);
            moved.add(Double.isFinite(change) ? Math.abs(change) : 0);
        }
        return new Effect(input, moved);
    }

    private double weight(Effect effect) {
        double most = 0;
        for (int k = 0; k < model.claims().size(); k++) {
            most = Math.max(most, effect.moved().get(k) / model.claims().get(k).sigma());
        }
        return most;
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
