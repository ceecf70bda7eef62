package dev.penstock.cooling.march;

/**
 * The coolant between two cells of a leg: what the cells so far hand on to the next.
 *
 * @param first whether no cell lies behind it: it stands in the manifold
 * @param totalEnthalpy total enthalpy (J/kg)
 * @param distance distance from the inlet (m)
 * @param pressure pressure in the middle of the last cell; of the manifold at the inlet (Pa)
 * @param velocity velocity there (m/s); 0 at the inlet
 * @param massFlux mass flux there (kg/(m²·s)); 0 at the inlet
 * @param friction pressure that is lost from there to the cell's end (Pa)
 * @param density density there (kg/m³)
 */
record CoolantPoint(
        boolean first,
        double totalEnthalpy,
        double distance,
        double pressure,
        double velocity,
        double massFlux,
        double friction,
        double density) {

    /**
     * @param pressure pressure of the inlet manifold (Pa)
     * @param enthalpy enthalpy there (J/kg)
     * @param density density there (kg/m³)
     * @return the coolant at rest there
     */
    static CoolantPoint inlet(double pressure, double enthalpy, double density) {
        return new CoolantPoint(true, enthalpy, 0, pressure, 0, 0, 0, density);
    }

    /** Pressure behind the last cell, the dynamic head lost (Pa). */
    double outletPressure() {
        return pressure - friction;
    }
}
