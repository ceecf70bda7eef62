package dev.penstock.cycles.concept;

import dev.penstock.input.InputTable;
import dev.penstock.provenance.Spread;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An input known within bounds, in the unit that the concept writes it in.
 *
 * @param spread lowest, most likely and highest value, in {@code unit}
 * @param unit unit as a concept file would have it; empty for plain numbers
 * @param source where the spread comes from
 */
public record UncertainValue(Spread spread, String unit, String source) {

    private static final Pattern VALUE =
            Pattern.compile("\\s*([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)\\s*(.*?)\\s*");

    /**
     * @param probability cumulative probability (-), 0 to 1
     * @return the value there, as a concept file would have it
     */
    public String quantile(double probability) {
        String number = String.format(Locale.ROOT, "%.10g", spread.quantile(probability));
        return unit.isEmpty() ? number : number + " " + unit;
    }

    /** Reads a table of {@code "key" = [low, mode, high]}. */
    public static Map<String, UncertainValue> read(InputTable table) {
        Map<String, UncertainValue> map = new LinkedHashMap<>();
        for (String key : table.keys()) {
            List<String> texts = table.texts(key);
            List<Matcher> parts =
                    texts.stream().map(VALUE::matcher).filter(Matcher::matches).toList();
            boolean sameUnit = parts.stream().map(m -> m.group(2)).distinct().count() == 1;
            if (texts.size() != 3 || parts.size() != 3 || !sameUnit) {
                table.problem('"' + key + '"', texts.toString(), "write [lowest, most likely, highest] in one unit");
                continue;
            }
            double low = Double.parseDouble(parts.get(0).group(1));
            double mode = Double.parseDouble(parts.get(1).group(1));
            double high = Double.parseDouble(parts.get(2).group(1));
            if (!Double.isFinite(low) || !Double.isFinite(high)) {
                table.problem('"' + key + '"', texts.toString(), "they must be finite");
                continue;
            }
            if (!(low <= mode && mode <= high)) {
                table.problem('"' + key + '"', texts.toString(), "they must rise");
                continue;
            }
            map.put(
                    key,
                    new UncertainValue(new Spread(low, mode, high), parts.get(0).group(2), "concept file"));
        }
        return map;
    }
}
