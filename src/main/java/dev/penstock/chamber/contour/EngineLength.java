package dev.penstock.chamber.contour;

import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Length of chamber and nozzle, and that with the part behind the parting of an extendible nozzle drawn over the part before it.
 * <pre>
 * L = L_chamber + L_nozzle;   stowed: the longer of L_fixed, injector face to parting, and L − L_fixed
 * </pre>
 * Pumps and frame ahead of the injector are left out. Geometry; that the moving part may be drawn forward over the whole fixed one is
 * common practice, no source.
 */
public final class EngineLength {

    public static final ModelCard CARD = new ModelCard(
            "chamber.length",
            "Length of chamber and nozzle, extended and stowed",
            "L = L_c + L_n; stowed max(L_fixed, L - L_fixed)",
            "injector face to nozzle exit",
            "exact for the contour",
            List.of("definition", "common practice, no source"));

    private EngineLength() {}

    /** @return injector face to nozzle exit (m) */
    public static double extended(ChamberContour contour) {
        return contour.chamberLength() + contour.nozzleLength();
    }

    /**
     * @param contour contour
     * @param parting area ratio at which the nozzle parts (-)
     * @return length with the moving part drawn forward (m); empty where no part moves
     */
    public static OptionalDouble stowed(ChamberContour contour, OptionalDouble parting) {
        double ratio = contour.exitRadius() / contour.throatRadius();
        if (parting.isEmpty() || parting.getAsDouble() >= ratio * ratio) {
            return OptionalDouble.empty();
        }
        double fixed = contour.chamberLength() + contour.divergentStation(parting.getAsDouble());
        return OptionalDouble.of(Math.max(fixed, extended(contour) - fixed));
    }
}
