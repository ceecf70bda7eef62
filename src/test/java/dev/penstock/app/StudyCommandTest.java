package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StudyCommandTest {

    @TempDir
    Path folder;

    private String study(String text) throws IOException {
        Files.copy(Path.of("cycles/dunlin.toml"), folder.resolve("dunlin.toml"));
        Files.copy(Path.of("cycles/heron.toml"), folder.resolve("heron.toml"));
        Path studies = Files.createDirectories(folder.resolve("studies"));
        return Files.writeString(studies.resolve("s.toml"), text).toString();
    }

    /** Identity: a study answers with the numbers of the command that it stands for. */
    @Test
    void aSweepIsDoneAgain() throws IOException {
        String file = study("name = \"s\"\nstudy = \"sweep\"\ncases = [\"../dunlin.toml\"]\n"
                + "vary = [\"engine.chamber_pressure=0.9..1.1MPa:2\"]\nsamples = 3\n"
                + "[set]\n\"propellants.mixture_ratio\" = \"1.7\"\n");
        Run study = Run.of("study", file, "--json");
        Run sweep = Run.of(
                "sweep",
                "dunlin",
                "--vary",
                "engine.chamber_pressure=0.9..1.1MPa:2",
                "--samples",
                "3",
                "--set",
                "propellants.mixture_ratio=1.7",
                "--json");
        assertThat(study.code()).isZero();
        assertThat(study.json()).isEqualTo(sweep.json());
        assertThat(study.json().at("/points/0/band/samples").asInt()).isEqualTo(3);
    }

    @Test
    void conceptsAreComparedAgain() throws IOException {
        String file = study("name = \"s\"\nstudy = \"compare\"\ncases = [\"../dunlin.toml\", \"../heron.toml\"]\n");
        assertThat(Run.of("study", file, "--json").json())
                .isEqualTo(Run.of("compare", folder + "/dunlin.toml", folder + "/heron.toml", "--json")
                        .json());
    }

    @Test
    void everyStudyHasATable() throws IOException {
        String file = study("name = \"s\"\nstudy = \"compare\"\ncases = [\"../dunlin.toml\", \"../heron.toml\"]\n");
        assertThat(Run.of("study", file, "--csv").out())
                .startsWith("name,file,")
                .hasLineCount(3)
                .isEqualTo(Run.of("compare", folder + "/dunlin.toml", folder + "/heron.toml", "--csv")
                        .out());
        assertThat(Run.of("study", file, "--rows", "concepts").err()).contains("it needs --csv");
    }

    @Test
    void aCaseThatIsNotThereIsNamed() throws IOException {
        Run run = Run.of("study", study("name = \"s\"\nstudy = \"compare\"\ncases = [\"../gone.toml\"]\n"));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("gone.toml");
    }

    @Test
    void theDemoStudiesAreWellFormed() throws IOException {
        try (var files = Files.list(Path.of("cycles/studies"))) {
            assertThat(files.toList()).isNotEmpty().allSatisfy(file -> {
                dev.penstock.study.StudyFile study = dev.penstock.study.StudyFile.read(file);
                assertThat(study.cases())
                        .allSatisfy(c -> assertThat(file.getParent().resolve(c)).exists());
            });
        }
    }
}
