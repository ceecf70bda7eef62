package dev.penstock.app.edit;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.reading.CycleSwitch;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import dev.penstock.input.InputValue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A concept of any cycle takes any other: nothing is refused, nothing is lost unsaid, and what is written means what is shown. */
class CycleSwitchTest {

    private static final ConceptReader READER = new ConceptReader(FluidLibrary.open());

    /** The demo's concepts, and the example of each cycle. */
    private static Map<String, String> texts() throws IOException {
        Map<String, String> texts = new LinkedHashMap<>();
        try (Stream<Path> files = Files.list(HomeFolder.find().resolve("cycles"))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".toml")).sorted().toList()) {
                texts.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        Cycle.all().forEach(c -> texts.put(c.id(), c.example().shortest(c.id(), "Example")));
        return texts;
    }

    @Test
    void everyConceptTakesEveryCycleAndSaysWhatItLost() throws IOException {
        List<String> refused = new ArrayList<>();
        List<String> unsaid = new ArrayList<>();
        int pairs = 0;
        for (Map.Entry<String, String> one : texts().entrySet()) {
            Concept before = READER.parse(one.getKey(), one.getValue(), Map.of());
            for (Cycle cycle : Cycle.all()) {
                if (cycle.id().equals(before.cycle().id())) {
                    continue;
                }
                pairs++;
                String name = one.getKey() + " to " + cycle.id();
                try {
                    CycleSwitch.Switched switched = CycleSwitch.of(READER, before, cycle);
                    Concept after = READER.reread(before, switched.changes());
                    assertThat(after.cycle().id()).as(name).isEqualTo(cycle.id());
                    List<String> kept = after.document().inputs().stream()
                            .filter(InputValue::given)
                            .map(InputValue::key)
                            .toList();
                    before.document().inputs().stream()
                            .filter(InputValue::given)
                            .map(InputValue::key)
                            .filter(k -> !kept.contains(k))
                            .filter(k -> switched.said().stream().noneMatch(s -> s.startsWith(k + " ")))
                            .forEach(k -> unsaid.add(name + ": " + k));
                    Concept written = READER.parse(
                            one.getKey(), TomlEdit.apply(one.getValue(), switched.changes(), List.of()), Map.of());
                    assertThat(written.document().inputs())
                            .as(name)
                            .isEqualTo(after.document().inputs());
                } catch (InvalidInput e) {
                    refused.add(name + ": " + e.getMessage());
                }
            }
        }
        assertThat(refused).isEmpty();
        assertThat(unsaid).isEmpty();
        assertThat(pairs).isGreaterThan(200);
    }

    @Test
    void theGasOfTheTurbineKeepsItsTemperatureInTheOtherBurner() throws IOException {
        Concept heron = READER.parse("heron", texts().get("heron.toml"), Map.of());
        Cycle staged = Cycle.all().stream()
                .filter(c -> c.id().equals("staged-fuel-rich"))
                .findFirst()
                .orElseThrow();
        CycleSwitch.Switched switched = CycleSwitch.of(READER, heron, staged);
        assertThat(switched.changes())
                .containsEntry("preburner.fuel_rich.temperature", "930 K")
                .containsEntry("gas_generator", "");
        assertThat(switched.said())
                .anyMatch(
                        s -> s.startsWith("gas_generator.temperature (930 K) becomes preburner.fuel_rich.temperature"));
    }

    @Test
    void unsavedChangesGoWithTheCycle() throws IOException {
        Map<String, String> changes = Map.of("gas_generator.temperature", "900 K", "engine.chamber_pressure", "9 MPa");
        Concept heron = READER.parse("heron", texts().get("heron.toml"), changes);
        Cycle tap = Cycle.all().stream()
                .filter(c -> c.id().equals("tap-off"))
                .findFirst()
                .orElseThrow();
        Concept after = READER.reread(heron, CycleSwitch.of(READER, heron, tap).changes());
        assertThat(after.document().inputs().stream()
                        .filter(i -> i.key().equals("tap_off.temperature"))
                        .findFirst()
                        .orElseThrow()
                        .readable())
                .isEqualTo("900 K");
        assertThat(after.chamberPressure()).isEqualTo(9e6);
    }
}
