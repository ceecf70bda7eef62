package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

class StartsOfAStageTest {

    private static double mass(String pressurant, int starts, String line) {
        JsonNode answer = Run.of(
                        "size",
                        "skerry",
                        "--set",
                        "stage[1].dry_mass.pressurant=" + pressurant,
                        "--set",
                        "stage[1].dry_mass.starts=" + starts,
                        "--json")
                .json();
        for (JsonNode part : answer.get("stages").get(1).get("dry_mass")) {
            if (part.get("name").textValue().equals(line)) {
                return part.get("mass_kg").doubleValue();
            }
        }
        return 0;
    }

    @Test
    void nitrogenWeighsMoreThanHeliumAndNoMoreThanIdealExpansionSays() {
        // handbook, by ideal expansion from 290 K at a pressure ratio of 10 (independent calculation): 906.4 against
        // 145.4 kJ/kg, and
        // 3.63 against 4.07 kJ/mol, so 6.2 times at equal efficiency; the slower jet of
        // nitrogen suits a slow wheel better, which brings that down
        double helium = mass("helium", 3, "start gas");
        assertThat(helium).isPositive();
        assertThat(mass("nitrogen", 3, "start gas") / helium).isBetween(1.2, 6.8);
        assertThat(mass("nitrogen", 3, "start bottles") / mass("helium", 3, "start bottles"))
                .isBetween(0.15, 1.3);
    }

    @Test
    void moreStartsTakeMore() {
        assertThat(mass("helium", 4, "igniter fluid")).isGreaterThan(1.9 * mass("helium", 2, "igniter fluid"));
        assertThat(mass("helium", 4, "start gas")).isGreaterThan(mass("helium", 2, "start gas"));
        assertThat(mass("helium", 1, "pressurant for restarts")).isZero();
    }
}
