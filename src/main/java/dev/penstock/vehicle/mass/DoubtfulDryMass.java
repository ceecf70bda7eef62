package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import java.util.List;

/**
 * A dry mass as it may turn out: every line that is estimated moved by the same number of its own scatters, stated lines as stated.
 *
 * <pre>m' = m (1 + scatter)^z</pre>
 *
 * Lines moved together give the sum a wider spread than independent lines do: relations that are too light for one line of a stage
 * tend to be so for all of it.
 *
 * @param original the model
 * @param deviation z, number of scatters (-); zero for the model as it is
 */
public record DoubtfulDryMass(DryMassModel original, double deviation) implements DryMassModel {

    public DoubtfulDryMass {
        Require.within("dry mass", "number of scatters (-)", deviation, -10, 10);
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
        double factor = Math.pow(1 + line.scatter(), deviation);
        return new MassLine(line.name(), factor * line.mass(), line.scatter(), line.source(), line.made());
    }

    @Override
    public double fairing() {
        return original.fairing();
    }
}
