package dev.penstock.input;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Where the files of fluids, gas species, wall materials and alloy families are: the folder {@code fluids} of the home folder, or,
 * where that has none, the copy that travels in Penstock's archive.
 */
public final class DataFolder {

    private static final String ENDING = ".toml";
    private static final String PACKED = "/dev/penstock/data/fluids";

    private DataFolder() {}

    /**
     * @param home home folder
     * @return the folder of fluids, whole: it is either the home folder's or the archive's, never a mixture
     */
    public static Path fluids(Path home) {
        Path own = home.resolve("fluids");
        return Files.isDirectory(own) ? own : Packed.FLUIDS;
    }

    /**
     * @param home home folder
     * @return the folder of gas species
     */
    public static Path gas(Path home) {
        return fluids(home).resolve("gas");
    }

    /**
     * @param home home folder
     * @return the folder of wall materials
     */
    public static Path walls(Path home) {
        return fluids(home).resolve("walls");
    }

    /**
     * @param home home folder
     * @return the folder of alloy families
     */
    public static Path metals(Path home) {
        return fluids(home).resolve("metals");
    }

    /**
     * @param folder one of these folders
     * @return its files by id, which is the name without its ending
     * @throws IOException if the folder cannot be read
     */
    public static SortedMap<String, Path> files(Path folder) throws IOException {
        SortedMap<String, Path> byId = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.forEach(file -> {
                String name = file.getFileName().toString();
                if (name.endsWith(ENDING)) {
                    byId.put(name.substring(0, name.length() - ENDING.length()), file);
                }
            });
        }
        return byId;
    }

    /** The archive is opened when it is first needed, and read by everyone from then on. */
    private static final class Packed {

        static final Path FLUIDS = open();

        private static Path open() {
            URL url = DataFolder.class.getResource(PACKED);
            if (url == null) {
                throw new IllegalStateException(PACKED + " is not on the class path");
            }
            try {
                URI uri = url.toURI();
                if (!uri.getScheme().equals("jar")) {
                    return Path.of(uri);
                }
                String[] parts = uri.getRawSchemeSpecificPart().split("!", 2);
                return FileSystems.newFileSystem(Path.of(URI.create(parts[0])), (ClassLoader) null)
                        .getPath(PACKED);
            } catch (URISyntaxException e) {
                throw new IllegalStateException(e);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
