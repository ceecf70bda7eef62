package dev.penstock.app.study;

import dev.penstock.errors.InvalidInput;
import dev.penstock.study.Progress;
import dev.penstock.study.sample.SampleRun;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.net.InetSocketAddress;
import java.net.MalformedURLException;
import java.net.Socket;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Starts the process that works at a study on a Spark cluster. Spark is in a folder of its own, which the Maven profile
 * {@code spark} fills; nothing else has it on its class path.
 */
final class SparkLaunch {

    private static final String OPTION = "--on";
    static final String FOLDER = "PENSTOCK_SPARK";
    private static final Pattern MASTER = Pattern.compile("local(\\[[\\d*,]+])?|spark://.+|yarn|k8s://.+");
    private static final Pattern STANDALONE = Pattern.compile("([^:,/]+):(\\d{1,5})");
    private static final int PATIENCE = 5_000;

    private final String master;
    private final Path libraries;
    private final String workerHome;
    private final List<String> settings;

    private SparkLaunch(String master, Path libraries, String workerHome, List<String> settings) {
        this.master = master;
        this.libraries = libraries;
        this.workerHome = workerHome;
        this.settings = List.copyOf(settings);
    }

    /**
     * Checks everything that can be told before the study is begun.
     *
     * @param master master as Spark takes it
     * @param home home folder
     * @param workerHome home folder on the workers; empty to send one
     * @param settings Spark's settings, {@code key=value}
     * @return the launch
     * @throws InvalidInput if Spark is not there, the master is none, or a standalone one does not answer
     */
    static SparkLaunch of(String master, Path home, Optional<Path> workerHome, List<String> settings) {
        if (!MASTER.matcher(master).matches()) {
            throw new InvalidInput("", OPTION, master, "write spark://HOST:PORT, local[*], yarn or k8s://URL");
        }
        for (String setting : settings) {
            if (!setting.matches("spark\\.[\\w.-]+=.*")) {
                throw new InvalidInput("", "--conf", setting, "write spark.KEY=VALUE");
            }
        }
        if (master.startsWith("spark://")) {
            reach(master);
        }
        String named = System.getenv(FOLDER);
        Path libraries = named == null || named.isBlank() ? home.resolve("target/spark") : Path.of(named);
        if (!Files.isDirectory(libraries)) {
            throw new InvalidInput(
                    "",
                    OPTION,
                    master,
                    "Spark is not in " + libraries + "; fetch it once with mvn -Pspark, or name its folder in "
                            + FOLDER);
        }
        SparkPrograms.require(libraries, SparkPrograms.running());
        return new SparkLaunch(
                master,
                libraries.toAbsolutePath(),
                workerHome.map(path -> path.toAbsolutePath().toString()).orElse(""),
                settings);
    }

    private static void reach(String master) {
        String why = "write spark://HOST:PORT";
        Matcher places = STANDALONE.matcher(master.substring("spark://".length()));
        while (places.find()) {
            try (Socket socket = new Socket()) {
                int port = Math.min(65_535, Integer.parseInt(places.group(2)));
                socket.connect(new InetSocketAddress(places.group(1), port), PATIENCE);
                return;
            } catch (IOException e) {
                why = "nothing answers there (" + e.getMessage() + "); start the master, or correct the address";
            }
        }
        throw new InvalidInput("", OPTION, master, why);
    }

    /**
     * @param folder folder of the study, whose files are written
     * @param home home folder of this machine
     * @param progress told of points that are done
     * @return what the run has done
     * @throws InvalidInput with what the cluster says, if it fails
     */
    SampleRun run(Path folder, Path home, Progress progress) {
        List<String> line = new ArrayList<>();
        line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        line.addAll(moduleOptions());
        line.addAll(List.of(
                "-Djava.awt.headless=true",
                "-Dorg.slf4j.simpleLogger.defaultLogLevel=warn",
                "-Dpenstock.spark=" + libraries,
                "-cp",
                libraries + File.separator + "*",
                "dev.penstock.spark.SparkStudy",
                folder.toAbsolutePath().toString(),
                master,
                home.toAbsolutePath().toString(),
                workerHome));
        line.addAll(settings);
        Path log = folder.resolve(".spark.log");
        try {
            Process process =
                    new ProcessBuilder(line).redirectError(log.toFile()).start();
            try (BufferedReader lines = process.inputReader()) {
                return follow(lines, progress, log);
            } finally {
                process.destroy();
            }
        } catch (IOException e) {
            throw new InvalidInput("", OPTION, master, "the driver cannot be started (" + e.getMessage() + ")");
        }
    }

    private SampleRun follow(BufferedReader lines, Progress progress, Path log) throws IOException {
        String last = "";
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            String[] words = line.split(" ");
            if (line.startsWith("done ")) {
                progress.done(Integer.parseInt(words[1]), Integer.parseInt(words[3]), "");
            } else if (line.startsWith("run ")) {
                return new SampleRun(
                        Integer.parseInt(words[1]), Integer.parseInt(words[2]), Integer.parseInt(words[3]));
            } else {
                last = line;
            }
        }
        String why = last.startsWith("failed ") ? last.substring("failed ".length()) : "the driver ended early";
        throw new InvalidInput("", OPTION, master, why + "; finished batches are kept, and " + log + " says more");
    }

    /** Packages of Java that Spark needs opened, as its own launcher lists them. */
    private List<String> moduleOptions() {
        try (URLClassLoader loader = new URLClassLoader(archives(), null)) {
            String options = (String) loader.loadClass("org.apache.spark.launcher.JavaModuleOptions")
                    .getMethod("defaultModuleOptions")
                    .invoke(null);
            return Arrays.asList(options.strip().split("\\s+"));
        } catch (ClassNotFoundException | NoSuchMethodException | IllegalAccessException e) {
            throw new InvalidInput("", OPTION, master, libraries + " holds no Spark 4; fill it with mvn -Pspark");
        } catch (InvocationTargetException | IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private URL[] archives() throws IOException {
        try (Stream<Path> files = Files.list(libraries)) {
            List<URL> urls = new ArrayList<>();
            for (Path file : files.toList()) {
                urls.add(url(file));
            }
            return urls.toArray(URL[]::new);
        }
    }

    private static URL url(Path file) throws MalformedURLException {
        return file.toUri().toURL();
    }
}
