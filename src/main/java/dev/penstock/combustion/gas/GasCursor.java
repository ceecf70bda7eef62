package dev.penstock.combustion.gas;

/**
 * A movable state of burnt gas for hot loops: set it, read what is needed; nothing is allocated. Not thread-safe. Getters
 * before the first state is set or after a failed one are undefined. What sets a state throws
 * {@link dev.penstock.errors.OutsideValidity} where the data or the model end, and
 * {@link dev.penstock.errors.NotConverged} when no solution is found.
 */
public interface GasCursor {

    /**
     * @param pressure absolute pressure (Pa)
     * @param entropy specific entropy (J/(kg·K))
     */
    void setPressureEntropy(double pressure, double entropy);

    /** @return absolute pressure (Pa) */
    double pressure();

    /** @return temperature (K) */
    double temperature();

    /** @return density (kg/m³) */
    double density();

    /** @return specific enthalpy relative to the elements at 298.15 K (J/kg) */
    double enthalpy();

    /** @return specific entropy (J/(kg·K)) */
    double entropy();

    /** @return mass over moles of gas (kg/mol), condensed mass included */
    double molarMass();

    /** @return −(∂ln p/∂ln v)_s as this cursor moves: composition shifting or frozen (-) */
    double isentropicExponent();

    /** @return speed of sound as this cursor moves: composition shifting or frozen (m/s) */
    double soundSpeed();

    /** @return specific heat at constant pressure with frozen composition (J/(kg·K)) */
    double frozenHeatCapacity();

    /** @return viscosity and frozen Prandtl number */
    FrozenTransport frozenTransport();

    /** @return mass fraction of condensed species (-) */
    double condensedMassFraction();
}
