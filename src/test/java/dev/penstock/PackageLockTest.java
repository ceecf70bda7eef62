package dev.penstock;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script that fetches wheels, with wheels of a folder and a lock file of its own: what is not locked does not come in. */
class PackageLockTest {

    private static final String COOLPROP = "coolprop-8.0.0-py3-none-any.whl";
    private static final String NUMPY = "numpy-2.4.6-py3-none-any.whl";
    private static final String FOREIGN = "numpy-2.4.6-cp311-cp311-win_arm64.whl";
    private static final String NONE = "0".repeat(64);

    @TempDir
    Path folder;

    @BeforeEach
    void wheels() throws IOException {
        Files.createDirectories(folder.resolve("wheels"));
        Files.copy(Path.of("src/build/fetch_packages.py"), folder.resolve("fetch_packages.py"));
        wheel("coolprop", "8.0.0", COOLPROP);
        wheel("numpy", "2.4.6", NUMPY);
    }

    @Test
    void wheelsWithTheirHashesAreInstalled() throws Exception {
        lock(Map.of(COOLPROP, digest(COOLPROP), NUMPY, digest(NUMPY)));
        Result result = fetch(folder.resolve("wheels"));
        assertThat(result.code).as(result.text).isZero();
        assertThat(result.text).doesNotContain("unchecked");
        assertThat(folder.resolve("into/coolprop/coolprop/__init__.py")).exists();
        assertThat(folder.resolve("into/coolprop/numpy/__init__.py")).exists();
        assertThat(folder.resolve("into/coolprop/VERSION")).content().startsWith("8.0.0 python");
    }

    @Test
    void aWheelWithAnotherHashIsRefused() throws Exception {
        lock(Map.of(COOLPROP, digest(COOLPROP), NUMPY, NONE));
        Result result = fetch(folder.resolve("wheels"));
        assertThat(result.code).isEqualTo(1);
        assertThat(result.text)
                .contains("another SHA-256 than src/build/packages.lock", NONE, digest(NUMPY))
                .doesNotContain("Traceback");
        assertThat(folder.resolve("into/coolprop")).doesNotExist();
    }

    @Test
    void anotherMachineIsServedByVersionAndToldSoOnce() throws Exception {
        lock(Map.of(COOLPROP, digest(COOLPROP), FOREIGN, NONE));
        Result result = fetch(folder.resolve("wheels"));
        assertThat(result.code).as(result.text).isZero();
        assertThat(result.text).containsOnlyOnce("unchecked").contains("numpy==2.4.6 by version");
        assertThat(folder.resolve("into/coolprop/numpy/__init__.py")).exists();
    }

    @Test
    void anotherVersionThanTheLocksIsNotTaken() throws Exception {
        lock(Map.of(COOLPROP.replace("8.0.0", "8.0.1"), NONE, NUMPY, digest(NUMPY)));
        Result result = fetch(folder.resolve("wheels"));
        assertThat(result.code).isEqualTo(1);
        assertThat(result.text).contains("coolprop 8.0.1", "PENSTOCK_WHEELS");
        assertThat(folder.resolve("into/coolprop")).doesNotExist();
    }

    @Test
    void aFolderOfWheelsThatIsNoneIsNamed() throws Exception {
        lock(Map.of(COOLPROP, digest(COOLPROP), NUMPY, digest(NUMPY)));
        Result result = fetch(folder.resolve("absent"));
        assertThat(result.code).isEqualTo(1);
        assertThat(result.text).contains("PENSTOCK_WHEELS is " + folder.resolve("absent"));
    }

    @Test
    void theLockPinsEverythingThatIsFetched() throws IOException {
        assertThat(Path.of("src/build/packages.lock"))
                .content()
                .contains("  coolprop-8", "  numpy-", "  cantera-", "  ruamel_yaml-", "  typing_extensions-");
    }

    private record Result(int code, String text) {}

    private Result fetch(Path wheels) throws IOException, InterruptedException {
        Path output = folder.resolve("output.txt");
        String python = Optional.ofNullable(System.getenv("PENSTOCK_PYTHON")).orElse("python3");
        ProcessBuilder builder = new ProcessBuilder(
                        python, "-E", folder.resolve("fetch_packages.py").toString(), into().toString(), "coolprop")
                .redirectErrorStream(true)
                .redirectOutput(output.toFile());
        builder.environment().put("PENSTOCK_WHEELS", wheels.toString());
        Process process = builder.start();
        assertThat(process.waitFor(240, TimeUnit.SECONDS)).isTrue();
        return new Result(process.exitValue(), Files.readString(output));
    }

    private Path into() {
        return folder.resolve("into");
    }

    private void lock(Map<String, String> hashes) throws IOException {
        StringBuilder text = new StringBuilder("# a lock of its own\n");
        hashes.forEach(
                (file, hash) -> text.append(hash).append("  ").append(file).append('\n'));
        Files.writeString(folder.resolve("packages.lock"), text);
    }

    private String digest(String file) throws IOException, NoSuchAlgorithmException {
        byte[] bytes = Files.readAllBytes(folder.resolve("wheels").resolve(file));
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    }

    /** The least that pip takes for a wheel. */
    private void wheel(String name, String version, String file) throws IOException {
        String info = name + "-" + version + ".dist-info/";
        try (OutputStream out = Files.newOutputStream(folder.resolve("wheels").resolve(file));
                ZipOutputStream zip = new ZipOutputStream(out)) {
            entry(zip, name + "/__init__.py", "");
            entry(zip, info + "METADATA", "Metadata-Version: 2.1\nName: " + name + "\nVersion: " + version + "\n");
            entry(
                    zip,
                    info + "WHEEL",
                    "Wheel-Version: 1.0\nGenerator: test\nRoot-Is-Purelib: true\nTag: py3-none-any\n");
            entry(
                    zip,
                    info + "RECORD",
                    name + "/__init__.py,,\n" + info + "METADATA,,\n" + info + "WHEEL,,\n" + info + "RECORD,,\n");
        }
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }
}
