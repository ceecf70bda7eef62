package dev.penstock.turbomachinery.pump;

/** Kind of main stages of a pump; an inducer stands before the first stage of each. */
public enum PumpType {
    /** Chosen by {@link PumpModel#choose}: centrifugal unless axial stages save enough power. */
    AUTOMATIC,
    /** Radial or mixed-flow impellers with volute or diffuser. */
    CENTRIFUGAL,
    /** Rotor and stator rows of many low-head stages; in use for hydrogen only. */
    AXIAL
}
