package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

/** The example with solid boosters, sized and flown. */
class SolidBoostersExampleTest {

    @Test
    void boostersAreInTheBudgetAndInTheMasses() {
        JsonNode core = Run.of("size", "docs/examples/solid-boosters.toml", "--json")
                .json()
                .get("stages")
                .get(0);
        JsonNode boosters = core.get("boosters");
        // stated: two of 60.0 t and 6.6 t; impulse of the table by trapezoids, 162.83 MN s over 60 t
        assertThat(boosters.get("propellant_mass_kg").doubleValue()).isCloseTo(120e3, within(1.0));
        assertThat(boosters.get("dry_mass_kg").doubleValue()).isCloseTo(13.2e3, within(1.0));
        assertThat(boosters.get("isp_s").doubleValue()).isCloseTo(162.83e6 / (60e3 * 9.80665), within(0.01));
        assertThat(boosters.has("oxidizer_mass_kg")).isFalse();
        assertThat(core.get("thrust_to_weight").doubleValue()).isBetween(1.3, 1.5);
    }

    /** It reaches its orbit within what its mission allows: 35 kPa and 50 m/s² unless stated. */
    @Test
    void itFliesToItsOrbitWithinItsLimits() {
        JsonNode flight = Run.of("size", "docs/examples/solid-boosters.toml", "--fly", "--json")
                .json()
                .get("flight");
        assertThat(flight.get("apogee_reached_m").doubleValue()).isCloseTo(250e3, within(100.0));
        assertThat(flight.get("dynamic_pressure_max_Pa").doubleValue()).isBetween(20e3, 35e3);
        assertThat(flight.get("acceleration_max_m_s2").doubleValue()).isLessThan(50.1);
        assertThat(flight.get("delta_v_left_m_s").doubleValue()).isPositive();
    }
}
