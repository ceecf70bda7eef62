package dev.penstock.fluids.property;

/** A property as a function of temperature alone, with the derivatives that thermodynamic consistency needs. SI. */
public interface TemperatureFunction {

    /**
     * @param temperature temperature (K)
     * @return the property
     */
    double value(double temperature);

    /**
     * @param temperature temperature (K)
     * @return first derivative by temperature
     */
    double slope(double temperature);

    /**
     * @param temperature temperature (K)
     * @return second derivative by temperature
     */
    double curvature(double temperature);
}
