package dev.penstock.cycles.origin;

import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbinePlace;

/** A shaft of an arrangement, in the order of their names. */
public enum ShaftKey {
    FUEL("fuel", false),
    MAIN("main", false),
    OXIDIZER("oxidizer", false),
    FUEL_BOOST("fuel boost", true),
    OXIDIZER_BOOST("oxidizer boost", true);

    private final String id;
    private final boolean boost;

    ShaftKey(String id, boolean boost) {
        this.id = id;
        this.boost = boost;
    }

    public static ShaftKey of(Side side) {
        return side == Side.FUEL ? FUEL : OXIDIZER;
    }

    public static ShaftKey boostOf(Side side) {
        return side == Side.FUEL ? FUEL_BOOST : OXIDIZER_BOOST;
    }

    public static ShaftKey of(TurbinePlace place) {
        return switch (place) {
            case MAIN -> MAIN;
            case FUEL -> FUEL;
            case OXIDIZER -> OXIDIZER;
        };
    }

    /** First part of its name. */
    public String id() {
        return id;
    }

    /** Name for people. */
    public String title() {
        return id + " shaft";
    }

    /** Whether it carries a boost pump. */
    public boolean boost() {
        return boost;
    }
}
