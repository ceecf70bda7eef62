package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Dry mass as a fixed fraction of the stage.
 *
 * <pre>ε = m_dry / (m_dry + m_propellant)</pre>
 *
 * Source: [curtis-2014] §11.6 (symbol and definition). Holds for stages like those the coefficient was read from.
 *
 * @param coefficient ε (-), between 0 and 1
 * @param growthMargin growth as a fraction of the dry mass so found (-)
 */
public record StructuralCoefficient(double coefficient, double growthMargin) implements DryMassModel {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.structural-coefficient",
            "Structural coefficient",
            "ε = m_dry/(m_dry + m_propellant)",
            "stages of the size and kind the coefficient comes from",
            "as good as the choice of coefficient",
            List.of("curtis-2014"));

    public StructuralCoefficient {
        Require.within("structural coefficient", "ε (-)", coefficient, 0, 0.999);
        Require.within("structural coefficient", "growth margin (-)", growthMargin, 0, 2);
    }

    @Override
    public MassTable estimate(StageContents stage) {
        double mass = coefficient / (1 - coefficient) * stage.propellantMass();
        return new MassTable(
                List.of(new MassLine(
                        "structure, engines and systems",
                        mass,
                        0,
                        "structural coefficient given",
                        MassLine.Made.of(CARD, DryMassInputs.STRUCTURAL_COEFFICIENT))),
                growthMargin);
    }
}
