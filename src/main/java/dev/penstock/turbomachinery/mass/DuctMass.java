package dev.penstock.turbomachinery.mass;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Mass of a duct of gas before or behind a turbine, as a thin pipe.
 * <pre>
 * m = π d s ρ_m L,  d from Mach 0.3 at an exponent of 1.25,  s = p d FS/(2σ) at least 1.5 mm,  FS/σ = 1.5/300 MPa (hot)
 * L = 2 chamber diameters to the next part, 1.2 engine lengths where the gas leaves
 * </pre>
 */
final class DuctMass {

    static final ModelCard CARD = new ModelCard(
            "turbomachinery.duct-mass",
            "Mass of gas ducts",
            "π d s ρ L, d from Mach 0.3, s = p d FS/(2σ) ≥ 1.5 mm, σ/FS 200 MPa, L 2 chamber diameters, 1.2 engine lengths where the gas leaves",
            "ducts of metal before and behind turbines",
            "a factor of 2",
            List.of("common practice, no source"));

    private static final double METAL = 8000;
    private static final double SAFETY_OVER_STRENGTH = 1.5 / 300e6;
    private static final double MACH = 0.3;
    private static final double EXPONENT = 1.25;
    private static final double THINNEST = 1.5e-3;

    private DuctMass() {}

    /**
     * @param duct flow and state in it
     * @param chamberDiameter diameter of the chamber (m)
     * @param lineLength length of a line along the engine (m)
     */
    static MassItem of(EngineParts.GasDuct duct, double chamberDiameter, double lineLength) {
        double velocity = MACH * Math.sqrt(EXPONENT * duct.pressure() / duct.density());
        double bore = Math.sqrt(4 * duct.massFlow() / (Math.PI * duct.density() * velocity));
        double wall = Math.max(0.5 * duct.pressure() * bore * SAFETY_OVER_STRENGTH, THINNEST);
        double length = duct.dumped() ? lineLength : 2 * chamberDiameter;
        return EngineMassModel.item(MassPart.DUCT, duct.name(), Math.PI * bore * wall * METAL * length);
    }
}
