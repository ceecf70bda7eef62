package dev.penstock.fluids.traits;

/** Metals that a fluid's file may name as attacked, in the table {@code [metals]}. */
public enum Metal {
    ALUMINIUM,
    TITANIUM,
    STEEL,
    NICKEL
}
