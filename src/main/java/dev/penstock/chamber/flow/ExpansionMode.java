package dev.penstock.chamber.flow;

/** What the composition of the gas does while it expands. */
public enum ExpansionMode {
    /** Chemical equilibrium at every station: the upper bound of performance. */
    SHIFTING,
    /** Composition of the chamber kept throughout: the lower bound. */
    FROZEN,
    /** Equilibrium down to the throat, composition of the throat kept from there on. */
    FROZEN_AT_THROAT
}
