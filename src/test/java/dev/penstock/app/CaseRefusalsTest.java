package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a case cannot be, in one sentence; and what else than a file it can be. */
class CaseRefusalsTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"sweep", "balance", "limit", "off-design", "table", "compare"})
    void aVehicleIsNoEngine(String command) {
        List<String> words = command.equals("sweep")
                ? List.of("sweep", "skerry", "--vary", "payload=1..2t:2")
                : List.of(command, "skerry");
        Run run = Run.of(words.toArray(String[]::new));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.problems())
                .singleElement()
                .asString()
                .contains("skerry.toml", "a vehicle", "engine concept", "penstock size");
    }

    @Test
    void aVehicleInAPageIsNamedByItsPage() {
        Path page = folder.resolve("skerry.html");
        assertThat(Run.of("size", "skerry", "--report", page.toString()).code()).isZero();
        assertThat(Run.of("compare", page.toString()).problems())
                .singleElement()
                .asString()
                .contains(page.resolve("vehicles").resolve("skerry.toml") + ": CASE is a vehicle");
    }

    @Test
    void anUnknownKeyInTheVehicleTableIsRefusedByTheBalanceToo() throws Exception {
        String text = Files.readString(Path.of("cycles/gannet.toml"));
        Path file = folder.resolve("gannet.toml");
        Files.writeString(file, text.replace("[vehicle.mission]", "[vehicle.mission]\norbit_altitide = \"300 km\""));
        Run run = Run.of("balance", file.toString());
        assertThat(run.code()).isEqualTo(2);
        int line = List.of(text.split("\n")).indexOf("[vehicle.mission]") + 2;
        assertThat(run.problems())
                .singleElement()
                .asString()
                .contains("gannet.toml:" + line, "vehicle.mission.orbit_altitide", "did you mean orbit_altitude?");
    }

    @Test
    void compareTakesPagesToo() {
        String change = "engine.chamber_pressure=9 MPa";
        assertThat(Run.of("balance", "heron", "--set", change, "--report", folder.toString())
                        .code())
                .isZero();
        Run run = Run.of("compare", "dunlin", folder.resolve("heron.html").toString(), "--json");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.json().at("/concepts/1/name").asText()).isEqualTo("Heron");
        assertThat(run.json().at("/concepts/1/engine/chamber_pressure_Pa").doubleValue())
                .isEqualTo(9e6);
        // its file is known by the page, not by where it was unpacked
        assertThat(run.json().at("/concepts/1/file").asText())
                .isEqualTo(folder.resolve("heron.html/heron.toml").toString());
        // a page of several is all of them
        assertThat(Run.of("compare", "dunlin", "avocet", "--report", folder.toString())
                        .code())
                .isZero();
        assertThat(Run.of("compare", folder.resolve("comparison.html").toString(), "--json")
                        .json()
                        .get("concepts"))
                .hasSize(2);
    }
}
