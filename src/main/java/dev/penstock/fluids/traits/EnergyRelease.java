package dev.penstock.fluids.traits;

/**
 * Share of the theoretical characteristic velocity that a developed injector releases with a fuel, by the state in which
 * oxidizer and fuel are injected.
 *
 * @param liquidLiquid both as liquids (-)
 * @param gasLiquid one as gas, the other as liquid (-)
 * @param gasGas both as gases (-)
 */
public record EnergyRelease(double liquidLiquid, double gasLiquid, double gasGas) {}
