package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import java.util.List;

/**
 * Dry mass that is known.
 *
 * @param mass dry mass (kg)
 * @param growthMargin growth stated with it, as a fraction of it (-)
 */
public record GivenDryMass(double mass, double growthMargin) implements DryMassModel {

    public GivenDryMass {
        Require.notNegative("dry mass", "mass (kg)", mass);
        Require.within("dry mass", "growth margin (-)", growthMargin, 0, 2);
    }

    @Override
    public MassTable estimate(StageContents stage) {
        return table();
    }

    /** @return that mass as a table, the same for any stage */
    public MassTable table() {
        MassLine.Made stated = MassLine.Made.stated(DryMassInputs.MASS);
        MassLine given = new MassLine("stage as given", mass, 0, "given", stated);
        if (growthMargin == 0) {
            return new MassTable(List.of(given), 0);
        }
        MassLine growth = new MassLine(
                "growth stated with it",
                growthMargin * mass,
                0,
                "given",
                MassLine.Made.stated(DryMassInputs.GROWTH_MARGIN));
        return new MassTable(List.of(given, growth), 0);
    }
}
