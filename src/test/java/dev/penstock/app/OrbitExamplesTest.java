package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

/** The examples of a transfer orbit and of a sun-synchronous one, sized and flown. */
class OrbitExamplesTest {

    private static JsonNode flown(String example) {
        return Run.of("size", "docs/examples/" + example, "--fly", "--json").json();
    }

    /** Perigee and apogee are those asked for but for what moves during a burn of minutes. */
    @Test
    void theTransferOrbitIsReachedByASecondBurn() {
        JsonNode answer = flown("transfer-orbit.toml");
        JsonNode flight = answer.get("flight");
        assertThat(flight.get("perigee_reached_m").doubleValue()).isCloseTo(180e3, within(10e3));
        assertThat(flight.get("apogee_reached_m").doubleValue()).isCloseTo(35786e3, within(50e3));
        // identity: from a circle of 180 km to that ellipse at its perigee, sqrt(2 mu/r - 2 mu/(r + ra)) - sqrt(mu/r),
        // is 2460.4 m/s
        assertThat(flight.get("second_burn_ideal_delta_v_m_s").doubleValue()).isBetween(2460.0, 2475.0);
        assertThat(flight.get("delta_v_left_m_s").doubleValue()).isPositive();
        // regression: what boils off of the second stage in 18 minutes of coast
        assertThat(answer.at("/stages/1/vented_propellant_kg").doubleValue()).isCloseTo(23, within(1.0));
    }

    @Test
    void theInclinationFollowsFromTheHeight() {
        JsonNode answer = flown("sun-synchronous.toml");
        // published tables of sun-synchronous orbits give 97.6 degrees at 550 km (from memory)
        assertThat(Math.toDegrees(answer.get("flight").get("inclination_rad").doubleValue()))
                .isCloseTo(97.6, within(0.05));
        assertThat(answer.get("flight").get("apogee_altitude_m").doubleValue()).isCloseTo(550e3, within(1e3));
    }
}
