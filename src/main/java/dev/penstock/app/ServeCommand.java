package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.ConceptReports;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.LocalAction;
import dev.penstock.app.console.ServerLog;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.OptionReader;
import dev.penstock.app.web.LocalServer;
import dev.penstock.errors.InvalidInput;
import io.javalin.util.JavalinBindException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Serves the local page to a browser on this machine. */
@Command(
        name = "serve",
        description = "Opens a page on this machine for concepts: change an input and see the engine balance anew,"
                + " compare, sweep, size vehicles, save. Ends with Ctrl-C.")
final class ServeCommand extends BaseCommand implements LocalAction {

    private static final int HIGHEST_PORT = 65_535;
    private static final int LONGEST = 3600;

    @Option(names = "--port", paramLabel = "N", description = "port; any free one otherwise")
    private int port;

    @Option(
            names = "--workspace",
            paramLabel = "DIR",
            description = "folder whose concept files the page may read and write; cycles/ of Penstock otherwise")
    private Optional<Path> workspace = Optional.empty();

    @Option(
            names = "--time-limit",
            paramLabel = "SECONDS",
            description = "longest time for one answer (default: ${DEFAULT-VALUE})",
            defaultValue = "60")
    private int timeLimit;

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description =
                    "also write a line for every request, with status and time, and the traces of defects; with --verbose the"
                            + " terminal shows these lines")
    private Optional<Path> log = Optional.empty();

    private Optional<ServerLog> written = Optional.empty();

    ServeCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws InterruptedException {
        OptionReader reader = new OptionReader();
        Path folder = workspace.orElse(session.home().resolve("cycles"));
        if (port < 0 || port > HIGHEST_PORT) {
            reader.problem("--port", Integer.toString(port), "write a port up to " + HIGHEST_PORT + ", or 0 for any");
        }
        if (timeLimit < 1 || timeLimit > LONGEST) {
            reader.problem("--time-limit", Integer.toString(timeLimit), "write 1 to " + LONGEST + " seconds");
        }
        if (!Files.isDirectory(folder)) {
            reader.problem("--workspace", folder.toString(), "it must be a folder");
        }
        reader.finish();
        written = log.map(file -> ServerLog.open(file, session.err()));
        try (LocalServer server = LocalServer.start(new LocalServer.Settings(
                session.home(),
                session.fluids(),
                folder,
                new ConceptReports(session).software(),
                port,
                Duration.ofSeconds(timeLimit),
                this::report,
                this::told))) {
            answer(
                    () -> Map.of("address", server.address(), "workspace", folder.toString()),
                    () -> "open " + server.address() + System.lineSeparator() + "workspace " + folder + "; Ctrl-C ends"
                            + System.lineSeparator());
            server.warmUp();
            new CountDownLatch(1).await();
        } catch (JavalinBindException e) {
            throw new InvalidInput("", "--port", Integer.toString(port), "it is in use; write another, or 0 for any");
        } finally {
            written.ifPresent(ServerLog::close);
        }
        return ExitCode.OK;
    }

    private void told(String request) {
        String line = ServerLog.plain(request);
        if (verbose()) {
            session.err().println(line);
            session.err().flush();
        }
        written.ifPresent(file -> file.line(line));
    }

    private void report(Throwable defect) {
        session.err().println("penstock: a request failed; this is a defect of Penstock");
        defect.printStackTrace(session.err());
        session.err().flush();
        written.ifPresent(file -> file.defect(defect));
    }
}
