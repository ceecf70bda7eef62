package dev.penstock.app;

import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Failures;
import dev.penstock.app.console.PlainOutput;
import dev.penstock.app.console.Session;
import dev.penstock.app.console.Version;
import dev.penstock.app.study.FrontierCommand;
import dev.penstock.app.study.OptimiseCommand;
import dev.penstock.app.study.SampleCommand;
import dev.penstock.app.study.SensitivityCommand;
import dev.penstock.input.HomeFolder;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.lang.reflect.Constructor;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The program {@code penstock}. */
@Command(
        name = "penstock",
        versionProvider = Version.class,
        description = "Estimates liquid rocket engines from a one-page concept file: balanced cycle, delivered"
                + " specific impulse, cooling, turbopumps, and the vehicle that follows.",
        footer = {
            "",
            "Values are written with their units (7.5MPa, 1100psi, 90K). Exit codes: 0 answered,"
                    + " 1 no solution, 2 input to correct. An estimate, not a design release."
        },
        subcommands = {
            BalanceCommand.class,
            LimitCommand.class,
            OffDesignCommand.class,
            TableCommand.class,
            CoolCommand.class,
            CompareCommand.class,
            ExplainCommand.class,
            SweepCommand.class,
            SampleCommand.class,
            StudyCommand.class,
            OptimiseCommand.class,
            SensitivityCommand.class,
            FrontierCommand.class,
            JudgeCommand.class,
            NozzleCommand.class,
            StartCommand.class,
            ProtectCommand.class,
            SizeCommand.class,
            TradeCommand.class,
            CombustCommand.class,
            FluidCommand.class,
            ListCommand.class,
            AnswerCommand.class,
            NewCommand.class,
            ServeCommand.class,
            ReproduceCommand.class,
            DemoCommand.class
        })
public final class CommandLineProgram implements Runnable {

    private static final String LOG_LEVEL = "org.slf4j.simpleLogger.defaultLogLevel";

    private final Session session;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "show this text")
    private boolean help;

    @Option(
            names = {"-V", "--version"},
            versionHelp = true,
            description = "show the version")
    private boolean version;

    CommandLineProgram(Session session) {
        this.session = session;
    }

    /**
     * Runs one command and ends the program with its exit code.
     *
     * @param arguments command line
     */
    public static void main(String[] arguments) {
        quietLibraries();
        PlainOutput out = new PlainOutput(new FileOutputStream(FileDescriptor.out));
        PlainOutput err = new PlainOutput(new FileOutputStream(FileDescriptor.err));
        System.exit(runChecked(HomeFolder.find(), out, err, System.console() != null, arguments));
    }

    /** Results and problems are printed by the commands themselves; libraries stay quiet unless somebody asks them. */
    private static void quietLibraries() {
        if (System.getProperty(LOG_LEVEL) == null) {
            System.setProperty(LOG_LEVEL, "off");
        }
    }

    /**
     * Runs one command; an answer that could not be written in full is a failure.
     *
     * @param home home folder
     * @param out where results go
     * @param err where progress and problems go
     * @param terminal whether a person watches {@code err}
     * @param arguments command line
     * @return exit code
     */
    static int runChecked(Path home, PlainOutput out, PlainOutput err, boolean terminal, String... arguments) {
        Session session = Session.open(home, System.in, new PrintWriter(out), new PrintWriter(err), terminal);
        int code = run(session, arguments);
        session.out().flush();
        Optional<String> lost = out.failure();
        lost.ifPresent(why -> session.err()
                .println("penstock: standard output could not be written (" + why + "); the answer is incomplete"));
        session.err().flush();
        return lost.isPresent() && code == ExitCode.OK ? ExitCode.NO_SOLUTION : code;
    }

    /**
     * @param session what the commands work with
     * @param arguments command line
     * @return exit code
     */
    static int run(Session session, String... arguments) {
        Failures failures = new Failures(session.err());
        CommandLine commandLine = commandLine(session);
        commandLine.setOut(session.out());
        commandLine.setErr(session.err());
        commandLine.setExecutionExceptionHandler(failures);
        commandLine.setParameterExceptionHandler(failures);
        commandLine.setUsageHelpWidth(100);
        commandLine.setAbbreviatedOptionsAllowed(false);
        try {
            return commandLine.execute(arguments);
        } catch (Error e) {
            return failures.handle(e);
        }
    }

    /** The commands with their options; a word that begins with an at sign is a word, not the name of a file to read. */
    static CommandLine commandLine(Session session) {
        return new CommandLine(new CommandLineProgram(session), new Factory(session)).setExpandAtFiles(false);
    }

    @Override
    public void run() {
        new CommandLine(this, new Factory(session)).usage(session.out());
    }

    /** Makes commands with the session they work with. */
    private record Factory(Session session) implements CommandLine.IFactory {

        @Override
        public <K> K create(Class<K> kind) throws Exception {
            for (Constructor<?> constructor : kind.getDeclaredConstructors()) {
                if (constructor.getParameterCount() == 1 && constructor.getParameterTypes()[0] == Session.class) {
                    return kind.cast(constructor.newInstance(session));
                }
            }
            return CommandLine.defaultFactory().create(kind);
        }
    }
}
