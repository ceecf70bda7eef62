package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.EarlyModels;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Failures;
import dev.penstock.app.console.LocalAction;
import dev.penstock.app.console.PlainOutput;
import dev.penstock.app.console.Session;
import dev.penstock.app.console.Version;
import dev.penstock.app.study.FrontierCommand;
import dev.penstock.app.study.OptimiseCommand;
import dev.penstock.app.study.SampleCommand;
import dev.penstock.app.study.SensitivityCommand;
import dev.penstock.errors.InvalidInput;
import dev.penstock.input.HomeFolder;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.lang.reflect.Constructor;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParseResult;

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
        })
public final class CommandLineProgram implements Runnable {

    private static final List<Class<? extends BaseCommand>> COMMANDS = List.of(
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
            DemoCommand.class);

    /** Commands of one short answer, whose waiting for CoolProp is felt, and the one whose first answers wait for it. */
    private static final Set<Class<? extends BaseCommand>> WITH_FLUID_STATES = Set.of(
            AnswerCommand.class,
            BalanceCommand.class,
            LimitCommand.class,
            OffDesignCommand.class,
            TableCommand.class,
            CompareCommand.class,
            ExplainCommand.class,
            CoolCommand.class,
            NozzleCommand.class,
            StartCommand.class,
            SizeCommand.class,
            FluidCommand.class,
            CombustCommand.class);

    /** Those among them that need no species and walls. */
    private static final Set<Class<? extends BaseCommand>> WITHOUT_ENGINES =
            Set.of(FluidCommand.class, CombustCommand.class);

    private static final Set<String> HELP = Set.of("-h", "--help");

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
        Path home = HomeFolder.find();
        PlainOutput out = new PlainOutput(new FileOutputStream(FileDescriptor.out));
        PlainOutput err = new PlainOutput(new FileOutputStream(FileDescriptor.err));
        Session session = session(home, out, err, System.console() != null);
        EarlyModels early = EarlyModels.begin(session, needed(arguments));
        int code = runChecked(session, out, arguments);
        early.await();
        System.exit(code);
    }

    /** What the command that a line names will ask for, unless it is asked for its help alone. */
    private static EarlyModels.Needed needed(String... arguments) {
        if (arguments.length == 0 || Arrays.stream(arguments).anyMatch(HELP::contains)) {
            return EarlyModels.Needed.NOTHING;
        }
        return named(arguments[0])
                .filter(WITH_FLUID_STATES::contains)
                .filter(command -> arguments.length > 1 || command == AnswerCommand.class)
                .map(command ->
                        WITHOUT_ENGINES.contains(command) ? EarlyModels.Needed.STATES : EarlyModels.Needed.ENGINES)
                .orElse(EarlyModels.Needed.NOTHING);
    }

    /** Results and problems are printed by the commands themselves; libraries stay quiet unless somebody asks them. */
    private static void quietLibraries() {
        if (System.getProperty(LOG_LEVEL) == null) {
            System.setProperty(LOG_LEVEL, "off");
        }
    }

    static Session session(Path home, PlainOutput out, PlainOutput err, boolean terminal) {
        return Session.open(home, System.in, new PrintWriter(out), new PrintWriter(err), terminal);
    }

    /**
     * Runs one command; an answer that could not be written in full is a failure.
     *
     * @param session what the command works with
     * @param out where its results go
     * @param arguments command line
     * @return exit code
     */
    static int runChecked(Session session, PlainOutput out, String... arguments) {
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
        Failures failures = new Failures(session.err(), session.pages());
        CommandLine commandLine = commandLine(session, arguments);
        commandLine.setOut(session.out());
        commandLine.setErr(session.err());
        commandLine.setExecutionExceptionHandler(failures);
        commandLine.setParameterExceptionHandler(failures);
        commandLine.setUsageHelpWidth(100);
        commandLine.setAbbreviatedOptionsAllowed(false);
        commandLine.setExecutionStrategy(parsed -> execute(session, parsed, failures));
        try {
            return commandLine.execute(arguments);
        } catch (Error e) {
            return failures.handle(e);
        }
    }

    private static int execute(Session session, ParseResult parsed, Failures failures) {
        ParseResult last = parsed;
        while (last.hasSubcommand()) {
            last = last.subcommand();
        }
        CommandSpec spec = last.commandSpec();
        try {
            if (!session.local() && spec.userObject() instanceof LocalAction) {
                throw new InvalidInput(
                        "",
                        "command",
                        spec.name(),
                        "a request may not write on this machine; allowed are " + String.join(", ", answering()));
            }
            if (spec.userObject() instanceof BaseCommand command && !last.isUsageHelpRequested()) {
                command.checkOutput();
            }
        } catch (InvalidInput e) {
            return failures.handleExecutionException(e, spec.commandLine(), parsed);
        }
        return new CommandLine.RunLast().execute(parsed);
    }

    /** All commands with their options; a word that begins with an at sign is a word, not the name of a file to read. */
    static CommandLine commandLine(Session session) {
        return commandLine(session, COMMANDS);
    }

    /** A line that names a command needs no other: the options of all of them take longer to gather than a short answer. */
    static CommandLine commandLine(Session session, String... arguments) {
        Optional<Class<? extends BaseCommand>> named = arguments.length == 0 ? Optional.empty() : named(arguments[0]);
        return commandLine(
                session, named.map(List::<Class<? extends BaseCommand>>of).orElse(COMMANDS));
    }

    private static CommandLine commandLine(Session session, List<Class<? extends BaseCommand>> commands) {
        Factory factory = new Factory(session);
        CommandLine line = new CommandLine(new CommandLineProgram(session), factory).setExpandAtFiles(false);
        commands.forEach(command -> line.addSubcommand(new CommandLine(command, factory).setExpandAtFiles(false)));
        return line;
    }

    private static Optional<Class<? extends BaseCommand>> named(String word) {
        return COMMANDS.stream()
                .filter(command -> command.getAnnotation(Command.class).name().equals(word))
                .findFirst();
    }

    /** @return commands that another program may ask for, which do nothing on this machine but answer */
    static List<String> answering() {
        return COMMANDS.stream()
                .filter(command -> !LocalAction.class.isAssignableFrom(command))
                .map(command -> command.getAnnotation(Command.class).name())
                .toList();
    }

    @Override
    public void run() {
        commandLine(session).usage(session.out());
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
