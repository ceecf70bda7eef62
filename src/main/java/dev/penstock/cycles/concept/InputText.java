package dev.penstock.cycles.concept;

import java.util.List;
import java.util.Locale;

/** Writes an input the way people write it in a concept file: a size near one, in the unit that goes with it. */
public final class InputText {

    private static final String NUMBER = "[-+]?[0-9]*\\.?[0-9]+([eE][-+]?\\d+)?";

    private InputText() {}

    private record Scale(String unit, double size, String name) {}

    private static final List<Scale> SCALES = List.of(
            new Scale("Pa", 1e6, "MPa"),
            new Scale("Pa", 1e3, "kPa"),
            new Scale("N", 1e3, "kN"),
            new Scale("W", 1e3, "kW"),
            new Scale("m", 1, "m"),
            new Scale("m", 1e-3, "mm"),
            new Scale("rad", Math.PI / 180, "deg"),
            new Scale("rad/s", Math.PI / 30, "rpm"));

    /**
     * @param input an input
     * @return its value and unit, to six digits; words and open values as they stand
     */
    public static String of(ConceptInput input) {
        if (input.unit().isEmpty() || input.unit().equals("-") || !input.value().matches(NUMBER)) {
            return input.value();
        }
        return readable(Double.parseDouble(input.value()), input.unit());
    }

    public static String readable(double value, String unit) {
        for (Scale scale : SCALES) {
            if (scale.unit().equals(unit) && Math.abs(value) >= 0.1 * scale.size()) {
                return number(value / scale.size()) + " " + scale.name();
            }
        }
        return number(value) + " " + unit;
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.6g", value)
                .replaceAll("(\\.\\d*?)0+($|e)", "$1$2")
                .replaceAll("\\.($|e)", "$1");
    }
}
