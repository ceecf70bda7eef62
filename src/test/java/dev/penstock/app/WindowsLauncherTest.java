package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The logic of {@code penstock.cmd} under Wine's command interpreter, with programs in place of Java, Maven, Python and
 * PowerShell that write down how they were called. It shows what the launcher calls and says, and nothing of Penstock on
 * Windows; Wine has no findstr, so that the lines it would show are not asked for. Needs Wine and a C compiler for Windows (Debian: wine64, gcc-mingw-w64-x86-64).
 */
class WindowsLauncherTest {

    private static final String JAVA_17 = "openjdk version \"17.0.9\" 2023-10-17";

    @TempDir
    static Path machine;

    private static Path stub;
    private final Map<String, String> environment = new TreeMap<>();

    @TempDir
    Path folder;

    private Path home;
    private Path bin;
    private Path calls;

    @BeforeAll
    static void windows() throws Exception {
        assumeTrue(
                run(List.of("sh", "-c", "command -v wine && command -v x86_64-w64-mingw32-gcc"), Map.of(), machine)
                                .code()
                        == 0,
                "needs wine and x86_64-w64-mingw32-gcc");
        stub = machine.resolve("stub.exe");
        Path source = Path.of("src/test/resources/launcher/stub.c").toAbsolutePath();
        Run compiled =
                run(List.of("x86_64-w64-mingw32-gcc", "-o", stub.toString(), source.toString()), Map.of(), machine);
        assertThat(compiled.code()).as(compiled.err()).isZero();
        Run wine = run(List.of("wine", "cmd", "/c", "echo ready"), wine(), machine);
        assumeTrue(wine.out().contains("ready"), "needs a wine that runs: " + wine.err());
    }

    @AfterAll
    static void off() throws Exception {
        if (stub != null) {
            run(List.of("sh", "-c", "(wineserver -k || /usr/lib/wine/wineserver -k); rm -rf prefix"), wine(), machine);
        }
    }

    private static Map<String, String> wine() {
        return Map.of(
                "WINEPREFIX",
                machine.resolve("prefix").toString(),
                "WINEDEBUG",
                "-all",
                "WINEDLLOVERRIDES",
                "mscoree,mshtml=");
    }

    private static Run run(List<String> command, Map<String, String> environment, Path folder) throws Exception {
        Path out = Files.createTempFile(machine, "out", ".txt");
        Path err = Files.createTempFile(machine, "err", ".txt");
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        List.of("JAVA_HOME", "PENSTOCK_JAVA_OPTIONS", "PENSTOCK_PYTHON", "PENSTOCK_COOLPROP")
                .forEach(builder.environment()::remove);
        builder.environment().putAll(environment);
        builder.redirectOutput(out.toFile()).redirectError(err.toFile());
        Process process = builder.start();
        assertThat(process.waitFor(180, TimeUnit.SECONDS)).isTrue();
        return new Run(process.exitValue(), Files.readString(out), Files.readString(err));
    }

    @BeforeEach
    void checkout() throws Exception {
        home = Files.createDirectories(folder.resolve("some where"));
        bin = Files.createDirectories(folder.resolve("bin"));
        calls = Files.createFile(folder.resolve("calls.txt"));
        Files.copy(Path.of("penstock.cmd"), home.resolve("penstock.cmd"));
        Files.createDirectories(home.resolve("src/main"));
        Files.createFile(home.resolve("pom.xml"));
        for (String program : List.of("java", "python", "powershell", "maven")) {
            Files.copy(stub, bin.resolve(program + ".exe"));
        }
        Files.writeString(
                bin.resolve("mvn.cmd"),
                "@if \"%1\"==\"-v\" exit /b 0\r\n@maven.exe %*\r\n@if errorlevel 1 exit /b 1\r\n@echo built>target\\penstock-0.1.0.jar\r\n"
                        + "@echo sources>target\\penstock-0.1.0-sources.jar\r\n@exit /b 0\r\n");
        environment.put("STUB_java", JAVA_17);
        environment.put("STUB_powershell", "fresh");
    }

    private Run launch(String... arguments) throws Exception {
        environment.putAll(wine());
        environment.put("STUB_CALLS", calls.toString());
        environment.put("WINEPATH", "Z:" + bin.toString().replace('/', '\\'));
        List<String> command = new ArrayList<>(List.of("wine", "cmd", "/c", "penstock.cmd"));
        command.addAll(List.of(arguments));
        return run(command, environment, home);
    }

