package dev.penstock.cycles.reading;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.input.Input;
import dev.penstock.vehicle.plan.VehicleInputs;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ConceptTemplateTest {

    /** A default in use: a commented assignment of a value. */
    private static final Pattern DEFAULT = Pattern.compile("(?m)^# (\\w+ = (?!\\.\\.\\.).*)$");

    private static final Pattern HEADER = Pattern.compile("(?:## )?\\[{1,2}([\\w.]+)]{1,2}");
    private static final Pattern KEY = Pattern.compile("(?:# |## )?(\\w+) = .*");

    static Stream<Cycle> cycles() {
        return Cycle.all().stream();
    }

    private static String template(Cycle cycle) {
        return new ConceptTemplate(Concepts.FLUIDS, VehicleInputs.IN_CONCEPT).text(cycle, "New engine");
    }

    @ParameterizedTest
    @MethodSource("cycles")
    void aTemplateShowsEveryInputOfItsCycle(Cycle cycle) {
        String text = template(cycle);
        Map<String, Input<?>> all =
                ConceptInputs.of(cycle, VehicleInputs.IN_CONCEPT).all();
        assertThat(all).hasSizeGreaterThan(100);
        Set<String> shown = new HashSet<>();
        String table = "";
        for (String line : text.lines().toList()) {
            Matcher header = HEADER.matcher(line);
            Matcher key = KEY.matcher(line);
            if (header.matches()) {
                table = header.group(1) + ".";
            } else if (key.matches()) {
                shown.add(table + key.group(1));
            }
        }
        assertThat(shown)
                .containsExactlyInAnyOrderElementsOf(
                        all.keySet().stream().map(k -> k.replace("[]", "")).toList());
    }

    /** Identity: a default that is stated is the same value as one that is not. */
    @ParameterizedTest
    @MethodSource("cycles")
    void everyDefaultStatedGivesTheSameEngine(Cycle cycle) {
        String text = template(cycle);
        String stated = DEFAULT.matcher(text).replaceAll("$1");
        assertThat(stated.lines().filter(l -> l.matches("\\w+ = .*")).count())
                .isGreaterThan(
                        20 + text.lines().filter(l -> l.matches("\\w+ = .*")).count());
        EngineBalance silent = Concepts.STUDY.balance(Concepts.READER.parse("silent", text, Map.of()));
        EngineBalance spoken = Concepts.STUDY.balance(Concepts.READER.parse("spoken", stated, Map.of()));
        Concepts.assertSame(spoken, silent);
    }
}
