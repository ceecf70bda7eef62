package dev.penstock.chamber.design;

/** How the propellants arrive at the main injector, which decides how completely they burn. */
public enum InjectionState {
    /** Both liquid. */
    LIQUID_LIQUID,
    /** One gaseous or as light as gas: heated hydrogen, preburner gas. */
    GAS_LIQUID,
    /** Both gaseous: full-flow staged combustion. */
    GAS_GAS
}
