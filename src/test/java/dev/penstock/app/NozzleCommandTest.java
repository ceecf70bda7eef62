package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

class NozzleCommandTest {

    @Test
    void contourStartsAtTheInjectorPassesTheThroatAndEndsAtTheExit() {
        String[] lines = Run.of("nozzle", "heron", "--csv").out().split("\n");
        assertThat(lines[0]).isEqualTo("x_m,radius_m,area_ratio");
        assertThat(Double.parseDouble(lines[1].split(",")[0])).isNegative();
        double smallest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < lines.length; i++) {
            smallest = Math.min(smallest, Double.parseDouble(lines[i].split(",")[2]));
        }
        assertThat(smallest).isCloseTo(1, within(1e-3));
        assertThat(Double.parseDouble(lines[lines.length - 1].split(",")[2])).isCloseTo(16, within(1e-3));
    }

    @Test
    void impulseRisesWithAltitudeAndAnIdealPlugLosesLessLowDown() {
        JsonNode json = Run.of("nozzle", "heron", "--json").json();
        double before = 0;
        for (JsonNode row : json.get("altitudes")) {
            assertThat(row.get("isp_s").doubleValue()).isGreaterThan(before);
            before = row.get("isp_s").doubleValue();
        }
        for (JsonNode row : json.get("altitudes")) {
            assertThat(row.get("isp_with_ideal_plug_s").doubleValue())
                    .isGreaterThan(row.get("isp_s").doubleValue() * (1 - 1e-9));
        }
        double average = json.at("/ascent/isp_average_s").doubleValue();
        assertThat(average).isBetween(json.at("/altitudes/0/isp_s").doubleValue(), before);
        assertThat(json.at("/throttle/0/characteristic_velocity_factor").doubleValue())
                .isEqualTo(1);
    }

    @Test
    void aTimeWithoutUnitIsRefused() {
        Run run = Run.of("nozzle", "heron", "--burn-time", "150");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("--burn-time is 150; write a time such as \"150 s\"");
    }
}
