package dev.penstock.cycles.solving;

import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.errors.LimitReached;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Set;

/** The sentence of a balance that was sought over chamber pressure and not found: what closes, and what was tried in vain. */
final class PressureRefusal {

    private static final int DIGITS = 6;

    private PressureRefusal() {}

    static LimitReached of(PressureSearch search, SoughtBalances sought) {
        double target = sought.target();
        Double below = sought.closed().lowerKey(target);
        Double closes = below != null ? below : sought.closed().higherKey(target);
        String found = closes == null ? nowhere(sought) : elsewhere(closes, search, sought);
        return new LimitReached(
                "balance",
                String.format(
                        Locale.ROOT,
                        "%s%s; %s (there: %s)",
                        sought.concept().cycle().title().toLowerCase(Locale.ROOT),
                        found,
                        advice(sought),
                        sought.open().get(target).getMessage()));
    }

    /** Rungs above the target are not named: a question for one of them would look further up. */
    private static String nowhere(SoughtBalances sought) {
        double target = sought.target();
        Set<Double> below = sought.open().headMap(target, false).keySet();
        String at = ": " + inVain(sought) + " at the chamber pressure of " + mega(target) + " MPa asked for";
        if (below.isEmpty() || sought.exhausted()) {
            return at;
        }
        double lowest = sought.open().firstKey();
        return below.size() == 1
                ? String.format(Locale.ROOT, "%s, nor at %s MPa", at, mega(lowest))
                : String.format(
                        Locale.ROOT,
                        "%s, nor at any of %d tried from %s to %s MPa",
                        at,
                        below.size(),
                        mega(lowest),
                        mega(sought.open().lowerKey(target)));
    }

    private static String elsewhere(double closes, PressureSearch search, SoughtBalances sought) {
        String end =
                search.end().isPresent() ? mega(search.end().getAsDouble()) + " MPa, tried next, and at the " : "the ";
        return String.format(
                Locale.ROOT,
                " closes at a chamber pressure of %s MPa; at %s%s MPa asked for %s, which says nothing of those between",
                mega(closes),
                end,
                mega(sought.target()),
                inVain(sought));
    }

    private static String inVain(SoughtBalances sought) {
        return "no balance was found" + (sought.exhausted() ? " within the work of a search" : "");
    }

    /** A search that ended at its bound has found no reason, so that nothing can be advised. */
    private static String advice(SoughtBalances sought) {
        if (sought.exhausted()) {
            return "the search ended at its bound, so whether there is one is not known";
        }
        return StatedChannels.tooNarrow(sought.concept(), sought::firstGuess)
                .map(channels -> "what may help: " + channels)
                .orElseGet(() -> advice(sought.concept().cycle().traits().closure()));
    }

    private static String advice(CycleTraits.Closure closure) {
        return switch (closure) {
            case GAS_FLOW -> "what may help: hotter gas, a higher turbine pressure ratio or better pumps";
            case RATIO_OR_TEMPERATURE -> "what may help: hotter gas, better pumps or lower pressure losses";
            case RATIO -> "what may help: more heat for the fuel, for example by a longer chamber, or better pumps";
            case TANK_PRESSURE, MOTOR_POWER -> "change the pressures";
        };
    }

    private static String mega(double pressure) {
        return new BigDecimal(pressure / 1e6)
                .round(new MathContext(DIGITS))
                .stripTrailingZeros()
                .toPlainString();
    }
}
