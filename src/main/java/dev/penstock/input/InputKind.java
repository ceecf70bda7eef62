package dev.penstock.input;

import com.fasterxml.jackson.databind.JsonNode;
import dev.penstock.provenance.Words;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.quantities.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * What a value of an input is: how it is read, written and described.
 *
 * @param <T> type of the value in Java, SI
 */
public sealed interface InputKind<T> {

    /**
     * @param node value as the file has it
     * @param problem told what is allowed where the value is not
     * @return the value; empty after a problem
     */
    Optional<T> read(JsonNode node, Consumer<String> problem);

    /**
     * @param value a value, SI
     * @return it as people read it, without its unit
     */
    String text(T value);

    /**
     * @param value a value, SI
     * @return it as a TOML file has it
     */
    String toml(T value);

    /**
     * @param number a number, SI
     * @return it as a change of a file has it, every bit of it
     */
    default String change(double number) {
        return unit().isEmpty() ? Double.toString(number) : number + " " + unit();
    }

    /** @return what is allowed, for people */
    String allowed();

    /** @return what stands in for a value after a noted problem */
    T placeholder();

    /** @return SI unit of its numbers; empty for anything else */
    default String unit() {
        return "";
    }

    /** @return the words that are allowed; none where anything else may stand */
    default List<String> names() {
        return List.of();
    }

    /** @return what to write, with an example */
    String description();

    /**
     * A number with its unit.
     *
     * @param dimension what it measures
     * @param range what is allowed, SI
     */
    record Quantity(Dimension dimension, Range range) implements InputKind<Double> {

        @Override
        public Optional<Double> read(JsonNode node, Consumer<String> problem) {
            Optional<Double> si = node.isNumber() && dimension == Dimension.RATIO
                    ? Optional.of(node.doubleValue())
                    : node.isValueNode() && !node.isNumber() ? Units.parse(node.asText(), dimension) : Optional.empty();
            if (si.isEmpty()) {
                problem.accept("write " + dimension.description());
            } else if (!range.contains(si.get())) {
                problem.accept("allowed is " + Units.describe(range, node.asText(), dimension));
                return Optional.empty();
            }
            return si;
        }

        @Override
        public String text(Double value) {
            return Digits.number(value, 8);
        }

        /** Every bit of it, so that what is read again is the same number. */
        @Override
        public String toml(Double value) {
            String number = Double.toString(value);
            return dimension == Dimension.RATIO ? number : '"' + number + ' ' + unit() + '"';
        }

        @Override
        public String allowed() {
            return range.describe(unit());
        }

        @Override
        public Double placeholder() {
            return Double.NaN;
        }

        @Override
        public String unit() {
            return dimension.siUnit();
        }

        @Override
        public String description() {
            return dimension.description();
        }
    }

    /**
     * A whole number.
     *
     * @param low smallest allowed
     * @param high largest allowed
     */
    record Whole(int low, int high) implements InputKind<Integer> {

        @Override
        public Optional<Integer> read(JsonNode node, Consumer<String> problem) {
            String text = node.asText();
            if (!text.matches("[-+]?\\d{1,9}")) {
                problem.accept("write a whole number from " + low + " to " + high);
                return Optional.empty();
            }
            int number = Integer.parseInt(text);
            if (number < low || number > high) {
                problem.accept("allowed is a whole number from " + low + " to " + high);
                return Optional.empty();
            }
            return Optional.of(number);
        }

        @Override
        public String text(Integer value) {
            return value.toString();
        }

        @Override
        public String toml(Integer value) {
            return value.toString();
        }

        @Override
        public String allowed() {
            return low + " to " + high;
        }

        @Override
        public Integer placeholder() {
            return low;
        }

        @Override
        public String description() {
            return "a whole number from " + allowed();
        }
    }

    /**
     * One of some words.
     *
     * @param names the words
     */
    record Word(List<String> names) implements InputKind<String> {

        public Word {
            names = List.copyOf(names);
        }

        @Override
        public Optional<String> read(JsonNode node, Consumer<String> problem) {
            if (!node.isTextual()) {
                problem.accept("write a text in quotes");
                return Optional.empty();
            }
            if (!names.contains(node.textValue())) {
                problem.accept("allowed are " + allowed());
                return Optional.empty();
            }
            return Optional.of(node.textValue());
        }

        @Override
        public String text(String value) {
            return value;
        }

        @Override
        public String toml(String value) {
            return '"' + value + '"';
        }

        @Override
        public String allowed() {
            return String.join(", ", names);
        }

        @Override
        public String placeholder() {
            return names.get(0);
        }

        @Override
        public String description() {
            return "one of " + allowed();
        }
    }

    /**
     * A constant of an enum, written in lower case with hyphens.
     *
     * @param type the enum
     * @param <E> the enum
     */
    record Choice<E extends Enum<E>>(Class<E> type) implements InputKind<E> {

        private Word words() {
            return new Word(
                    Arrays.stream(type.getEnumConstants()).map(this::text).toList());
        }

        @Override
        public Optional<E> read(JsonNode node, Consumer<String> problem) {
            return words().read(node, problem)
                    .map(word ->
                            Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace('-', '_')));
        }

