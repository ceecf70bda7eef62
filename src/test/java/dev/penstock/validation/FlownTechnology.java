package dev.penstock.validation;

import dev.penstock.cycles.reading.Technology;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Chamber pressure that flew with a kind of wall, a row of {@code src/test/resources/validation/technology.csv}. What its column
 * {@code seen} does not name as seen, and every cell with "(memory)", is from memory. The column {@code level} is our own judgement.
 *
 * @param cells text by column
 */
record FlownTechnology(Map<String, String> cells) {

    static List<FlownTechnology> all() {
        return PublishedEngine.table("/validation/technology.csv").stream()
                .map(FlownTechnology::new)
                .toList();
    }

    String engine() {
        return cells.get("engine");
    }

    /** Level of technology that the row belongs to; none for walls that no level describes. */
    java.util.Optional<Technology> level() {
        return Arrays.stream(Technology.values())
                .filter(t -> t.word().equals(cells.get("level")))
                .findFirst();
    }

    String text(String column) {
        return cells.get(column);
    }

    OptionalDouble number(String column) {
        String text = text(column);
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }
}
