package dev.penstock.input;

import com.fasterxml.jackson.databind.JsonNode;
import dev.penstock.provenance.KeyPath;
import dev.penstock.provenance.Spread;
import dev.penstock.provenance.Words;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One table of an input file. A reader asks for each key with its kind and range; a missing or wrong value is noted and
 * a placeholder returned, so that all problems of a file surface together in {@link InputFile#finish()}, which must be
 * called before the values are used. Keys that nobody asked for are problems too. Not thread-safe.
 */
public final class InputTable {

    private final InputFile file;
    private final String path;
    private final JsonNode node;
    private Optional<InputGroup> group;
    private final Set<String> asked = new LinkedHashSet<>();
    private final Map<String, InputTable> children = new LinkedHashMap<>();

    InputTable(InputFile file, String path, JsonNode node, Optional<InputGroup> group) {
        this.file = file;
        this.group = group;
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
        return path.isEmpty() || key.isEmpty() ? path + key : path + "." + key;
    }

    /**
     * @param key key in this table
     * @return whether the key is present
     */
    public boolean has(String key) {
        return node.has(key);
    }

    /**
     * @param input an input of this table
     * @return whether the file states it
     */
    public boolean has(Input<?> input) {
        return has(input.key());
    }

    /**
     * @param group a table of this one, by its declaration
     * @return whether the file has it
     */
    public boolean has(InputGroup group) {
        return has(group.key());
    }

    /**
     * @param group a table of this one, by its declaration
     * @return that table, empty where the file has none
     */
    public InputTable table(InputGroup group) {
        return table(group.key());
    }

    /**
     * @param table a table of this one, by its path from here
     * @return that table, empty where the file has none
     */
    public InputTable at(TableKey table) {
        InputTable found = this;
        for (String key : KeyPath.keys(table.path())) {
            found = found.table(key);
        }
        return found;
    }

    /**
     * @param declared what this table may hold
     * @return this table, whose keys are checked against the declaration from now on
     */
    public InputTable as(InputGroup declared) {
        group = Optional.of(declared);
        return this;
    }

    /**
     * @param input a required input, or one whose default stands in its declaration
     * @param <T> type of its value
     * @return its value; a placeholder after a noted problem
     */
    public <T> T read(Input<T> input) {
        return input.silence() == Input.Silence.REQUIRED
                ? value(input, Optional.empty()).orElseGet(() -> input.kind().placeholder())
                : read(input, input.standing());
    }

    /**
     * @param input an input whose default follows from what else was read
     * @param usual that default
     * @param <T> type of its value
     * @return its value; the default after a noted problem
     */
    public <T> T read(Input<T> input, Usual<T> usual) {
        return value(input, Optional.of(usual)).orElse(usual.value());
    }

    /**
     * @param input an input that is left to the calculation where the file leaves it out
     * @param <T> type of its value
     * @return its value; empty if absent, or after a noted problem
     */
    public <T> Optional<T> find(Input<T> input) {
        if (input.silence() != Input.Silence.COMPUTED) {
            throw new IllegalArgumentException(pathOf(input.key()) + " is not left to the calculation");
        }
        return value(input, Optional.empty());
    }

    /**
     * Notes a problem where a key holds no value of an input that is read from elsewhere later.
     *
     * @param key key in this table
     * @param input the input whose value it should be
     */
    public void check(String key, Input<?> input) {
        JsonNode written = node.get(key);
        if (written != null) {
            input.kind().read(written, what -> problem('"' + key + '"', show(written), what));
        }
    }

    /**
     * @param input a number that is left to the calculation where the file leaves it out
     * @return its value, SI; empty if absent, or after a noted problem
     */
    public OptionalDouble number(Input<Double> input) {
        return find(input).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    /**
     * @param input a whole number that is left to the calculation where the file leaves it out
     * @return its value; empty if absent, or after a noted problem
     */
    public OptionalInt count(Input<Integer> input) {
        return find(input).map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    /**
     * @param input an input whose default follows from what else was read, here: that the calculation finds it
     * @param how how it does, as part of a sentence
     * @return its value, SI; empty if absent, or after a noted problem
     */
    public OptionalDouble number(Input<Double> input, String how) {
        return value(input, input.computed(how), Optional.empty())
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /**
     * Says of a table that is not there what that means, among the inputs.
     *
     * @param key key of the table
     * @param value a word for it
     * @param reason why, as part of a sentence
     */
    public void without(String key, String value, String reason) {
        asked.add(key);
        Input<String> input = Input.word(key, List.of(value), reason).usual(Usual.of(value, reason, ""));
        file.note(absent(input, input.usual()));
    }

    /**
     * @param key key in this table, quoted in the file where it has dots
     * @param input the input that it is about
     * @return lowest, most likely and highest value of it, SI; empty after a noted problem
     */
    public Optional<Spread> spread(String key, Input<?> input) {
        asked.add(key);
        JsonNode written = node.get(key);
        String quoted = '"' + key + '"';
        if (!(input.kind() instanceof InputKind.Quantity kind)) {
            problem(
                    quoted,
                    show(written),
                    "only a number with a range may be uncertain, and this is "
                            + input.kind().description());
            return Optional.empty();
        }
        List<Double> values = written.isArray()
                ? new InputKind.Many<>(kind)
                        .read(written, what -> problem(quoted, show(written), what))
                        .orElse(List.of())
                : List.of();
        if (!written.isArray() || written.size() != 3) {
            problem(quoted, show(written), "write [lowest, most likely, highest]");
        } else if (values.size() == 3 && !(values.get(0) <= values.get(1) && values.get(1) <= values.get(2))) {
            problem(quoted, show(written), "they must rise");
        } else if (values.size() == 3) {
            return Optional.of(new Spread(values.get(0), values.get(1), values.get(2)));
        }
        return Optional.empty();
    }

    private <T> Optional<T> value(Input<T> input, Optional<Usual<T>> usual) {
        return value(input, input, usual);
    }

    /**
     * @param input an input of this table
     * @return whether the file states it, or says at its top what it is where it is left out
     */
    public boolean settled(Input<?> input) {
        return has(input) || file.defaults().of(input, Optional.empty()).isPresent();
    }

    private <T> Optional<T> value(Input<T> input, Input<T> here, Optional<Usual<T>> declaredUsual) {
        String key = input.key();
        boolean declared = group.isPresent()
                && (group.get().inputs().contains(input)
                        || group.get().free().filter(input.kind()::equals).isPresent());
        if (!declared) {
            throw new IllegalArgumentException("no input " + pathOf(key) + " is declared");
        }
        asked.add(key);
        JsonNode written = node.get(key);
        if (written == null) {
            Optional<Usual<T>> usual = file.defaults().of(input, declaredUsual);
            if (input.silence() == Input.Silence.REQUIRED && usual.isEmpty()) {
                missing(key, input.kind().description());
            } else if (usual.filter(u -> u.value().equals("")).isEmpty()) {
                file.note(absent(here, usual));
            }
            return usual.map(Usual::value);
        }
        JsonNode meant = input.kind() instanceof InputKind.Text ? file.asText(pathOf(key), written) : written;
        Optional<T> value = input.kind().read(meant, what -> problem(key, show(written), what));
        value.ifPresent(v -> file.note(new InputValue(
                input, pathOf(key), value, true, file.source(pathOf(key)), Optional.empty(), "", List.of())));
        return value;
    }

    private <T> InputValue absent(Input<T> input, Optional<Usual<T>> usual) {
        Optional<T> value = usual.map(Usual::value);
        OptionalDouble number = value.map(InputValue::numberOf).orElse(OptionalDouble.empty());
        return new InputValue(
                input,
                pathOf(input.key()),
                value,
                false,
                "default: " + usual.map(Usual::basis).orElse(input.basis()),
                usual.flatMap(u -> u.spread().or(() -> scatter(input, number))),
                usual.map(Usual::source).orElse(""),
                usual.map(Usual::follows).orElse(List.of()));
    }

    private static Optional<Spread> scatter(Input<?> input, OptionalDouble number) {
        return number.isPresent() && input.kind() instanceof InputKind.Quantity kind
                ? input.scatter()
                        .map(s -> s.around(
                                number.getAsDouble(),
                                kind.range().low(),
                                kind.range().high()))
                : Optional.empty();
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
        return optionalQuantity(key, dimension, allowed).orElse(otherwise);
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
            return OptionalDouble.empty();
        }
        Optional<Double> si =
                new InputKind.Quantity(dimension, allowed).read(value, what -> problem(key, show(value), what));
        return si.isPresent() ? OptionalDouble.of(si.get()) : OptionalDouble.empty();
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
        if (value == null) {
            return List.of();
        }
        return new InputKind.Many<>(new InputKind.Quantity(dimension, allowed))
                .read(value, what -> problem(key, show(value), what))
                .orElse(List.of());
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
        return value == null
                ? otherwise
                : new InputKind.Whole(low, high)
                        .read(value, what -> problem(key, show(value), what))
                        .orElse(otherwise);
    }

    /**
     * @param key key in this table
     * @param otherwise value when the key is absent
     * @return true or false
     */
    public boolean flag(String key, boolean otherwise) {
        asked.add(key);
        JsonNode value = node.get(key);
        return value == null
                ? otherwise
                : new InputKind.Flag()
                        .read(value, what -> problem(key, show(value), what))
                        .orElse(otherwise);
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
        return optionalText(key).orElse(otherwise);
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
        return new InputKind.Text().read(file.asText(pathOf(key), value), what -> problem(key, show(value), what));
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
                Arrays.stream(kind.getEnumConstants()).map(Words::of).toList();
        String chosen = choice(key, names, Words.of(otherwise));
        return Enum.valueOf(kind, chosen.toUpperCase(Locale.ROOT).replace('-', '_'));
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
            return new InputTable(file, pathOf(k), child == null ? InputFile.emptyTable() : child, inside(k));
        });
    }

    private Optional<InputGroup> inside(String key) {
        if (named()) {
            // A name with dots may be written as tables inside tables; whoever reads it tells where the inputs begin.
            return group;
        }
        return group.map(g -> g.group(key)
                .orElseThrow(() -> new IllegalArgumentException("no table " + pathOf(key) + " is declared")));
    }

    private boolean named() {
        return group.map(g ->
                        g.presence() == InputGroup.Presence.NAMED || g.free().isPresent())
                .orElse(false);
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
            result.add(children.computeIfAbsent(name, n -> new InputTable(file, pathOf(n), child, inside(key))));
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
     * Notes that an input cannot be used as it stands.
     *
     * @param input an input of this table
     * @param value what the file says
     * @param allowed what it may say
     */
    public void problem(Input<?> input, String value, String allowed) {
        problem(input.key(), value, allowed);
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

    /**
     * Refuses a key that has given way to another, with a sentence that names the new one.
     *
     * @param key old key in this table
     * @param by the new key, with what it means if that has changed
     * @return whether the file still has the old one
     */
    public boolean replaced(String key, String by) {
        if (!has(key)) {
            return false;
        }
        asked.add(key);
        problem(key, show(node.get(key)), "write " + by);
        return true;
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
        Set<String> known = new LinkedHashSet<>(asked);
        group.ifPresent(g -> known.addAll(g.keys()));
        for (String key : keys()) {
            if (asked.contains(key)) {
                continue;
            }
            problem(
                    key,
                    "not a known key",
                    known.contains(key) ? "it means nothing beside what else is chosen here" : near(key, known));
        }
        children.values().forEach(InputTable::collectUnknown);
    }

    private static String near(String key, Set<String> known) {
        return known.stream()
                .min((a, b) -> Integer.compare(Spelling.distance(a, key), Spelling.distance(b, key)))
                .filter(k -> Spelling.distance(k, key) <= 1 + key.length() / 3)
                .map(k -> "did you mean " + k + "?")
                .orElseGet(() -> known.isEmpty()
                        ? "this table is not used here"
                        : "known here are " + known.stream().sorted().collect(Collectors.joining(", ")));
    }

    private static String show(JsonNode value) {
        return value.toString();
    }
}
