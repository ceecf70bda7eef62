package dev.penstock.study;

import dev.penstock.errors.InvalidInput;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One input that a sweep varies.
 *
 * @param path dotted path of the input
 * @param values values to try, as a concept file would have them
 * @param unit unit of the values; empty for plain numbers and for words
 */
public record Axis(String path, List<String> values, String unit) {

    /** More values of one input than anybody reads. */
    public static final int MOST_VALUES = 1000;

    private static final Pattern VALUE = Pattern.compile("(" + VaryText.NUMBER + ")\\s*(.*)");
    private static final String ALLOWED =
            "write path=from..to:count, for example engine.chamber_pressure=4..20MPa:9, or path=value,value,...";

    /** Digits of a value that people read. */
    private static final int READ = 6;

    public Axis {
        values = List.copyOf(values);
        if (path.isBlank() || values.isEmpty()) {
            throw new IllegalArgumentException("an axis needs a path and values");
        }
    }

    /**
     * @param text {@code path=from..to:count}, ends included, or {@code path=value,value,...}
     * @return the axis
     * @throws InvalidInput if the text is neither
     */
    public static Axis parse(String text) {
        VaryText said = VaryText.parse(text, ALLOWED);
        if (said.isList()) {
            return new Axis(said.path(), said.values(), commonUnit(said.values()));
        }
        int count = said.count().orElseThrow(() -> new InvalidInput("", "--vary", text, ALLOWED));
        if (count < 2 || count > MOST_VALUES) {
            throw new InvalidInput("", "--vary", text, "the count must be 2 to " + MOST_VALUES);
        }
        List<String> values = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double value = i == count - 1 ? said.to() : said.from() + (said.to() - said.from()) * i / (count - 1);
            values.add(number(value) + (said.unit().isEmpty() ? "" : " " + said.unit()));
        }
        return new Axis(said.path(), values, said.unit());
    }

    private static String commonUnit(List<String> values) {
        String unit = "";
        for (String value : values) {
            Matcher matcher = VALUE.matcher(value);
            if (!matcher.matches()) {
                return "";
            }
            unit = matcher.group(2);
        }
        return unit;
    }

    /** Ten digits: free of the last bits of the division, exact enough for any input. */
    private static String number(double value) {
        return String.format(Locale.ROOT, "%.10g", value)
                .replaceAll("(\\.\\d*?)0+($|e)", "$1$2")
                .replaceAll("\\.($|e)", "$1");
    }

    /** @return the values as people read them, by value: rounded to six digits where that leaves all of them different */
    public Map<String, String> read() {
        Map<String, String> read = new LinkedHashMap<>();
        values.forEach(value -> read.put(value, rounded(value)));
        if (new HashSet<>(read.values()).size() < read.size()) {
            read.replaceAll((value, rounded) -> value);
        }
        return read;
    }

    private static String rounded(String value) {
        Matcher matcher = VALUE.matcher(value);
        if (!matcher.matches() || new BigDecimal(matcher.group(1)).precision() <= READ) {
            return value;
        }
        String number = new BigDecimal(matcher.group(1))
                .round(new MathContext(READ))
                .stripTrailingZeros()
                .toPlainString();
        return matcher.group(2).isEmpty() ? number : number + " " + matcher.group(2);
    }

    /**
     * @param value a value of this axis
     * @return its number in the unit of the axis; empty if it is a word
     */
    public static OptionalDouble numberOf(String value) {
        Matcher matcher = VALUE.matcher(value);
        return matcher.matches() ? OptionalDouble.of(Double.parseDouble(matcher.group(1))) : OptionalDouble.empty();
    }

    /**
     * @param after place of a number, which another one follows
     * @return this axis with a number in the middle between the two
     */
    public Axis between(int after) {
        double left = numberOf(values.get(after)).orElseThrow();
        double right = numberOf(values.get(after + 1)).orElseThrow();
        List<String> more = new ArrayList<>(values);
        more.add(after + 1, number(0.5 * (left + right)) + (unit.isEmpty() ? "" : " " + unit));
        return new Axis(path, more, unit);
    }

    /**
     * @param other the same axis with other values
     * @return this axis without those; empty if nothing is left
     */
    public Optional<Axis> without(Axis other) {
        List<String> left =
                values.stream().filter(v -> !other.values().contains(v)).toList();
        return left.isEmpty() ? Optional.empty() : Optional.of(new Axis(path, left, unit));
    }

    /** @return whether every value is a number */
    public boolean numeric() {
        return values.stream().allMatch(v -> numberOf(v).isPresent());
    }
}
