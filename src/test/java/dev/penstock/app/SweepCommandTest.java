package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SweepCommandTest {

    private static final String VARY = "engine.chamber_pressure=0.8..1.2MPa:3";

    @TempDir
    Path folder;

    @Test
    void documentHasEveryPoint() {
        JsonNode json = Run.of("sweep", "dunlin", "--vary", VARY, "--json").json();
        assertThat(json.get("complete").booleanValue()).isTrue();
        assertThat(json.get("points")).hasSize(3);
        JsonNode point = json.get("points").get(2);
        assertThat(point.at("/inputs/engine.chamber_pressure").textValue()).isEqualTo("1.2 MPa");
        assertThat(point.at("/results/chamber_pressure_Pa").doubleValue()).isEqualTo(1.2e6);
        assertThat(point.at("/results/isp_vacuum_s").doubleValue()).isPositive();
        assertThat(point.at("/results/pump_power_W").isMissingNode()).isTrue();
    }

    @Test
    void tableForOtherProgramsHasAHeadingAndOneLineEach() {
        Run run = Run.of("sweep", "dunlin", "--vary", VARY, "--csv");
        List<String> lines = run.out().lines().toList();
        assertThat(lines).hasSize(4);
        assertThat(lines.get(0)).startsWith("engine.chamber_pressure,isp_vacuum_s,");
        assertThat(lines.get(1)).startsWith("0.8 MPa,");
    }

    @Test
    void pageHasChartsOfOneAndOfTwoInputs() throws Exception {
        Run.of("sweep", "dunlin", "--vary", VARY, "--report", folder + "/one");
        assertThat(Files.readString(folder.resolve("one/dunlin-sweep.html"))).contains("Results against");
        Run.of(
                "sweep",
                "dunlin",
                "--vary",
                VARY,
                "--vary",
                "propellants.mixture_ratio=1.5..1.8:2",
                "--report",
                folder + "/two");
        assertThat(Files.readString(folder.resolve("two/dunlin-sweep.html"))).contains("id=\"map-isp-vacuum-s\"");
        assertThat(folder.resolve("two/dunlin-sweep.csv")).exists();
    }

    @Test
    void wordsCanBeVariedToo() {
        Run run = Run.of("sweep", "dunlin", "--vary", "propellants.fuel=mmh,udmh");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("mmh", "udmh");
    }

    @Test
    void withoutAnythingToVaryItSaysHow() {
        Run run = Run.of("sweep", "dunlin");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .isEqualTo("penstock: --vary is missing; write what to vary, for example"
                        + " engine.chamber_pressure=4..20MPa:9\n");
    }
}
