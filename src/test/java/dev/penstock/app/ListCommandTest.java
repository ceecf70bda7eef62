package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.penstock.ProgramClasses;
import dev.penstock.app.console.Listing;
import dev.penstock.input.HomeFolder;
import dev.penstock.provenance.LimitKind;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ListCommandTest {

    private static List<JsonNode> entries(String kind) {
        List<JsonNode> entries = new ArrayList<>();
        Run.of("list", kind, "--json").json().get("entries").forEach(entries::add);
        return entries;
    }

    private static List<String> keys(String kind) {
        return entries(kind).stream().map(e -> e.get("key").asText()).toList();
    }

    @ParameterizedTest
    @EnumSource(Listing.Kind.class)
    void everyKindIsListedAndEveryPageItNamesIsThere(Listing.Kind kind) {
        assertThat(Run.of("list", kind.word()).out().lines().count()).isGreaterThan(3);
        for (JsonNode entry : entries(kind.word())) {
            assertThat(entry.get("key").asText()).isNotBlank();
            String page = entry.get("documented_in").asText();
            if (page.contains("/")) {
                Path file = HomeFolder.find().resolve(page);
                assertThat(Files.exists(file)).as(page).isTrue();
            }
        }
    }

    @Test
    void keysAreThoseOfDataAndDeclarations() {
        assertThat(keys("fluids")).contains("oxygen", "rp-1");
        assertThat(keys("gas")).contains("H2O");
        Run.of("list", "gas", "--json").document().get("entries").forEach(species -> assertThat(
                        HomeFolder.find().resolve(species.get("documented_in").asText()))
                .isRegularFile()
                .content()
                .contains("name = \"" + species.get("key").asText() + '"'));
        assertThat(keys("walls")).contains("grcop-42");
        assertThat(keys("metals")).contains("nickel-superalloy", "titanium-alloy");
        assertThat(keys("cycles")).contains("gas-generator", "full-flow");
        assertThat(keys("inputs")).contains("engine.chamber_pressure", "cooling.sections[].width");
        assertThat(keys("figures")).contains("engine.isp_vacuum_s", "pumps.NAME.speed_rad_s");
    }

    /** Every enum of limits in the program is listed. */
    @Test
    void noKindOfLimitIsLeftOut() throws Exception {
        List<Class<?>> kinds = ProgramClasses.all().stream()
                .filter(one -> LimitKind.class.isAssignableFrom(one) && one.isEnum())
                .toList();
        assertThat(Listing.limitKinds().toList()).containsExactlyInAnyOrderElementsOf(kinds);
    }

    @Test
    void anUnknownKindNamesThoseThereAre() {
        Run run = Run.of("list", "fluidz");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("fluidz", "fluids, gas, walls, metals");
    }
}
