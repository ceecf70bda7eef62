package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The contract of uncertainty, off-design operation and the search for channels. */
class StudyCommandsTest {

    @TempDir
    Path folder;

    @Test
    void uncertaintyGivesRisingPercentilesAndWhatDrivesThem() throws Exception {
        Run run = Run.of("balance", "dunlin", "--uncertainty", "20", "--json", "--report", folder.toString());
        assertThat(run.code()).isZero();
        JsonNode uncertainty = run.json().get("uncertainty");
        assertThat(uncertainty.get("samples").intValue()).isEqualTo(20);
        JsonNode impulse = uncertainty.at("/figures/isp_vacuum_s");
        double last = 0;
        for (String key : new String[] {"p5", "p25", "p50", "p75", "p95"}) {
            assertThat(impulse.get(key).doubleValue()).as(key).isGreaterThanOrEqualTo(last);
            last = impulse.get(key).doubleValue();
        }
        assertThat(uncertainty.at("/drivers/isp_vacuum_s/0/input").textValue()).isNotBlank();
        assertThat(Files.readString(folder.resolve("dunlin.html"))).contains("What moves specific impulse");
        assertThat(Run.of("balance", "dunlin", "--uncertainty", "20").out()).contains("samples", "moved most by");
    }

    @Test
    void tooFewSamplesAreBadInput() {
        Run run = Run.of("balance", "dunlin", "--uncertainty", "3");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEqualTo("penstock: --uncertainty is 3; allowed is a whole number from 20 to 99999\n");
    }

    @Test
    void offDesignReturnsToTheDesignAtFullThrottle() {
        Run run = Run.of("off-design", "heron", "--throttle", "1,0.7", "--json");
        assertThat(run.code()).isZero();
        JsonNode json = run.json();
        JsonNode full = json.get("points").get(0);
        // identity: the design point is one of the operating points
        assertThat(full.get("isp_vacuum_s").doubleValue())
                .isCloseTo(json.at("/design/isp_vacuum_s").doubleValue(), within(0.01));
        JsonNode part = json.get("points").get(1);
        assertThat(part.get("chamber_pressure_Pa").doubleValue())
                .isCloseTo(0.7 * json.at("/design/chamber_pressure_Pa").doubleValue(), within(1.0));
        assertThat(part.at("/pumps/fuel pump/speed_rad_s").doubleValue())
                .isLessThan(full.at("/pumps/fuel pump/speed_rad_s").doubleValue());
        assertThat(part.get("residual_worst").doubleValue()).isLessThan(1e-8);
    }

    @Test
    void offDesignSaysWhatIsWrongWithItsCommands() {
        Run run = Run.of("off-design", "heron", "--throttle", "3", "--mixture-ratio", "rich");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.problems())
                .containsExactly(
                        "penstock: --throttle is 3; allowed is 0.02 to 1.5",
                        "penstock: --mixture-ratio is rich; write a plain number");
    }

    @Test
    void coolFindsChannelsThatTheConceptFileTakes() throws Exception {
        Run run = Run.of("cool", "heron", "--evaluations", "40", "--json");
        JsonNode json = run.json();
        double start = json.at("/start/coolant_pressure_drop_Pa").doubleValue();
        double best = json.at("/best/coolant_pressure_drop_Pa").doubleValue();
        assertThat(best).isLessThanOrEqualTo(start);
        String concept =
                Files.readString(Path.of("cycles/heron.toml")).replaceFirst("(?s)\\[cooling].*?(?=\\n\\[)", "");
        String found =
                json.get("concept_text").textValue().replaceFirst("\\[cooling]", "[cooling]\ncoolant = \"fuel\"");
        Path file = Files.writeString(folder.resolve("h.toml"), concept + "\n" + found);
        Run again = Run.of("balance", file.toString(), "--json");
        assertThat(again.code()).as(again.err()).isZero();
        // the sections left out are given back within 1 %, and the balance moves the flow a little
        assertThat(again.json().at("/cooling/coolant_pressure_drop_Pa").doubleValue())
                .isCloseTo(best, within(0.15 * best));
    }

    @Test
    void coolOfAnUncooledEngineIsBadInput() {
        String uncooled = "cycles/dunlin.toml";
        Run run = Run.of("cool", uncooled);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .isEqualTo("penstock: " + uncooled
                        + ": cooling is missing; write a table [cooling] with coolant = \"fuel\"\n");
    }

    @Test
    void limitDrawsOneLinePerCycle() throws Exception {
        Run run = Run.of(
                "limit", "dunlin", "--cycles", "--temperatures", "800K,1100K", "--json", "--report", folder.toString());
        assertThat(run.code()).isZero();
        JsonNode lines = run.json().at("/cycles/lines");
        assertThat(lines.findValuesAsText("cycle")).contains("gas-generator", "full-flow", "expander");
        assertThat(Files.readString(folder.resolve("dunlin-cycles.csv")))
                .startsWith("cycle,turbine_temperature_K,chamber_pressure_Pa,")
                .contains("gas-generator,", "staged-oxygen-rich,");
        assertThat(Files.readString(folder.resolve("dunlin-cycles.svg"))).contains("Gas generator");
        assertThat(Files.readString(folder.resolve("dunlin-limit.html"))).contains("id=\"cycle-reach\"");
    }

    @Test
    void limitSamplesItsLimits() throws Exception {
        Run run = Run.of("limit", "dunlin", "--uncertainty", "20", "--json", "--report", folder.toString());
        assertThat(run.code()).isZero();
        JsonNode uncertainty = run.json().get("uncertainty");
        JsonNode pressure = uncertainty.at("/figures/chamber_pressure_Pa");
        assertThat(pressure.get("p95").doubleValue())
                .isGreaterThan(1.05 * pressure.get("p5").doubleValue());
        // the tank's limit is what binds a pressure-fed engine, so nothing moves its reach more
        assertThat(uncertainty.at("/drivers/chamber_pressure_Pa/0/input").textValue())
                .isEqualTo("limits.tank_pressure");
        assertThat(Files.readString(folder.resolve("dunlin-limit.html"))).contains("What moves chamber pressure");
    }

    @Test
    void temperaturesWithoutCyclesAreBadInput() {
        Run run = Run.of("limit", "dunlin", "--temperatures", "700K,800K");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("they need --cycles");
    }
}
