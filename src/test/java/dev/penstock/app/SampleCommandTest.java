package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SampleCommandTest {

    private static final String PRESSURE = "engine.chamber_pressure=0.8..1.2MPa";
    private static final String RATIO = "propellants.mixture_ratio=1.5..1.8";

    @TempDir
    Path folder;

    private static Run sample(Path out, String... more) {
        List<String> arguments = new ArrayList<>(
                List.of("sample", "dunlin", "--vary", PRESSURE, "--vary", RATIO, "--out", out.toString()));
        arguments.addAll(Arrays.asList(more));
        return Run.of(arguments.toArray(String[]::new));
    }

    @Test
    void aClusterThatDoesNotAnswerIsOneSentence() throws IOException {
        int closed;
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            closed = socket.getLocalPort();
        }
        Path out = folder.resolve("out");
        Run run = sample(out, "--points", "5", "--on", "spark://127.0.0.1:" + closed);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err()).contains("nothing answers there");
        assertThat(out).doesNotExist();
    }

    @Test
    void eachRowSaysWhetherItKeepsTheConstraints() throws IOException {
        Path out = folder.resolve("out");
        Run run = sample(out, "--points", "12", "--subject-to", "engine.isp_vacuum_s>=309.6", "--json");
        assertThat(run.code()).isZero();
        JsonNode document = run.json();
        Run rows = Run.of(
                "sample",
                "dunlin",
                "--vary",
                PRESSURE,
                "--vary",
                RATIO,
                "--points",
                "12",
                "--subject-to",
                "engine.isp_vacuum_s>=309.6",
                "--out",
                out.toString(),
                "--csv");
        List<String> heading =
                List.of(rows.out().lines().findFirst().orElseThrow().split(","));
        int impulse = heading.indexOf("engine.isp_vacuum_s");
        int kept = heading.indexOf("constraints_kept");
        List<String[]> cells =
                rows.out().lines().skip(1).map(line -> line.split(",")).toList();
        assertThat(cells).hasSize(12).allSatisfy(row -> assertThat(Boolean.parseBoolean(row[kept]))
                .isEqualTo(Double.parseDouble(row[impulse]) >= 309.6));
        assertThat(document.get("constraints_kept").intValue())
                .isEqualTo((int)
                        cells.stream().filter(row -> row[kept].equals("true")).count())
                .isBetween(1, 11);
        assertThat(Files.readString(out.resolve("study.toml")))
                .contains("subject_to = [\"engine.isp_vacuum_s>=309.6\"]");
    }

    /** Every file of the folder but its lock, by its place. */
    private static Map<String, List<Byte>> files(Path out) throws IOException {
        try (Stream<Path> walk = Files.walk(out)) {
            Map<String, List<Byte>> files = new TreeMap<>();
            for (Path file : walk.filter(Files::isRegularFile).toList()) {
                if (!file.endsWith(".lock")) {
                    List<Byte> bytes = new ArrayList<>();
                    for (byte b : Files.readAllBytes(file)) {
                        bytes.add(b);
                    }
                    files.put(out.relativize(file).toString(), bytes);
                }
            }
            return files;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"sobol", "latin-hypercube", "grid"})
    void threadsDoNotShowInTheBits(String design) throws IOException {
        String[] asked = {"--points", "16", "--batch", "3", "--design", design, "--threads"};
        Path one = folder.resolve("one");
        Path two = folder.resolve("two");
        Path sixteen = folder.resolve("sixteen");
        assertThat(sample(one, with(asked, "1")).code()).isZero();
        assertThat(sample(two, with(asked, "2")).code()).isZero();
        assertThat(sample(sixteen, with(asked, "16")).code()).isZero();
        assertThat(files(one)).containsKey("batch=00005/_SUCCESS").hasSize(2 * 6 + 3);
        assertThat(files(two)).isEqualTo(files(one));
        assertThat(files(sixteen)).isEqualTo(files(one));
    }

    private static String[] with(String[] asked, String last) {
        return Stream.concat(Arrays.stream(asked), Stream.of(last)).toArray(String[]::new);
    }

    @Test
    void aRowIsWhatBalanceAnswers() {
        Run run = sample(folder.resolve("out"), "--points", "3", "--csv");
        List<String> lines = run.out().lines().toList();
        List<String> head = List.of(lines.get(0).split(",", -1));
        for (String line : lines.subList(1, 4)) {
            List<String> cells = List.of(line.split(",", -1));
            JsonNode balance = Run.of(
                            "balance",
                            "dunlin",
                            "--set",
                            "engine.chamber_pressure=" + cells.get(head.indexOf("engine.chamber_pressure")) + " Pa",
                            "--set",
                            "propellants.mixture_ratio=" + cells.get(head.indexOf("propellants.mixture_ratio")),
                            "--json")
                    .json();
            assertThat(cells.get(head.indexOf("engine.isp_vacuum_s")))
                    .isEqualTo(balance.at("/engine/isp_vacuum_s").asText());
            assertThat(cells.get(head.indexOf("engine.mass_kg")))
                    .isEqualTo(balance.at("/engine/mass_kg").asText());
        }
    }

    @Test
    void aRunGoesOnWhereOneWasKilled() throws Exception {
        Path whole = folder.resolve("whole");
        Path killed = folder.resolve("killed");
        String[] asked = {"--points", "90", "--batch", "3", "--threads", "2"};
        Process process = started(killed, asked);
        try {
            long end = System.nanoTime() + TimeUnit.MINUTES.toNanos(2);
            while (finished(killed) < 3 && process.isAlive() && System.nanoTime() < end) {
                Thread.sleep(5);
            }
        } finally {
            process.destroyForcibly().waitFor();
        }
        assertThat(finished(killed)).as("batches when it was killed").isBetween(3L, 29L);
        Run rest = Run.of("study", killed.resolve("study.toml").toString(), "--json");
        assertThat(rest.err()).isEmpty();
        assertThat(rest.json().get("complete").booleanValue()).isTrue();
        assertThat(rest.json().get("skipped_batches").intValue()).isGreaterThanOrEqualTo(3);
        assertThat(rest.json().get("rows").intValue()).isEqualTo(90);
        assertThat(sample(whole, asked).code()).isZero();
        Map<String, List<Byte>> after = files(killed);
        after.keySet().removeIf(name -> name.endsWith(".part"));
        assertThat(after).isEqualTo(files(whole));
    }

    private static Process started(Path out, String... asked) throws IOException {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "-Djava.awt.headless=true",
                CommandLineProgram.class.getName()));
        line.addAll(List.of("sample", "dunlin", "--vary", PRESSURE, "--vary", RATIO, "--out", out.toString()));
        line.addAll(Arrays.asList(asked));
        return new ProcessBuilder(line)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static long finished(Path out) throws IOException {
        if (!Files.isDirectory(out)) {
            return 0;
        }
        try (Stream<Path> batches = Files.list(out)) {
            return batches.filter(b -> Files.exists(b.resolve("_SUCCESS"))).count();
        }
    }

    @Test
    void aStudyFileIsTheSameCommand() throws IOException {
        Path file = folder.resolve("study.toml");
        Files.writeString(
                file,
                """
                name = "Dunlin"
                study = "sample"
                cases = ["%s"]
                vary = ["%s", "propellants.fuel=mmh,udmh"]
                points = 6
                batch = 4
                """
                        .formatted(Path.of("cycles/dunlin.toml").toAbsolutePath(), PRESSURE));
        Path out = folder.resolve("out");
        assertThat(Run.of("study", file.toString()).err()).contains("--out is missing");
        Run run = Run.of("study", file.toString(), "--out", out.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).startsWith("2 batches are new; the rows are in " + out);
        Run again = Run.of("study", file.toString(), "--out", out.toString());
        assertThat(again.out()).startsWith("2 batches were finished before, 0 batches are new");
        Run other = Run.of("study", file.toString(), "--out", out.toString(), "--csv");
        assertThat(other.out().lines()).hasSize(7);
        assertThat(other.out()).contains("mmh").contains("udmh");
    }

    @Test
    void theSummaryTellsPercentilesSharesAndReasons() {
        Path out = folder.resolve("out");
        Run.of(
                "sample",
                "heron",
                "--vary",
                "engine.chamber_pressure=6..90MPa:4",
                "--design",
                "grid",
                "--out",
                out.toString());
        Run text = Run.of("study", "summary", out.toString());
        assertThat(text.out())
                .startsWith("Heron: 4 of 4 points in 1 of 1 batches")
                .contains("specific impulse, vacuum");
        JsonNode json = Run.of("study", "summary", out.toString(), "--json").json();
        assertThat(json.get("rows").intValue()).isEqualTo(4);
        int failed = 0;
        for (JsonNode failure : json.get("failures")) {
            assertThat(failure.get("kind").textValue()).isNotEmpty();
            assertThat(failure.get("words").textValue()).contains("#");
            failed += failure.get("rows").intValue();
        }
        assertThat(failed).isPositive();
        assertThat(json.get("answered").intValue()).isEqualTo(4 - failed);
        JsonNode impulse = json.get("figures").get(0);
        assertThat(impulse.get("path").textValue()).isEqualTo("engine.isp_vacuum_s");
        assertThat(impulse.get("p50").doubleValue())
                .isBetween(impulse.get("p5").doubleValue(), impulse.get("p95").doubleValue());
        JsonNode frontier = Run.of(
                        "study",
                        "summary",
                        out.toString(),
                        "--maximise",
                        "engine.isp_vacuum_s",
                        "--minimise",
                        "engine.mass_kg",
                        "--json")
                .json()
                .get("frontier");
        assertThat(frontier).isNotEmpty();
        // At 6 MPa alone does it keep all limits.
        assertThat(frontier).hasSize(1);
        assertThat(frontier.get(0).get("engine.chamber_pressure").doubleValue()).isEqualTo(6e6);
    }

    @Test
    void aVehicleIsSampledWithItsEngines() {
        Run run = Run.of(
                "sample",
                "skerry",
                "--vary",
                "payload=1200..1800kg",
                "--points",
                "3",
                "--out",
                folder.resolve("out").toString(),
                "--json");
        assertThat(run.err()).isEmpty();
        assertThat(run.json().get("answered").intValue()).isEqualTo(3);
        assertThat(run.json().get("figures").findValuesAsText("path")).contains("start_mass_kg");
    }

    @Test
    void anotherStudyIsRefusedAndNothingIsWritten() throws IOException {
        Path out = folder.resolve("out");
        sample(out, "--points", "4");
        Map<String, List<Byte>> before = files(out);
        Run other = sample(out, "--points", "4", "--seed", "2");
        assertThat(other.code()).isEqualTo(2);
        assertThat(other.err())
                .contains("it holds another study (study.toml says seed = 1 where this one says seed = 2)");
        assertThat(files(out)).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--vary engine.nothing=1..2 --points 5 | no input of Dunlin has that path",
                "--vary engine.chamber_pressure=1..2MPa | --points is missing",
                "--vary engine.chamber_pressure=1..2MPa --points 99999999 | write how many points",
                "--vary engine.chamber_pressure=1..2MPa --points 5 --design star | allowed are sobol",
                "--vary engine.chamber_pressure=1..2MPa:3 --points 5 | only a grid counts its values",
                "--vary engine.chamber_pressure=1..2MPa --points 1 --design grid | a grid needs two values",
                "--points 5 | write what to vary",
                "--vary engine.chamber_pressure=1..2MPa --points 5 --figure engine.beauty | no figure has that path",
                "--vary engine.chamber_pressure=1..2MPa --points 5 --threads 0 | write 1 to 1024",
                "--vary engine.chamber_pressure=1..2MPa --points 5 --batch 0 | write 1 to 100000",
                "--vary engine.chamber_pressure=1..2MPa --points 5 --on moon | write spark://HOST:PORT, local[*]",
                "--vary engine.chamber_pressure=1..2MPa --points 5 --on local --conf a=b | write spark.KEY=VALUE",
                "--vary engine.chamber_pressure=1..2MPa --points 5 --conf spark.a=b | only with --on"
            })
    void whatCannotBeUsedIsOneSentence(String asked, String sentence) {
        Path out = folder.resolve("out");
        List<String> arguments = new ArrayList<>(List.of("sample", "dunlin", "--out", out.toString()));
        arguments.addAll(List.of(asked.strip().split(" ")));
        Run run = Run.of(arguments.toArray(String[]::new));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(sentence);
        assertThat(run.err().lines().collect(Collectors.toList())).hasSize(1);
        assertThat(out).doesNotExist();
    }
}
