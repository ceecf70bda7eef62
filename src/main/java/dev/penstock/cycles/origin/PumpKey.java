package dev.penstock.cycles.origin;

import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.Side;
import dev.penstock.input.TableKey;
import dev.penstock.provenance.Trail;

/**
 * A pump of an arrangement.
 *
 * @param side whose liquid it pumps
 * @param role what it is there for
 */
public record PumpKey(Side side, Role role) {

    /** What a pump is there for. */
    public enum Role {
        /** From the tank to the engine. */
        MAIN("", " pump"),
        /** Before the main pump, for its suction. */
        BOOST("_boost", " boost pump"),
        /** Behind the main pump, for the little that needs more pressure. */
        KICK("_kick", " kick pump"),
        /** Behind the main pump, for a large part of the flow. */
        SECOND("_second", " second pump"),
        /** Of a third fluid, on the shaft of that side. */
        DILUENT("", "diluent pump");

        private final String suffix;
        private final String title;

        Role(String suffix, String title) {
            this.suffix = suffix;
            this.title = title;
        }
    }

    public static PumpKey main(Side side) {
        return new PumpKey(side, Role.MAIN);
    }

    /** Id of its component. */
    public String id() {
        return role == Role.DILUENT ? "pump.diluent" : "pump." + side.key() + role.suffix;
    }

    /** Name for people. */
    public String label() {
        return role == Role.DILUENT ? role.title : side.key() + role.title;
    }

    /** Path of its figures. */
    public String path() {
        return "pumps." + Trail.slug(label());
    }

    /** Table of the concept file that describes it. */
    public TableKey table() {
        return switch (role) {
            case BOOST -> ConceptTables.boostPump(side);
            case DILUENT -> ConceptTables.DILUENT;
            case MAIN, KICK, SECOND -> ConceptTables.pump(side);
        };
    }
}
