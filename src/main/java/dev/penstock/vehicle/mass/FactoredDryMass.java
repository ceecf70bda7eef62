package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A dry mass as it may turn out: every line that is estimated times the same factor, stated lines as stated. Relations that are too
 * light for one line of a stage tend to be so for all of it, as flown stages show ({@link MassTable#COMMON}).
 *
 * <pre>m' = f m</pre>
 *
 * @param original the model
 * @param factor f (-), {@link DryMassInputs#FACTOR}
 */
public record FactoredDryMass(DryMassModel original, double factor) implements DryMassModel {

    public FactoredDryMass {
        Require.positive("dry mass", "factor on what is estimated (-)", factor);
    }

    @Override
    public MassTable estimate(StageContents stage) {
        MassTable table = original.estimate(stage);
        List<MassLine> lines = table.lines().stream().map(this::moved).toList();
        return new MassTable(lines, table.growthMargin());
    }

    private MassLine moved(MassLine line) {
        if (line.stated()) {
            return line;
        }
        return new MassLine(
                line.name(),
                factor * line.mass(),
                line.scatter(),
                line.source(),
                line.made().times(DryMassInputs.FACTOR));
    }

    @Override
    public double fairing() {
        return original.fairing();
    }

    @Override
    public boolean growsWithEngines() {
        return original.growsWithEngines();
    }

    @Override
    public DryMassModel recovering(UnaryOperator<Optional<RecoveryHardware>> change) {
        return new FactoredDryMass(original.recovering(change), factor);
    }
}
