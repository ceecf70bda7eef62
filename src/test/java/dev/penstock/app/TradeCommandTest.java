package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import dev.penstock.app.console.ExitCode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code trade}. */
class TradeCommandTest {

    @TempDir
    private Path folder;

    @Test
    void twoPairsStandSideBySideAndAreDrawn() throws Exception {
        Run run = Run.of(
                "trade",
                "skerry",
                "--pair",
                "oxygen/rp-1/2.5",
                "--pair",
                "oxygen/methane/3.4",
                "--json",
                "--report",
                folder.toString());
        assertThat(run.code()).isEqualTo(ExitCode.OK);
        JsonNode pairs = run.json().get("pairs");
        assertThat(pairs.size()).isEqualTo(2);
        for (JsonNode pair : pairs) {
            assertThat(pair.get("closes").asBoolean()).isTrue();
            JsonNode single = pair.get("single_stage");
            // identity: the line loses a kilogram of payload per kilogram of dry mass
            JsonNode first = single.get("points").get(0);
            assertThat(first.get("payload_kg").asDouble()
                            + first.get("dry_mass_kg").asDouble())
                    .isCloseTo(single.get("closing_dry_mass_kg").asDouble(), within(1e-6));
        }
        // methane has the higher impulse and the lower density
        assertThat(pairs.get(1).get("isp_s").asDouble())
                .isGreaterThan(pairs.get(0).get("isp_s").asDouble());
        assertThat(pairs.get(1).get("bulk_density_kg_m3").asDouble())
                .isLessThan(pairs.get(0).get("bulk_density_kg_m3").asDouble());
        assertThat(Files.readString(folder.resolve("trade-skerry.html"))).contains("t-closing");
    }

    @Test
    void uncertaintyPutsABandBesideEachPair() throws Exception {
        Run run = Run.of("trade", "skerry", "--pair", "oxygen/methane/3.4", "--uncertainty", "20", "--json");
        assertThat(run.code()).isEqualTo(ExitCode.OK);
        JsonNode pair = run.json().get("pairs").get(0);
        JsonNode band = pair.get("uncertainty");
        assertThat(band.get("figure").asText()).isEqualTo("start_mass_kg");
        assertThat(band.get("samples").asInt()).isEqualTo(20);
        assertThat(band.get("closed").asInt()).isBetween(15, 20);
        double design = pair.get("start_mass_kg").asDouble();
        assertThat(band.get("p5").asDouble()).isLessThan(design);
        assertThat(band.get("p50").asDouble())
                .isBetween(band.get("p5").asDouble(), band.get("p95").asDouble());
        assertThat(band.get("p95").asDouble()).isGreaterThan(design);
        assertThat(band.get("driver").asText()).isNotBlank();
    }

    @Test
    void aPairThatIsNoPairIsBadInput() {
        Run run = Run.of("trade", "skerry", "--pair", "oxygen-methane");
        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(run.problems()).singleElement().asString().contains("oxygen/methane/3.4");
    }
}
