package dev.penstock.cycles.questions;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.input.InputValue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

class UncertaintyTest {

    /** What counts as an efficiency, a loss or a limit among the inputs. */
    private static final Pattern KINDS =
            Pattern.compile(".*(efficiency|loss|limit|factor|coefficient|fraction|collapse|power|energy|margin).*");

    /** Not known within bounds but chosen by the engineer, or counted rather than measured. */
    private static final Set<String> CHOSEN = Set.of(
            "cooling.film.fuel_fraction",
            "nozzle.length_fraction",
            "cooling.flow_fraction",
            "shafts.accessory_power",
            // zero by physics: a storable propellant has no thermodynamic suppression head
            "pumps.fuel.suppression_factor",
            "pumps.oxidizer.suppression_factor",
            "boost_pumps.fuel.suppression_factor",
            "boost_pumps.oxidizer.suppression_factor");

    @TestFactory
    List<DynamicTest> everyDefaultThatIsAnEfficiencyALossOrALimitHasASpread() {
        return demos((file, balance) -> {
            Map<String, InputValue> uncertain = Uncertainty.of(balance);
            List<String> missing = balance.concept().document().inputs().stream()
                    .filter(i -> !i.given() && i.number().isPresent())
                    .map(InputValue::key)
                    .filter(k -> KINDS.matcher(k).matches() && !CHOSEN.contains(asOfTheFirstCircuit(k)))
                    .filter(k -> !uncertain.containsKey(k))
                    .toList();
            assertThat(missing).isEmpty();
        });
    }

    /** A further cooling circuit chooses what the first does. */
    private static String asOfTheFirstCircuit(String key) {
        return key.replaceAll("\\.circuits\\[\\d+]", "");
    }

    /** Identity: what a study takes for most likely, written into the concept, is what the concept says without it. */
    @TestFactory
    List<DynamicTest> theMostLikelyValueIsTheOneInUseToTheLastBit() {
        return demos((file, balance) -> {
            Map<String, InputValue> uncertain = Uncertainty.of(balance);
            Map<String, String> likely = new LinkedHashMap<>();
            uncertain.forEach((key, input) ->
                    likely.put(key, input.written(input.spread().orElseThrow().mode())));
            Concept stated = Concepts.READER.reread(balance.concept(), likely);
            Map<String, InputValue> read = new LinkedHashMap<>();
            stated.document().inputs().forEach(i -> read.put(i.key(), i));
            uncertain.forEach((key, input) -> {
                double mode = input.spread().orElseThrow().mode();
                assertThat(read.get(key).number()).as(key).hasValue(mode);
                if (input.number().isPresent()) {
                    assertThat(input.number()).as(key).hasValue(mode);
                }
            });
            // what the calculation finds it finds place by place; stated, it is one number for all places
            uncertain.forEach((key, input) -> {
                if (input.computed()) {
                    likely.remove(key);
                }
            });
            Concepts.assertSame(Concepts.STUDY.balance(Concepts.READER.reread(balance.concept(), likely)), balance);
        });
    }

    private interface Check {
        void of(String file, EngineBalance balance);
    }

    private static List<DynamicTest> demos(Check check) {
        List<DynamicTest> tests = new ArrayList<>();
        for (String file : Concepts.demos()) {
            tests.add(DynamicTest.dynamicTest(file, () -> check.of(file, Concepts.balance(file))));
        }
        return tests;
    }
}
