package dev.penstock.spark;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.numerics.design.DesignKind;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Progress;
import dev.penstock.study.sample.LocalBatches;
import dev.penstock.study.sample.SamplePlan;
import dev.penstock.study.sample.SampleRequest;
import dev.penstock.study.sample.SampleRun;
import dev.penstock.study.sample.SampleStudy;
import dev.penstock.study.store.BatchFolder;
import dev.penstock.study.store.StoredRows;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.spark.launcher.JavaModuleOptions;

/**
 * Proves a study on a cluster: a master and two workers of this machine work at many concepts, one worker and its executor are
 * killed after the first rows, and the study ends complete, each concept once, every file the same as that of a run without
 * Spark. Run by {@code mvn -Pspark,spark-proof}.
 */
public final class ClusterProof {

    private static final String HOST = "127.0.0.1";
    private static final int BATCH = 10;
    private static final long MOST_SECONDS = 900;

    private final Path home;
    private final Path libraries;
    private final Path place;
    private final int points;
    private final List<Process> started = new ArrayList<>();
    private int passed;
    private int failed;

    private ClusterProof(Path home, Path libraries, Path place, int points) {
        this.home = home;
        this.libraries = libraries;
        this.place = place;
        this.points = points;
    }

    /** @param arguments home folder; folder of Spark and Penstock; number of concepts, a multiple of ten */
    public static void main(String[] arguments) throws Exception {
        Path place = Files.createTempDirectory("penstock-proof");
        ClusterProof proof = new ClusterProof(
                Path.of(arguments[0]),
                Path.of(arguments[1]).toAbsolutePath(),
                place,
                Integer.parseInt(arguments[2]));
        try {
            proof.run();
        } finally {
            proof.started.forEach(ClusterProof::kill);
        }
        System.out.println(proof.passed + " passed, " + proof.failed + " failed");
        if (proof.failed == 0) {
            for (Process process : proof.started) {
                process.waitFor(); // what it still writes would stay behind
            }
            remove(place);
        } else {
            System.out.println("files and logs are in " + place);
        }
        System.exit(proof.failed == 0 ? 0 : 1);
    }

    private void run() throws Exception {
        Path here = place.resolve("here");
        Path there = place.resolve("there");
        long start = System.nanoTime();
        alone(here);
        System.out.printf("without Spark: %.0f s%n", (System.nanoTime() - start) / 1e9);
        int port = freePort();
        String master = "spark://" + HOST + ":" + port;
        master(port);
        worker(master);
        Process second = worker(master);
        copyStudy(here, there);
        start = System.nanoTime();
        Process driver = driver(there, master);
        awaitRows(there, driver);
        List<ProcessHandle> executors = second.descendants().toList();
        check("the second worker has an executor", !executors.isEmpty());
        // The worker first, so that it starts no other executor.
        second.destroyForcibly();
        executors.forEach(ProcessHandle::destroyForcibly);
        int before = parts(there).size();
        System.out.println("killed a worker and " + executors.size() + " process(es) after " + before + " batches");
        check("it was killed before the end", before < points / BATCH);
        check("the driver ends well", driver.waitFor(MOST_SECONDS, TimeUnit.SECONDS) && driver.exitValue() == 0);
        System.out.printf("on the cluster: %.0f s%n", (System.nanoTime() - start) / 1e9);
        compare(here, there);
    }

    private void alone(Path folder) throws IOException {
        String concept = Files.readString(home.resolve("cycles/heron.toml"));
        SampleRequest request = new SampleRequest(
                "Heron",
                List.of(
                        "engine.chamber_pressure=6..12MPa",
                        "propellants.mixture_ratio=2.0..2.7",
                        "nozzle.area_ratio=10..25",
                        "engine.thrust_sea_level=300..900kN"),
                DesignKind.SOBOL,
                points,
                1,
                BATCH,
                List.of(), List.of());
        Map<String, String> origin = new HashMap<>();
        origin.put(BatchFolder.SCHEMA, schema());
        origin.put("heron.toml", concept);
        origin.put(BatchFolder.STUDY, SampleStudy.file(request, List.of("heron.toml"), Map.of()).text());
        try (BatchFolder out = BatchFolder.open(folder, origin)) {
            SamplePlan plan = SampleStudy.read(
                    new EngineRuns(home, FluidLibrary.open(home)), folder.resolve(BatchFolder.STUDY));
            SampleRun run = SampleRun.of(
                    plan,
                    out,
                    new LocalBatches(Runtime.getRuntime().availableProcessors()),
                    Progress.NONE,
                    () -> false);
            check("the run without Spark is complete", run.complete());
        }
    }

