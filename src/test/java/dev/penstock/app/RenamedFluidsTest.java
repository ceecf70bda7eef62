package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.HomeFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A fluid is what its file says: under another id every number is the same to the last bit. */
class RenamedFluidsTest {

    private static final Path HOME = HomeFolder.find();

    @TempDir
    static Path folder;

    /** The other id of each fluid; none begins like an id of {@code fluids/}. */
    private static final Map<String, String> OTHER = new LinkedHashMap<>();

    @BeforeAll
    static void copyEveryFluid() throws IOException {
        Path fluids = Files.createDirectories(folder.resolve("fluids"));
        for (String kind : List.of("gas", "metals", "walls")) {
            Files.createSymbolicLink(
                    fluids.resolve(kind), HOME.resolve("fluids").resolve(kind));
        }
        Files.createSymbolicLink(folder.resolve(".penstock"), HOME.resolve(".penstock"));
        for (String id : FluidLibrary.open(HOME).ids()) {
            String other = "sample-" + (char) ('z' - OTHER.size());
            OTHER.put(id, other);
            Path file = HOME.resolve("fluids").resolve(id + ".toml");
            Files.copy(file, fluids.resolve(id + ".toml"));
            Files.copy(file, fluids.resolve(other + ".toml"));
        }
    }

    /** The links lead out of the folder, which is deleted with all that is in it. */
    @AfterAll
    static void removeLinks() throws IOException {
        for (String link : List.of("fluids/gas", "fluids/metals", "fluids/walls", ".penstock")) {
            Files.delete(folder.resolve(link));
        }
    }

    /** One demo for each pair of propellants of the demos, with everything that is asked of an engine. */
    @ParameterizedTest
    @CsvSource({
        "avocet, oxygen, hydrogen, balance cool",
        "gannet, oxygen, methane, balance cool size",
        "heron, oxygen, rp-1, balance cool limit",
        "dunlin, nitrogen-tetroxide, mmh, balance limit",
        "whimbrel, hydrogen-peroxide-90, rp-1, balance",
    })
    void demosAnswerAlike(String demo, String oxidizer, String fuel, String commands) {
        for (String command : commands.split(" ")) {
            same(command, demo, oxidizer, fuel, List.of());
        }
    }

    /** The pairs that no demo has, in chambers fed by pressure, the gas in the bottles renamed too. */
    @ParameterizedTest
    @CsvSource({
        "oxygen, propane, 2.6, helium",
        "oxygen, ethanol, 1.5, nitrogen",
        "oxygen, ethanol-75, 1.3, helium",
        "oxygen, ammonia, 1.3, nitrogen",
        "oxygen, jet-a, 2.4, helium",
        "nitrogen-tetroxide, hydrazine, 1.2, nitrogen",
        "nitrogen-tetroxide, hydrazine-50, 1.8, helium",
        "nitrogen-tetroxide, udmh, 2.3, nitrogen",
        "nitrogen-tetroxide, uh-25, 2.2, helium",
        "nitrous-oxide, ethanol, 4, nitrogen",
        "hydrogen-peroxide-98, rp-1, 7, helium",
        "hydrogen-peroxide-85, rp-1, 7.5, nitrogen",
    })
    void otherPairsAnswerAlike(String oxidizer, String fuel, double mixtureRatio, String gas) {
        same(
                "balance",
                "plover",
                oxidizer,
                fuel,
                List.of("propellants.mixture_ratio=" + mixtureRatio, "pressurization.gas=" + gas));
    }

    @Test
    void everyFluidThatIsLoadedIsTried() throws Exception {
        List<String> tried = new ArrayList<>();
        for (String method : List.of("demosAnswerAlike", "otherPairsAnswerAlike")) {
            Stream.of(RenamedFluidsTest.class.getDeclaredMethods())
                    .filter(m -> m.getName().equals(method))
                    .flatMap(m -> Stream.of(m.getAnnotation(CsvSource.class).value()))
                    .forEach(row -> tried.addAll(List.of(row.split(", "))));
        }
        FluidLibrary library = FluidLibrary.open(HOME);
        List<String> loaded = library.ids().stream()
                .filter(id -> {
                    var roles = library.propellant(id).roles();
                    return roles.contains(Propellant.Role.FUEL) || roles.contains(Propellant.Role.OXIDIZER);
                })
                .toList();
        assertThat(tried).containsAll(loaded);
    }

    private static void same(String command, String demo, String oxidizer, String fuel, List<String> changes) {
        Map<String, JsonNode> named = numbers(answer(command, demo, oxidizer, fuel, changes));
        List<String> renamed = changes.stream()
                .map(c -> c.replaceAll("(?<=gas=)(.*)", OTHER.getOrDefault(c.substring(c.indexOf('=') + 1), "$1")))
                .toList();
        Map<String, JsonNode> other = numbers(answer(command, demo, OTHER.get(oxidizer), OTHER.get(fuel), renamed));
        assertThat(named).as("numbers of %s %s", command, demo).hasSizeGreaterThan(20);
        assertThat(other).isEqualTo(named);
    }

    private static JsonNode answer(String command, String demo, String oxidizer, String fuel, List<String> changes) {
        List<String> line = new ArrayList<>(
                List.of(command, HOME.resolve("cycles").resolve(demo + ".toml").toString(), "--json"));
        List<String> all = new ArrayList<>(List.of("propellants.oxidizer=" + oxidizer, "propellants.fuel=" + fuel));
        all.addAll(changes);
        all.forEach(change -> line.addAll(List.of("--set", change)));
        Run run = Run.in(folder, line.toArray(String[]::new));
        assertThat(run.code()).as("%s: %s", line, run.err()).isZero();
        return run.json();
    }

    private static Map<String, JsonNode> numbers(JsonNode json) {
        Map<String, JsonNode> numbers = new TreeMap<>();
        collect("", json, numbers);
        return numbers;
    }

    private static void collect(String path, JsonNode node, Map<String, JsonNode> numbers) {
        if (node.isNumber()) {
            numbers.put(path, node);
        }
        node.fields().forEachRemaining(e -> collect(path + "." + e.getKey(), e.getValue(), numbers));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            collect(path + "." + i, node.get(i), numbers);
        }
    }
}
