package dev.penstock.reports.text;

import dev.penstock.provenance.LimitCheck;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Writes SI numbers as engineers read them: rounded to significant digits, in bar, kN, MW, mm, rpm. */
public final class Figures {

    private static final double BAR = 1.0e5;
    private static final double RPM = 60 / (2 * Math.PI);

    private Figures() {}

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
     * @return the rounded number
     */
    public static String fixed(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    /**
     * @param pressure absolute pressure (Pa)
     * @return the number of bar
     */
    public static String bar(double pressure) {
        double bar = pressure / BAR;
        return Math.abs(bar) >= 100 ? fixed(bar, 1) : Math.abs(bar) >= 1 ? fixed(bar, 2) : significant(bar, 3);
    }

    /**
     * @param temperature temperature or difference (K)
     * @return the number of kelvin
     */
    public static String kelvin(double temperature) {
        return fixed(temperature, Math.abs(temperature) < 1000 ? 1 : 0);
    }

    /**
     * @param force force (N)
     * @return the number of kilonewton
     */
    public static String kilonewton(double force) {
        return significant(force / 1e3, 4);
    }

    /**
     * @param massFlow mass flow (kg/s)
     * @return the number of kg/s
     */
    public static String massFlow(double massFlow) {
        return significant(massFlow, 4);
    }

    /**
     * @param power power (W)
     * @return number and unit, kW or MW
     */
    public static String power(double power) {
        return Math.abs(power) < 1e6 ? significant(power / 1e3, 4) + " kW" : significant(power / 1e6, 4) + " MW";
    }

    /**
     * @param speed rotational speed (rad/s)
     * @return the number of revolutions per minute
     */
    public static String rpm(double speed) {
        double rpm = speed * RPM;
        return String.format(Locale.ROOT, "%.0f", rpm >= 1000 ? Math.round(rpm / 10) * 10.0 : rpm);
    }

    /**
     * @param length length (m)
     * @return the number of millimetres
     */
    public static String millimetre(double length) {
        return significant(length * 1e3, 4);
    }

    /**
     * @param fraction fraction (-)
     * @return percent with its sign
     */
    public static String percent(double fraction) {
        return fixed(fraction * 100, 1) + " %";
    }

    /**
     * @param margin margin to a limit as a fraction of it (-)
     * @return percent, without digits that say nothing where the margin is huge
     */
    public static String margin(double margin) {
        return margin > 9.995 ? "over 999 %" : percent(margin);
    }

    /**
     * @param name dotted name of a limit, for example "fuel pump.tip_speed"
     * @return the name for people
     */
    public static String limitName(String name) {
        String plain = name.startsWith("limits.") ? name.substring("limits.".length()) : name;
        return plain.replace(".", ": ").replace('_', ' ');
    }

    /**
     * A value in SI whose unit is only known as text, for example of a limit check: written in the unit that engineers use
     * for that kind.
     *
     * @param value value in SI
     * @param unit SI unit
     * @return number and unit
     */
    public static String withUnit(double value, String unit) {
        return switch (unit) {
            case "Pa" -> bar(value) + " bar";
            case "K" -> kelvin(value) + " K";
            case "N" -> kilonewton(value) + " kN";
            case "W" -> power(value);
            case "rad/s" -> rpm(value) + " rpm";
            case "m" -> Math.abs(value) < 10 ? millimetre(value) + " mm" : significant(value, 4) + " m";
            case "W/m²" -> significant(value / 1e6, 4) + " MW/m²";
            case "", "-" -> significant(value, 4);
            default -> significant(value, 4) + " " + unit;
        };
    }

    /**
     * @param limit a checked limit
     * @return its bound with its side and unit, for example "at most 800.0 bar"
     */
    public static String bound(LimitCheck limit) {
        return (limit.upper() ? "at most " : "at least ") + withUnit(limit.limit(), limit.unit());
    }
}
