package dev.penstock.input;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Writes numbers the way people write them in a file: no more digits than asked for, in the unit that goes with the size. */
final class Digits {

    private static final Pattern ZEROS = Pattern.compile("(\\.\\d*?)0+($|e)");
    private static final Pattern POINT = Pattern.compile("\\.($|e)");

    private Digits() {}

    /** A unit of a size; what is smaller than its least, SI, is written in the next one of its list. */
    private record Scale(String unit, double least, double size, String name) {

        Scale(String unit, double size, String name) {
            this(unit, 0.1 * size, size, name);
        }
    }

    private static final List<Scale> SCALES = List.of(
            new Scale("Pa", 1e6, "MPa"),
            new Scale("Pa", 1e3, "kPa"),
            new Scale("N", 1e3, "kN"),
            new Scale("W", 1e3, "kW"),
            new Scale("kg", 1e4, 1e3, "t"),
            new Scale("m", 1e4, 1e3, "km"),
            new Scale("m", 1, "m"),
            new Scale("m", 1e-3, "mm"),
            new Scale("rad", Math.PI / 180, "deg"),
            new Scale("rad/s", Math.PI / 30, "rpm"));

    /**
     * @param value a number
     * @param digits significant digits, at most
     * @return the number without zeros at its end
     */
    static String number(double value, int digits) {
        String padded = String.format(Locale.ROOT, "%." + digits + "g", value);
        String shorter = ZEROS.matcher(padded).replaceAll("$1$2");
        return POINT.matcher(shorter).replaceAll("$1");
    }

    /**
     * @param value a number, SI
     * @param unit its SI unit; empty for a plain number
     * @return number and unit, to six digits, of a size near one
     */
    static String readable(double value, String unit) {
        if (unit.isEmpty()) {
            return number(value, 6);
        }
        for (Scale scale : SCALES) {
            if (scale.unit().equals(unit) && Math.abs(value) >= scale.least()) {
                return number(value / scale.size(), 6) + " " + scale.name();
            }
        }
        return number(value, 6) + " " + unit;
    }
}
