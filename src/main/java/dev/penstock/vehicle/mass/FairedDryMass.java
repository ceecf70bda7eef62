package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A stage by its mass or coefficient, with the payload fairing on it as a line of its own: what is published of stages leaves it out.
 *
 * @param stage the stage without it
 * @param fairing mass of the fairing (kg), above zero
 */
public record FairedDryMass(DryMassModel stage, double fairing) implements DryMassModel {

    public FairedDryMass {
        Require.positive("dry mass", "fairing (kg)", fairing);
    }

    /**
     * @param fairing mass (kg)
     * @return its line in a mass table
     */
    static MassLine line(double fairing) {
        return new MassLine("payload fairing", fairing, 0.2, "given", MassLine.Made.stated(DryMassInputs.FAIRING));
    }

    @Override
    public MassTable estimate(StageContents contents) {
        MassTable table = stage.estimate(contents);
        List<MassLine> lines = new ArrayList<>(table.lines());
        lines.add(line(fairing));
        return new MassTable(lines, table.growthMargin());
    }

    @Override
    public boolean growsWithEngines() {
        return stage.growsWithEngines();
    }

    @Override
    public DryMassModel recovering(UnaryOperator<Optional<RecoveryHardware>> change) {
        return new FairedDryMass(stage.recovering(change), fairing);
    }
}
