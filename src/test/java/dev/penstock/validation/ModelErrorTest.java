package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.claims.likelihood.ModelError;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** What judgements take the model to be off by is what the pages of built engines show. */
class ModelErrorTest {

    private static final Path PERFORMANCE = Path.of("docs/validation/performance.md");
    private static final Path RATINGS = Path.of("docs/validation/ratings.md");

    /** Rows of the first table whose head begins with a word. */
    private static List<String[]> rows(Path page, String head) throws IOException {
        List<String[]> rows = new ArrayList<>();
        boolean inside = false;
        for (String line : Files.readAllLines(page)) {
            if (line.startsWith("| " + head + " |")) {
                inside = true;
            } else if (inside && !line.startsWith("|")) {
                return rows;
            } else if (inside && !line.startsWith("|--")) {
                rows.add(line.split("\\|", -1));
            }
        }
        return rows;
    }

    private static List<Double> misses(List<String[]> rows, int column, Predicate<String[]> which) {
        return rows.stream()
                .filter(which)
                .map(r -> r[column].replace("%", "").replace(" ", ""))
                .filter(cell -> !cell.isEmpty())
                .map(cell -> Double.parseDouble(cell) / 100)
                .toList();
    }

    private static double rootMeanSquare(List<Double> misses) {
        return Math.sqrt(misses.stream().mapToDouble(m -> m * m).average().orElseThrow());
    }

    private static List<Double> masses(Predicate<String[]> which) throws IOException {
        return misses(rows(RATINGS, "engine"), 10, which).stream()
                .map(Math::log1p)
                .toList();
    }

    @Test
    void impulsesAreOffByWhatThePageShows() throws IOException {
        List<String[]> rows = rows(PERFORMANCE, "Engine");
        assertThat(ModelError.VACUUM_IMPULSE / rootMeanSquare(misses(rows, 9, r -> true)))
                .isBetween(0.8, 1.5);
        assertThat(ModelError.SEA_LEVEL / rootMeanSquare(misses(rows, 12, r -> true)))
                .isBetween(0.8, 1.5);
    }

    @Test
    void massesAreOffByWhatThePageShows() throws IOException {
        Predicate<String[]> pumped = r -> !r[2].strip().equals("pressure-fed");
        assertThat(ModelError.MASS / rootMeanSquare(masses(pumped))).isBetween(0.8, 1.5);
        // Two engines tell little: not less than they show is all that can be asked.
        assertThat(ModelError.MASS / rootMeanSquare(masses(pumped.negate()))).isGreaterThan(0.8);
    }
}
