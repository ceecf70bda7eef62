package dev.penstock.input;

import com.fasterxml.jackson.databind.JsonNode;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.quantities.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One table of an input file. A reader asks for each key with its kind and range; a missing or wrong value is noted and
 * a placeholder returned, so that all problems of a file surface together in {@link InputFile#finish()}, which must be
 * called before the values are used. Keys that nobody asked for are problems too. Not thread-safe.
 */
public final class InputTable {

    private static final String COMPUTED = "computed";
    private static final int LONGEST_TEXT = 5000;

    private final InputFile file;
    private final String path;
    private final JsonNode node;
    private final Set<String> asked = new LinkedHashSet<>();
    private final Map<String, InputTable> children = new LinkedHashMap<>();

    InputTable(InputFile file, String path, JsonNode node) {
        this.file = file;
        this.path = path;
        this.node = node;
    }

    /** @return dotted path of this table; empty for the root */
    public String path() {
        return path;
    }

    /**
     * @param key key in this table
     * @return its dotted path from the root of the file
     */
    public String pathOf(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    /**
     * @param key key in this table
     * @return whether the key is present
     */
    public boolean has(String key) {
        return node.has(key);
    }

    /** @return the keys of this table in file order */
    public List<String> keys() {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    /**
     * @param key key in this table
     * @param dimension kind of quantity
     * @param allowed allowed range, SI
     * @return the value in SI; NaN after a noted problem
     */
    public double quantity(String key, Dimension dimension, Range allowed) {
        return optionalQuantity(key, dimension, allowed).orElseGet(() -> {
            if (!has(key)) {
                missing(key, dimension.description());
            }
            return Double.NaN;
        });
    }

    /**
     * @param key key in this table
     * @param dimension kind of quantity
     * @param allowed allowed range, SI
     * @param otherwise value when the key is absent, SI
     * @return the value in SI, or {@code otherwise}
     */
    public double quantity(String key, Dimension dimension, Range allowed, double otherwise) {
        OptionalDouble value = optionalQuantity(key, dimension, allowed);
        if (!has(key)) {
            note(key, plain(otherwise), dimension.siUnit(), false);
        }
        return value.orElse(otherwise);
    }

    private void note(String key, String value, String unit, boolean given) {
        file.note(new AskedInput(pathOf(key), value, unit, given));
    }

    /** Eight digits are more than anybody writes, and hide the round-off of a change of units. */
    private static String plain(double value) {
        BigDecimal rounded = new BigDecimal(value, new MathContext(8)).stripTrailingZeros();
        return Math.abs(rounded.precision() - rounded.scale()) < 10 ? rounded.toPlainString() : rounded.toString();
    }

    /**
     * @param key key in this table
     * @param dimension kind of quantity
     * @param allowed allowed range, SI
     * @return the value in SI; empty if absent or after a noted problem
     */
    public OptionalDouble optionalQuantity(String key, Dimension dimension, Range allowed) {
        asked.add(key);
        JsonNode value = node.get(key);
        if (value == null) {
            note(key, COMPUTED, "", false);
            return OptionalDouble.empty();
        }
        OptionalDouble si = toSi(key, value, dimension, allowed);
        si.ifPresent(number -> note(key, plain(number), dimension.siUnit(), true));
        return si;
    }

    private OptionalDouble toSi(String key, JsonNode value, Dimension dimension, Range allowed) {
        Optional<Double> si = value.isNumber() && dimension == Dimension.RATIO
                ? Optional.of(value.doubleValue())
                : value.isValueNode() && !value.isNumber() ? Units.parse(value.asText(), dimension) : Optional.empty();
        if (si.isEmpty()) {
            problem(key, show(value), "write " + dimension.description());
            return OptionalDouble.empty();
        }
        if (!allowed.contains(si.get())) {
            problem(key, show(value), "allowed is " + allowed.describe(dimension.siUnit()));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(si.get());
    }

    /**
     * @param key key in this table
     * @param dimension kind of the elements
     * @param allowed allowed range of each element, SI
     * @return the elements in SI; a single value counts as a list of one; empty if absent
     */
    public List<Double> quantities(String key, Dimension dimension, Range allowed) {
        asked.add(key);
        JsonNode value = node.get(key);
        List<Double> list = new ArrayList<>();
        if (value == null) {
            note(key, COMPUTED, "", false);
            return list;
        }
        if (value.isArray()) {
            value.forEach(element -> toSi(key, element, dimension, allowed).ifPresent(list::add));
        } else {
            toSi(key, value, dimension, allowed).ifPresent(list::add);
        }
        String all = list.stream().map(InputTable::plain).collect(Collectors.joining(", "));
        note(key, all, dimension.siUnit(), true);
        return list;
    }

    /**
     * @param key key in this table
     * @param low smallest allowed
     * @param high largest allowed
     * @param otherwise value when the key is absent
     * @return the whole number
     */
    public int integer(String key, int low, int high, int otherwise) {
        asked.add(key);
        JsonNode value = node.get(key);
        note(key, value == null ? Integer.toString(otherwise) : value.asText(), "", value != null);
        if (value == null) {
            return otherwise;
        }
        String text = value.asText();
        if (!text.matches("[-+]?\\d{1,9}")) {
            problem(key, show(value), "write a whole number from " + low + " to " + high);
            return otherwise;
        }
        int number = Integer.parseInt(text);
        if (number < low || number > high) {
            problem(key, show(value), "allowed is a whole number from " + low + " to " + high);
            return otherwise;
        }
        return number;
    }

    /**
     * @param key key in this table
     * @param otherwise value when the key is absent
     * @return true or false
     */
    public boolean flag(String key, boolean otherwise) {
        asked.add(key);
        JsonNode value = node.get(key);
        note(key, value == null ? Boolean.toString(otherwise) : value.asText(), "", value != null);
        if (value == null) {
            return otherwise;
        }
        String text = value.asText();
        if (!text.equals("true") && !text.equals("false")) {
            problem(key, show(value), "write true or false");
            return otherwise;
        }
        return Boolean.parseBoolean(text);
    }

    /**
     * @param key key in this table
     * @return the text; empty string after a noted problem
     */
    public String text(String key) {
        return optionalText(key).orElseGet(() -> {
            if (!has(key)) {
                missing(key, "a text");
            }
            return "";
        });
    }

    /**
     * @param key key in this table
     * @param otherwise text when the key is absent
     * @return the text
     */
    public String text(String key, String otherwise) {
        Optional<String> value = optionalText(key);
        if (!has(key) && !otherwise.isEmpty()) {
            note(key, otherwise, "", false);
        }
        return value.orElse(otherwise);
    }

    /**
     * @param key key in this table
     * @return the text, if present
     */
    public Optional<String> optionalText(String key) {
        asked.add(key);
        JsonNode value = node.get(key);
        if (value == null) {
            return Optional.empty();
        }
        if (!value.isTextual()) {
            problem(key, show(value), "write a text in quotes");
            return Optional.empty();
        }
        String text = value.textValue();
        if (text.length() > LONGEST_TEXT || text.chars().anyMatch(InputTable::isControl)) {
            problem(
                    key,
                    show(value),
                    "write at most " + LONGEST_TEXT + " characters, none of them a control character");
            return Optional.empty();
        }
        note(key, text, "", true);
        return Optional.of(text);
    }

    /**
     * @param key key in this table
     * @return the texts of a list; a single text counts as a list of one; empty if absent
     */
    public List<String> texts(String key) {
        asked.add(key);
        JsonNode value = node.get(key);
        if (value == null) {
            return List.of();
        }
        if (value.isTextual()) {
            return List.of(value.textValue());
        }
        List<String> list = new ArrayList<>();
        value.forEach(element -> list.add(element.asText()));
        if (!value.isArray()) {
            problem(key, show(value), "write a list of texts");
        }
        return list;
    }

    /**
     * @param key key in this table
     * @param allowed allowed names
     * @return the name; the first allowed one after a noted problem
     */
    public String choice(String key, List<String> allowed) {
        String value = text(key);
        return value.isEmpty() && !has(key) ? allowed.get(0) : oneOf(key, value, allowed);
    }

    /**
     * @param key key in this table
     * @param allowed allowed names
     * @param otherwise name when the key is absent
     * @return the name
     */
    public String choice(String key, List<String> allowed, String otherwise) {
        if (!has(key)) {
            note(key, otherwise, "", false);
        }
        return optionalText(key).map(value -> oneOf(key, value, allowed)).orElse(otherwise);
    }

    /**
     * @param key key in this table
     * @param kind enum whose constants, written in lower case with hyphens, are allowed
     * @param otherwise constant when the key is absent
     * @param <E> the enum
     * @return the constant
     */
    public <E extends Enum<E>> E choice(String key, Class<E> kind, E otherwise) {
        List<String> names =
                Arrays.stream(kind.getEnumConstants()).map(InputTable::nameOf).toList();
        String chosen = choice(key, names, nameOf(otherwise));
        return Enum.valueOf(kind, chosen.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private static String nameOf(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private String oneOf(String key, String value, List<String> allowed) {
        if (allowed.contains(value)) {
            return value;
        }
        problem(key, '"' + value + '"', "allowed are " + String.join(", ", allowed));
        return allowed.get(0);
    }

    /**
     * @param key key of a table in this table
     * @return the table; an empty one if absent
     */
    public InputTable table(String key) {
        asked.add(key);
        return children.computeIfAbsent(key, k -> {
            JsonNode child = node.get(k);
            if (child != null && !child.isObject()) {
                problem(k, show(child), "write a table [" + pathOf(k) + "]");
                child = null;
            }
            return new InputTable(file, pathOf(k), child == null ? InputFile.emptyTable() : child);
        });
    }

    /**
     * @param key key of a list of tables, written {@code [[key]]}
     * @return the tables; empty if absent
     */
    public List<InputTable> tables(String key) {
        asked.add(key);
        JsonNode list = node.get(key);
        if (list == null) {
            return List.of();
        }
        if (!list.isArray()) {
            problem(key, show(list), "write tables headed [[" + pathOf(key) + "]]");
            return List.of();
        }
        List<InputTable> result = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            String name = key + "[" + i + "]";
            JsonNode child = list.get(i);
            result.add(children.computeIfAbsent(name, n -> new InputTable(file, pathOf(n), child)));
        }
        return result;
    }

    /** @return the tables inside this one by key, in file order */
    public Map<String, InputTable> tables() {
        Map<String, InputTable> map = new LinkedHashMap<>();
        keys().stream().filter(k -> node.get(k).isObject()).forEach(k -> map.put(k, table(k)));
        return map;
    }

    /**
     * Notes a problem that the reader found by itself.
     *
     * @param key key in this table
     * @param value what was written
     * @param allowed what is allowed, as the end of a sentence
     */
    public void problem(String key, String value, String allowed) {
        file.problem(pathOf(key), value, allowed);
    }

    private void missing(String key, String description) {
        problem(key, "missing", "write " + description);
    }

    /**
     * Leaves a key to another reader of the same text: neither its value nor what is inside it is checked here.
     *
     * @param key key in this table
     */
    public void leave(String key) {
        asked.add(key);
    }

    void collectUnknown() {
        for (String key : keys()) {
            if (!asked.contains(key)) {
                String known = asked.stream()
                        .min((a, b) -> Integer.compare(Spelling.distance(a, key), Spelling.distance(b, key)))
                        .filter(k -> Spelling.distance(k, key) <= 1 + key.length() / 3)
                        .map(k -> "did you mean " + k + "?")
                        .orElseGet(() -> asked.isEmpty()
                                ? "this table is not used here"
                                : "known here are " + asked.stream().sorted().collect(Collectors.joining(", ")));
                problem(key, "not a known key", known);
            }
        }
        children.values().forEach(InputTable::collectUnknown);
    }

    private static boolean isControl(int c) {
        return Character.isISOControl(c) && c != '\n' && c != '\t' && c != '\r';
    }

    private static String show(JsonNode value) {
        return value.toString();
    }
}
