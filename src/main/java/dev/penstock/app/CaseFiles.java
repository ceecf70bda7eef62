package dev.penstock.app;

import dev.penstock.errors.InvalidInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Finds the files of cases: as a path, or by the name of a concept that comes with Penstock. */
final class CaseFiles {

    private static final String ENDING = ".toml";

    private CaseFiles() {}

    /**
     * @param session session
     * @param names paths, or names of files in {@code cycles/} and {@code cycles/vehicles/} without their ending
     * @return the files
     * @throws InvalidInput naming every case that is not there
     */
    static List<Path> find(Session session, List<String> names) {
        List<Path> files = new ArrayList<>();
        List<InvalidInput.Problem> problems = new ArrayList<>();
        for (String name : names) {
            Path file = find(session, name);
            if (Files.isRegularFile(file)) {
                files.add(file);
            } else {
                problems.add(new InvalidInput.Problem(
                        "",
                        "CASE",
                        name,
                        "write the path of a concept file, or one of "
                                + String.join(", ", names(session.home().resolve("cycles")))));
            }
        }
        if (!problems.isEmpty()) {
            throw new InvalidInput(problems);
        }
        return files;
    }

    private static Path find(Session session, String name) {
        Path path = Path.of(name);
        if (Files.exists(path) || !name.matches("[\\w-]+")) {
            return path;
        }
        Path concept = session.home().resolve("cycles").resolve(name + ENDING);
        return Files.exists(concept)
                ? concept
                : session.home().resolve("cycles/vehicles").resolve(name + ENDING);
    }

    private static List<String> names(Path folder) {
        return in(folder).stream()
                .map(file -> file.getFileName().toString())
                .map(file -> file.substring(0, file.length() - ENDING.length()))
                .toList();
    }

    /**
     * @param folder a folder
     * @return the TOML files directly in it, sorted; none if it does not exist
     */
    static List<Path> in(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }
}
