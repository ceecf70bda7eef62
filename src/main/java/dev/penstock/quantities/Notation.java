package dev.penstock.quantities;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.function.DoubleFunction;

/**
 * How engineers read a quantity: in which unit, to how many digits. Documents hold SI; people read bar, kN, MW, mm, rpm, or
 * what the {@link UnitSystem} of their choice has in place of those.
 *
 * @param siUnit SI unit of the value as text, empty for a plain number
 * @param metric unit that engineers of metric countries read it in; empty for a plain number, and where the written number
 *     names its unit
 * @param writer number as written in that unit, of the value in SI
 */
public record Notation(String siUnit, String metric, DoubleFunction<String> writer) {

    /** Powers of ten of the decimals that most numbers are written with. */
    private static final double[] POWERS = {1, 10, 100, 1e3, 1e4, 1e5, 1e6};

    /** Below it a product with a power of ten is right to {@value #TIE} (-). */
    private static final double LARGEST_PLAIN = 1e9;

    private static final double TIE = 1e-6;

    /** Significant digits in units that no notation is declared in (-). */
    private static final int DIGITS = 4;

    /** Pressure in bar, to the digits that its size deserves. */
    public static final Notation PRESSURE = new Notation("Pa", "bar", Notation::bar);

    /** Temperature or difference of temperatures in K, to a tenth below 1000 K. */
    public static final Notation TEMPERATURE =
            new Notation("K", "K", kelvin -> fixed(kelvin, Math.abs(kelvin) < 1000 ? 1 : 0));

    /** Force in kN. */
    public static final Notation FORCE = significant("N", "kN", 1e-3, 4);

    /** Mass flow in kg/s. */
    public static final Notation MASS_FLOW = significant("kg/s", 4);

    /** Power in kW or MW; the number names the unit. */
    public static final Notation POWER = new Notation("W", "", Notation::power);

    /** Rotational speed in revolutions per minute. */
    public static final Notation SPEED = new Notation("rad/s", "rpm", Notation::rpm);

    /** Length of a part in mm. */
    public static final Notation LENGTH = significant("m", "mm", 1e3, 4);

    /** Fraction in percent; the number has its sign. */
    public static final Notation PERCENT = new Notation("", "", fraction -> fixed(fraction * 100, 1) + " %");

    /** Margins beyond this are not read in percent (-). */
    private static final double HUGE_MARGIN = 9.995;

    /** Margin to a limit in percent, without digits that say nothing where it is huge; far below it, how many times over. */
    public static final Notation MARGIN = new Notation("", "", Notation::margin);

    /** Density in kg/m³. */
    public static final Notation DENSITY = significant("kg/m³", 4);

    /** Heat flux in MW/m². */
    public static final Notation HEAT_FLUX = significant("W/m²", "MW/m²", 1e-6, 4);

    /** Mass of a part in kg. */
    public static final Notation MASS = significant("kg", 3);

    /** mass of a stage or a vehicle, read in tonnes */
    public static final Notation TONNES = significant("kg", "t", 1e-3, 4);

    /** Whole number. */
    public static final Notation COUNT = new Notation("", "", count -> Long.toString(Math.round(count)));

    private static final Notation METRE = significant("m", 4);
    private static final Notation DEGREES = new Notation("rad", "deg", angle -> significant(Math.toDegrees(angle), 4));
    private static final Notation KILOWATT = significant("W", "kW", 1e-3, 4);
    private static final Notation MEGAWATT = significant("W", "MW", 1e-6, 4);
    private static final double BAR = 1.0e5;
    private static final double RPM = 60 / (2 * Math.PI);

    private static String margin(double margin) {
        if (margin > HUGE_MARGIN) {
            return "over 999 %";
        }
        return margin < -HUGE_MARGIN ? "-" + share(-margin) : PERCENT.write(margin);
    }

    /**
     * @param miss distance from a limit over the limit, not below zero (-)
     * @return it in percent, or as a multiple of the limit where it is many times that
     */
    public static String share(double miss) {
        return miss > HUGE_MARGIN ? significant(miss, 3) + " times the limit" : PERCENT.write(miss);
    }

    /**
     * @param siUnit SI unit, in which it is read too
     * @param digits significant digits
     * @return the notation
     */
    public static Notation significant(String siUnit, int digits) {
        return new Notation(siUnit, siUnit, value -> significant(value, digits));
    }

    /**
     * @param siUnit SI unit
     * @param unit metric unit that people read it in
     * @param scale value in that unit over value in SI, a power of ten
     * @param digits significant digits
     * @return the notation
     */
    public static Notation significant(String siUnit, String unit, double scale, int digits) {
        return new Notation(siUnit, unit, value -> significant(scaled(value, scale), digits));
    }

    /**
     * @param siUnit SI unit
     * @param unit metric unit that people read it in
     * @param scale value in that unit over value in SI, a power of ten
     * @param decimals digits after the point
     * @return the notation
     */
    public static Notation fixed(String siUnit, String unit, double scale, int decimals) {
        return new Notation(siUnit, unit, value -> fixed(scaled(value, scale), decimals));
    }

