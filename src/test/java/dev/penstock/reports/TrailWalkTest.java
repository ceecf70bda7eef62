package dev.penstock.reports;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.BalanceTrail;
import dev.penstock.cycles.ConceptReader;
import dev.penstock.cycles.ConceptTemplate;
import dev.penstock.cycles.Cycle;
import dev.penstock.cycles.EngineBalance;
import dev.penstock.cycles.EngineStudy;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.provenance.Trail;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every number that a balance shows can be followed, step by step, to what came from outside. */
class TrailWalkTest {

    private static final FluidLibrary FLUIDS = FluidLibrary.open();
    private static final Set<String> LABELS = Set.of("number", "inlets", "outlets");

    @TestFactory
    List<DynamicTest> everyNumberOfEveryDemoConceptLeadsToItsSources() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("cycles"))) {
            files.filter(f -> f.toString().endsWith(".toml"))
                    .sorted()
                    .forEach(f -> tests.add(DynamicTest.dynamicTest(
                            f.getFileName().toString(), () -> walk(new ConceptReader(FLUIDS).read(f)))));
        }
        return tests;
    }

    @TestFactory
    List<DynamicTest> everyNumberOfEveryCycleLeadsToItsSources() {
        return Cycle.all().stream()
                .map(cycle -> DynamicTest.dynamicTest(cycle.id(), () -> {
                    String text = new ConceptTemplate(FLUIDS).text(cycle, cycle.id());
                    walk(new ConceptReader(FLUIDS).parse(cycle.id(), text, Map.of()));
                }))
                .toList();
    }

    @Test
    void everyNumberOfAnEngineWithBoostPumpsLeadsToItsSources() {
        Cycle cycle = Cycle.all().stream()
                .filter(c -> c.id().equals("staged-oxygen-rich"))
                .findFirst()
                .orElseThrow();
        String text = new ConceptTemplate(FLUIDS).text(cycle, cycle.id())
                + "\n[boost_pumps.oxidizer]\n[boost_pumps.fuel]\ndrive = \"gear\"\n";
        walk(new ConceptReader(FLUIDS).parse(cycle.id(), text, Map.of()));
    }

    private static void walk(dev.penstock.cycles.Concept concept) {
        EngineBalance balance = EngineStudy.open().balance(concept);
        Trail trail = BalanceTrail.of(balance);
        Map<String, Double> numbers = new LinkedHashMap<>();
        numbers(BalanceJson.of(balance), "", numbers);
        assertThat(numbers).isNotEmpty();
        List<String> faults = new ArrayList<>();
        numbers.forEach((path, value) -> {
            Optional<Trail.Entry> entry = trail.entry(path);
            if (entry.isEmpty() || entry.get().value() != value) {
                faults.add(path + " is " + value + ", the trail has " + entry.map(Trail.Entry::value));
            }
        });
        Set<String> grounded = grounded(trail);
        for (Trail.Entry entry : trail.entries()) {
            for (String input : entry.inputs()) {
                if (!trail.has(input)) {
                    faults.add(entry.path() + " is made from " + input + ", which is nowhere");
                }
            }
            if (!grounded.contains(entry.path())) {
                faults.add(entry.path() + " leads to nothing from outside");
            }
            if (entry.model().sources().stream().anyMatch(String::isBlank)) {
                faults.add(entry.path() + " has no source");
            }
        }
        assertThat(faults).isEmpty();
    }

    /** Paths from which something that came from outside can be reached. */
    private static Set<String> grounded(Trail trail) {
        Map<String, List<String>> users = new LinkedHashMap<>();
        Deque<String> todo = new ArrayDeque<>();
        for (Trail.Entry entry : trail.entries()) {
            entry.inputs().forEach(i -> users.computeIfAbsent(i, x -> new ArrayList<>())
                    .add(entry.path()));
            if (entry.inputs().isEmpty()) {
                assertThat(entry.model().id()).as(entry.path()).startsWith("given.");
                todo.add(entry.path());
            }
        }
        Set<String> reached = new HashSet<>();
        while (!todo.isEmpty()) {
            String path = todo.pop();
            if (reached.add(path)) {
                todo.addAll(users.getOrDefault(path, List.of()));
            }
        }
        return reached;
    }

    private static void numbers(Object value, String path, Map<String, Double> numbers) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, v) -> {
                if (!LABELS.contains(key)) {
                    numbers(v, path.isEmpty() ? key.toString() : path + "." + key, numbers);
                }
            });
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                numbers(list.get(i), path + "." + label(list.get(i), i), numbers);
            }
        } else if (value instanceof Optional<?> optional) {
            optional.ifPresent(v -> numbers(v, path, numbers));
        } else if (value instanceof Number number) {
            numbers.put(path, number.doubleValue());
        }
    }

    private static String label(Object element, int index) {
        if (element instanceof Map<?, ?> map) {
            for (String key : List.of("number", "id", "name")) {
                if (map.containsKey(key)) {
                    return Trail.slug(map.get(key).toString());
                }
            }
        }
        return Integer.toString(index);
    }
}
