package dev.penstock.cooling.gas;

import dev.penstock.provenance.ModelCard;

/**
 * Heat from the gas as arrays over the cells. Both convection models end in the same dependence on the surface
 * temperature, a property correction (a + b T_s)^−0.68, so one field serves them.
 */
public final class GasSideField implements GasSide {

    private static final double PROPERTY_EXPONENT = -0.68;

    private final double[] coefficient;
    private final double[] constant;
    private final double[] slope;
    private final double[] adiabatic;
    private final double[] radiation;
    private final double[] layers;
    private final ModelCard model;

    /**
     * @param coefficient coefficient where a + b T_s is 1 (W/(m²·K))
     * @param constant a per cell (-)
     * @param slope b per cell (1/K)
     * @param adiabatic adiabatic wall temperature (K)
     * @param radiation radiative flux (W/m²)
     * @param layers resistance of soot and coating (m²·K/W)
     * @param model model of the coefficient
     */
    public GasSideField(
            double[] coefficient,
            double[] constant,
            double[] slope,
            double[] adiabatic,
            double[] radiation,
            double[] layers,
            ModelCard model) {
        this.coefficient = coefficient;
        this.constant = constant;
        this.slope = slope;
        this.adiabatic = adiabatic;
        this.radiation = radiation;
        this.layers = layers;
        this.model = model;
    }

    @Override
    public double coefficient(int cell, double surface) {
        return coefficient[cell] * Math.pow(constant[cell] + slope[cell] * Math.max(1, surface), PROPERTY_EXPONENT);
    }

    @Override
    public double adiabaticWallTemperature(int cell) {
        return adiabatic[cell];
    }

    @Override
    public double radiation(int cell) {
        return radiation[cell];
    }

    @Override
    public double layers(int cell) {
        return layers[cell];
    }

    @Override
    public ModelCard model() {
        return model;
    }

    /** The same field with another adiabatic wall temperature, as a film makes it. */
    public GasSideField withAdiabatic(double[] temperatures) {
        return new GasSideField(coefficient, constant, slope, temperatures, radiation, layers, model);
    }
}
