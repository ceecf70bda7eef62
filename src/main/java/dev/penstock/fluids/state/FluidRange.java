package dev.penstock.fluids.state;

/**
 * Range of a fluid model.
 *
 * @param minimumTemperature lowest temperature (K), usually the triple point
 * @param maximumTemperature highest temperature (K)
 * @param maximumPressure highest pressure (Pa)
 */
public record FluidRange(double minimumTemperature, double maximumTemperature, double maximumPressure) {}
