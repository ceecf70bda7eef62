package dev.penstock.fluids.state;

/**
 * Both ends of the boiling line at many pressures; what the model does not give is NaN.
 *
 * @param temperature saturation temperatures (K)
 * @param liquidEnthalpy enthalpies of the boiling liquid (J/kg)
 * @param vapourEnthalpy enthalpies of the dry vapour (J/kg)
 */
public record SaturationSamples(double[] temperature, double[] liquidEnthalpy, double[] vapourEnthalpy) {}
