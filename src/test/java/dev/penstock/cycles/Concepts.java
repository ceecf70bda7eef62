package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.CycleExample;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.fluids.FluidLibrary;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** Concepts and their balances, shared between tests so that each is solved once. */
public final class Concepts {

    public static final FluidLibrary FLUIDS = FluidLibrary.open();
    public static final ConceptReader READER = new ConceptReader(FLUIDS);
    public static final EngineStudy STUDY = EngineStudy.open();
    private static final Map<String, EngineBalance> BALANCES = new ConcurrentHashMap<>();

    private Concepts() {}

    public static Concept read(String file) {
        return READER.read(Path.of("cycles", file));
    }

    /** File names of all demo concepts. */
    public static List<String> demos() {
        try (Stream<Path> files = Files.list(Path.of("cycles"))) {
            return files.map(f -> f.getFileName().toString())
                    .filter(f -> f.endsWith(".toml"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
                cycle.traits().livesOnJacketHeat(),
                example.oxidizerFrom());
        Map<String, String> changes = new java.util.LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            changes.put(keysAndValues[i], keysAndValues[i + 1]);
        }
        return READER.parse(cycle.id(), uncooled.shortest(cycle.id(), "Example"), changes);
    }

    /** Both engines are the same, as nearly as the solver closes. */
    public static void assertSame(EngineBalance one, EngineBalance other) {
        same(one.engine().vacuumIsp(), other.engine().vacuumIsp());
        same(one.engine().massFlow(), other.engine().massFlow());
        same(one.engine().throatDiameter(), other.engine().throatDiameter());
        assertThat(one.stations()).hasSameSizeAs(other.stations());
        for (int i = 0; i < one.stations().size(); i++) {
            same(one.stations().get(i).pressure(), other.stations().get(i).pressure());
            same(one.stations().get(i).temperature(), other.stations().get(i).temperature());
        }
        for (int i = 0; i < one.pumps().size(); i++) {
            same(one.pumps().get(i).speed(), other.pumps().get(i).speed());
        }
    }

    private static void same(double one, double other) {
        assertThat(one).isCloseTo(other, within(1e-7 * Math.abs(other)));
    }
}
