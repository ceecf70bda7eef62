package dev.penstock.spark;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.spark.SparkFiles;

/**
 * The home folder that workers use: fluids, tables and CoolProp. Either a path that every worker has, or an archive that Spark
 * takes to them ({@code spark.archives}).
 *
 * @param path the path; empty for the archive
 */
record WorkerHome(String path) implements Serializable {

    private static final String ARCHIVE = "penstock-home";
    private static final List<String> TAKEN = List.of("fluids", ".penstock/coolprop", ".penstock/tables");

    /** Where it is, asked by a worker. */
    Path find() {
        return Path.of(path.isEmpty() ? SparkFiles.get(ARCHIVE) : path);
    }

    /**
     * @param home home folder of this machine
     * @param file archive to write
     * @return what {@code spark.archives} has to say
     */
    static String pack(Path home, Path file) {
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.setLevel(Deflater.BEST_SPEED);
            for (String folder : TAKEN) {
                if (Files.isDirectory(home.resolve(folder))) {
                    add(home, home.resolve(folder), zip);
                }
            }
            return file.toUri() + "#" + ARCHIVE;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void add(Path home, Path folder, ZipOutputStream zip) throws IOException {
        // Links are followed: CoolProp's folder may be one.
        Path real = folder.toRealPath();
        try (Stream<Path> files = Files.walk(real)) {
            for (Path one : files.filter(Files::isRegularFile).sorted().toList()) {
                String name = home.relativize(folder) + "/" + real.relativize(one);
                zip.putNextEntry(new ZipEntry(name.replace('\\', '/')));
                Files.copy(one, zip);
                zip.closeEntry();
            }
        }
    }
}
