package dev.penstock.validation;

import dev.penstock.errors.PenstockException;
import dev.penstock.study.Parallel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;

/**
 * Judges the built engines of the tables with chamber pressure, mixture ratio and cycle hidden. A row is appended to a file as each is
 * done, and engines that stand there already are not judged again, so that a run may be stopped and carried on.
 */
public final class ClaimsCoverageRun {

    private ClaimsCoverageRun() {}

    /**
     * @param arguments points carried for each kind of engine; file of results; cycles as a claims file has them, or "own"; names of engines
     *     in the order in which they are judged, all of them if left out
     */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length != 3 && arguments.length != 4) {
            System.err.println("arguments: POINTS FILE CYCLES [NAME,NAME]");
            return;
        }
        Path file = Path.of(arguments[1]);
        for (PublishedEngine engine : engines(arguments)) {
            String start = "| " + engine.name() + " |";
            if (rows(file).stream().anyMatch(row -> row.startsWith(start))) {
                continue;
            }
            String row;
            String cycles = arguments[2].equals("own") ? '"' + engine.cycle() + '"' : arguments[2];
            try {
                row = ClaimsCoverage.judged(engine, cycles, Integer.parseInt(arguments[0]), Parallel.WORKERS)
                        .line();
            } catch (PenstockException e) {
                row = start + " not judged: " + e.getMessage() + " |";
            }
            Files.writeString(file, row + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        }
        rows(file).forEach(System.out::println);
    }

    private static List<PublishedEngine> engines(String[] arguments) {
        List<PublishedEngine> all = ClaimsCoverage.engines();
        return arguments.length == 3
                ? all
                : Arrays.stream(arguments[3].split(","))
                        .flatMap(name -> all.stream().filter(e -> e.name().equals(name)))
                        .toList();
    }

    private static List<String> rows(Path file) throws IOException {
        return Files.exists(file) ? Files.readAllLines(file) : List.of();
    }
}
