package dev.penstock.turbomachinery.mass;

import dev.penstock.chamber.contour.ChamberContour;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Least mass of what takes the thrust from its chambers to the one point where the engine hangs: a cone of struts at 45° and the ring at
 * its foot, stressed fully. Struts carry F√2 over R√2, the ring F/(2π) over 2πR; together 3 F R/σ of metal.
 * <pre>
 * m = 3 ρ (FS/σ) F R,  FS/σ = 1.5/500 MPa, ρ 8000 kg/m³
 * R = radius of the chamber, with n chambers and that of the circle on which n nozzles stand side by side, r_e/sin(π/n)
 * </pre>
 */
final class ThrustFrame {

    static final ModelCard CARD = new ModelCard(
            "turbomachinery.thrust-frame-mass",
            "Mass of the thrust frame",
            "3 ρ (FS/σ) F R, R the chamber's radius and, with n chambers, r_e/sin(π/n) besides",
            "one frame of metal for all chambers, hung in one point",
            "a lower bound: a factor of 2 for stiffness and fittings",
            List.of("common practice, no source"));

    private ThrustFrame() {}

    static MassItem of(EngineParts parts) {
        ChamberContour contour = parts.chamber().contour();
        int n = parts.chambers();
        double exit = contour.points().get(contour.points().size() - 1).radius();
        double reach = contour.chamberRadius() + (n > 1 ? exit / Math.sin(Math.PI / n) : 0);
        return EngineMassModel.item(
                MassPart.FRAME,
                "thrust frame",
                3 * EngineMetal.DENSITY * EngineMetal.SAFETY_OVER_STRENGTH * parts.vacuumThrust() * reach);
    }
}
