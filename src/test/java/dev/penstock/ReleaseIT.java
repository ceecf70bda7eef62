package dev.penstock;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The archive for people without Maven, unpacked somewhere else. */
@DisabledOnOs(OS.WINDOWS)
class ReleaseIT {

    @TempDir
    static Path folder;

    private static Path release;

    @BeforeAll
    static void unpack() throws IOException {
        Path zip = only(Path.of("target"), "penstock-.*\\.zip");
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                Path file = folder.resolve(entry.getName()).normalize();
                assertThat(file).startsWithRaw(folder);
                if (entry.isDirectory()) {
                    Files.createDirectories(file);
                } else {
                    Files.createDirectories(file.getParent());
                    Files.copy(in, file);
                }
            }
        }
        release = only(folder, "penstock-.*");
        // Java's reader of archives keeps no rights; unzip does.
        assertThat(release.resolve("penstock").toFile().setExecutable(true)).isTrue();
        Files.createDirectory(release.resolve(".penstock"));
        Files.createSymbolicLink(
                release.resolve(".penstock/coolprop"),
                Path.of(".penstock/coolprop").toAbsolutePath());
    }

    @Test
    void balancesWithoutMavenAndWithoutABuild() throws Exception {
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        ProcessBuilder builder = new ProcessBuilder(release.resolve("penstock").toString(), "balance", "heron");
        builder.directory(folder.toFile());
        builder.environment().remove("PENSTOCK_HOME");
        Process process =
                builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
        assertThat(process.waitFor(300, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(Files.readString(err)).isZero();
        assertThat(Files.readString(out)).startsWith("Heron: Gas generator").contains("closed to");
        assertThat(Files.readString(err)).doesNotContain("building");
        assertThat(release.resolve("target")).doesNotExist();
    }

    @Test
    void theNoticeNamesEveryLibraryThatIsShipped() throws IOException {
        String notice = Files.readString(release.resolve("NOTICE"));
        List<String> words = List.of(notice.split("[\\s,]+"));
        try (Stream<Path> libraries = Files.list(release.resolve("lib"))) {
            List<String> names = libraries
                    .map(file ->
                            file.getFileName().toString().replaceFirst("-[0-9][^-]*(-[a-z]+_[a-z0-9]+)?\\.jar$", ""))
                    .toList();
            assertThat(names).hasSizeGreaterThan(11);
            assertThat(words).containsAll(names);
        }
    }

    @Test
    void theArchiveHoldsDataLicenceAndNotice() throws IOException {
        Path jar = release.resolve("penstock.jar");
        List<String> names;
        try (java.util.zip.ZipFile archive = new java.util.zip.ZipFile(jar.toFile())) {
            names = archive.stream().map(ZipEntry::getName).toList();
            try (InputStream in = archive.getInputStream(archive.getEntry("META-INF/NOTICE"))) {
                assertThat(in.readAllBytes()).isEqualTo(Files.readAllBytes(release.resolve("NOTICE")));
            }
        }
        assertThat(names)
                .contains(
                        "META-INF/LICENSE",
                        "dev/penstock/data/fluids/oxygen.toml",
                        "dev/penstock/data/fetch_packages.py",
                        "dev/penstock/data/packages.lock")
                .doesNotContain("simplelogger.properties");
    }

    private static Path only(Path folder, String name) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> found = files.filter(
                            file -> file.getFileName().toString().matches(name))
                    .toList();
            assertThat(found).as(name + " in " + folder).hasSize(1);
            return found.get(0);
        }
    }
}
