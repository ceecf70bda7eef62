package dev.penstock.cycles.origin;

import dev.penstock.cycles.concept.Side;

/** What a line carries, whatever it is called. */
public enum Content {
    OXIDIZER,
    FUEL,
    /** A third fluid that is injected into a burner. */
    DILUENT,
    /** Made of a propellant or both by a reaction. */
    BURNT_GAS,
    /** Gas that pushes propellants out of their tanks. */
    PRESSURANT;

    public static Content of(Side side) {
        return side == Side.FUEL ? FUEL : OXIDIZER;
    }
}
