package dev.penstock;

import dev.penstock.errors.PropertyFailure;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Runs the script that the launcher runs, with the lock file of what it may fetch, from the archive. */
final class CoolPropFetch {

    private static final String SCRIPT = "fetch_packages.py";
    private static final String LOCK = "packages.lock";

    private CoolPropFetch() {}

    static void into(Path home) {
        String python = Optional.ofNullable(System.getenv("PENSTOCK_PYTHON"))
                .filter(name -> !name.isBlank())
                .orElse("python3");
        try {
            Path folder = Files.createTempDirectory("penstock-fetch");
            Path output = folder.resolve("output.txt");
            Path script = folder.resolve(SCRIPT);
            Path lock = folder.resolve(LOCK);
            try {
                Files.write(script, data(SCRIPT));
                Files.write(lock, data(LOCK));
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
                for (Path made : List.of(output, script, lock, folder)) {
                    Files.deleteIfExists(made);
                }
            }
        } catch (IOException e) {
            throw failure(python + " cannot be run (" + e.getMessage()
                    + "); install Python 3 with pip, or name an interpreter in PENSTOCK_PYTHON");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw failure("the fetch was interrupted");
        }
    }

    private static byte[] data(String name) throws IOException {
        try (InputStream in = CoolPropFetch.class.getResourceAsStream("data/" + name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is not on the class path");
            }
            return in.readAllBytes();
        }
    }

    private static PropertyFailure failure(String reason) {
        return new PropertyFailure("any fluid of CoolProp", "any input", reason);
    }
}
