package dev.penstock.vehicle.stage;

import dev.penstock.numerics.Minimizer;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Split of the ideal delta-v over the stages: as given, or the one with the least start mass for the payload asked
 * for, or the most payload for the start mass, with each stage's own dry-mass model. Where a split does not close, the
 * function searched says by how much, so that the search finds its way back.
 */
public final class SplitOptimum {

    private static final double LEAST_SHARE = 0.02;
    private static final int MAX_EVALUATIONS = 400;

    private final VehiclePlan plan;
    private final List<StageModel> models;
    private final double total;

    public SplitOptimum(VehiclePlan plan, List<StageModel> models) {
        this.plan = plan;
        this.models = models;
        this.total = plan.mission().total();
    }

    /** @return share of each stage, lowest first; they add up to one */
    public double[] shares() {
        int n = models.size();
        if (n == 1) {
            return new double[] {1};
        }
        if (plan.stages().stream().map(StagePlan::deltaVShare).allMatch(OptionalDouble::isPresent)) {
            double[] given = plan.stages().stream()
                    .mapToDouble(s -> s.deltaVShare().getAsDouble())
                    .toArray();
            double sum = Arrays.stream(given).sum();
            return Arrays.stream(given).map(share -> share / sum).toArray();
        }
        if (n == 2) {
            return split(Minimizer.between(
                            "split of the delta-v",
                            x -> badness(split(x)),
                            LEAST_SHARE,
                            1 - LEAST_SHARE,
                            1e-8,
                            MAX_EVALUATIONS)
                    .point()
                    .get(0));
        }
        double[] start = new double[n - 1];
        double[] low = new double[n - 1];
        double[] high = new double[n - 1];
        Arrays.fill(low, LEAST_SHARE);
        Arrays.fill(high, 1 - LEAST_SHARE);
        for (int i = 0; i < n - 1; i++) {
            start[i] = 1.0 / (n - i);
        }
        return split(Minimizer.within(
                        "split of the delta-v", x -> badness(split(x)), start, low, high, 0.1, 1e-6, MAX_EVALUATIONS)
                .array());
    }

    /** Each number is the stage's share of what the stages below have left over. */
    private static double[] split(double... parts) {
        double[] shares = new double[parts.length + 1];
        double left = 1;
        for (int i = 0; i < parts.length; i++) {
            shares[i] = left * parts[i];
            left -= shares[i];
        }
        shares[parts.length] = left;
        return shares;
    }

    /** What is to be small: the logarithm of the start mass, or the payload with its sign changed over the start mass. */
    public double badness(double[] shares) {
        return plan.startMass().isPresent() ? payloadLost(shares) : logarithmOfStartMass(shares);
    }

    private double logarithmOfStartMass(double[] shares) {
        double carried = plan.payload().orElseThrow();
        double penalty = 0;
        for (int i = models.size() - 1; i >= 0; i--) {
            double deltaV = shares[i] * total;
            StageSolver.Attempt attempt = new StageSolver(models.get(i)).attempt(carried, deltaV);
            double ideal = deltaV / models.get(i).exhaustVelocity();
            if (attempt.stage().isEmpty()) {
                penalty += 50 + ideal - Math.log(attempt.massRatio());
            }
            carried = attempt.stage().map(StageSizing::startMass).orElse(carried * Math.exp(ideal));
        }
        return Math.log(carried) + penalty;
    }

    private double payloadLost(double[] shares) {
        double startMass = plan.startMass().orElseThrow();
        double mass = startMass;
        for (int i = 0; i < models.size(); i++) {
            int stagesLeft = models.size() - i;
            int engines = Math.min(EngineCount.MOST, models.get(i).enginesNeeded(mass));
            double least = models.get(i).leastStartMass(engines);
            if (mass <= least) {
                return stagesLeft + (least - mass) / startMass;
            }
            mass = models.get(i).at(mass, shares[i] * total, engines).above();
            if (mass <= 0) {
                return stagesLeft - mass / startMass;
            }
        }
        return -mass / startMass;
    }
}
