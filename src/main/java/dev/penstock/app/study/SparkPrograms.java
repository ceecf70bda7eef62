package dev.penstock.app.study;

import dev.penstock.errors.InvalidInput;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Whether the folder of Spark holds the program that runs here. Compared are the compiled classes and data of Penstock by their
 * check sums, not by dates: a folder that was built of other sources would write other rows into the same study.
 */
final class SparkPrograms {

    private static final String OURS = "dev/penstock/";
    /** What the workers have no part in, and what only Spark's folder has. */
    private static final List<String> APART = List.of(OURS + "app/", OURS + "reports/", OURS + "spark/");

    private SparkPrograms() {}

    /**
     * @param libraries Spark's folder, with an archive of Penstock in it
     * @param program archive or folder of the classes that run here
     * @throws InvalidInput if there is no Penstock in the folder, or another one
     */
    static void require(Path libraries, Path program) {
        Map<String, Long> here;
        Map<String, Long> there;
        try {
            here = sums(program);
            there = sums(archive(libraries));
        } catch (IOException e) {
            throw new InvalidInput(
                    "",
                    SparkLaunch.FOLDER,
                    libraries.toString(),
                    "its Penstock cannot be read (" + e.getMessage() + ")");
        }
        long differing = here.entrySet().stream()
                .filter(e -> !e.getValue().equals(there.get(e.getKey())))
                .count();
        if (differing > 0) {
            throw new InvalidInput(
                    "",
                    SparkLaunch.FOLDER,
                    libraries.toString(),
                    "its Penstock is another than the one that runs here (" + differing + " of " + here.size()
                            + " files differ), and workers would compute other rows; build it anew with mvn -Pspark");
        }
    }

    /** Where the classes that run here are. */
    static Path running() {
        try {
            return Path.of(SparkPrograms.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Path archive(Path libraries) {
        try (var files = Files.newDirectoryStream(libraries, "penstock-*.jar")) {
            for (Path file : files) {
                return file;
            }
        } catch (IOException e) {
            throw new InvalidInput("", SparkLaunch.FOLDER, libraries.toString(), "it cannot be read");
        }
        throw new InvalidInput(
                "", SparkLaunch.FOLDER, libraries.toString(), "there is no Penstock in it; build it with mvn -Pspark");
    }

    private static Map<String, Long> sums(Path program) throws IOException {
        Map<String, Long> sums = new TreeMap<>();
        if (Files.isDirectory(program)) {
            try (var files = Files.walk(program.resolve(OURS))) {
                for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                    CRC32 sum = new CRC32();
                    sum.update(Files.readAllBytes(file));
                    sums.put(program.relativize(file).toString().replace('\\', '/'), sum.getValue());
                }
            }
        } else {
            try (ZipFile zip = new ZipFile(program.toFile())) {
                zip.stream().filter(e -> !e.isDirectory()).forEach((ZipEntry e) -> sums.put(e.getName(), e.getCrc()));
            }
        }
        sums.keySet().removeIf(name -> !name.startsWith(OURS) || APART.stream().anyMatch(name::startsWith));
        return sums;
    }
}
