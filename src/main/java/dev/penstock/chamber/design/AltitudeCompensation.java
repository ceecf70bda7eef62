package dev.penstock.chamber.design;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a nozzle follows the ambient pressure beyond what a bell in one piece does.
 *
 * @param kind how
 * @param innerAreaRatio area ratio at the inflection of a dual bell, or at which a nozzle parts whose extension moves, in flight or before
 *     ignition (-); of no meaning for the others
 */
public record AltitudeCompensation(Kind kind, double innerAreaRatio) {

    /** Card of dual bells and extendible nozzles. */
    public static final ModelCard CARD = new ModelCard(
            "chamber.altitude-compensation",
            "Dual bell and extendible nozzle",
            "F(ε) = F_vac I(ε)/I(ε_e) − p_a ε A_t; dual bell: ε = ε_i as long as the flow would part behind it below ambient pressure,"
                    + " then ε_e; extendible: the larger of F(ε_i) and F(ε_e)",
            "still air; the wall up to the inner area ratio as long a bell as the whole",
            "thrust of a dual bell within 1 to 3 % at low height, where its extension is sucked at",
            List.of("common practice, no source"));

    /** How. */
    public enum Kind {
        /** Not at all: a bell or cone in one piece. */
        NONE,
        /** The flow's outer edge is free, as on a plug or a cluster around one. */
        PLUG,
        /** The wall turns at an inflection, where the flow leaves it at low height. */
        DUAL_BELL,
        /** An extension is moved down in flight, while the engine runs. */
        EXTENDIBLE,
        /** An extension is moved down before ignition: the thrust is that of a bell in one piece. */
        STOWED
    }

    /** A nozzle in one piece. */
    public static final AltitudeCompensation NONE = new AltitudeCompensation(Kind.NONE, 1);

    public AltitudeCompensation {
        Require.within("nozzle", "inner area ratio (-)", innerAreaRatio, 1, 2000);
    }

    /** @return whether it needs an inner area ratio */
    public boolean inTwo() {
        return kind == Kind.DUAL_BELL || moves();
    }

    private boolean moves() {
        return kind == Kind.EXTENDIBLE || kind == Kind.STOWED;
    }

    /** @return area ratio at which the nozzle parts for its extension to move (-); empty where nothing moves */
    public OptionalDouble parting() {
        return moves() ? OptionalDouble.of(innerAreaRatio) : OptionalDouble.empty();
    }

    /** @return what readers must know of it; empty for a nozzle in one piece */
    public Optional<String> doubt() {
        return switch (kind) {
            case NONE, STOWED -> Optional.empty();
            case PLUG ->
                Optional.of("the plug is ideal: built plugs lose 1 to 3 % more thrust, and their mass and cooling"
                        + " are those of the bell");
            case DUAL_BELL ->
                Optional.of("the dual bell is ideal: built ones lose 1 to 3 % of thrust at low height, and"
                        + " side loads when the flow jumps to the extension are not estimated");
            case EXTENDIBLE ->
                Optional.of("the extendible nozzle is ideal: no thrust is lost while its extension moves");
        };
    }
}