    /** The proof compares files and counts points: one column is enough of a schema. */
    private String schema() {
        return """
            {"study": "Heron", "points": %d, "batch": %d, "batches": %d, "columns": [
              {"name": "point", "kind": "whole", "role": "point", "unit": "", "title": "Number of the point"}]}
            """
                .formatted(points, BATCH, points / BATCH);
    }

    private static void copyStudy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                if (!file.getFileName().toString().startsWith(".")) {
                    Files.copy(file, to.resolve(file.getFileName()));
                }
            }
        }
    }

    private void master(int port) throws Exception {
        Process master = java(
                "master",
                "org.apache.spark.deploy.master.Master",
                "--host", HOST, "--port", Integer.toString(port), "--webui-port", Integer.toString(freePort()));
        long end = System.nanoTime() + TimeUnit.MINUTES.toNanos(2);
        while (System.nanoTime() < end && master.isAlive()) {
            try (Socket socket = new Socket(HOST, port)) {
                return;
            } catch (IOException e) {
                Thread.sleep(200);
            }
        }
        throw new IllegalStateException("the master does not start; " + place + " has its log");
    }

    private Process worker(String master) throws Exception {
        return java(
                "worker" + started.size(),
                "org.apache.spark.deploy.worker.Worker",
                "--host", HOST, "--cores", "1", "--memory", "1g", "--webui-port", Integer.toString(freePort()),
                "--work-dir", place.resolve("work" + started.size()).toString(), master);
    }

    private Process driver(Path folder, String master) throws Exception {
        return java(
                "driver",
                SparkStudy.class.getName(),
                folder.toString(), master, home.toString(), "",
                "spark.driver.host=" + HOST, "spark.driver.bindAddress=" + HOST, "spark.executor.memory=900m");
    }

    private Process java(String name, String main, String... arguments) throws IOException {
        List<String> line = new ArrayList<>();
        line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        line.addAll(Arrays.asList(JavaModuleOptions.defaultModuleOptions().strip().split("\\s+")));
        line.addAll(List.of("-Dpenstock.spark=" + libraries, "-Dorg.slf4j.simpleLogger.defaultLogLevel=warn", "-cp", libraries + "/*", main));
        line.addAll(Arrays.asList(arguments));
        // Workers start executors with what is in SPARK_HOME/jars.
        Path spark = place.resolve("spark-home");
        if (!Files.exists(spark)) {
            Files.createDirectories(spark);
            Files.createSymbolicLink(spark.resolve("jars"), libraries);
        }
        ProcessBuilder builder = new ProcessBuilder(line);
        builder.environment().put("SPARK_HOME", spark.toString());
        // What Spark's own scripts set: without it a worker looks for Spark's sources.
        builder.environment().put("SPARK_SCALA_VERSION", "2.13");
        builder.environment().put("SPARK_LOCAL_IP", HOST);
        Path log = place.resolve(name + ".log");
        Process process = builder.redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        started.add(process);
        return process;
    }

    private void awaitRows(Path folder, Process driver) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(MOST_SECONDS);
        while (parts(folder).isEmpty()) {
            if (!driver.isAlive() || System.nanoTime() > end) {
                throw new IllegalStateException("no rows have come; " + place + " has the logs");
            }
            Thread.sleep(20);
        }
    }

    private static List<Path> parts(Path folder) {
        return BatchFolder.parts(folder);
    }

    private void compare(Path here, Path there) throws IOException {
        List<Path> ours = parts(here);
        List<Path> theirs = parts(there);
        check("every batch is there", theirs.size() == points / BATCH && ours.size() == theirs.size());
        int same = 0;
        for (int i = 0; i < Math.min(ours.size(), theirs.size()); i++) {
            same += Arrays.equals(Files.readAllBytes(ours.get(i)), Files.readAllBytes(theirs.get(i))) ? 1 : 0;
        }
        check(same + " of " + ours.size() + " files are the same, byte for byte", same == ours.size());
        int[] seen = new int[points];
        try (StoredRows rows = StoredRows.open(there)) {
            rows.forEach(cells -> seen[((Long) cells.get(0).orElseThrow()).intValue()]++);
        }
        check("each concept is there once", Arrays.stream(seen).allMatch(count -> count == 1));
    }

    private void check(String what, boolean holds) {
        System.out.println((holds ? "holds: " : "FAILS: ") + what);
        if (holds) {
            passed++;
        } else {
            failed++;
        }
    }

    private static void kill(Process process) {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
    }

    /** Takes the folder away; what an executor still writes there is no fault of the proof. */
    private static void remove(Path folder) {
        try (Stream<Path> found = Files.walk(folder)) {
            for (Path file : found.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            System.out.println("files are left in " + folder);
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getByName(HOST))) {
            return socket.getLocalPort();
        }
    }
}
