package dev.penstock.claims.likelihood;

import dev.penstock.claims.figure.Candidate;
import dev.penstock.claims.figure.ClaimFigure;
import dev.penstock.claims.file.Claim;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import dev.penstock.numerics.sampling.Evaluation;
import dev.penstock.numerics.sampling.Ladder;
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
    private final List<Double> further;
    private final Failures failures;
    private final OptionalInt unheard;
    /** The chamber of the last point of this thread: the dear level is asked right after the cheap one. */
    private final ThreadLocal<Last> last = new ThreadLocal<>();

    private record Last(double[] point, ChamberAlone chamber) {}

    /**
     * @param model makes the candidates
     * @param further standard deviation of each prediction by what is held at its most likely value, SI
     * @param failures counts why candidates do not close
     */
    public ClaimLadder(EngineModel model, List<Double> further, Failures failures) {
        this(model, further, failures, OptionalInt.empty());
    }

    private ClaimLadder(EngineModel model, List<Double> further, Failures failures, OptionalInt unheard) {
        this.unheard = unheard;
        this.model = model;
        this.further = List.copyOf(further);
        this.failures = failures;
    }

    /**
     * @param claim number of a claim
     * @return the likelihood of all other claims
     */
    public ClaimLadder without(int claim) {
        return new ClaimLadder(model, further, failures, OptionalInt.of(claim));
    }

    /**
     * @param claim number of a claim
     * @param sighting a candidate
     * @return natural logarithm of the likelihood of that claim alone but for a constant; NaN where the candidate says nothing of it
     */
    public double logLikelihood(int claim, Sighting sighting) {
        return model.claims().get(claim).logLikelihood(sighting.claims().get(claim), further.get(claim));
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

    private ChamberAlone chamber(double[] point) {
        Last known = last.get();
        if (known == null || !Arrays.equals(known.point, point)) {
            known = new Last(point.clone(), model.chamber(point));
            last.set(known);
        }
        return known.chamber;
    }

    private Evaluation<Sighting> byChamber(double[] point) {
        ChamberAlone chamber = chamber(point);
        double[] values = model.values(point, Optional.of(chamber));
        Map<String, ChamberAlone.Alone> figures = chamber.figures(model.efficiency(values, chamber));
        double share = model.hypothesis().cycle().traits().dumps() ? DUMPED : CLOSED;
        double sum = 0;
        for (int i = 0; i < model.claims().size(); i++) {
            Claim claim = model.claims().get(i);
            if (!heard(i)) {
                continue;
            }
            Optional<Integer> unknown = model.unknownOf(claim);
            Optional<ChamberAlone.Alone> figure =
                    model.figureOf(claim).map(ClaimFigure::path).map(figures::get);
            if (unknown.isPresent()) {
                sum += claim.logLikelihood(values[unknown.get()], 0);
            } else if (figure.isPresent()) {
                double value = figure.get().value();
                sum += claim.logLikelihood(value, share * figure.get().looseness() * Math.abs(value));
            }
        }
        return new Evaluation<>(sum, Optional.empty());
    }

    private Evaluation<Sighting> byBalance(double[] point) {
        double[] values = model.values(point, Optional.of(chamber(point)));
        Candidate candidate = model.candidate(values, Map.of());
        Sighting sighting = model.sighting(values, candidate);
        double sum = LimitPenalty.logLikelihood(sighting.margin());
        for (int i = 0; i < model.claims().size(); i++) {
            if (!heard(i)) {
                continue;
            }
            double now = logLikelihood(i, sighting);
            if (Double.isNaN(now)) {
                failures.count("it has no " + model.claims().get(i).path());
                return Evaluation.impossible();
            }
            sum += now;
        }
        return new Evaluation<>(sum, Optional.of(sighting));
    }
}
