package dev.penstock.fluids.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Where tables are kept: the folder that {@value #VARIABLE} names, and no other; else {@code .penstock/tables} of the home folder
 * if that has a {@code .penstock}, which holds what was fetched; then the user's folder for such files, {@code penstock} in
 * {@code XDG_CACHE_HOME} or {@code ~/.cache}, {@code ~/Library/Caches} or {@code %LOCALAPPDATA%}. Files are read from all of
 * them and written to the first that takes them. They may be deleted at any time.
 */
public final class StoreFolders {

    /** The environment variable that names the folder; {@value #NOWHERE} keeps nothing. */
    public static final String VARIABLE = "PENSTOCK_TABLES";

    private static final String NOWHERE = "none";

    private StoreFolders() {}

    /**
     * @param home home folder
     * @return the folders, the first one first; they need not exist
     */
    public static List<Path> of(Path home) {
        return of(home, System.getenv(), System.getProperty("user.home", ""), System.getProperty("os.name", ""));
    }

    static List<Path> of(Path home, Map<String, String> environment, String userHome, String system) {
        String named = environment.getOrDefault(VARIABLE, "");
        if (named.equals(NOWHERE)) {
            return List.of();
        }
        if (!named.isBlank()) {
            return List.of(Path.of(named).toAbsolutePath());
        }
        List<Path> folders = new ArrayList<>();
        Path fetched = home.resolve(".penstock");
        if (Files.isDirectory(fetched)) {
            folders.add(fetched.resolve("tables"));
        }
        users(environment, userHome, system.toLowerCase(Locale.ROOT))
                .ifPresent(folder -> folders.add(folder.resolve("penstock").resolve("tables")));
        return folders;
    }

    private static Optional<Path> users(Map<String, String> environment, String userHome, String system) {
        Optional<Path> own = absolute(userHome);
        if (system.contains("windows")) {
            return absolute(environment.get("LOCALAPPDATA"));
        }
        if (system.contains("mac")) {
            return own.map(path -> path.resolve("Library").resolve("Caches"));
        }
        return absolute(environment.get("XDG_CACHE_HOME")).or(() -> own.map(path -> path.resolve(".cache")));
    }

    private static Optional<Path> absolute(String path) {
        return Optional.ofNullable(path)
                .filter(text -> !text.isBlank())
                .map(Path::of)
                .filter(Path::isAbsolute);
    }
}
