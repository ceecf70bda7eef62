package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.penstock.app.console.ExitCode;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.space.StudyCase;
import dev.penstock.study.space.StudySpace;
import dev.penstock.study.space.Variable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What start mass and payload may turn out to be. */
class VehicleUncertaintyTest {

    @TempDir
    private Path folder;

    private JsonNode sampled(String open) throws IOException {
        Run run = Run.of("size", guess(open).toString(), "--uncertainty", "64", "--json");
        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.OK);
        return run.document().get("uncertainty");
    }

    private Path guess(String open) throws IOException {
        Path file = folder.resolve("guess.toml");
        Files.writeString(
                file,
                """
                name = "First guess"
                %s
                [mission]
                orbit_altitude = "200 km"
                latitude = "12 deg"
                [[stage]]
                isp = "310 s"
                thrust = "900 kN"
                engines = 2
                [[stage]]
                isp = "345 s"
                thrust = "180 kN"
                engines = 1
                """
                        .formatted(open));
        return file;
    }

    /** The same doubts are inputs with a spread, which studies vary. */
    @Test
    void aStudyVariesTheSameInputs() throws IOException {
        EngineRuns runs = new EngineRuns(HomeFolder.find(), FluidLibrary.open(HomeFolder.find()));
        StudySpace space = StudyCase.open(runs, guess("payload = \"2 t\""), Map.of())
                .paths()
                .space(List.of("spreads"));
        assertThat(space.variables())
                .extracting(Variable::path)
                .containsExactlyInAnyOrder(
                        "mission.drag_factor",
                        "mission.loss_factor",
                        "stage[0].allowances.residual",
                        "stage[0].allowances.heat_leak",
                        "stage[0].dry_mass.factor",
                        "stage[1].allowances.residual",
                        "stage[1].allowances.heat_leak",
                        "stage[1].dry_mass.factor");
    }

    /** A study of the vehicle may ask for percentiles. */
    @Test
    void aStudyTellsTheSameBand() throws IOException {
        JsonNode told = sampled("payload = \"2 t\"");
        Path study = folder.resolve("study.toml");
        Files.writeString(study, "name = \"a\"\nstudy = \"vehicle\"\ncases = [\"guess.toml\"]\nsamples = 64\n");
        assertThat(Run.of("study", study.toString(), "--json").document().get("uncertainty"))
                .isEqualTo(told);
    }

    /** What a file states is exact. */
    @Test
    void whatIsStatedIsNoDoubt() throws IOException {
        Path file = guess("payload = \"2 t\"");
        Files.writeString(
                file,
                Files.readString(file)
                        .replace("latitude = \"12 deg\"", "latitude = \"12 deg\"\ndrag_factor = 1.5\nloss_factor = 1"));
        Run run = Run.of("size", file.toString(), "--uncertainty", "20", "--json");
        assertThat(run.document().at("/uncertainty/drivers/start_mass_kg")).hasSize(3);
        assertThat(run.out()).doesNotContain("other losses of the ascent (");
    }

    @Test
    void aHeavierStageMakesAHeavierVehicle() throws IOException {
        JsonNode spread = sampled("payload = \"2 t\"");
        JsonNode startMass = spread.at("/figures/start_mass_kg");
        assertThat(spread.get("closed").intValue()).isEqualTo(64);
        assertThat(startMass.get("p5").doubleValue())
                .isLessThan(startMass.get("likely").doubleValue());
        assertThat(startMass.get("p95").doubleValue())
                .isGreaterThan(startMass.get("likely").doubleValue());
        double span = startMass.get("p95").doubleValue() - startMass.get("p5").doubleValue();
        double longest = Double.POSITIVE_INFINITY;
        for (JsonNode driver : spread.at("/drivers/start_mass_kg")) {
            double length = driver.get("high").doubleValue() - driver.get("low").doubleValue();
            assertThat(length).as(driver.toString()).isBetween(0.0, Math.min(longest, span));
            longest = length;
        }
        assertThat(spread.at("/drivers/start_mass_kg")).hasSize(5);
    }

    /** All of it again gives the same bits, and where the start mass is given the payload is in doubt. */
    @Test
    void theSameBitsAtEveryRun() throws IOException {
        JsonNode spread = sampled("start_mass = \"100 t\"");
        assertThat(spread.at("/figures/payload_kg/p5").doubleValue())
                .isLessThan(spread.at("/figures/payload_kg/p95").doubleValue());
        assertThat(sampled("start_mass = \"100 t\"")).isEqualTo(spread);
    }

    @Test
    void theInputsOfTheEngineAreSampledToo() {
        Run run = Run.of("size", "gannet", "--uncertainty", "20");
        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.OK);
        assertThat(run.out()).contains("uncertain inputs of Gannet", "samples close");
    }

    @Test
    void aComparisonOfReturnsIsNotSampled() {
        Run run = Run.of("size", "skerry", "--reuse", "--uncertainty", "20");
        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(run.err()).contains("--uncertainty").contains("--reuse");
    }

    @Test
    void aComparisonOfReturnsWritesNoPageOfOneVehicle() {
        Run run = Run.of("size", "skerry", "--reuse", "--report", "x", "--figures", "y");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("--report is x", "--figures is y", "cannot go with --reuse");
    }
}
