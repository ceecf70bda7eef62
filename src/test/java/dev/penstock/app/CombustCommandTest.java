package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CombustCommandTest {

    private static Run combust(String... more) {
        List<String> line = new ArrayList<>(List.of(
                "combust",
                "--oxidizer",
                "oxygen",
                "--fuel",
                "methane",
                "--mixture-ratio",
                "3.4",
                "--pressure",
                "10MPa"));
        line.addAll(List.of(more));
        return Run.of(line.toArray(String[]::new));
    }

    @Test
    void documentHasChamberAndEveryExit() {
        Run run = combust("--area-ratio", "20,80", "--exit-pressure", "101325Pa", "--json");
        assertThat(run.code()).isZero();
        JsonNode json = run.json();
        for (String key : List.of("temperature_K", "molar_mass_kg_mol", "characteristic_velocity_m_s", "gamma_s")) {
            assertThat(json.get(key).doubleValue()).as(key).isPositive();
        }
        double sum = 0;
        for (JsonNode fraction : json.get("mole_fractions")) {
            sum += fraction.doubleValue();
        }
        assertThat(sum).isCloseTo(1, within(1e-6)); // identity; fractions below 1e-10 are left out
        JsonNode exits = json.get("expansions");
        assertThat(exits).hasSize(3);
        assertThat(exits.get(0).get("area_ratio").doubleValue()).isCloseTo(20, within(1e-9));
        assertThat(exits.get(1).get("area_ratio").doubleValue()).isCloseTo(80, within(1e-9));
        assertThat(exits.get(2).get("pressure_Pa").doubleValue()).isCloseTo(101325, within(1e-3));
        for (JsonNode exit : exits) {
            assertThat(exit.get("temperature_K").doubleValue()).isPositive();
            // limit: pressure thrust at the exit only adds to the matched value
            assertThat(exit.get("isp_vacuum_s").doubleValue())
                    .isGreaterThan(exit.get("isp_ambient_matched_s").doubleValue());
        }
    }

    @Test
    void frozenExpansionDeliversLess() {
        double shifting = isp(combust("--area-ratio", "40", "--json"));
        double frozen = isp(combust("--area-ratio", "40", "--frozen", "--json"));
        assertThat(frozen).isLessThan(shifting); // recombination heat is lost: limit
    }

    @Test
    void warmerFuelGivesHotterGas() {
        double cold = combust("--json").json().get("temperature_K").doubleValue();
        double warm = combust("--fuel-temperature", "300K", "--json")
                .json()
                .get("temperature_K")
                .doubleValue();
        assertThat(warm).isGreaterThan(cold);
    }

    private static double isp(Run run) {
        return run.json().get("expansions").get(0).get("isp_vacuum_s").doubleValue();
    }

    @Test
    void tableNamesWhatItIs() {
        Run run = combust("--area-ratio", "20");
        assertThat(run.out()).contains("characteristic velocity", "shifting equilibrium, no losses", "Isp vacuum (s)");
    }

    @Test
    void everyProblemOfTheLineIsReported() {
        Run run = Run.of(
                "combust",
                "--oxidizer",
                "methane",
                "--fuel",
                "helim",
                "--mixture-ratio",
                "-3",
                "--area-ratio",
                "0.2,a");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.problems()).hasSize(6);
        assertThat(run.problems().get(0)).startsWith("penstock: --oxidizer is methane; allowed is an oxidizer: ");
        assertThat(run.problems().subList(1, 6))
                .containsExactly(
                        "penstock: --fuel is \"helim\"; did you mean helium?",
                        "penstock: --mixture-ratio is -3; allowed is 0.001 to 1000",
                        "penstock: --pressure is missing; write a pressure such as \"7.5 MPa\" (absolute)",
                        "penstock: --area-ratio is 0.2; allowed is 1 to 5000",
                        "penstock: --area-ratio is a; write a plain number");
    }

    @Test
    void exitPressureAboveTheThroatIsBadInput() {
        Run run = combust("--exit-pressure", "9MPa");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).startsWith("penstock: --exit-pressure is 9MPa; the nozzle cannot reach it");
    }
}
