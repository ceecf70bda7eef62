package dev.penstock.validation;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One engine with its published figures, a row of {@code src/test/resources/validation/engines.csv}. */
record PublishedEngine(Map<String, String> cells) {

    private static final Map<String, String> IDS = Map.of(
            "LOX", "oxygen",
            "LH2", "hydrogen",
            "RP-1", "rp-1",
            "kerosene", "rp-1",
            "N2O4", "nitrogen-tetroxide",
            "Aerozine-50", "hydrazine-50",
            "UH25", "uh-25");

    private static final Pattern SEEN = Pattern.compile("^seen in look-up: (.*?); other numbers from memory");

    static List<PublishedEngine> all() {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                PublishedEngine.class.getResourceAsStream("/validation/engines.csv"), StandardCharsets.UTF_8))) {
            List<List<String>> rows = new ArrayList<>();
            reader.lines().forEach(line -> rows.add(split(line)));
            List<PublishedEngine> engines = new ArrayList<>();
            for (List<String> row : rows.subList(1, rows.size())) {
                Map<String, String> cells = new LinkedHashMap<>();
                for (int i = 0; i < row.size(); i++) {
                    cells.put(rows.get(0).get(i), row.get(i));
                }
                engines.add(new PublishedEngine(cells));
            }
            return engines;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String name() {
        return cells.get("engine");
    }

    String cycle() {
        return cells.get("cycle");
    }

    String oxidizer() {
        return IDS.get(cells.get("oxidizer"));
    }

    String fuel() {
        return IDS.get(cells.get("fuel"));
    }

    String text(String column) {
        return cells.getOrDefault(column, "");
    }

    /** The figure as a page shows it: with an asterisk if nobody has read it in the source that the row names. */
    String shown(String column) {
        String text = text(column);
        return text.isEmpty() || seen().contains(column) ? text : text + "*";
    }

    /** Columns that the note says were read, not remembered. */
    private List<String> seen() {
        Matcher list = SEEN.matcher(text("note"));
        return list.find() ? List.of(list.group(1).split("; ")) : List.of();
    }

    double number(String column) {
        return Double.parseDouble(cells.get(column));
    }

    OptionalDouble published(String column) {
        String text = text(column);
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }

    boolean storable() {
        return oxidizer().equals("nitrogen-tetroxide");
    }

    /** Splits a line at commas outside double quotes. */
    private static List<String> split(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
