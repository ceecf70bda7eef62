package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JudgeCommandTest {

    @TempDir
    Path folder;

    private Path claims(String text) throws Exception {
        Path file = folder.resolve("claims.toml");
        Files.writeString(
                file,
                """
                name = "Test"
                cycle = "pressure-fed"
                [propellants]
                oxidizer = "oxygen"
                fuel = "methane"
                [given]
                "engine.thrust_vacuum" = "40 kN"
                """
                        + text);
        return file;
    }

    /** Pressure-fed methane with 365 s at 60 to 1: told as a contradiction, which is an answer. */
    @Test
    void aContradictionIsAnAnswerWithItsDocumentPageAndConcept() throws Exception {
        Path concept = folder.resolve("best.toml");
        Run run = Run.of(
                "judge",
                "shearwater",
                "--samples",
                "16",
                "--json",
                "--report",
                folder.toString(),
                "--write-concept",
                concept.toString());
        assertThat(run.code()).as(run.err()).isZero();
        AnswerSchemaTest.hold("judge", List.of(run.document()));
        JsonNode json = run.json();
        assertThat(json.get("verdict").asText()).isEqualTo("contradicted");
        for (String key : new String[] {
            "cycles", "claims", "unknowns", "figures", "next_facts", "effective_samples", "evaluations", "seed"
        }) {
            assertThat(json.has(key)).as(key).isTrue();
        }
        JsonNode claim = json.get("claims").get(0);
        assertThat(claim.get("path").asText()).isEqualTo("engine.isp_vacuum");
        assertThat(claim.get("value").asDouble()).isEqualTo(365);
        assertThat(claim.get("tension").asDouble()).isGreaterThan(3);
        assertThat(claim.get("predicted_p05").asDouble())
                .isLessThan(claim.get("predicted_p95").asDouble());
        assertThat(json.get("cycles").get(0).get("probability").asDouble()).isEqualTo(1);
        DemoCommandTest.nothingFromOutside(folder.resolve("shearwater-as-told-judged.html"));
        Run balanced = Run.of("balance", concept.toString(), "--json");
        assertThat(balanced.code()).as(balanced.err()).isZero();
    }

    @Test
    void whatNoEngineHasHasNoSolution() throws Exception {
        Path file = claims("[claims.\"engine.isp_vacuum\"]\nat_least = \"500 s\"\n");
        Run run = Run.of("judge", file.toString(), "--samples", "16");
        assertThat(run.code()).as(run.err()).isEqualTo(1);
        assertThat(run.out())
                .contains("impossible")
                .contains("at least 500.0 s")
                .contains("the nearest ha");
    }

    @Test
    void aWrongFileIsTold() throws Exception {
        Path file = claims("[claims.\"engine.isp_vacum\"]\nvalue = \"300 s\"\n");
        Run run = Run.of("judge", file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("claims.toml").contains("did you mean \"engine.isp_vacuum\"?");
        assertThat(Run.of("judge", "no-such-claims").code()).isEqualTo(2);
        assertThat(Run.of("judge", "shearwater", "--samples", "3").code()).isEqualTo(2);
    }
}
