package dev.penstock;

/**
 * How far a concept reaches within its hardware limits.
 *
 * @param chamberPressure highest chamber pressure (Pa, absolute)
 * @param bindingLimit name of the limit that stops it there
 * @param explanation one sentence that says so with the numbers
 * @param engine the engine at that pressure
 */
public record Reach(double chamberPressure, String bindingLimit, String explanation, Engine engine) {}
