package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

/** The example with solid boosters, sized; its flight is not asked for here. */
class SolidBoostersExampleTest {

    @Test
    void boostersAreInTheBudgetAndInTheMasses() {
        JsonNode core = Run.of("size", "docs/examples/solid-boosters.toml", "--json")
                .json()
                .get("stages")
                .get(0);
        JsonNode boosters = core.get("boosters");
        // stated: two of 60.0 t and 6.6 t; impulse of the table by trapezoids, 162.3 MN s over 60 t
        assertThat(boosters.get("propellant_mass_kg").doubleValue()).isCloseTo(120e3, within(1.0));
        assertThat(boosters.get("dry_mass_kg").doubleValue()).isCloseTo(13.2e3, within(1.0));
        assertThat(boosters.get("isp_s").doubleValue()).isCloseTo(162.3e6 / (60e3 * 9.80665), within(0.01));
        assertThat(boosters.has("oxidizer_mass_kg")).isFalse();
        assertThat(core.get("thrust_to_weight").doubleValue()).isGreaterThan(1.5);
    }
}
