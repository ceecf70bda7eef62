package dev.penstock.vehicle;

import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.plan.BoosterPlan;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.stage.BoosterSizing;
import java.nio.file.Path;
import java.util.Optional;

/** Gives the engine that a plan asks for; whoever implements it balances the concept, once per file. */
@FunctionalInterface
public interface EngineSource {

    /**
     * @param conceptFile concept file; empty for the concept that carries the vehicle table
     * @return its engine
     */
    EnginePerformance engine(Optional<Path> conceptFile);

    /**
     * @param stage a stage
     * @return its engine, stated or from its file
     */
    default EnginePerformance of(StagePlan stage) {
        return stage.stated().orElseGet(() -> engine(stage.engineFile()));
    }

    /**
     * @param boosters boosters
     * @return these, sized with their engine, stated or from its file, or solid
     */
    default BoosterSizing of(BoosterPlan boosters) {
        return BoosterSizing.of(boosters, () -> boosters.stated().orElseGet(() -> engine(boosters.engineFile())));
    }
}
