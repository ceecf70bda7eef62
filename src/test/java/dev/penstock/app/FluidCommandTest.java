package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

class FluidCommandTest {

    @Test
    void stateIsOneJsonDocumentInSi() {
        Run run = Run.of("fluid", "methane", "--pressure", "10MPa", "--temperature", "110K", "--json");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        JsonNode json = run.json();
        // CoolProp 8.0.0 through its own Python interface, PropsSI(..., 'P', 1e7, 'T', 110, 'Methane'): independent of
        // the binding, not of the equation of state [setzmann-wagner-1991].
        assertThat(json.get("density_kg_m3").doubleValue()).isCloseTo(433.13497941514, within(1e-6));
        assertThat(json.get("sound_speed_m_s").doubleValue()).isCloseTo(1439.78195864798, within(1e-5));
        assertThat(json.get("cp_J_kg_K").doubleValue()).isCloseTo(3379.73248178059, within(1e-5));
        for (String key : new String[] {"enthalpy_J_kg", "entropy_J_kg_K", "viscosity_Pa_s", "conductivity_W_m_K"}) {
            assertThat(json.get(key).isNumber()).as(key).isTrue();
        }
    }

    @Test
    void anyUnitOfTheKindIsAccepted() {
        double si = density("--pressure", "101325Pa", "--temperature", "90K");
        assertThat(density("--pressure", "1atm", "--temperature", "90K")).isEqualTo(si);
        assertThat(density("--pressure", "14.695949 psi", "--temperature", "162 degR"))
                .isCloseTo(si, within(1e-5));
    }

    private static double density(String... state) {
        String[] arguments = new String[state.length + 3];
        arguments[0] = "fluid";
        arguments[1] = "oxygen";
        arguments[2] = "--json";
        System.arraycopy(state, 0, arguments, 3, state.length);
        return Run.of(arguments).json().get("density_kg_m3").doubleValue();
    }

    @Test
    void everyProblemOfTheLineIsReported() {
        Run run = Run.of("fluid", "oxigen", "--pressure", "10", "--temperature", "110 bar", "--json");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.problems())
                .containsExactly(
                        "penstock: FLUID is \"oxigen\"; did you mean oxygen?",
                        "penstock: --pressure is 10; write a pressure such as \"7.5 MPa\" (absolute)",
                        "penstock: --temperature is 110 bar; write a temperature such as \"110 K\"");
    }

    @Test
    void temperatureBelowTheModelIsBadInput() {
        Run run = Run.of("fluid", "methane", "--pressure", "1 bar", "--temperature", "20 K");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEqualTo("penstock: --temperature is 20 K; allowed is 90.6941 to 625 K\n");
    }

    @Test
    void halfAStateIsBadInput() {
        Run run = Run.of("fluid", "methane", "--pressure", "1 bar");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEqualTo("penstock: --temperature is missing; write a temperature such as \"110 K\"\n");
    }

    @Test
    void withoutAStateTheCardIsShown() {
        Run run = Run.of("fluid", "oxygen");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("storage temperature", "hazards:", "sources:");
        assertThat(Run.of("fluid", "oxygen", "--json").json().get("hazards").size())
                .isPositive();
    }

    @Test
    void withoutAFluidAllAreListed() {
        assertThat(Run.of("fluid", "--json").json().get("fluids").size()).isGreaterThanOrEqualTo(7);
    }
}
