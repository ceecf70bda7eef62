package dev.penstock;

/**
 * Highest and best chamber pressure of a concept within its limits.
 *
 * @param chamberPressure highest chamber pressure (Pa, absolute)
 * @param bindingLimit name of the limit that stops it there
 * @param explanation one sentence that says so with the numbers
 * @param engine the engine at that pressure
 * @param bestExplanation what ends the chamber pressure that is best for the delivered specific impulse
 * @param best the engine at that pressure, which is the highest or one below
 */
public record PressureLimit(
        double chamberPressure,
        String bindingLimit,
        String explanation,
        Engine engine,
        String bestExplanation,
        Engine best) {}
