package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import dev.penstock.app.console.ExitCode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code size --fly}. */
class FlightCommandTest {

    @TempDir
    private Path folder;

    @Test
    void aFlightAddsUpInJsonAndIsDrawn() throws Exception {
        Run run = Run.of("size", "cycles/vehicles/skerry.toml", "--fly", "--json", "--report", folder.toString());
        assertThat(run.code()).isEqualTo(ExitCode.OK);
        JsonNode flight = run.json().get("flight");
        double losses = flight.get("gravity_loss_m_s").asDouble()
                + flight.get("drag_loss_m_s").asDouble()
                + flight.get("steering_loss_m_s").asDouble()
                + flight.get("back_pressure_loss_m_s").asDouble();
        // identity of the frame that turns with the air
        assertThat(flight.get("ideal_delta_v_m_s").asDouble()
                        - losses
                        + flight.get("rotation_credit_m_s").asDouble())
                .isCloseTo(flight.get("inertial_speed_m_s").asDouble(), within(0.1));
        assertThat(flight.get("points").size()).isBetween(50, 300);
        assertThat(flight.get("segments").size()).isEqualTo(2);
        assertThat(run.json().get("stages").get(0).get("start_mass_kg").asDouble())
                .isEqualTo(run.json().get("start_mass_kg").asDouble());
        String page = Files.readString(folder.resolve("vehicle-skerry.html"));
        assertThat(page).contains("What does the way to orbit cost?").contains("f-path");
    }

    @Test
    void reuseIsComparedInThreeRows() {
        JsonNode rows = Run.of("size", "cycles/vehicles/skerry.toml", "--reuse", "--json")
                .json()
                .get("reuse");
        assertThat(rows.size()).isEqualTo(3);
        assertThat(rows.get(0).get("mode").asText()).isEqualTo("lost");
        assertThat(rows.get(0).get("payload_fraction").asDouble())
                .isGreaterThan(rows.get(1).get("payload_fraction").asDouble());
        assertThat(rows.get(1).get("payload_fraction").asDouble())
                .isGreaterThan(rows.get(2).get("payload_fraction").asDouble());
    }

    @Test
    void reuseIsFlownWhereAskedAndKeepsWhatTheWayBackTakes() {
        JsonNode rows = Run.of("size", "cycles/vehicles/skerry.toml", "--reuse", "--fly", "--json")
                .json()
                .get("reuse");
        for (JsonNode row : rows) {
            assertThat(row.get("flown").asBoolean()).isTrue();
            assertThat(row.get("warnings").size()).isZero();
        }
        JsonNode site = rows.get(2);
        assertThat(site.get("landing_m_s").asDouble())
                .isCloseTo(site.get("landing_needed_m_s").asDouble(), within(6.0));
    }

    @Test
    void aVehicleThatDoesNotCloseShowsHowFarItGets() {
        Run run = Run.of(
                "size",
                "cycles/heron.toml",
                "--json",
                "--set",
                "vehicle.payload=50 kg",
                "--set",
                "vehicle.thrust_to_weight=1.3",
                "--set",
                "vehicle.mission.delta_v=9400 m/s");
        assertThat(run.code()).isEqualTo(ExitCode.NO_SOLUTION);
        assertThat(run.json().get("closes").asBoolean()).isFalse();
        assertThat(run.json().get("delta_v_reached_m_s").asDouble()).isBetween(5000.0, 9400.0);
        assertThat(run.json().get("isp_factor_to_close").asDouble()).isBetween(1.0, 1.5);
        assertThat(run.json().get("dry_mass_factor_to_close").asDouble()).isBetween(0.3, 1.0);
    }

    @Test
    void aMissionWithoutOrbitCannotBeFlown() {
        Run run = Run.of(
                "size",
                "cycles/heron.toml",
                "--fly",
                "--set",
                "vehicle.payload=1 t",
                "--set",
                "vehicle.mission.delta_v=3000 m/s");
        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(run.problems()).singleElement().asString().contains("mission.orbit_altitude");
    }
}
