package dev.penstock.app.edit;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import dev.penstock.input.InputFile;
import dev.penstock.vehicle.reading.VehicleReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TomlEditTest {

    private static final FluidLibrary FLUIDS = FluidLibrary.open();

    @Test
    void aValueIsReplacedAndItsCommentStays() {
        String text = "[engine]\n  thrust = \"1 kN\"   # as # ordered\nratio = 2\n";
        assertThat(TomlEdit.apply(text, Map.of("engine.thrust", "2 kN"), List.of()))
                .isEqualTo("[engine]\n  thrust = \"2 kN\"   # as # ordered\nratio = 2\n");
    }

    @Test
    void aNewKeyJoinsItsTable() {
        String text = "name = \"a\"\n\n[engine]\nx = 1\n\n# about pumps\n[pumps]\ny = 2\n";
        assertThat(TomlEdit.apply(text, Map.of("engine.z", "true"), List.of()))
                .isEqualTo("name = \"a\"\n\n[engine]\nx = 1\nz = true\n\n# about pumps\n[pumps]\ny = 2\n");
    }

    @Test
    void aNewTableGoesToTheEnd() {
        assertThat(TomlEdit.apply("a = 1\n", Map.of("pumps.fuel.stages", "2"), List.of()))
                .isEqualTo("a = 1\n\n[pumps.fuel]\nstages = 2\n");
    }

    @Test
    void aTableOfDottedKeysIsNotDefinedTwice() {
        assertThat(TomlEdit.apply("[pumps]\nfuel.stages = 2\n", Map.of("pumps.fuel.efficiency", "0.7"), List.of()))
                .isEqualTo("[pumps]\nfuel.stages = 2\nfuel.efficiency = 0.7\n");
    }

    @Test
    void aListOverSeveralLinesIsReplacedWhole() {
        assertThat(TomlEdit.apply("a = [1, # one ]\n  2]\nb = 3\n", Map.of("a", "[4]"), List.of()))
                .isEqualTo("a = [4]\nb = 3\n");
    }

    @Test
    void anyTextIsWrittenInQuotes() {
        Map<String, String> changes = Map.of("a", "-3");
        assertThat(TomlEdit.apply("a = \"x\"\n", changes, "a"::equals)).isEqualTo("a = \"-3\"\n");
        assertThat(TomlEdit.apply("a = \"x\"\n", changes, "b"::equals)).isEqualTo("a = -3\n");
        assertThat(TomlEdit.apply("a = 1\n", Map.of("a", "'-3'"), "a"::equals)).isEqualTo("a = '-3'\n");
    }

    @Test
    void aValueCannotBringKeysOrTablesWithIt() {
        assertThat(TomlEdit.apply("a = 1\n", Map.of("a", "1\"\n[b]\nc = 2"), List.of()))
                .isEqualTo("a = \"1\\\"\\u000a[b]\\u000ac = 2\"\n");
    }

    @Test
    void aWrittenValueComesWithoutQuotes() {
        assertThat(TomlEdit.written("[e]\r\np = \"7.5 MPa\" # x\r\n")).isEqualTo(Map.of("e.p", "7.5 MPa"));
    }

    private static final String STAGES =
            "[[stage]]\nname = \"a\"\n[stage.dry_mass]\nm = 1\n\n[[stage]]\nname = \"b\" # upper\n\n[other]\nx = 1\n";

    @Test
    void repeatedTablesAreCountedFromZero() {
        assertThat(TomlEdit.written(STAGES))
                .containsOnlyKeys("stage[0].name", "stage[0].dry_mass.m", "stage[1].name", "other.x");
        assertThat(TomlEdit.apply(STAGES, Map.of("stage[1].name", "c"), List.of()))
                .isEqualTo(STAGES.replace("\"b\" #", "\"c\" #"));
    }

    @Test
    void aTableBelowARepeatedOneGetsNoHeaderOfItsOwn() {
        assertThat(TomlEdit.apply(STAGES, Map.of("stage[1].dry_mass.m", "2"), List.of()))
                .isEqualTo(STAGES.replace("# upper\n", "# upper\ndry_mass.m = 2\n"));
        assertThat(TomlEdit.apply(STAGES, Map.of("stage[0].dry_mass.n", "3"), List.of()))
                .isEqualTo(STAGES.replace("m = 1\n", "m = 1\nn = 3\n"));
    }

    /** Identity: a saved vehicle is planned as the one on the screen. */
    @Test
    void aSavedVehicleReadsAsTheChangedOne() throws IOException {
        Path file = HomeFolder.find().resolve("cycles/vehicles/skerry.toml");
        String text = Files.readString(file);
        Map<String, String> changes = new LinkedHashMap<>();
        changes.put("payload", "30000 lb");
        changes.put("stage[0].delta_v_share", "0.4");
        changes.put("stage[1].delta_v_share", "0.6");
        changes.put("stage[0].allowances.residual", "0.02");
        String saved = TomlEdit.apply(text, changes, List.of());
        assertThat(saved).contains("# as many engines as this takes");
        assertThat(new VehicleReader(FLUIDS).parse(file, saved, Map.of()).toString())
                .isEqualTo(new VehicleReader(FLUIDS).parse(file, text, changes).toString())
                .isNotEqualTo(
                        new VehicleReader(FLUIDS).parse(file, text, Map.of()).toString());
    }

    static List<Path> demos() throws IOException {
        try (Stream<Path> files = Files.list(HomeFolder.find().resolve("cycles"))) {
            return files.filter(f -> f.toString().endsWith(".toml")).sorted().toList();
        }
    }

    /** Identity: a saved file gives the inputs that were on the screen, for every demo and a change of many kinds. */
    @ParameterizedTest
    @MethodSource("demos")
    void theSavedTextReadsAsTheChangedConcept(Path file) throws IOException {
        ConceptReader reader = new ConceptReader(FluidLibrary.open(HomeFolder.find()));
        String text = Files.readString(file);
        Map<String, String> changes = new LinkedHashMap<>();
        changes.put("engine.chamber_pressure", "1100 psi");
        changes.put("propellants.mixture_ratio", "2.5");
        changes.put("name", "A \"new\" name");
        changes.put("chamber.contraction_ratio", "3.1");
        String saved = TomlEdit.apply(text, changes, List.of());
        assertThat(reader.parse("saved", saved, Map.of()).document().inputs())
                .isEqualTo(reader.parse("shown", text, changes).document().inputs());
    }

    @Test
    void anEmptyValueTakesAValueOrATableOut() {
        String text =
                "a = 1\n\n[engine]\nx = 1   # first\ny = [\n  2,\n]\n\n[claims.\"engine.mass\"]\nvalue = 3\n\n[pumps.fuel]\nz = 4\n";
        assertThat(TomlEdit.apply(text, Map.of("engine.y", ""), List.of()))
                .isEqualTo(text.replace("y = [\n  2,\n]\n", ""));
        assertThat(TomlEdit.apply(text, Map.of("claims.engine.mass", "", "pumps", ""), List.of()))
                .isEqualTo("a = 1\n\n[engine]\nx = 1   # first\ny = [\n  2,\n]\n");
        // The reader of files takes out the same.
        Map<String, String> changes = Map.of("claims.engine.mass", "", "engine", "");
        assertThat(InputFile.with(TomlEdit.apply(text, changes, List.of()), Map.of()))
                .isEqualTo(InputFile.with(text, changes).replace("claims = {}\n", ""));
    }
}
