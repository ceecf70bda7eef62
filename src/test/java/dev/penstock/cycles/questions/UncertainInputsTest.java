package dev.penstock.cycles.questions;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.ConceptInput;
import dev.penstock.cycles.concept.UncertainValue;
import dev.penstock.cycles.sheet.EngineBalance;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

class UncertainInputsTest {

    /** What counts as an efficiency, a loss or a limit among the inputs. */
    private static final Pattern KINDS =
            Pattern.compile(".*(efficiency|loss|limit|factor|coefficient|fraction|collapse|power|energy|margin).*");

    /** Not known within bounds but chosen by the engineer, or counted rather than measured. */
    private static final Set<String> CHOSEN = Set.of(
            "chamber.film_fuel_fraction",
            "nozzle.length_fraction",
            "cooling.flow_fraction",
            "shafts.accessory_power",
            // zero by physics: a storable propellant has no thermodynamic suppression head
            "pumps.fuel.suppression_factor",
            "pumps.oxidizer.suppression_factor");

    @TestFactory
    List<DynamicTest> everyDefaultThatIsAnEfficiencyALossOrALimitHasASpread() {
        List<DynamicTest> tests = new ArrayList<>();
        for (String file : List.of("heron", "gannet", "avocet", "guillemot", "dotterel", "dunlin", "plover")) {
            tests.add(DynamicTest.dynamicTest(file, () -> {
                EngineBalance balance = Concepts.balance(file + ".toml");
                Map<String, UncertainValue> uncertain = UncertainInputs.of(balance);
                List<String> missing = balance.concept().document().inputs().stream()
                        .filter(i -> !i.given() && !i.value().equals("computed"))
                        .filter(i -> i.value().matches("[-+0-9.eE]+"))
                        .map(ConceptInput::key)
                        .filter(k -> KINDS.matcher(k).matches() && !CHOSEN.contains(k))
                        .filter(k -> !uncertain.containsKey(k))
                        .toList();
                assertThat(missing).isEmpty();
            }));
        }
        return tests;
    }

    @TestFactory
    List<DynamicTest> theMostLikelyValueIsTheDefault() {
        return List.of("heron", "avocet", "plover").stream()
                .map(file -> DynamicTest.dynamicTest(file, () -> {
                    EngineBalance balance = Concepts.balance(file + ".toml");
                    Map<String, UncertainValue> uncertain = UncertainInputs.of(balance);
                    for (ConceptInput input : balance.concept().document().inputs()) {
                        UncertainValue value = uncertain.get(input.key());
                        if (value != null && !input.value().equals("computed")) {
                            double scale = value.unit().equals("MPa") ? 1e6 : 1;
                            assertThat(value.spread().mode() * scale)
                                    .as(input.key())
                                    .isCloseTo(
                                            Double.parseDouble(input.value()),
                                            org.assertj.core.api.Assertions.withinPercentage(1e-4));
                        }
                    }
                }))
                .toList();
    }
}
