package dev.penstock.study.sample;

import dev.penstock.errors.PenstockException;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Progress;
import dev.penstock.study.TradeResult;
import dev.penstock.vehicle.VehicleSpread;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the vehicles of a comparison of propellants may turn out to weigh: each with its own engine's uncertain inputs and its own
 * doubts. Pairs are sampled independently of each other, so that of two bands that overlap the heavier may still be the lighter one.
 */
public final class TradeUncertainty {

    private final EngineRuns runs;
    private final int samples;

    /**
     * @param runs balances the engines
     * @param samples samples of each pair
     */
    public TradeUncertainty(EngineRuns runs, int samples) {
        this.runs = runs;
        this.samples = samples;
    }

    /**
     * @param result pairs on a mission
     * @param progress told of each engine that is balanced
     * @return the same with the spread of each pair that closes
     */
    public TradeResult of(TradeResult result, Progress progress) {
        List<TradeResult.Candidate> known = result.candidates().stream()
                .map(candidate -> candidate.withSpread(spread(candidate, progress)))
                .toList();
        return new TradeResult(result.plan(), known);
    }

    private Optional<VehicleSpread> spread(TradeResult.Candidate candidate, Progress progress) {
        Optional<VehicleSizing> sizing = candidate.row().flatMap(row -> row.sizing());
        if (sizing.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new VehicleUncertainty(
                            runs, ofOneEngine(sizing.get()), false, Map.of(Optional.empty(), candidate.concept()))
                    .run(samples, progress));
        } catch (PenstockException none) {
            return Optional.empty();
        }
    }

    /** All stages have the engine of the pair, whatever file they name. */
    private static VehicleSizing ofOneEngine(VehicleSizing sizing) {
        VehiclePlan plan = sizing.plan();
        return new VehicleSizing(
                plan.withStages(
                        plan.stages().stream().map(StagePlan::withoutEngineFile).toList()),
                sizing.startMass(),
                sizing.payload(),
                sizing.ispFactor(),
                sizing.stages(),
                sizing.warnings());
    }
}
