package dev.penstock.study;

import dev.penstock.errors.InvalidInput;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
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
    private static final int MOST_VALUES = 1000;

    private static final String NUMBER = "[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?";
    private static final Pattern RANGE = Pattern.compile(
            "(" + NUMBER + ")\\s*([^.:\\d][^:]*?)?\\s*\\.\\.\\s*(" + NUMBER + ")\\s*([^:]*?)\\s*:\\s*(\\d+)");
    private static final Pattern VALUE = Pattern.compile("(" + NUMBER + ")\\s*(.*)");
    private static final String ALLOWED =
            "write path=from..to:count, for example engine.chamber_pressure=4..20MPa:9, or path=value,value,...";

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
        int equals = text.indexOf('=');
        String path = equals < 0 ? "" : text.substring(0, equals).strip();
        String rest = text.substring(equals + 1).strip();
        if (!path.matches("[\\w-]+(\\.[\\w-]+)*") || rest.isEmpty()) {
            throw new InvalidInput("", "--vary", text, ALLOWED);
        }
        Matcher range = RANGE.matcher(rest);
        if (range.matches()) {
            return range(text, path, range);
        }
        List<String> values =
                Arrays.stream(rest.split(",", -1)).map(String::strip).toList();
        if (rest.contains("..") || values.stream().anyMatch(String::isEmpty)) {
            throw new InvalidInput("", "--vary", text, ALLOWED);
        }
        return new Axis(path, values, commonUnit(values));
    }

    private static Axis range(String text, String path, Matcher range) {
        String unit = range.group(4);
        String firstUnit = range.group(2) == null ? unit : range.group(2);
        int count = range.group(5).length() > 6 ? Integer.MAX_VALUE : Integer.parseInt(range.group(5));
        if (!firstUnit.equals(unit) || count < 2 || count > MOST_VALUES) {
            throw new InvalidInput(
                    "", "--vary", text, "both ends need the same unit, and the count must be 2 to " + MOST_VALUES);
        }
        double from = Double.parseDouble(range.group(1));
        double to = Double.parseDouble(range.group(3));
        List<String> values = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double value = i == count - 1 ? to : from + (to - from) * i / (count - 1);
            values.add(number(value) + (unit.isEmpty() ? "" : " " + unit));
        }
        return new Axis(path, values, unit);
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

    /**
     * @param value a value of this axis
     * @return its number in the unit of the axis; empty if it is a word
     */
    public static OptionalDouble numberOf(String value) {
        Matcher matcher = VALUE.matcher(value);
        return matcher.matches() ? OptionalDouble.of(Double.parseDouble(matcher.group(1))) : OptionalDouble.empty();
    }

    /** @return whether every value is a number */
    public boolean numeric() {
        return values.stream().allMatch(v -> numberOf(v).isPresent());
    }
}
