package dev.penstock.vehicle;

import dev.penstock.vehicle.engine.EnginePerformance;
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
}
