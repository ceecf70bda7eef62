package dev.penstock.combustion.gas;

/**
 * How far a dense gas is from the ideal gas at its pressure and temperature, per mole of gas.
 *
 * @param compressibility Z = p v/(R T) (-)
 * @param enthalpy h − h_ideal (J/mol)
 * @param entropy s − s_ideal at the same pressure (J/(mol·K))
 * @param isochoricHeatCapacity cv − cv_ideal (J/(mol·K))
 * @param thermalPressure (∂p/∂T)_v (Pa/K)
 * @param stiffness −(∂p/∂v)_T (Pa·mol/m³)
 */
public record Departure(
        double compressibility,
        double enthalpy,
        double entropy,
        double isochoricHeatCapacity,
        double thermalPressure,
        double stiffness) {}
