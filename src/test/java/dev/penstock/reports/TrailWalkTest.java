package dev.penstock.reports;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.questions.PressureFeed;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.reading.ConceptTemplate;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.BalanceTrail;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.cycles.trail.FeedFigures;
import dev.penstock.cycles.trail.LimitTrail;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.provenance.Trail;
import dev.penstock.reports.concept.ConceptPage;
import dev.penstock.reports.concept.LimitView;
import dev.penstock.reports.engine.PressureFeedView;
import dev.penstock.reports.study.ComparisonView;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.Software;
import dev.penstock.reports.vehicle.VehicleView;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Outcome;
import dev.penstock.study.Progress;
import dev.penstock.study.VehicleRuns;
import dev.penstock.study.VehicleTrail;
import dev.penstock.vehicle.plan.VehicleInputs;
import dev.penstock.vehicle.reading.VehicleReader;
import dev.penstock.vehicle.stage.VehicleFigures;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every number that a balance shows can be followed, step by step, to what came from outside. */
class TrailWalkTest {

    private static final FluidLibrary FLUIDS = FluidLibrary.open();
    private static final Software SOFTWARE = Software.of(Path.of("."), "test");
    private static final Set<String> LABELS = Set.of("number", "inlets", "outlets");

    @TestFactory
    List<DynamicTest> everyNumberOfEveryDemoConceptLeadsToItsSources() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("cycles"))) {
            files.filter(f -> f.toString().endsWith(".toml"))
                    .sorted()
                    .forEach(f -> tests.add(DynamicTest.dynamicTest(
                            f.getFileName().toString(),
                            () -> walk(Concepts.balance(f.getFileName().toString())))));
        }
        return tests;
    }

    @TestFactory
    List<DynamicTest> everyNumberOfEveryCycleLeadsToItsSources() {
        return Cycle.all().stream()
                .map(cycle -> DynamicTest.dynamicTest(cycle.id(), () -> {
                    String text = new ConceptTemplate(FLUIDS, VehicleInputs.IN_CONCEPT).text(cycle, cycle.id());
                    walk(new ConceptReader(FLUIDS).parse(cycle.id(), text, Map.of()));
                }))
                .toList();
    }

    @Test
    void everyNumberOfAnEngineThatDumpsCoolantLeadsToItsSources() {
        walk(new ConceptReader(FLUIDS)
                .read(
                        Path.of("docs/examples/dump-cooled-nozzle.toml"),
                        Map.of(
                                "exhaust.cant_angle",
                                "10 deg",
                                "exhaust.swivel_angle",
                                "20 deg",
                                "turbines.oxidizer.bypass",
                                "0.1",
                                "shafts.gas_path",
                                "series")));
    }

    @Test
    void everyNumberOfAnEngineWithBoostPumpsLeadsToItsSources() {
        Cycle cycle = Cycle.all().stream()
                .filter(c -> c.id().equals("staged-oxygen-rich"))
                .findFirst()
                .orElseThrow();
        String text = new ConceptTemplate(FLUIDS, VehicleInputs.IN_CONCEPT).text(cycle, cycle.id())
                + "\n[boost_pumps.oxidizer]\n[boost_pumps.fuel]\ndrive = \"gear\"\n";
        walk(new ConceptReader(FLUIDS).parse(cycle.id(), text, Map.of()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"regulated", "heated", "blowdown"})
    void everyNumberOfEveryPressureFeedLeadsToItsSources(String feed) {
        walk(new ConceptReader(FLUIDS).read(Path.of("cycles/dunlin.toml"), Map.of("pressurization.feed", feed)));
    }

    @TestFactory
    List<DynamicTest> everyNumberOfEveryDemoVehicleLeadsToItsSources() throws IOException {
        VehicleRuns runs = new VehicleRuns(new EngineRuns(Path.of("."), FLUIDS));
        try (Stream<Path> files = Files.list(Path.of("cycles/vehicles"))) {
            return files.sorted().toList().stream()
                    .map(f -> DynamicTest.dynamicTest(f.getFileName().toString(), () -> {
                        VehicleSizing vehicle = runs.size(f, Map.of(), Progress.NONE);
                        Trail trail = VehicleFigures.trail(vehicle);
                        walk(VehicleView.json(vehicle), trail);
                        PageWalk.walk(VehicleView.html(vehicle, SOFTWARE), trail);
                    }))
                    .toList();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"dunlin", "dotterel"})
    void everyNumberOfASearchForTheHighestPressureLeadsToItsSources(String name) {
        LimitResult result = Concepts.STUDY.limit(new ConceptReader(FLUIDS).read(Path.of("cycles", name + ".toml")));
        Trail trail = LimitTrail.extend(BalanceTrail.of(result.balance()), result);
        Map<String, Object> document = new LinkedHashMap<>(LimitView.json(result));
        Object engine = document.remove("balance");
        assertThat(engine).isInstanceOf(Map.class);
        ((Map<?, ?>) engine).forEach((key, value) -> document.put(key.toString(), value));
        walk(document, trail);
        PageWalk.walk(new ConceptPage(result.balance(), Optional.empty(), Optional.of(result), SOFTWARE).html(), trail);
    }

    /** The comparison shows nothing but figures of its concepts, each of which has its own trail. */
    @Test
    void everyNumberOfAComparisonIsOneOfItsConcepts() {
        EngineRuns runs = new EngineRuns(Path.of("."), FLUIDS);
        List<Outcome> outcomes = runs.balance(
                List.of(Path.of("cycles/dunlin.toml"), Path.of("cycles/dotterel.toml")), Map.of(), Progress.NONE);
        ComparisonView view = new ComparisonView(outcomes);
        String page = view.html(SOFTWARE, Map.of("Dunlin", "dunlin.html", "Dotterel", "dotterel.html"));
        Object concepts = view.json().get("concepts");
        for (int i = 0; i < outcomes.size(); i++) {
            Map<String, Object> shown = new LinkedHashMap<>();
            ((Map<?, ?>) ((List<?>) concepts).get(i)).forEach((key, value) -> shown.put(key.toString(), value));
            Object tightest = shown.remove("tightest_limit");
            shown.put("limits", List.of(tightest));
            Trail trail = BalanceTrail.of(outcomes.get(i).balance().orElseThrow());
            walk(shown, trail);
            PageWalk.walkTo(outcomes.get(i).name().toLowerCase(Locale.ROOT) + ".html", page, trail);
        }
    }

    private static void walk(Concept concept) {
        walk(Concepts.STUDY.balance(concept));
    }

    private static void walk(EngineBalance balance) {
        Trail trail = BalanceTrail.of(balance);
        Optional<PressureFeed> feed = Concepts.STUDY.pressureFeed(balance);
        feed.ifPresent(f -> FeedFigures.record(balance, f, trail));
        Map<String, Object> document = new LinkedHashMap<>(FigureJson.of(EngineFigures.ALL, balance));
        feed.ifPresent(f -> document.put("pressure_feed", new PressureFeedView(f).json()));
        walk(document, trail);
        Optional<VehicleSizing> vehicle =
                new VehicleReader(FLUIDS).of(balance.concept()).map(plan -> VehicleRuns.size(plan, balance));
        vehicle.ifPresent(v -> trail.include(VehicleTrail.ofConcept(v, balance)));
        ConceptPage page = new ConceptPage(balance, vehicle, Optional.empty(), SOFTWARE);
        feed.ifPresent(page::fedBy);
        PageWalk.walk(page.html(), trail);
    }

    /** Every number of the document has an entry of the same value, and every entry leads to its sources. */
    private static void walk(Map<String, Object> document, Trail trail) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        numbers(document, "", numbers);
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
            if (entry.model().id().equals("cycles.same")
                    && entry.inputs().stream()
                            .flatMap(i -> trail.entry(i).stream())
                            .noneMatch(i -> same(Math.abs(i.value()), Math.abs(entry.value())))) {
                faults.add(entry.path() + " is " + entry.value() + ", but none of " + entry.inputs() + " is");
            }
            if (entry.model().sources().stream().anyMatch(String::isBlank)) {
                faults.add(entry.path() + " has no source");
            }
        }
        assertThat(faults).isEmpty();
    }

    /**
     * Heat changes its sign with the side and is closed by iteration; temperatures go through an equation of state and
     * back.
     */
    private static boolean same(double a, double b) {
        return Math.abs(a - b) <= 1e-7 * Math.max(a, b);
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
        Object found = element instanceof Optional<?> optional && optional.isPresent() ? optional.get() : element;
        if (found instanceof Map<?, ?> map) {
            for (String key : List.of("number", "id", "name")) {
                if (map.containsKey(key)) {
                    return Trail.slug(map.get(key).toString());
                }
            }
        }
        return Integer.toString(index);
    }
}
