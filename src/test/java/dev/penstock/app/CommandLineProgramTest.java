package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Failures;
import dev.penstock.app.console.PlainOutput;
import dev.penstock.app.console.Session;
import dev.penstock.app.console.UnpackedPages;
import dev.penstock.errors.ConservationViolated;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.NotConverged;
import dev.penstock.input.HomeFolder;
import java.io.ByteArrayOutputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class CommandLineProgramTest {

    @TestFactory
    List<DynamicTest> everyCommandHasHelp() {
        return List.of(CommandLineProgram.class.getAnnotation(Command.class).subcommands()).stream()
                .map(kind -> kind.getAnnotation(Command.class).name())
                .map(name -> DynamicTest.dynamicTest(name, () -> {
                    Run run = Run.of(name, "--help");
                    assertThat(run.code()).isZero();
                    assertThat(run.out()).startsWith("Usage: penstock " + name).contains("--json", "--verbose");
                    assertThat(run.err()).isEmpty();
                }))
                .toList();
    }

    @Test
    void withoutACommandTheHelpIsShown() {
        Run run = Run.of();
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith("Usage: penstock");
    }

    @Test
    void anUnknownCommandIsBadInput() {
        Run run = Run.of("combst");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEqualTo("penstock: command combst is not known; did you mean combust?\n");
    }

    @Test
    void anUnknownOptionIsBadInput() {
        Run run = Run.of("fluid", "oxygen", "--presure", "1 bar");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEqualTo("penstock: option --presure is not known; did you mean --pressure?\n");
    }

    @Test
    void anOptionWithoutItsValueIsBadInput() {
        Run run = Run.of("fluid", "oxygen", "--pressure");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.problems()).hasSize(1);
        assertThat(run.err()).startsWith("penstock: missing required parameter for option '--pressure'");
    }

    @Test
    void veryManyProblemsAreCounted(@TempDir Path folder) throws IOException {
        StringBuilder text = new StringBuilder("name = \"A\"\ncycle = \"pressure-fed\"\n");
        for (int i = 0; i < 500; i++) {
            text.append("unknown_").append(i).append(" = 1\n");
        }
        Run run = Run.of(
                "balance", Files.writeString(folder.resolve("many.toml"), text).toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.problems()).hasSize(21);
        assertThat(run.err()).containsPattern("penstock: and \\d+ more problems");
    }

    @Test
    void anUncertainWordIsRefusedOnceInAPlainBalance(@TempDir Path folder) throws IOException {
        String text = Files.readString(HomeFolder.find().resolve("cycles/heron.toml"));
        Path file = folder.resolve("sure.toml");
        Files.writeString(file, text + "\n[uncertainty]\n\"propellants.fuel\" = [1, 2, 3]\n");
        Run run = Run.of("balance", file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.problems()).hasSize(1);
        assertThat(run.err()).contains("only a number with a range may be uncertain");
    }

    @Test
    void theFamilyOfAFailureDecidesTheExitCode() {
        assertThat(ExitCode.of(new InvalidInput("", "a", "b", "c"))).isEqualTo(2);
        assertThat(ExitCode.of(new NotConverged("cycle", 3, 1, "bounds"))).isEqualTo(1);
        assertThat(ExitCode.of(new ConservationViolated("mass", 1, 1e-8))).isEqualTo(1);
        assertThat(ExitCode.of(new IllegalStateException("x"))).isEqualTo(1);
    }

    @Test
    void theTraceIsShownOnRequestOnly() {
        Run plain = failing();
        assertThat(plain.code()).isEqualTo(1);
        assertThat(plain.problems()).containsExactly("penstock: " + new NotConverged("it", 2, 0.5, "why").getMessage());
        Run verbose = failing("--verbose");
        assertThat(verbose.err()).contains("at dev.penstock");
    }

    private static Run failing(String... arguments) {
        java.io.StringWriter err = new java.io.StringWriter();
        CommandLine line = new CommandLine(new Failing());
        line.setExecutionExceptionHandler(new Failures(new java.io.PrintWriter(err), new UnpackedPages()));
        return new Run(line.execute(arguments), "", err.toString());
    }

    /** A command whose worker thread fails. */
    @Command(name = "failing")
    static final class Failing implements java.util.concurrent.Callable<Integer> {

        @CommandLine.Option(names = "--verbose")
        boolean verbose;

        @Override
        public Integer call() throws Exception {
            throw new ExecutionException(new NotConverged("it", 2, 0.5, "why"));
        }
    }

    @Test
    void aWordWithAnAtSignIsNoFileToRead(@TempDir Path folder) throws IOException {
        Path words = Files.writeString(folder.resolve("words"), "--version");
        assertThat(Run.of("@" + words).err())
                .isEqualTo("penstock: command @" + words + " is not known; see penstock --help\n");
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void anAnswerThatIsLostIsAFailure() throws IOException {
        for (List<String> line : List.of(
                List.of("fluid", "oxygen", "--json"),
                List.of("sweep", "dunlin", "--vary", "engine.chamber_pressure=8..9bar:2", "--csv"),
                List.of("--help"))) {
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            try (FileOutputStream full = new FileOutputStream("/dev/full")) {
                PlainOutput out = new PlainOutput(full);
                Session session = CommandLineProgram.session(HomeFolder.find(), out, new PlainOutput(err), false);
                int code = CommandLineProgram.runChecked(session, out, line.toArray(String[]::new));
                assertThat(code).isEqualTo(1);
            }
            assertThat(err.toString(StandardCharsets.UTF_8).lines())
                    .singleElement(InstanceOfAssertFactories.STRING)
                    .startsWith("penstock: standard output could not be written (")
                    .endsWith("); the answer is incomplete");
        }
    }

    @Test
    void namesCannotSteerATerminal() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PlainOutput plain = new PlainOutput(out)) {
            plain.write("\u001b[31m\tä\u009b\u202e\n");
        }
        assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo("\\u001b[31m\tä\\u009b\\u202e\n");
    }

    /** As a request of another program may have it; under a locale without UTF-8 every umlaut is such a letter. */
    @Test
    void aNameThatNoFileCanHaveIsOneSentence() {
        Run run = Run.of("balance", "a\0b.toml");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.problems()).hasSize(1);
        assertThat(run.err()).contains("it cannot name a file here");
    }
}
