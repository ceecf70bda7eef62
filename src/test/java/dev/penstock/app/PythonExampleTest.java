package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.input.HomeFolder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example in Python, with the standard library alone. */
class PythonExampleTest {

    @TempDir
    private Path folder;

    @Test
    void theExampleRunsAsItStands() throws Exception {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        ProcessBuilder builder = new ProcessBuilder(
                System.getProperty("penstock.python", "python3"),
                "-I",
                "-S",
                "docs/examples/engine_study.py",
                folder.toString());
        builder.environment()
                .put(
                        "PENSTOCK",
                        "'" + java + "' -XX:TieredStopAtLevel=1 '-Dpenstock.home=" + HomeFolder.find() + "' -cp '"
                                + System.getProperty("java.class.path") + "' dev.penstock.app.CommandLineProgram");
        Path output = folder.resolve("output.txt");
        Process process = builder.redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();
        assertThat(process.waitFor(280, TimeUnit.SECONDS)).isTrue();
        String text = Files.readString(output, StandardCharsets.UTF_8);
        assertThat(process.exitValue()).as(text).isZero();
        assertThat(text)
                .contains("thrust_N", "best of 6 balances", "-1 MPa: ", "wrote heron.parquet")
                .contains("pandas or pyarrow is not there", "matplotlib is not there");
        assertThat(Files.size(folder.resolve("heron.parquet"))).isPositive();
    }
}
