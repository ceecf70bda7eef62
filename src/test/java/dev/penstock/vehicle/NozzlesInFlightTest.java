package dev.penstock.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.chamber.atmosphere.AscentAverage;
import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.quantities.Constants;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.AscentOptimizer;
import dev.penstock.vehicle.ascent.AscentVehicle;
import dev.penstock.vehicle.ascent.DragTable;
import dev.penstock.vehicle.ascent.FlightProgress;
import dev.penstock.vehicle.ascent.FlightSegment;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.ascent.Thrusters;
import dev.penstock.vehicle.engine.BalancedEngine;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.engine.GivenEngine;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The kerosene engine of the demo with a large bell, and with nozzles that follow the ambient pressure at the same area ratio. */
class NozzlesInFlightTest {

    private static final Map<String, EnginePerformance> ENGINES = new LinkedHashMap<>();
    private static final Map<String, Double> LEFT = new HashMap<>();
    private static final String BELL = "none";

    private static EngineBalance balance(Map<String, String> nozzle) {
        Map<String, String> changes = new LinkedHashMap<>(Map.of(
                "nozzle.area_ratio",
                "45",
                "engine.thrust_sea_level",
                "",
                "engine.thrust_vacuum",
                "750 kN",
                "cooling.end_area_ratio",
                "15"));
        changes.putAll(nozzle);
        return EngineStudy.open()
                .balance(new ConceptReader(FluidLibrary.open()).read(Path.of("cycles/heron.toml"), changes));
    }

    @BeforeAll
    static void flyEach() {
        for (String kind : List.of(BELL, "plug", "dual-bell", "extendible")) {
            Map<String, String> nozzle = new LinkedHashMap<>(Map.of("nozzle.compensation", kind));
            if (kind.equals("dual-bell") || kind.equals("extendible")) {
                nozzle.put("nozzle.inner_area_ratio", "15");
            }
            EnginePerformance engine = new BalancedEngine(balance(nozzle));
            ENGINES.put(kind, engine);
            LEFT.put(
                    kind,
                    new AscentOptimizer(new StandardAtmosphere1976())
                            .fly(vehicle(engine), MISSION, FlightProgress.NONE)
                            .margin());
        }
    }

    private static final AscentMission MISSION =
            new AscentMission(Planet.EARTH, Math.toRadians(28.5), 200e3, 200e3, 35e3, 50, 3e3, 0.4);

    /** Two stages, the lower with as many of the engines as lift it at 1.4 times its weight. */
    private static AscentVehicle vehicle(EnginePerformance engine) {
        GivenEngine upper = GivenEngine.ofIsp(
                "upper", 900e3, 345, 4.0, 2.5, SampleEngines.COLD_OXYGEN, SampleEngines.COLD_KEROSENE, 1000);
        double mass = 500e3;
        int count = (int) Math.ceil(
                1.4 * mass * Constants.STANDARD_GRAVITY / ENGINES.get(BELL).thrustAt(101_325));
        return new AscentVehicle(
                "sample",
                mass,
                List.of(
                        new FlightSegment("first stage", Thrusters.of(engine, count), 0, 2000, 360e3, 27e3),
                        new FlightSegment("second stage", Thrusters.of(upper, 1), 4, 300, 95e3, 0)),
                10.5,
                DragTable.USUAL);
    }

    @ParameterizedTest
    @ValueSource(strings = {"plug", "dual-bell", "extendible"})
    void compensationIsNowhereWorseThanItsBell(String kind) {
        for (double p = 0; p <= 110e3; p += 1e3) {
            assertThat(ENGINES.get(kind).thrustAt(p))
                    .as(kind + " at " + p + " Pa")
                    .isGreaterThanOrEqualTo(ENGINES.get(BELL).thrustAt(p) * (1 - 1e-6));
        }
        assertThat(ENGINES.get(kind).vacuumThrust() / ENGINES.get(BELL).vacuumThrust())
                .isBetween(1 - 1e-6, 1 + 1e-6);
        assertThat(average(kind)).isGreaterThan(average(BELL));
    }

    private static double average(String kind) {
        return AscentAverage.specificImpulse(
                ENGINES.get(kind)::thrustAt,
                ENGINES.get(kind).massFlow(),
                AscentAverage.exponential(Constants.STANDARD_ATMOSPHERE, 40),
                150);
    }

    /** In flight too; and the plug, which is ideal, is best. */
    @Test
    void compensationNeverFliesWorseThanItsBell() {
        assertThat(LEFT.get("dual-bell")).isGreaterThan(LEFT.get(BELL));
        assertThat(LEFT.get("extendible")).isGreaterThan(LEFT.get(BELL));
        assertThat(LEFT.get("plug")).isGreaterThan(LEFT.get("extendible")).isGreaterThan(LEFT.get("dual-bell"));
    }

    @Test
    void whatItMayLoseIsAWarning() {
        assertThat(balance(Map.of("nozzle.compensation", "plug")).chamber().warnings())
                .anySatisfy(warning -> assertThat(warning.message()).contains("built plugs lose 1 to 3 %"));
    }

    @Test
    void anInnerAreaRatioGoesWithWhatHasOne() {
        assertThatThrownBy(() -> balance(Map.of("nozzle.compensation", "dual-bell")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("nozzle.inner_area_ratio")
                .hasMessageContaining("missing");
        assertThatThrownBy(() -> balance(Map.of("nozzle.inner_area_ratio", "10")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("nothing else takes it");
        assertThatThrownBy(() -> balance(Map.of("nozzle.compensation", "extendible", "nozzle.inner_area_ratio", "50")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("must be below the area ratio of 45");
    }
}
