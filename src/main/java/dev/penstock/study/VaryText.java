package dev.penstock.study;

import dev.penstock.errors.InvalidInput;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What somebody wrote of an input to vary, before it is known what the input is: {@code path=from..to}, with
 * {@code :count} behind it for a grid, or {@code path=value,value,...}.
 *
 * @param text all of it
 * @param path dotted path of the input
 * @param values the values of a list; empty for a range
 * @param from first end of a range, in its unit
 * @param to other end of a range, in its unit
 * @param unit unit of a range; empty for plain numbers and for a list
 * @param count how many values a range stands for, if that was said
 */
public record VaryText(
        String text, String path, List<String> values, double from, double to, String unit, OptionalInt count) {

    static final String NUMBER = "[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?";
    private static final Pattern RANGE = Pattern.compile(
            "(" + NUMBER + ")\\s*([^.:\\d][^:]*?)?\\s*\\.\\.\\s*(" + NUMBER + ")\\s*([^:]*?)\\s*(?::\\s*(\\d+))?");
    static final String PATH = "[\\w-]+(\\[\\d+])?(\\.[\\w-]+(\\[\\d+])?)*";

    public VaryText {
        values = List.copyOf(values);
    }

    /**
     * @param text what was written
     * @param allowed what may be written, for the message
     * @return its parts
     * @throws InvalidInput if it is neither a range nor a list
     */
    public static VaryText parse(String text, String allowed) {
        int equals = text.indexOf('=');
        String path = equals < 0 ? "" : text.substring(0, equals).strip();
        String rest = text.substring(equals + 1).strip();
        if (!path.matches(PATH) || rest.isEmpty()) {
            throw new InvalidInput("", "--vary", text, allowed);
        }
        Matcher range = RANGE.matcher(rest);
        if (range.matches()) {
            return range(text, path, range);
        }
        List<String> values =
                Arrays.stream(rest.split(",", -1)).map(String::strip).toList();
        if (rest.contains("..") || values.stream().anyMatch(String::isEmpty)) {
            throw new InvalidInput("", "--vary", text, allowed);
        }
        return new VaryText(text, path, values, 0, 0, "", OptionalInt.empty());
    }

    private static VaryText range(String text, String path, Matcher range) {
        String unit = range.group(4);
        String firstUnit = range.group(2) == null ? unit : range.group(2);
        if (!firstUnit.equals(unit)) {
            throw new InvalidInput("", "--vary", text, "both ends need the same unit");
        }
        String said = range.group(5);
        OptionalInt count = said == null
                ? OptionalInt.empty()
                : OptionalInt.of(said.length() > 6 ? Integer.MAX_VALUE : Integer.parseInt(said));
        return new VaryText(
                text,
                path,
                List.of(),
                Double.parseDouble(range.group(1)),
                Double.parseDouble(range.group(3)),
                unit,
                count);
    }

    /** @return whether it names its values one by one */
    public boolean isList() {
        return !values.isEmpty();
    }
}
