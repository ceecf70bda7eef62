package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** How the launcher starts Java: a real one, with a small program in place of Penstock that says what it was given. */
@DisabledOnOs(OS.WINDOWS)
class LauncherRunTest {

    private static final String PROGRAM =
            """
            public class Program {
                public static void main(String[] arguments) throws Exception {
                    if (arguments[0].equals("read")) {
                        System.out.print(java.nio.file.Files.readString(java.nio.file.Path.of(arguments[1])));
                    } else {
                        System.out.println("{\\"mine\\": \\"" + System.getProperty("mine") + "\\"}");
                    }
                }
            }
            """;

    @TempDir
    Path folder;

    private Path home;

    @BeforeEach
    void builtCheckout() throws Exception {
        home = Files.createDirectories(folder.resolve("checkout"));
        Files.copy(Path.of("penstock"), home.resolve("penstock")).toFile().setExecutable(true);
        Files.createDirectories(home.resolve("src/main"));
        Files.createDirectories(home.resolve("cycles"));
        Files.writeString(home.resolve("pom.xml"), "");
        Files.writeString(home.resolve("cycles/any.toml"), "");
        Path target = Files.createDirectories(home.resolve("target"));
        Path source = Files.writeString(folder.resolve("Program.java"), PROGRAM);
        assertThat(ToolProvider.getSystemJavaCompiler()
                        .run(null, null, null, "-d", folder.toString(), source.toString()))
                .isZero();
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, "Program");
        try (OutputStream out = Files.newOutputStream(target.resolve("penstock.jar"));
                JarOutputStream jar = new JarOutputStream(out, manifest)) {
            jar.putNextEntry(new JarEntry("Program.class"));
            jar.write(Files.readAllBytes(folder.resolve("Program.class")));
        }
        Files.writeString(target.resolve("penstock.built"), System.getProperty("java.home") + "/bin/java\n");
    }

    private Run run(Path where, Map<String, String> environment, String... arguments) throws Exception {
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        ProcessBuilder builder = new ProcessBuilder(
                Stream.concat(Stream.of(where.resolve("penstock").toString()), Stream.of(arguments))
                        .toList());
        builder.environment().clear();
        builder.environment().put("PATH", "/usr/bin:/bin");
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().put("PENSTOCK_COOLPROP", "none");
        builder.environment().putAll(environment);
        Process process =
                builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Run(process.exitValue(), Files.readString(out), Files.readString(err));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path place = to.resolve(from.relativize(file));
                Files.copy(file, place, java.nio.file.StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
    }

    @Test
    void aCopiedCheckoutPrintsTheAnswerAndNothingElse() throws Exception {
        String answer = "{\"mine\": \"null\"}" + System.lineSeparator();
        Run first = run(home, Map.of(), "balance");
        assertThat(first.err()).isEqualTo("penstock: recording class data for fast starts (once) ...\n");
        assertThat(first.out()).isEqualTo(answer);
        assertThat(home.resolve("target/penstock.jsa")).isNotEmptyFile();
        Run second = run(home, Map.of(), "balance");
        assertThat(List.of(second.out(), second.err())).containsExactly(answer, "");

        Path elsewhere = folder.resolve("elsewhere");
        copy(home, elsewhere);
        Run moved = run(elsewhere, Map.of(), "balance");
        assertThat(moved.out()).isEqualTo(answer);
        assertThat(moved.err()).as("the archive heals itself").contains("recording class data");
        assertThat(run(elsewhere, Map.of(), "balance").err()).isEmpty();
    }

    @Test
    void anArchiveThatTheMachineRefusesIsNotToldOnStandardOutput() throws Exception {
        run(home, Map.of(), "balance");
        Path archive = home.resolve("target/penstock.jsa");
        byte[] bytes = Files.readAllBytes(archive);
        java.util.Arrays.fill(bytes, 0, 4096, (byte) 7);
        java.nio.file.attribute.FileTime time = Files.getLastModifiedTime(archive);
        assertThat(archive.toFile().setWritable(true)).isTrue();
        Files.write(archive, bytes);
        Files.setLastModifiedTime(archive, time);
        assertThat(run(home, Map.of(), "balance").out()).isEqualTo("{\"mine\": \"null\"}" + System.lineSeparator());
    }

    @Test
    void anArchiveOfAnotherJavaBehindTheSamePathIsMadeAnew() throws Exception {
        run(home, Map.of(), "balance");
        Path noted = home.resolve("target/penstock.jsa.for");
        Files.writeString(noted, Files.readString(noted).replace("JAVA_VERSION=", "JAVA_VERSION=11.0.2 not "));
        assertThat(run(home, Map.of(), "balance").err()).contains("recording class data");
        assertThat(run(home, Map.of(), "balance").err()).isEmpty();
    }

    @Test
    void draftsOfAKilledRunAreGoneAfterTheNext() throws Exception {
        Path target = home.resolve("target");
        Files.writeString(target.resolve("penstock.jsa.4711"), "half");
        Files.writeString(target.resolve("penstock.jsa.new"), "half");
        Files.createDirectories(home.resolve(".penstock/build.lock"));
        Files.writeString(home.resolve(".penstock/build.lock/owner"), "999999999\n");
        run(home, Map.of(), "balance");
        try (Stream<Path> left = Files.list(target)) {
            assertThat(left.map(f -> f.getFileName().toString()))
                    .containsExactlyInAnyOrder("penstock.jar", "penstock.built", "penstock.jsa", "penstock.jsa.for");
        }
        assertThat(home.resolve(".penstock/build.lock")).doesNotExist();
    }

    @Test
    void furtherOptionsForJavaAreTaken() throws Exception {
        Map<String, String> options = Map.of("PENSTOCK_JAVA_OPTIONS", "-Xmx200m -Dmine=yes -XX:+UseParallelGC");
        Run run = run(home, options, "balance");
        assertThat(run.out()).as(run.err()).isEqualTo("{\"mine\": \"yes\"}" + System.lineSeparator());
    }

    @Test
    void namesOutsideAsciiAreReadInAnyLocale() throws Exception {
        Path there = folder.resolve("Gerät");
        copy(home, there);
        Path file = Files.writeString(folder.resolve("Übung.toml"), "name = \"ü\"");
        for (Map<String, String> locale :
                List.of(Map.of("LC_ALL", "C"), Map.of("LANG", "POSIX"), Map.<String, String>of())) {
            Run run = run(there, locale, "read", file.toString());
            assertThat(run.code()).as(run.err()).isZero();
            assertThat(run.out().getBytes(StandardCharsets.UTF_8)).contains((byte) 'n');
        }
    }
}
