package dev.penstock.cycles.reading;

import dev.penstock.cycles.concept.ConceptInput;
import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A table of a concept file that notes each value asked for, so that a report can show every input with its source, the
 * defaults included.
 */
final class ConceptKeys {

    /** What a default rests on when no publication is cited. */
    static final String COMMON = "common practice, no source";

    private final InputTable table;
    private final Map<String, String> sources;
    private final List<ConceptInput> inputs;

    ConceptKeys(InputTable table, Map<String, String> sources, List<ConceptInput> inputs) {
        this.table = table;
        this.sources = sources;
        this.inputs = inputs;
    }

    ConceptKeys table(String key) {
        return new ConceptKeys(table.table(key), sources, inputs);
    }

    InputTable raw() {
        return table;
    }

    boolean has(String key) {
        return table.has(key);
    }

    /** A value that the concept must state. */
    double required(String key, Dimension dimension, Range range) {
        double value = table.quantity(key, dimension, range);
        note(key, number(value), dimension.siUnit(), true, "");
        return value;
    }

    /** A value with a default and what that rests on. */
    double quantity(String key, Dimension dimension, Range range, double otherwise, String basis) {
        double value = table.quantity(key, dimension, range, otherwise);
        note(key, number(value), dimension.siUnit(), table.has(key), basis);
        return value;
    }

    /** A value that may be left to the calculation. */
    OptionalDouble optional(String key, Dimension dimension, Range range, String basis) {
        OptionalDouble value = table.optionalQuantity(key, dimension, range);
        String text = value.isPresent() ? number(value.getAsDouble()) : "computed";
        note(key, text, value.isPresent() ? dimension.siUnit() : "", table.has(key), basis);
        return value;
    }

    OptionalInt optionalCount(String key, int low, int high, String basis) {
        boolean given = table.has(key);
        int value = table.integer(key, low, high, low);
        note(key, given ? Integer.toString(value) : "computed", "", given, basis);
        return given ? OptionalInt.of(value) : OptionalInt.empty();
    }

    int count(String key, int low, int high, int otherwise, String basis) {
        int value = table.integer(key, low, high, otherwise);
        note(key, Integer.toString(value), "", table.has(key), basis);
        return value;
    }

    boolean flag(String key, boolean otherwise, String basis) {
        boolean value = table.flag(key, otherwise);
        note(key, Boolean.toString(value), "", table.has(key), basis);
        return value;
    }

    String choice(String key, List<String> allowed, String otherwise, String basis) {
        String value = table.choice(key, allowed, otherwise);
        note(key, value, "", table.has(key), basis);
        return value;
    }

    <E extends Enum<E>> E choice(String key, Class<E> kind, E otherwise, String basis) {
        E value = table.choice(key, kind, otherwise);
        note(key, value.name().toLowerCase(Locale.ROOT).replace('_', '-'), "", table.has(key), basis);
        return value;
    }

    String text(String key) {
        String value = table.text(key);
        note(key, value, "", true, "");
        return value;
    }

    /** A word with a default. */
    String word(String key, String otherwise, String basis) {
        String value = table.optionalText(key).orElse(otherwise);
        note(key, value, "", table.has(key), basis);
        return value;
    }

    Optional<String> optionalText(String key) {
        Optional<String> value = table.optionalText(key);
        value.ifPresent(text -> note(key, text, "", true, ""));
        return value;
    }

    void problem(String key, String value, String allowed) {
        table.problem(key, value, allowed);
    }

    private void note(String key, String value, String unit, boolean given, String basis) {
        String path = table.pathOf(key);
        String stated = sources.getOrDefault(path, nearestTable(path));
        String source = given ? (stated.isEmpty() ? "concept file, no source given" : stated) : "default: " + basis;
        inputs.add(new ConceptInput(path, value, unit, given, source));
    }

    /** A source may be given for a whole table. */
    private String nearestTable(String path) {
        for (String p = path; p.contains("."); ) {
            p = p.substring(0, p.lastIndexOf('.'));
            String text = sources.get(p);
            if (text != null) {
                return text;
            }
        }
        return "";
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.8g", value)
                .replaceAll("(\\.\\d*?)0+($|e)", "$1$2")
                .replaceAll("\\.($|e)", "$1");
    }
}
