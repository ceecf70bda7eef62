package dev.penstock.quantities;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.IncommensurableException;
import javax.measure.Unit;

/** Reads a value with its unit, {@code "7.5 MPa"}, into SI, and writes SI values in another unit. */
public final class Units {

    private static final Pattern VALUE =
            Pattern.compile("\\s*([-+]?(?:\\d[\\d_]*\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)\\s*(.*?)\\s*");

    /** Longer than any number with its unit. */
    private static final int LONGEST = 200;

    private static final Map<Dimension, Unit<?>> SI = siUnits();

    private Units() {}

    /**
     * @param text number and unit, for example "1100 psi"; a plain number is allowed only for {@link Dimension#RATIO}
     * @param dimension kind of quantity expected
     * @return the value in SI; empty if the text is no number, or its unit is unknown, missing or of another dimension
     */
    public static Optional<Double> parse(String text, Dimension dimension) {
        Matcher matcher = VALUE.matcher(text.length() > LONGEST ? "" : text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        double number = Double.parseDouble(matcher.group(1).replace("_", ""));
        String unitText = matcher.group(2);
        if (!Double.isFinite(number)) {
            return Optional.empty();
        }
        if (unitText.isEmpty()) {
            return dimension == Dimension.RATIO ? Optional.of(number) : Optional.empty();
        }
        return UnitExpression.parse(unitText)
                .flatMap(unit -> convert(number, unit, SI.get(dimension)))
                .filter(value -> dimension != Dimension.TEMPERATURE_DIFFERENCE || !hasOffset(unitText))
                .filter(Double::isFinite);
    }

    /**
     * @param value value in SI
     * @param unitText unit to write it in, for example "bar"
     * @param dimension kind of quantity
     * @return the number in that unit
     * @throws IllegalArgumentException if the unit is unknown or of another dimension (a defect in the caller)
     */
    public static double in(double value, String unitText, Dimension dimension) {
        return UnitExpression.parse(unitText)
                .flatMap(unit -> convert(value, SI.get(dimension), unit))
                .orElseThrow(() -> new IllegalArgumentException(unitText + " is no unit of " + dimension));
    }

    /**
     * @param range allowed values, SI
     * @param text number and unit that somebody has written
     * @param dimension kind of quantity
     * @return the range in words, in the unit that was written; in SI if none was
     */
    public static String describe(Range range, String text, Dimension dimension) {
        Matcher matcher = VALUE.matcher(text.length() > LONGEST ? "" : text);
        String unit = matcher.matches() ? matcher.group(2) : "";
        return unit.isEmpty() || parse(text, dimension).isEmpty()
                ? range.describe(dimension.siUnit())
                : range.describe(unit, si -> in(si, unit, dimension));
    }

    private static boolean hasOffset(String unitText) {
        return unitText.matches(".*(degC|°C|degF|°F).*");
    }

    private static Optional<Double> convert(double number, Unit<?> from, Unit<?> to) {
        try {
            return Optional.of(
                    from.getConverterToAny(to).convert(Double.valueOf(number)).doubleValue());
        } catch (IncommensurableException e) {
            return Optional.empty();
        }
    }

    private static Map<Dimension, Unit<?>> siUnits() {
        Map<Dimension, Unit<?>> map = new EnumMap<>(Dimension.class);
        for (Dimension dimension : Dimension.values()) {
            String text = dimension.siUnit().isEmpty() ? "1" : dimension.siUnit();
            map.put(dimension, UnitExpression.parse(text).orElseThrow(() -> new IllegalStateException(text)));
        }
        return map;
    }
}
