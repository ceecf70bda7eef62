package dev.penstock.claims.likelihood;

import dev.penstock.claims.figure.Candidate;
import dev.penstock.claims.figure.ClaimFigure;
import dev.penstock.claims.file.Claim;
import dev.penstock.errors.FailureTally;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import dev.penstock.numerics.sampling.Evaluation;
import dev.penstock.numerics.sampling.Ladder;
import dev.penstock.numerics.sampling.Workers;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The claims about one kind of engine as likelihoods of rising cost: what the thrust chamber alone says, within the few
 * per cent that the rest of the engine may change, then the balanced engine with its vehicle. The first only leads the way.
 */
public final class ClaimLadder implements Ladder<Sighting> {

    /** How far the engine may be from its chamber alone, where turbine gas goes through the chamber and where it is dumped. */
    private static final double CLOSED = 0.01;

    private static final double DUMPED = 0.04;

    private final EngineModel model;
    private final List<Doubt> doubts;
    private final FailureTally failures;
    private final EngineOverChamber rest;
    private final OptionalInt unheard;
    /** The chamber of the last point of this thread: the dear level is asked right after the cheap one. */
    private final ThreadLocal<Last> last = new ThreadLocal<>();

    private record Last(double[] point, ChamberAlone chamber) {}

    /**
     * @param model makes the candidates
     * @param doubts of the prediction of each claim
     * @param failures counts why candidates do not close
     */
    public ClaimLadder(EngineModel model, List<Doubt> doubts, FailureTally failures) {
        this(model, doubts, failures, EngineOverChamber.UNKNOWN, OptionalInt.empty());
    }

    private ClaimLadder(
            EngineModel model, List<Doubt> doubts, FailureTally failures, EngineOverChamber rest, OptionalInt unheard) {
        this.rest = rest;
        this.unheard = unheard;
        this.model = model;
        this.doubts = List.copyOf(doubts);
        this.failures = failures;
    }

    /**
     * @param claim number of a claim
     * @return the likelihood of all other claims
     */
    public ClaimLadder without(int claim) {
        return new ClaimLadder(model, doubts, failures, rest, OptionalInt.of(claim));
    }

    /**
     * What is known of the predictions does not depend on what is claimed.
     *
     * @param other a model with the same unknowns and with claims on the same paths
     * @return the likelihood of those claims
     */
    ClaimLadder against(EngineModel other) {
        return new ClaimLadder(other, doubts, failures, rest, unheard);
    }

    /**
     * The same claims, led by what whole engines were seen to do beside their chambers alone.
     *
     * @param points points of the standard normal space
     * @param seen the engine there; empty where none closes
     * @param workers make the chambers
     * @return the likelihood of the same claims
     */
    public ClaimLadder led(List<double[]> points, List<Optional<Sighting>> seen, Workers workers) {
        double[][] alone = new double[points.size()][];
        workers.forEach(
                alone.length,
                i -> alone[i] = seen.get(i).isPresent() ? byChamberAlone(points.get(i)) : new double[claims()]);
        List<Boolean> unknowns =
                model.claims().stream().map(c -> model.unknownOf(c).isPresent()).toList();
        EngineOverChamber learnt =
                EngineOverChamber.of(points.stream().map(model::place).toList(), alone, seen, unknowns);
        return new ClaimLadder(model, doubts, failures, learnt, unheard);
    }

    /**
     * @param claim number of a claim
     * @param sighting a candidate
     * @return natural logarithm of the likelihood of that claim alone but for a constant; NaN where the candidate says nothing of it
     */
    public double logLikelihood(int claim, Sighting sighting) {
        double predicted = sighting.claims().get(claim);
        return model.claims()
                .get(claim)
                .logLikelihood(predicted, doubts.get(claim).of(predicted));
    }

    /**
     * @param claim number of a claim
     * @param predicted a prediction for it, SI
     * @return standard deviation of what the engine has about that prediction, SI
     */
    public double doubtOf(int claim, double predicted) {
        return doubts.get(claim).of(predicted);
    }

    /**
     * @param sighting a candidate
     * @return natural logarithm of the likelihood of its limits
     */
    public static double limitsLogLikelihood(Sighting sighting) {
        return LimitPenalty.logLikelihood(sighting.margin());
    }

    private boolean heard(int claim) {
        return unheard.isEmpty() || unheard.getAsInt() != claim;
    }

    @Override
    public int dimensions() {
        return model.unknowns().size();
    }

    @Override
    public int levels() {
        return 2;
    }

