package dev.penstock;

import dev.penstock.errors.PropertyFailure;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Runs the script that the launcher runs, from the archive. */
final class CoolPropFetch {

    private static final String SCRIPT = "data/fetch_packages.py";

    private CoolPropFetch() {}

    static void into(Path home) {
        String python = Optional.ofNullable(System.getenv("PENSTOCK_PYTHON"))
                .filter(name -> !name.isBlank())
                .orElse("python3");
        try {
            Path output = Files.createTempFile("penstock-fetch", ".txt");
            Path script = Files.createTempFile("penstock-fetch", ".py");
            try {
                Files.write(script, script());
                Process process = new ProcessBuilder(
                                python,
                                "-E",
                                script.toString(),
                                home.resolve(".penstock").toString(),
                                "coolprop")
                        .redirectErrorStream(true)
                        .redirectOutput(output.toFile())
                        .start();
                int code = process.waitFor();
                if (code != 0) {
                    throw failure(
                            Files.readString(output, StandardCharsets.UTF_8).strip());
                }
            } finally {
                Files.deleteIfExists(output);
                Files.deleteIfExists(script);
            }
        } catch (IOException e) {
            throw failure(python + " cannot be run (" + e.getMessage()
                    + "); install Python 3 with pip, or name an interpreter in PENSTOCK_PYTHON");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw failure("the fetch was interrupted");
        }
    }

    private static byte[] script() throws IOException {
        try (InputStream in = CoolPropFetch.class.getResourceAsStream(SCRIPT)) {
            if (in == null) {
                throw new IllegalStateException(SCRIPT + " is not on the class path");
            }
            return in.readAllBytes();
        }
    }

    private static PropertyFailure failure(String reason) {
        return new PropertyFailure("any fluid of CoolProp", "any input", reason);
    }
}
