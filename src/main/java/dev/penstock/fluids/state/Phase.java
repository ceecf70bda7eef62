package dev.penstock.fluids.state;

/** Phase of a fluid state. */
public enum Phase {
    LIQUID,
    GAS,
    TWO_PHASE,
    /** Above the critical temperature and pressure. */
    SUPERCRITICAL
}