    private List<String> builds() throws Exception {
        return calls("maven").stream().filter(call -> call.contains("compile")).toList();
    }

    private List<String> calls(String program) throws Exception {
        return Files.readAllLines(calls).stream()
                .filter(call -> call.startsWith(program + "|"))
                .toList();
    }

    @Test
    void theFirstRunFetchesBuildsAndStarts() throws Exception {
        Run run = launch("balance", "heron one", "--json");
        assertThat(run.code()).as(run.out() + run.err()).isZero();
        assertThat(calls("python").get(calls("python").size() - 1))
                .contains("fetch_packages.py")
                .endsWith("\\.penstock|coolprop");
        assertThat(builds()).hasSize(1).first().asString().contains("|jar:jar|");
        assertThat(Files.readString(home.resolve("target/penstock.jar"))).startsWith("built");
        assertThat(calls("java").get(calls("java").size() - 1))
                .contains("|-XX:+UseSerialGC|", "|-Dpenstock.home=", "some where|")
                .endsWith("\\target\\penstock.jar|balance|heron one|--json");
    }

    @Test
    void itBuildsAgainOnlyWhenSourcesHaveChanged() throws Exception {
        launch("demo");
        launch("demo");
        assertThat(builds()).hasSize(1);
        environment.put("STUB_powershell", "stale");
        launch("demo");
        assertThat(builds()).hasSize(2);
    }

    @Test
    void theExitCodeIsPassedOn() throws Exception {
        environment.put("STUB_java_EXIT", "2");
        assertThat(launch("balance", "none").code()).isEqualTo(2);
    }

    @Test
    void anUnpackedReleaseIsNotBuilt() throws Exception {
        Files.delete(home.resolve("src/main"));
        Files.createFile(home.resolve("penstock.jar"));
        assertThat(launch("demo").code()).isZero();
        assertThat(builds()).isEmpty();
        assertThat(calls("java").get(1)).endsWith("some where\\penstock.jar|demo");
    }

    @Test
    void optionsForJavaArePassedAndChooseTheCollector() throws Exception {
        environment.put("PENSTOCK_JAVA_OPTIONS", "-Xmx1g -XX:+UseParallelGC");
        launch("demo");
        assertThat(calls("java").get(calls("java").size() - 1))
                .contains("|-Xmx1g|-XX:+UseParallelGC|")
                .doesNotContain("UseSerialGC")
                .contains("|-XX:TieredStopAtLevel=1|");
    }

    @Test
    void longCommandsHaveBothCompilers() throws Exception {
        launch("study", "one.toml");
        assertThat(calls("java").get(calls("java").size() - 1)).contains("|-XX:TieredStopAtLevel=4|");
        launch("answer");
        assertThat(calls("java").get(calls("java").size() - 1))
                .contains("|-XX:TieredStopAtLevel=1|-XX:CompileThresholdScaling=0.3|");
    }

    @Test
    void whatIsMissingIsSaidBeforeAnythingIsBuilt() throws Exception {
        Files.delete(bin.resolve("mvn.cmd"));
        Run withoutMaven = launch("demo");
        assertThat(withoutMaven.code()).isEqualTo(1);
        assertThat(withoutMaven.err()).contains("Maven was not found");
        environment.put("STUB_java", "openjdk version \"11.0.2\" 2019-01-15");
        Run oldJava = launch("demo");
        assertThat(oldJava.code()).isEqualTo(1);
        assertThat(oldJava.err()).contains("java is Java 11; install a JDK, version 17 or later");
        Files.delete(bin.resolve("java.exe"));
        Run withoutJava = launch("demo");
        assertThat(withoutJava.code()).isEqualTo(1);
        assertThat(withoutJava.err()).contains("Java was not found");
    }

    @Test
    void aFailedFetchAndAFailedBuildEndIt() throws Exception {
        environment.put("STUB_maven_EXIT", "1");
        Run build = launch("demo");
        assertThat(build.code()).isEqualTo(1);
        assertThat(build.err()).contains("the build failed; everything that Maven said is in");
        assertThat(home.resolve("target/penstock.built")).doesNotExist();
        environment.put("STUB_python_EXIT", "1");
        Run fetch = launch("demo");
        assertThat(fetch.code()).isEqualTo(1);
        assertThat(fetch.err()).contains("py does not run; install Python 3 with pip");
    }
}
