package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import java.util.List;

/**
 * Dry mass that is known.
 *
 * @param mass dry mass (kg)
 * @param growthMargin growth as a fraction of it (-)
 */
public record GivenDryMass(double mass, double growthMargin) implements DryMassModel {

    public GivenDryMass {
        Require.positive("dry mass", "mass (kg)", mass);
        Require.within("dry mass", "growth margin (-)", growthMargin, 0, 2);
    }

    @Override
    public MassTable estimate(StageContents stage) {
        return new MassTable(
                List.of(new MassLine("stage as given", mass, 0, "given", MassLine.Made.stated(DryMassInputs.MASS))),
                growthMargin);
    }
}
