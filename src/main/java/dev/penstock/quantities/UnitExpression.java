package dev.penstock.quantities;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.GIGA;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static tech.units.indriya.AbstractUnit.ONE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.JOULE;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MOLE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.WATT;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javax.measure.MetricPrefix;
import javax.measure.Unit;

/**
 * Reads a unit as engineers write it, {@code kJ/(kg·K)}, {@code kg/m^3}, {@code psi}, into a JSR 385 unit. Symbols are
 * case-sensitive as in the SI; {@code *}, {@code ·} and a space multiply; exponents are {@code ^2}, {@code ²} or
 * {@code 2}. Customary units: NIST SP 811 (2008), appendix B.
 */
final class UnitExpression {

    private static final Map<String, Unit<?>> SYMBOLS = symbols();

    private final String text;
    private int position;

    private UnitExpression(String text) {
        this.text = text;
    }

    /**
     * @param text unit as written, without the number
     * @return the unit; empty if a symbol is unknown or the expression is malformed
     */
    static Optional<Unit<?>> parse(String text) {
        UnitExpression expression = new UnitExpression(text.strip());
        Optional<Unit<?>> unit = expression.product();
        return expression.position == expression.text.length() ? unit : Optional.empty();
    }

    private Optional<Unit<?>> product() {
        Optional<Unit<?>> left = factor();
        while (left.isPresent() && position < text.length() && text.charAt(position) != ')') {
            char operator = text.charAt(position);
            if ("/*·⋅ ".indexOf(operator) < 0) {
                return Optional.empty();
            }
            position++;
            Unit<?> sofar = left.get();
            left = factor().map(right -> operator == '/' ? sofar.divide(right) : sofar.multiply(right));
        }
        return left;
    }

    private Optional<Unit<?>> factor() {
        if (position < text.length() && text.charAt(position) == '(') {
            position++;
            Optional<Unit<?>> inner = product();
            if (position >= text.length() || text.charAt(position) != ')') {
                return Optional.empty();
            }
            position++;
            return inner;
        }
        int start = position;
        while (position < text.length() && isSymbolPart(text.charAt(position))) {
            position++;
        }
        if (position == start) {
            return one();
        }
        Unit<?> unit = SYMBOLS.get(text.substring(start, position));
        int power = exponent();
        return unit == null ? Optional.empty() : Optional.of(power == 1 ? unit : unit.pow(power));
    }

    private Optional<Unit<?>> one() {
        if (position < text.length() && text.charAt(position) == '1') {
            position++;
            return Optional.of(ONE);
        }
        return Optional.empty();
    }

    private int exponent() {
        boolean caret = position < text.length() && text.charAt(position) == '^';
        int start = caret ? position + 1 : position;
        boolean negative = start < text.length() && (text.charAt(start) == '-' || text.charAt(start) == '⁻');
        int digit = negative ? start + 1 : start;
        int power = digit < text.length() ? "0123456789".indexOf(text.charAt(digit)) : -1;
        if (power < 0 && digit < text.length()) {
            power = "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(text.charAt(digit));
        }
        if (power < 0) {
            return 1;
        }
        position = digit + 1;
        return negative ? -power : power;
    }

    private static boolean isSymbolPart(char c) {
        return Character.isLetter(c) || c == '%' || c == '°' || c == 'µ' || c == '_';
    }

    private static Map<String, Unit<?>> symbols() {
        Map<String, Unit<?>> map = new HashMap<>();
        Unit<?> inch = METRE.multiply(0.0254);
        Unit<?> poundForce = NEWTON.multiply(4.4482216152605);
        Unit<?> pound = KILOGRAM.multiply(0.45359237);
        withPrefixes(map, "Pa", PASCAL, MILLI, MICRO, KILO, MEGA, GIGA);
        withPrefixes(map, "bar", PASCAL.multiply(1.0e5), MILLI);
        withPrefixes(map, "m", METRE, MILLI, CENTI, KILO, MICRO);
        withPrefixes(map, "g", GRAM, MILLI);
        map.put("kg", KILOGRAM);
        map.put("t", KILOGRAM.multiply(1000));
        map.put("Mg", KILOGRAM.multiply(1000));
        withPrefixes(map, "N", NEWTON, KILO, MEGA);
        withPrefixes(map, "W", WATT, KILO, MEGA, GIGA);
        withPrefixes(map, "J", JOULE, KILO, MEGA, GIGA);
        withPrefixes(map, "s", SECOND, MILLI, MICRO);
        withPrefixes(map, "mol", MOLE, KILO, MILLI);
        withPrefixes(map, "rad", RADIAN, MILLI);
        map.put("min", SECOND.multiply(60));
        map.put("h", SECOND.multiply(3600));
        map.put("K", KELVIN);
        map.put("mK", KELVIN.prefix(MILLI));
        map.put("degC", CELSIUS);
        map.put("°C", CELSIUS);
        map.put("degR", KELVIN.multiply(5).divide(9));
        map.put("°R", KELVIN.multiply(5).divide(9));
        map.put("degF", KELVIN.multiply(5).divide(9).shift(459.67));
        map.put("°F", KELVIN.multiply(5).divide(9).shift(459.67));
        map.put("L", LITRE);
        map.put("l", LITRE);
        map.put("deg", RADIAN.multiply(Math.PI / 180));
        map.put("°", RADIAN.multiply(Math.PI / 180));
        map.put("rpm", RADIAN.multiply(2 * Math.PI / 60).divide(SECOND));
        map.put("percent", ONE.divide(100));
        map.put("%", ONE.divide(100));
        map.put("atm", PASCAL.multiply(Constants.STANDARD_ATMOSPHERE));
        map.put("psi", poundForce.divide(inch.pow(2)));
        map.put("psia", poundForce.divide(inch.pow(2)));
        map.put("in", inch);
        map.put("ft", METRE.multiply(0.3048));
        map.put("nmi", METRE.multiply(1852));
        map.put("lb", pound);
        map.put("lbm", pound);
        map.put("lbf", poundForce);
        map.put("klbf", poundForce.multiply(1000));
        map.put(
                "tf",
                KILOGRAM.multiply(1000 * Constants.STANDARD_GRAVITY)
                        .multiply(METRE)
                        .divide(SECOND.pow(2)));
        map.put("hp", WATT.multiply(745.6998715822702));
        map.put("Btu", JOULE.multiply(1055.05585262));
        map.put("gal", METRE.pow(3).multiply(0.003785411784));
        map.put("gpm", METRE.pow(3).multiply(0.003785411784).divide(SECOND.multiply(60)));
        return Map.copyOf(map);
    }

    private static void withPrefixes(Map<String, Unit<?>> map, String symbol, Unit<?> unit, MetricPrefix... prefixes) {
        map.put(symbol, unit);
        for (MetricPrefix prefix : prefixes) {
            map.put(prefix.getSymbol() + symbol, unit.prefix(prefix));
            if (prefix == MICRO) {
                map.put("u" + symbol, unit.prefix(prefix));
            }
        }
    }
}
