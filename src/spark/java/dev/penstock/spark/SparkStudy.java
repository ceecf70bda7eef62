package dev.penstock.spark;

import dev.penstock.errors.PenstockException;
import dev.penstock.study.sample.SamplePlan;
import dev.penstock.study.sample.SampleRun;
import dev.penstock.study.store.BatchFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.spark.SparkConf;
import org.apache.spark.SparkException;
import org.apache.spark.api.java.JavaSparkContext;

/**
 * The process that {@code --on} starts: goes on with the study of a folder on a cluster. It prints a line for each step,
 * {@code done N of M} in points, {@code run BATCHES SKIPPED WORKED} at the end, or {@code failed SENTENCE}.
 */
public final class SparkStudy {

    /** How long a standalone cluster may take to give a first worker. */
    private static final long PATIENCE = TimeUnit.MINUTES.toMillis(3);

    /** Spark's own archives are on every worker already; these go with the study. */
    private static final List<String> OWN = List.of(
            "penstock", "duckdb_jdbc", "jna", "commons-math3", "jackson-dataformat-toml", "indriya", "unit-api",
            "uom-lib-common", "jakarta.inject-api", "jakarta.annotation-api");

    private SparkStudy() {}

    /**
     * @param arguments folder of the study; master; home folder of this machine; path of the home folder on the workers, or
     *     empty text to send it; then Spark's settings, {@code key=value}
     */
    public static void main(String[] arguments) {
        System.exit(run(arguments));
    }

    private static int run(String[] arguments) {
        try {
            Path folder = Path.of(arguments[0]);
            Path home = Path.of(arguments[2]);
            SparkConf conf = new SparkConf().setMaster(arguments[1]);
            settings(conf);
            Stream.of(arguments).skip(4).forEach(setting -> {
                int equals = setting.indexOf('=');
                conf.set(setting.substring(0, equals), setting.substring(equals + 1));
            });
            WorkerHome there = new WorkerHome(local(arguments[1]) ? home.toString() : arguments[3]);
            Path archive = Files.createTempFile("penstock-home", ".zip");
            try {
                if (there.path().isEmpty()) {
                    String packed = WorkerHome.pack(home, archive);
                    conf.set("spark.archives", conf.getOption("spark.archives").isEmpty()
                            ? packed
                            : conf.get("spark.archives") + "," + packed);
                }
                work(folder, home, conf, there);
                return 0;
            } finally {
                Files.deleteIfExists(archive);
            }
        } catch (PenstockException | IOException e) {
            System.out.println("failed " + first(e));
        } catch (Exception e) { // Spark's own failures are checked ones that it does not declare
            System.out.println("failed " + first(e));
            e.printStackTrace();
        }
        return 1;
    }

    private static void work(Path folder, Path home, SparkConf conf, WorkerHome there) {
        StudyFiles files = StudyFiles.of(folder);
        SamplePlan plan = files.open(new WorkerHome(home.toString()));
        conf.setAppName("penstock " + plan.request().name());
        try (BatchFolder out = BatchFolder.open(folder, files.texts());
                JavaSparkContext spark = new JavaSparkContext(conf)) {
            AtomicBoolean deserted = new AtomicBoolean();
            if (conf.get("spark.master").startsWith("spark://")) {
                watch(spark, deserted);
            }
            try {
                SampleRun run = SampleRun.of(
                        plan,
                        out,
                        new SparkBatches(spark, files, there),
                        (done, of, what) -> System.out.println("done " + done + " of " + of),
                        () -> false);
                System.out.println("run " + run.batches() + " " + run.skipped() + " " + run.worked());
            } catch (Exception e) { // undeclared ones of Spark too
                if (deserted.get()) {
                    throw new IllegalStateException("no worker of the cluster has taken the work up", e);
                }
                throw e;
            }
        }
    }

    private static void settings(SparkConf conf) throws IOException {
        conf.setIfMissing("spark.ui.enabled", "false");
        conf.setIfMissing("spark.driver.maxResultSize", "0");
        conf.setIfMissing("spark.task.maxFailures", "8");
        conf.setIfMissing("spark.executor.extraJavaOptions", "-Dorg.slf4j.simpleLogger.defaultLogLevel=warn");
        if (!local(conf.get("spark.master"))) {
            Path folder = Path.of(System.getProperty("penstock.spark"));
            try (Stream<Path> archives = Files.list(folder)) {
                conf.set(
                        "spark.jars",
                        archives.filter(file -> OWN.stream()
                                        .anyMatch(name -> file.getFileName().toString().startsWith(name + "-")))
                                .map(file -> file.toUri().toString())
                                .collect(Collectors.joining(",")));
            }
        }
    }

    private static boolean local(String master) {
        return master.startsWith("local");
    }

    /** Gives up where no worker has come after a while: Spark itself would wait for ever. */
    private static void watch(JavaSparkContext spark, AtomicBoolean deserted) {
        Thread thread = new Thread(() -> {
            try {
                Thread.sleep(PATIENCE);
                if (spark.sc().statusTracker().getExecutorInfos().length < 2) {
                    deserted.set(true);
                    spark.sc().cancelAllJobs();
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        thread.setDaemon(true);
        thread.start();
    }

    private static String first(Throwable e) {
        Throwable told = e instanceof SparkException && e.getCause() != null ? e.getCause() : e;
        return String.valueOf(told.getMessage()).lines().findFirst().orElse("").strip();
    }
}
