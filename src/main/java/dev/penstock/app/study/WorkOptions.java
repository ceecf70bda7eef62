package dev.penstock.app.study;

import dev.penstock.app.console.Session;
import dev.penstock.app.options.OutputOption;
import dev.penstock.errors.InvalidInput;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The options that say who works at a sample: threads here, or a cluster. */
public final class WorkOptions implements OutputOption {

    private static final int MOST_THREADS = 1024;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "how many threads work at a sample; as many as processors otherwise")
    private Optional<Integer> threads = Optional.empty();

    @Option(
            names = "--on",
            paramLabel = "MASTER",
            description = "work at a sample on a Spark cluster: spark://HOST:PORT, local[*], yarn or k8s://URL"
                    + " (docs/scale.md)")
    private Optional<String> on = Optional.empty();

    @Option(
            names = "--worker-home",
            paramLabel = "DIR",
            description = "with --on: folder on every worker that holds fluids and .penstock; sent there otherwise")
    private Optional<Path> workerHome = Optional.empty();

    @Option(
            names = "--conf",
            paramLabel = "KEY=VALUE",
            description =
                    "with --on: a setting of Spark, for example spark.executor.memory=2g; may be given several times")
    private List<String> settings = new ArrayList<>();

    /** @return whether any of them is given */
    public boolean given() {
        return !arguments().isEmpty();
    }

    /** @return the command line that says the same */
    public List<String> arguments() {
        List<String> arguments = new ArrayList<>();
        threads.ifPresent(count -> arguments.addAll(List.of("--threads", Integer.toString(count))));
        on.ifPresent(master -> arguments.addAll(List.of("--on", master)));
        workerHome.ifPresent(home -> arguments.addAll(List.of("--worker-home", home.toString())));
        settings.forEach(setting -> arguments.addAll(List.of("--conf", setting)));
        return arguments;
    }

    /**
     * @return how many threads work here
     * @throws InvalidInput if that is no number of threads
     */
    int threads() {
        int count = threads.orElse(Runtime.getRuntime().availableProcessors());
        if (count < 1 || count > MOST_THREADS) {
            throw new InvalidInput("", "--threads", Integer.toString(count), "write 1 to " + MOST_THREADS);
        }
        return count;
    }

    /**
     * @param session what the command works with
     * @return the cluster that works; empty if this machine does
     * @throws InvalidInput if something is said of a cluster, and none is named
     */
    Optional<SparkLaunch> cluster(Session session) {
        if (on.isEmpty() && (workerHome.isPresent() || !settings.isEmpty())) {
            throw new InvalidInput("", "--worker-home and --conf", "given", "only with --on do they mean anything");
        }
        return on.map(master -> SparkLaunch.of(master, session.home(), workerHome, settings));
    }
}
