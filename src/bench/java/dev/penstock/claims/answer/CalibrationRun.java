package dev.penstock.claims.answer;

import dev.penstock.study.Parallel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Simulation-based calibration with many engines; its histogram stands on docs/validation/claims.md. Each engine is appended to a file
 * as it is done, and those that stand there already are not done again, so that a run may be stopped and carried on.
 */
public final class CalibrationRun {

    private static final int BINS = 10;

    private CalibrationRun() {}

    /** @param arguments cycle; number of engines; points carried for each; first number; file of results */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length != 5) {
            System.err.println("arguments: CYCLE ENGINES POINTS FIRST FILE");
            return;
        }
        int engines = Integer.parseInt(arguments[1]);
        int first = Integer.parseInt(arguments[3]);
        Path file = Path.of(arguments[4]);
        Set<Integer> done = new HashSet<>();
        rows(file).forEach(row -> done.add(Integer.parseInt(row[0])));
        Calibration calibration = new Calibration(arguments[0], Integer.parseInt(arguments[2]), Parallel.WORKERS);
        for (int e = first; e < first + engines; e++) {
            if (!done.contains(e)) {
                StringBuilder line = new StringBuilder().append(e);
                calibration.engine(e).forEach(share -> line.append(' ').append(share));
                Files.writeString(
                        file, line.append('\n'), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
            }
        }
        for (int i = 0; i < Calibration.RANKED.size(); i++) {
            List<Double> shares = new ArrayList<>();
            for (String[] row : rows(file)) {
                if (row.length > 1) {
                    shares.add(Double.parseDouble(row[i + 1]));
                }
            }
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %d | %s | %.1f | %.2f |%n",
                    Calibration.RANKED.get(i),
                    shares.size(),
                    Arrays.toString(Calibration.counts(shares, BINS)),
                    Calibration.chiSquare(shares, BINS),
                    shares.stream().mapToDouble(x -> x).average().orElse(0));
        }
    }

    private static List<String[]> rows(Path file) throws IOException {
        return Files.exists(file)
                ? Files.readAllLines(file).stream().map(line -> line.split(" ")).toList()
                : List.of();
    }
}
