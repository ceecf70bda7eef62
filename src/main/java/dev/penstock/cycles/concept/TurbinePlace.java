package dev.penstock.cycles.concept;

import java.util.Locale;

/** Where a turbine stands. */
public enum TurbinePlace {
    /** The one turbine of an engine that has one. */
    MAIN,
    /** On the shaft of the fuel pump. */
    FUEL,
    /** On the shaft of the oxidizer pump. */
    OXIDIZER;

    /**
     * @param side oxidizer or fuel
     * @return where the turbine on the shaft of that pump stands, of an engine with more than one
     */
    public static TurbinePlace of(Side side) {
        return side == Side.FUEL ? FUEL : OXIDIZER;
    }

    /** @return key of its table in a concept file, under {@code turbines} */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** @return name for people */
    public String title() {
        return key() + " turbine";
    }
}
