package dev.penstock.cycles.origin;

import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.Side;

/**
 * A line or gas path of the pressure ladder.
 *
 * @param content what it carries
 * @param title name for people
 * @param fromTank whether it begins at a tank, and not where another line divides
 */
public record LineKey(Content content, String title, boolean fromTank) {

    /** Through the chamber, from the injector face to the nozzle. */
    public static final LineKey CHAMBER = new LineKey(Content.BURNT_GAS, "chamber", false);

    public static LineKey of(Side side) {
        return new LineKey(Content.of(side), side.key(), true);
    }

    /** Past a jacket of this propellant. */
    public static LineKey bypass(Side side) {
        return new LineKey(Content.of(side), side.key() + " bypass", false);
    }

    /** To a jacket behind which it is dumped. */
    public static LineKey dump(Side side) {
        return new LineKey(Content.of(side), side.key() + " to be dumped", false);
    }

    /** Of a third fluid. */
    public static LineKey diluent(String fluid) {
        return new LineKey(Content.DILUENT, fluid, true);
    }

    public static LineKey to(Burner burner, Side side) {
        return new LineKey(Content.of(side), side.key() + " to the " + burner.title(), false);
    }
}