    @Override
    public Evaluation<Sighting> evaluate(int level, double[] point) {
        try {
            return level == 0 ? byChamber(point) : byBalance(point);
        } catch (InvalidInput e) {
            failures.count(e.problems().get(0).sentence());
        } catch (PenstockException e) {
            failures.count(e.getMessage());
        }
        return Evaluation.impossible();
    }

    /** Coordinates of a point in which surfaces over it are learnt. */
    double[] place(double[] point) {
        return model.place(point);
    }

    private ChamberAlone chamber(double[] point) {
        Last known = last.get();
        if (known == null || !Arrays.equals(known.point, point)) {
            known = new Last(point.clone(), model.chamber(point));
            last.set(known);
        }
        return known.chamber;
    }

    private Evaluation<Sighting> byChamber(double[] point) {
        double[] alone = alone(point);
        return loosely(place(point), alone, new double[alone.length]);
    }

    /**
     * What the claims that are heard say of predictions that only lead the way.
     *
     * @param place place of a point, see {@link EngineModel#place}
     * @param alone what the chamber alone predicts for each claim, SI; NaN where it says nothing of it
     * @param errors standard deviation of each of these numbers, SI
     */
    Evaluation<Sighting> loosely(double[] place, double[] alone, double[] errors) {
        double sum = rest.closing(place);
        for (int i = 0; i < alone.length; i++) {
            if (heard(i)) {
                EngineOverChamber.Led led = rest.led(i, place, alone[i], doubt(i, alone[i]));
                if (Double.isFinite(led.value())) {
                    double share = Double.isFinite(alone[i]) ? errors[i] * Math.abs(led.value() / alone[i]) : 0;
                    double doubt = Math.hypot(
                            Math.hypot(led.doubt(), share), doubts.get(i).of(led.value()));
                    sum += model.claims().get(i).logLikelihood(led.value(), doubt);
                }
            }
        }
        return new Evaluation<>(sum, Optional.empty());
    }

    /** What the chamber alone predicts for each claim, SI; NaN where it says nothing of it, or cannot be. */
    double[] byChamberAlone(double[] point) {
        try {
            return alone(point);
        } catch (PenstockException e) {
            double[] nothing = new double[model.claims().size()];
            Arrays.fill(nothing, Double.NaN);
            return nothing;
        }
    }

    private double[] alone(double[] point) {
        ChamberAlone chamber = chamber(point);
        double[] values = model.values(point, Optional.of(chamber));
        Map<String, Double> figures = chamber.figures(model.efficiency(values, chamber));
        double[] predicted = new double[model.claims().size()];
        for (int i = 0; i < predicted.length; i++) {
            Claim claim = model.claims().get(i);
            Optional<Integer> unknown = model.unknownOf(claim);
            predicted[i] = unknown.isPresent()
                    ? values[unknown.get()]
                    : model.figureOf(claim)
                            .map(ClaimFigure::path)
                            .map(figures::get)
                            .orElse(Double.NaN);
        }
        return predicted;
    }

    /** How far the engine may be from what its chamber alone predicts for a claim, SI. */
    private double doubt(int claim, double value) {
        if (model.unknownOf(model.claims().get(claim)).isPresent()) {
            return 0;
        }
        double share = model.hypothesis().cycle().traits().dumps() ? DUMPED : CLOSED;
        double looseness = model.figureOf(model.claims().get(claim))
                .map(f -> ChamberAlone.looseness(f.path()))
                .orElse(1.0);
        return share * looseness * Math.abs(value);
    }

    int claims() {
        return model.claims().size();
    }

    private Evaluation<Sighting> byBalance(double[] point) {
        double[] values = model.values(point, Optional.of(chamber(point)));
        Candidate candidate = model.candidate(values, Map.of());
        Sighting sighting = model.sighting(values, candidate);
        double sum = limitsLogLikelihood(sighting);
        SharedError shared = new SharedError(claims());
        for (int i = 0; i < claims(); i++) {
            if (!heard(i)) {
                continue;
            }
            Claim claim = model.claims().get(i);
            double now = logLikelihood(i, sighting);
            if (Double.isNaN(now)) {
                failures.count("it has no " + claim.path());
                return Evaluation.impossible();
            }
            int sign = claim.value().isEmpty()
                    ? 0
                    : model.figureOf(claim).map(f -> SharedError.sign(f.path())).orElse(0);
            if (sign == 0) {
                sum += now;
            } else {
                double predicted = sighting.claims().get(i);
                shared.add(sign, claim, predicted, doubtOf(i, predicted));
            }
        }
        return new Evaluation<>(sum + shared.logLikelihood(), Optional.of(sighting));
    }
}
