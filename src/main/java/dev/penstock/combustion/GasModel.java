package dev.penstock.combustion;

/** How the gas of a gas generator or preburner is modelled. */
public enum GasModel {
    /**
     * Measured data where equilibrium is known to be wrong and data are held; otherwise burnt to equilibrium, without
     * condensed carbon, and frozen from there on.
     */
    AUTOMATIC,
    /** Burnt to equilibrium and in equilibrium all through the turbine. */
    EQUILIBRIUM,
    /** Burnt to equilibrium, then frozen: below about 1500 K a turbine leaves no time to react. */
    FROZEN,
    /** Measured data only: fuel-rich oxygen and kerosene, or hydrazine alone. */
    EMPIRICAL
}
