package dev.penstock.turbomachinery.mass;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Mass of a duct of gas before or behind a turbine.
 * <pre>
 * a hot {@link ThinPipe} at Mach 0.3 and an exponent of 1.25,  FS/σ = 1.5/300 MPa
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

    private static final double MACH = 0.3;
    private static final double EXPONENT = 1.25;

    private DuctMass() {}

    /**
     * @param duct flow and state in it
     * @param chamberDiameter diameter of the chamber (m)
     * @param lineLength length of a line along the engine (m)
     */
    static MassItem of(EngineParts.GasDuct duct, double chamberDiameter, double lineLength) {
        double velocity = MACH * Math.sqrt(EXPONENT * duct.pressure() / duct.density());
        ThinPipe pipe = ThinPipe.of(
                duct.massFlow(), duct.density(), velocity, duct.pressure(), EngineMetal.SAFETY_OVER_HOT_STRENGTH);
        double length = duct.dumped() ? lineLength : 2 * chamberDiameter;
        return EngineMassModel.item(MassPart.DUCT, duct.name(), pipe.mass(length));
    }
}
