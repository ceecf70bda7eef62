package dev.penstock.study;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import dev.penstock.input.InputFile;
import dev.penstock.vehicle.VehicleSizer;
import dev.penstock.vehicle.engine.BalancedEngine;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import dev.penstock.vehicle.trade.ClosingCurve;
import dev.penstock.vehicle.trade.PropellantTrade;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Propellant pair against pair on one mission. Every pair runs the same engine concept with its propellants changed; every
 * stage takes that engine, so that the pairs differ in nothing else.
 */
public final class TradeRuns {

    /** Payload over start mass of a vehicle to orbit: common practice, no source. */
    private static final double USUAL_PAYLOAD_SHARE = 0.02;

    private final EngineRuns engines;

    /** @param engines balances the engines */
    public TradeRuns(EngineRuns engines) {
        this.engines = engines;
    }

    private record Engine(PropellantPair pair, Concept concept, Optional<EnginePerformance> engine, String failure) {}

    /**
     * @param file concept file with a table {@code [vehicle]}, or vehicle file, whose first stage then gives the concept
     * @param pairs pairs to try
     * @param changes values by dotted path that replace or add to what the file says
     * @param progress told of each pair whose engine is balanced
     * @return what became of each pair
     * @throws InvalidInput if anything in the files cannot be used
     */
    public TradeResult trade(Path file, List<PropellantPair> pairs, Map<String, String> changes, Progress progress) {
        boolean concept = InputFile.read(file, changes).root().has("cycle");
        VehiclePlan plan = plan(file, changes, concept);
        Path engineFile = concept
                ? file
                : plan.stages()
                        .get(0)
                        .engineFile()
                        .orElseThrow(() -> new InvalidInput(
                                file.toString(),
                                "stage[0].isp",
                                "stated",
                                "pairs are compared with an engine concept: name one in engine"));
        Map<String, String> common = concept ? changes : Map.of();
        List<Engine> balanced =
                Parallel.map(pairs, PropellantPair::toString, pair -> balance(engineFile, pair, common), progress);
        return new TradeResult(plan, candidates(plan, balanced));
    }

    private VehiclePlan plan(Path file, Map<String, String> changes, boolean concept) {
        if (!concept) {
            return engines.vehicles().read(file, changes);
        }
        return engines.vehicles()
                .readConcept(file.toString(), InputFile.read(file, changes).text(), changes)
                .orElseThrow(() -> new InvalidInput(
                        file.toString(), "vehicle", "missing", "write a table [vehicle], or name a vehicle file"));
    }

    private Engine balance(Path file, PropellantPair pair, Map<String, String> common) {
        Map<String, String> changes = new HashMap<>(common);
        changes.putAll(pair.changes());
        Concept concept = engines.read(file, changes);
        try {
            return new Engine(
                    pair,
                    concept,
                    Optional.of(new BalancedEngine(engines.study().balance(concept))),
                    "");
        } catch (PenstockException none) {
            return new Engine(pair, concept, Optional.empty(), none.getMessage());
        }
    }

    private static List<TradeResult.Candidate> candidates(VehiclePlan plan, List<Engine> balanced) {
        List<EnginePerformance> usable =
                balanced.stream().flatMap(e -> e.engine().stream()).toList();
        List<PropellantTrade.Row> rows = new PropellantTrade().rows(plan, usable);
        double startMass = plan.startMass().orElseGet(() -> meanStartMass(plan, rows));
        List<TradeResult.Candidate> candidates = new ArrayList<>();
        int next = 0;
        for (Engine engine : balanced) {
            if (engine.engine().isEmpty()) {
                candidates.add(new TradeResult.Candidate(
                        engine.pair(), Optional.empty(), Optional.empty(), 0, engine.failure(), engine.concept()));
            } else {
                candidates.add(candidate(plan, engine, rows.get(next++), startMass));
            }
        }
        return candidates;
    }

    private static TradeResult.Candidate candidate(
            VehiclePlan plan, Engine engine, PropellantTrade.Row row, double startMass) {
        StagePlan stage = plan.stages().get(0);
        StageSizing single = VehicleSizer.singleStage(
                stage, row.engine(), startMass, plan.mission().total());
        double dry = single.dryMass().total();
        ClosingCurve curve = ClosingCurve.of(
                row.engine(),
                stage.allowances(),
                single.engines(),
                startMass,
                plan.mission().total(),
                0.2 * startMass);
        return new TradeResult.Candidate(
                engine.pair(), Optional.of(row), Optional.of(curve), dry, "", engine.concept());
    }

    /**
     * One start mass for all single stages: the mean of the vehicles that close; where none does, that of which the payload
     * is two hundredths.
     */
    private static double meanStartMass(VehiclePlan plan, List<PropellantTrade.Row> rows) {
        OptionalDouble mean = rows.stream()
                .flatMap(r -> r.sizing().stream())
                .mapToDouble(VehicleSizing::startMass)
                .average();
        return mean.orElseGet(() -> plan.payload().orElseThrow() / USUAL_PAYLOAD_SHARE);
    }
}
