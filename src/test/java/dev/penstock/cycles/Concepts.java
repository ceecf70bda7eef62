package dev.penstock.cycles;

import dev.penstock.fluids.FluidLibrary;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Concepts and their balances, shared between tests so that each is solved once. */
final class Concepts {

    static final FluidLibrary FLUIDS = FluidLibrary.open();
    static final ConceptReader READER = new ConceptReader(FLUIDS);
    static final EngineStudy STUDY = EngineStudy.open();
    private static final Map<String, EngineBalance> BALANCES = new ConcurrentHashMap<>();

    private Concepts() {}

    static Concept read(String file) {
        return READER.read(Path.of("cycles", file));
    }

    static synchronized EngineBalance balance(String file) {
        return BALANCES.computeIfAbsent(file, f -> STUDY.balance(read(f)));
    }

    /** An example engine of a cycle, uncooled where the cycle does not live on the jacket's heat, with changes. */
    static Concept example(Cycle cycle, String... keysAndValues) {
        CycleExample example = cycle.example();
        CycleExample uncooled = new CycleExample(
                example.oxidizer(),
                example.fuel(),
                example.mixtureRatio(),
                example.vacuumThrust(),
                example.chamberPressure(),
                example.areaRatio(),
                cycle.traits().livesOnJacketHeat());
        Map<String, String> changes = new java.util.LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            changes.put(keysAndValues[i], keysAndValues[i + 1]);
        }
        return READER.parse(cycle.id(), uncooled.shortest(cycle.id(), "Example"), changes);
    }
}
