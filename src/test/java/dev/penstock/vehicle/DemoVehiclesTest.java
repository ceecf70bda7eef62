package dev.penstock.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.vehicle.ascent.FlightProgress;
import dev.penstock.vehicle.engine.BalancedEngine;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.reading.VehicleReader;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every vehicle of the demo, from its file through the balance of its engines to orbit. */
class DemoVehiclesTest {

    private static final FluidLibrary FLUIDS = FluidLibrary.open();

    private static final Path FOLDER = Path.of("cycles/vehicles");
    private static final Map<Path, EnginePerformance> ENGINES = new HashMap<>();

    private static EnginePerformance engine(Path concept) {
        return ENGINES.computeIfAbsent(
                concept,
                file -> new BalancedEngine(
                        EngineStudy.open().balance(new ConceptReader(FluidLibrary.open()).read(file))));
    }

    static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.sorted().toList();
        }
    }

    @Test
    void thereAreSome() throws IOException {
        assertThat(files()).hasSizeGreaterThanOrEqualTo(3);
    }

    @ParameterizedTest
    @MethodSource("files")
    void isSizedAndFlown(Path file) {
        VehiclePlan plan = new VehicleReader(FLUIDS).read(file, Map.of());
        EngineSource source = concept -> engine(concept.orElseThrow());
        VehicleSizing sized = new VehicleSizer().size(plan, source);
        assertThat(sized.payload() + sized.dryMass() + sized.propellantMass())
                .isCloseTo(sized.startMass(), within(1e-9 * sized.startMass()));

        FlownSizing flown = new FlownSizer(new StandardAtmosphere1976()).size(plan, source, FlightProgress.NONE);
        assertThat(flown.ascent().margin())
                .isCloseTo(flown.sizing().plan().mission().afterAscent(), within(1.0));
        assertThat(flown.sizing().deltaV())
                .isCloseTo(flown.sizing().plan().mission().total(), within(1e-6));
        assertThat(flown.ascent().limits()).allMatch(LimitCheck::met);
        assertThat(flown.sizing().warnings()).isEmpty();
        // the assumed losses of the file and those flown tell the same vehicle within 15 %
        assertThat(flown.sizing().startMass()).isCloseTo(sized.startMass(), within(0.15 * sized.startMass()));
    }

    @Test
    void thrustFallsWithAmbientPressureAndIspWithIt() {
        EnginePerformance engine = engine(FOLDER.resolve("../heron.toml").normalize());
        assertThat(engine.thrustAt(101325)).isLessThan(engine.thrustAt(0));
        assertThat(engine.ispAt(0)).isCloseTo(engine.vacuumIsp(), within(1e-9));
        // Linear but for the exhaust nozzle, in which the flow separates low down, so that it loses less there.
        double mean = (engine.thrustAt(0) + engine.thrustAt(100_000)) / 2;
        assertThat(engine.thrustAt(50_000)).isBetween(0.995 * mean, mean);
        assertThat(engine.oxidizer().id()).isEqualTo("oxygen");
        assertThat(engine.oxidizer().density()).isCloseTo(1141, within(2.0)); // boiling oxygen, [schmidt-wagner-1985]
        assertThat(engine.oxidizer().cryogenic()).isTrue();
        assertThat(engine.fuel().cryogenic()).isFalse();
    }
}
