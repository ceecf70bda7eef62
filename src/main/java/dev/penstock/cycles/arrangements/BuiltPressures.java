package dev.penstock.cycles.arrangements;

import dev.penstock.input.Belief;

/**
 * Chamber pressures of the next engine of a cycle, nine times out of ten, as published engines of like cycles have them [built-pressures].
 * <pre>
 * ln p = m ± t s √(1 + 1/n),  m, s mean and standard deviation of n logarithms, t = 95th percentile of Student's distribution, n − 1 degrees
 * </pre>
 * Engines that judgements are checked against, their families, and figures that are only claimed are left out. Which engines remain, and
 * that these are their numbers, is in {@code BuiltPressuresTest}. Of a cycle that has none (electric pumps) it is that of open cycles.
 */
final class BuiltPressures {

    private static final String SOURCE = "prediction interval from published engines of like cycles [built-pressures]";

    /** Tanks feed the chamber: five engines. */
    static final Belief TANKS = Belief.mostly(0.15e6, 12e6, SOURCE);

    /** What drives the pumps does not reach the chamber: five engines. */
    static final Belief OPEN = Belief.mostly(0.83e6, 22e6, SOURCE);

    /** The heat of jackets drives the pumps: three engines. */
    static final Belief EXPANDERS = Belief.mostly(2.6e6, 19e6, SOURCE);

    /** Preburners drive the pumps, their gas goes on to the chamber: seven engines. */
    static final Belief STAGED = Belief.mostly(10e6, 37e6, SOURCE);

    private BuiltPressures() {}
}
