package dev.penstock.fluids.property;

/** Viscosity and thermal conductivity of a fluid, where its equation of state brings none. */
public interface TransportModel {

    /**
     * @param temperature temperature (K)
     * @param density mass density (kg/m³)
     * @param pressure absolute pressure (Pa)
     * @return dynamic viscosity (Pa·s)
     */
    double viscosity(double temperature, double density, double pressure);

    /**
     * @param temperature temperature (K)
     * @param density mass density (kg/m³)
     * @param pressure absolute pressure (Pa)
     * @return thermal conductivity (W/(m·K))
     */
    double conductivity(double temperature, double density, double pressure);
}