        @Override
        public String text(E value) {
            return Words.of(value);
        }

        @Override
        public String toml(E value) {
            return '"' + text(value) + '"';
        }

        @Override
        public String allowed() {
            return words().allowed();
        }

        @Override
        public List<String> names() {
            return words().names();
        }

        @Override
        public E placeholder() {
            return type.getEnumConstants()[0];
        }

        @Override
        public String description() {
            return words().description();
        }
    }

    /** True or false. */
    record Flag() implements InputKind<Boolean> {

        @Override
        public Optional<Boolean> read(JsonNode node, Consumer<String> problem) {
            String text = node.asText();
            if (!text.equals("true") && !text.equals("false")) {
                problem.accept("write true or false");
                return Optional.empty();
            }
            return Optional.of(Boolean.parseBoolean(text));
        }

        @Override
        public List<String> names() {
            return List.of("true", "false");
        }

        @Override
        public String text(Boolean value) {
            return value.toString();
        }

        @Override
        public String toml(Boolean value) {
            return value.toString();
        }

        @Override
        public String allowed() {
            return "true, false";
        }

        @Override
        public Boolean placeholder() {
            return false;
        }

        @Override
        public String description() {
            return "true or false";
        }
    }

    /** Any text of a reasonable length without control characters. */
    record Text() implements InputKind<String> {

        private static final int LONGEST = 5000;

        @Override
        public Optional<String> read(JsonNode node, Consumer<String> problem) {
            if (!node.isTextual()) {
                problem.accept("write a text in quotes");
                return Optional.empty();
            }
            String text = node.textValue();
            if (text.length() > LONGEST || text.chars().anyMatch(Text::isControl)) {
                problem.accept("write at most " + LONGEST + " characters, none of them a control character");
                return Optional.empty();
            }
            return Optional.of(text);
        }

        private static boolean isControl(int c) {
            return Character.isISOControl(c) && c != '\n' && c != '\t' && c != '\r';
        }

        @Override
        public String text(String value) {
            return value;
        }

        @Override
        public String toml(String value) {
            return '"' + value.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
        }

        @Override
        public String allowed() {
            return "any text";
        }

        @Override
        public String placeholder() {
            return "";
        }

        @Override
        public String description() {
            return "a text";
        }
    }

    /** A value of another input, whatever kind that is: kept as the text that a TOML file has for it. */
    record Any() implements InputKind<String> {

        @Override
        public Optional<String> read(JsonNode node, Consumer<String> problem) {
            if (node.isObject()) {
                problem.accept("write a value, not a table");
                return Optional.empty();
            }
            return node.isTextual()
                    ? new Text().read(node, problem).map(new Text()::toml)
                    : Optional.of(node.toString());
        }

        @Override
        public String text(String value) {
            return value;
        }

        @Override
        public String toml(String value) {
            return value;
        }

        @Override
        public String allowed() {
            return "what its input allows";
        }

        @Override
        public String placeholder() {
            return "";
        }

        @Override
        public String description() {
            return "a value as a concept file has it";
        }
    }

    /** Lowest, most likely and highest value of another input. */
    record Bounds() implements InputKind<List<String>> {

        @Override
        public Optional<List<String>> read(JsonNode node, Consumer<String> problem) {
            if (!node.isArray() || node.size() != 3) {
                problem.accept("write [lowest, most likely, highest]");
                return Optional.empty();
            }
            List<String> texts = new ArrayList<>();
            node.forEach(n -> texts.add(n.asText()));
            return Optional.of(texts);
        }

        @Override
        public String text(List<String> value) {
            return String.join(", ", value);
        }

        @Override
        public String toml(List<String> value) {
            return '[' + text(value) + ']';
        }

        @Override
        public String allowed() {
            return "[lowest, most likely, highest]";
        }

        @Override
        public List<String> placeholder() {
            return List.of();
        }

        @Override
        public String description() {
            return allowed();
        }
    }

    /**
     * A list; a single value counts as a list of one.
     *
     * @param element what is listed
     * @param <T> type of an element
     */
    record Many<T>(InputKind<T> element) implements InputKind<List<T>> {

        @Override
        public Optional<List<T>> read(JsonNode node, Consumer<String> problem) {
            List<T> list = new ArrayList<>();
            if (node.isArray()) {
                node.forEach(n -> element.read(n, problem).ifPresent(list::add));
            } else {
                element.read(node, problem).ifPresent(list::add);
            }
            return Optional.of(List.copyOf(list));
        }

        @Override
        public String text(List<T> value) {
            return value.stream().map(element::text).collect(Collectors.joining(", "));
        }

        @Override
        public String toml(List<T> value) {
            return value.stream().map(element::toml).collect(Collectors.joining(", ", "[", "]"));
        }

        @Override
        public String allowed() {
            return "a list, each " + element.allowed();
        }

        @Override
        public List<T> placeholder() {
            return List.of();
        }

        @Override
        public String unit() {
            return element.unit();
        }

        @Override
        public String description() {
            return "a list, each " + element.description();
        }
    }
}
