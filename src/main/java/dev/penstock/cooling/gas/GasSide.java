package dev.penstock.cooling.gas;

import dev.penstock.provenance.ModelCard;

/** Heat from the gas in every cell of a grid. Implementations are filled once and only read afterwards. */
public interface GasSide {

    /**
     * @param cell cell
     * @param surface temperature of the surface that faces the gas (K)
     * @return convective coefficient (W/(m²·K))
     */
    double coefficient(int cell, double surface);

    /**
     * @param cell cell
     * @return adiabatic wall temperature (K)
     */
    double adiabaticWallTemperature(int cell);

    /**
     * @param cell cell
     * @return radiative flux into the wall (W/m²)
     */
    double radiation(int cell);

    /**
     * @param cell cell
     * @return thermal resistance of soot and coating between gas and metal (m²·K/W)
     */
    double layers(int cell);

    /** @return model of the convective coefficient */
    ModelCard model();
}