    /**
     * @param siUnit SI unit as text, for example of a limit check
     * @return how engineers read a quantity of that kind
     */
    public static Notation ofUnit(String siUnit) {
        return switch (siUnit) {
            case "Pa" -> PRESSURE;
            case "K" -> TEMPERATURE;
            case "N" -> FORCE;
            case "W" -> POWER;
            case "rad/s" -> SPEED;
            case "m" -> new Notation("m", "", Notation::metre);
            case "rad" -> DEGREES;
            case "W/m²" -> HEAT_FLUX;
            case "", "-" -> significant("", 4);
            default -> significant(siUnit, 4);
        };
    }

    /** @return unit that the reader of this thread reads it in; empty where the written number is plain or names it */
    public String unit() {
        return UnitSystem.chosen().unit(metric);
    }

    /** @return unit and size of the numbers on an axis: of power MW, of shares and margins per cent */
    public Scale axis() {
        if (equals(PERCENT) || equals(MARGIN)) {
            return new Scale("%", 0.01);
        }
        String whole = equals(POWER) ? "MW" : metric;
        return whole.isEmpty() ? new Scale("", 1) : Scale.of(whole);
    }

    /**
     * @param largest largest of several values in SI that stand in one column
     * @return the same, in one unit for all of them where each number would choose its own
     */
    public Notation column(double largest) {
        return equals(POWER) ? Math.abs(largest) < 1e6 ? KILOWATT : MEGAWATT : this;
    }

    /** @return the same, where the written number names its unit itself */
    public Notation namingUnit() {
        return new Notation(siUnit, "", this::writeWithUnit);
    }

    /**
     * @param value value in SI
     * @return the number without its unit, unless only the number tells the unit
     */
    public String write(double value) {
        String unit = unit();
        return unit.equals(metric)
                ? writer.apply(value)
                : significant(Scale.exact(unit).of(value), DIGITS);
    }

    /**
     * @param value value in SI
     * @return number and unit
     */
    public String writeWithUnit(double value) {
        return metric.isEmpty() ? write(value) : write(value) + " " + unit();
    }

    /**
     * @param value value in SI
     * @param digits significant digits, where the notation names one unit for every size
     * @return number and unit
     */
    public String writeWithUnit(double value, int digits) {
        if (metric.isEmpty()) {
            return siUnit.isEmpty() ? significant(value, digits) : writeWithUnit(value);
        }
        double number = unit().equals(siUnit) ? value : Scale.exact(unit()).of(value);
        return significant(number, digits) + " " + unit();
    }

    /**
     * @param value number
     * @param digits significant digits
     * @return the rounded number without an exponent where it is between 0.0001 and ten million
     */
    public static String significant(double value, int digits) {
        if (value == 0) {
            return "0";
        }
        double size = Math.abs(value);
        if (!(size < 1e7 && size >= 1e-4)) {
            return String.format(Locale.ROOT, "%." + (digits - 1) + "e", value);
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        int decimals = digits - (rounded.precision() - rounded.scale());
        return decimals > rounded.scale()
                ? rounded.setScale(decimals, RoundingMode.UNNECESSARY).toPlainString()
                : rounded.toPlainString();
    }

    /**
     * @param value number
     * @param decimals digits after the point
     * @return the rounded number, zero without a sign
     */
    public static String fixed(double value, int decimals) {
        if (decimals < POWERS.length && Math.abs(value) * POWERS[decimals] < LARGEST_PLAIN) {
            double scaled = Math.abs(value) * POWERS[decimals];
            long whole = (long) scaled;
            double rest = scaled - whole;
            if (Math.abs(rest - 0.5) > TIE) {
                return point(rest > 0.5 ? whole + 1 : whole, decimals, value < 0);
            }
        }
        return formatted(value, decimals);
    }

    /** The digits of a rounded number with its point. */
    private static String point(long digits, int decimals, boolean negative) {
        String text = Long.toString(digits);
        StringBuilder out = new StringBuilder(text.length() + decimals + 2).append(negative && digits != 0 ? "-" : "");
        for (int i = text.length(); i <= decimals; i++) {
            out.append('0');
        }
        out.append(text);
        return decimals == 0
                ? out.toString()
                : out.insert(out.length() - decimals, '.').toString();
    }

    /** What lies near the middle between two roundings is left to the library, which looks at all digits. */
    static String formatted(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    /** Dividing by a power of ten rounds once; multiplying by its inexact inverse would round twice. */
    private static double scaled(double value, double scale) {
        return scale < 1 ? value / Math.rint(1 / scale) : value * scale;
    }

    private static String bar(double pascal) {
        double bar = pascal / BAR;
        return Math.abs(bar) >= 100 ? fixed(bar, 1) : Math.abs(bar) >= 1 ? fixed(bar, 2) : significant(bar, 3);
    }

    private static String rpm(double speed) {
        double rpm = speed * RPM;
        return fixed(rpm >= 1000 ? Math.round(rpm / 10) * 10.0 : rpm, 0);
    }

    private static String metre(double metre) {
        return (Math.abs(metre) < 10 ? LENGTH : METRE).writeWithUnit(metre);
    }

    private static String power(double watt) {
        return (Math.abs(watt) < 1e6 ? KILOWATT : MEGAWATT).writeWithUnit(watt);
    }
}
