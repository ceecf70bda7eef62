package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What the launcher says on a machine that lacks something: it is run with a search path that has only what a test allows. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {

    private static final List<String> TOOLS =
            List.of("sh", "dirname", "readlink", "sed", "head", "cat", "find", "mkdir", "rm", "sleep", "printf", "ls");

    @TempDir
    Path folder;

    private Path project() throws Exception {
        Path home = Files.createDirectories(folder.resolve("some where"));
        Path launcher = Files.copy(Path.of("penstock"), home.resolve("penstock"));
        launcher.toFile().setExecutable(true);
        Files.createDirectories(home.resolve("src/main"));
        return Files.createSymbolicLink(folder.resolve("link"), launcher);
    }

    private Path tools() throws Exception {
        Path bin = Files.createDirectories(folder.resolve("bin"));
        for (String tool : TOOLS) {
            for (String place : List.of("/bin/", "/usr/bin/")) {
                if (Files.exists(Path.of(place + tool)) && !Files.exists(bin.resolve(tool))) {
                    Files.createSymbolicLink(bin.resolve(tool), Path.of(place + tool));
                }
            }
        }
        return bin;
    }

    private static void program(Path bin, String name, String body) throws Exception {
        Path file = Files.writeString(bin.resolve(name), "#!/bin/sh\n" + body + "\n");
        file.toFile().setExecutable(true);
    }

    private Run run(Path launcher, Path bin) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(launcher.toString(), "--version");
        builder.directory(folder.toFile());
        builder.environment().clear();
        builder.environment().put("PATH", bin.toString());
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        builder.redirectOutput(out.toFile()).redirectError(err.toFile());
        Process process = builder.start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Run(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }

    @Test
    void withoutJavaItSaysWhatToInstall() throws Exception {
        Run run = run(project(), tools());
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err())
                .isEqualTo("penstock: Java was not found; install a JDK, version 17 or later, or set JAVA_HOME\n");
    }

    @Test
    void withAnOldJavaItSaysWhich() throws Exception {
        Path bin = tools();
        program(bin, "java", "echo 'openjdk version \"11.0.2\" 2019-01-15' >&2");
        Run run = run(project(), bin);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err())
                .isEqualTo("penstock: " + bin
                        + "/java is Java 11; install a JDK, version 17 or later, or set JAVA_HOME to" + " one\n");
    }

    @Test
    void withoutACompilerItSaysSo() throws Exception {
        Path bin = tools();
        program(bin, "java", "echo 'openjdk version \"17.0.1\" 2021-10-19' >&2");
        assertThat(run(project(), bin).err()).contains("comes without a compiler; install a JDK");
    }

    @Test
    void withoutMavenItSaysWhatToInstall() throws Exception {
        Path bin = tools();
        program(bin, "java", "echo 'openjdk version \"21\" 2023-09-19' >&2");
        program(bin, "javac", "exit 0");
        assertThat(run(project(), bin).err())
                .isEqualTo("penstock: Maven was not found; install Maven 3.8 or later so that mvn is on the PATH\n");
    }

    @Test
    void aFailedBuildShowsTheErrorsAndLeavesNoLock() throws Exception {
        Path bin = tools();
        program(bin, "java", "echo 'openjdk version \"21\" 2023-09-19' >&2");
        program(bin, "javac", "exit 0");
        program(bin, "python3", "exit 0");
        program(
                bin,
                "mvn",
                "[ \"$1\" = -v ] && echo 'Apache Maven 3.9.9' && exit; echo '[INFO] noise'; echo '[ERROR] A.java:[1,2] broken'; exit 1");
        Run run = run(project(), bin);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err())
                .contains("building", "[ERROR] A.java:[1,2] broken", "the build failed")
                .doesNotContain("noise");
        assertThat(folder.resolve("some where/.penstock/build.lock")).doesNotExist();
    }
}
