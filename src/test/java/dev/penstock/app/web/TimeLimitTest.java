package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.VehicleRuns;
import dev.penstock.vehicle.EngineSource;
import dev.penstock.vehicle.FlownSizer;
import dev.penstock.vehicle.VehicleSizer;
import dev.penstock.vehicle.ascent.FlightProgress;
import dev.penstock.vehicle.plan.VehiclePlan;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Vehicles, flights and sweeps whose time runs out: they are answered so, and give their thread back. */
class TimeLimitTest {

    private static final Duration SHORT = Duration.ofMillis(100);
    private static final Path HOME = HomeFolder.find();
    private static final EngineRuns RUNS = new EngineRuns(HOME, FluidLibrary.open(HOME));
    private static final int LOOKS = 600;

    @TempDir
    private Path folder;

    static Stream<Arguments> vehicleWork() {
        Path file = HOME.resolve("cycles/vehicles/skerry.toml");
        VehiclePlan plan = RUNS.vehicles().read(file, Map.of());
        Map<Path, EngineBalance> engines = new LinkedHashMap<>();
        plan.engineFiles().forEach(path -> engines.put(path, RUNS.study().balance(RUNS.read(path, Map.of()))));
        EngineSource source = VehicleRuns.source(engines);
        return Stream.of(
                Arguments.of("sizing", (Runnable) () -> new VehicleSizer().size(plan, source)),
                Arguments.of("flight", (Runnable)
                        () -> new FlownSizer(new StandardAtmosphere1976()).size(plan, source, FlightProgress.NONE)));
    }

    /** The work is done over and over, so that nothing but being stopped ends it. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("vehicleWork")
    void aVehicleWhoseTimeRanOutGivesItsThreadBack(String name, Runnable work) {
        try (RequestWorkers workers = new RequestWorkers(RUNS, 1, Duration.ofMillis(500))) {
            assertThatThrownBy(() -> workers.ask(new Asker("browser", "page", 1), study -> {
                        while (true) {
                            work.run();
                        }
                    }))
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.status()).isEqualTo(504));
            assertThat(workers.<String>ask(new Asker("browser", "page", 2), study -> "next"))
                    .isEqualTo("next");
        }
    }

    @Test
    void overTheWireAVehicleIsRefusedAndASweepEndsWithWhatItHas() throws IOException, InterruptedException {
        try (Served served = new Served(folder, SHORT)) {
            HttpResponse<String> vehicle =
                    served.post("/api/vehicle", "{\"file\":\"vehicles/skerry.toml\",\"changes\":{}}");
            assertThat(vehicle.statusCode()).isEqualTo(504);
            assertThat(vehicle.body()).contains("the work was given up");

            String sweep = "{\"file\":\"gannet.toml\",\"vary\":[\"engine.chamber_pressure=16..22MPa:400\"]}";
            for (int turn = 0; turn < 2; turn++) {
                JsonNode started = Served.json(served.post("/api/sweep", sweep));
                assertThat(started.has("id")).as("a sweep begins: " + started).isTrue();
                JsonNode state = ended(served, "/api/sweep/" + started.get("id").asText());
                assertThat(state.get("running").asBoolean()).isFalse();
                assertThat(state.get("cancelled").asBoolean()).isTrue();
                assertThat(state.get("done").asInt()).isLessThan(400);
            }
            assertThat(served.get("/api/files").statusCode()).isEqualTo(200);
            assertThat(served.defects).isEmpty();
        }
    }

    private static JsonNode ended(Served served, String path) throws InterruptedException {
        JsonNode state = Served.json(served.get(path));
        for (int i = 0; i < LOOKS && state.get("running").asBoolean(); i++) {
            Thread.sleep(100);
            state = Served.json(served.get(path));
        }
        return state;
    }
}
