package dev.penstock.cycles;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.CycleExample;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.fluids.FluidLibrary;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Concepts and their balances, shared between tests so that each is solved once. */
public final class Concepts {

    static final FluidLibrary FLUIDS = FluidLibrary.open();
    public static final ConceptReader READER = new ConceptReader(FLUIDS);
    public static final EngineStudy STUDY = EngineStudy.open();
    private static final Map<String, EngineBalance> BALANCES = new ConcurrentHashMap<>();

    private Concepts() {}

    public static Concept read(String file) {
        return READER.read(Path.of("cycles", file));
    }

    public static synchronized EngineBalance balance(String file) {
        return BALANCES.computeIfAbsent(file, f -> STUDY.balance(read(f)));
    }

    /** An example engine of a cycle, uncooled where the cycle does not live on the jacket's heat, with changes. */
    public static Concept example(Cycle cycle, String... keysAndValues) {
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
