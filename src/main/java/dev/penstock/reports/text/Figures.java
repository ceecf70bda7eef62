package dev.penstock.reports.text;

import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Notation;

/** Writes SI numbers as engineers read them: rounded to significant digits, in bar, kN, MW, mm, rpm. */
public final class Figures {

    private Figures() {}

    /**
     * @param value number
     * @param digits significant digits
     * @return the rounded number without an exponent where it is between 0.0001 and ten million
     */
    public static String significant(double value, int digits) {
        return Notation.significant(value, digits);
    }

    /**
     * @param value number
     * @param decimals digits after the point
     * @return the rounded number
     */
    public static String fixed(double value, int decimals) {
        return Notation.fixed(value, decimals);
    }

    /**
     * @param pressure absolute pressure (Pa)
     * @return the number of bar
     */
    public static String bar(double pressure) {
        return Notation.PRESSURE.write(pressure);
    }

    /**
     * @param temperature temperature or difference (K)
     * @return the number of kelvin
     */
    public static String kelvin(double temperature) {
        return Notation.TEMPERATURE.write(temperature);
    }

    /**
     * @param force force (N)
     * @return the number of kilonewton
     */
    public static String kilonewton(double force) {
        return Notation.FORCE.write(force);
    }

    /**
     * @param massFlow mass flow (kg/s)
     * @return the number of kg/s
     */
    public static String massFlow(double massFlow) {
        return Notation.MASS_FLOW.write(massFlow);
    }

    /**
     * @param power power (W)
     * @return number and unit, kW or MW
     */
    public static String power(double power) {
        return Notation.POWER.write(power);
    }

    /**
     * @param speed rotational speed (rad/s)
     * @return the number of revolutions per minute
     */
    public static String rpm(double speed) {
        return Notation.SPEED.write(speed);
    }

    /**
     * @param length length (m)
     * @return the number of millimetres
     */
    public static String millimetre(double length) {
        return Notation.LENGTH.write(length);
    }

    /**
     * @param fraction fraction (-)
     * @return percent with its sign
     */
    public static String percent(double fraction) {
        return Notation.PERCENT.write(fraction);
    }

    /**
     * @param margin margin to a limit as a fraction of it (-)
     * @return percent, without digits that say nothing where the margin is huge
     */
    public static String margin(double margin) {
        return Notation.MARGIN.write(margin);
    }

    /**
     * @param words words, with or without spaces around them
     * @return the words with a capital at their beginning
     */
    public static String capitalized(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /**
     * @param name dotted name of a limit, for example "fuel pump.tip_speed"
     * @return the name for people
     */
    public static String limitName(String name) {
        return CheckFigures.title(name);
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
        return Notation.ofUnit(unit).writeWithUnit(value);
    }

    /**
     * @param limit a checked limit
     * @return its bound with its side and unit, for example "at most 800.0 bar"
     */
    public static String bound(LimitCheck limit) {
        return (limit.upper() ? "at most " : "at least ") + withUnit(limit.limit(), limit.unit());
    }
}
