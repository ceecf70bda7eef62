package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import java.util.List;

/**
 * A dry mass as it may turn out: every line that is estimated moved by the same factor, stated lines as stated.
 *
 * <pre>m' = m (1 + s)^z</pre>
 *
 * s is the spread of the whole table ({@link MassTable#spread}): relations that are too light for one line of a stage tend to be so for
 * all of it, as flown stages show.
 *
 * @param original the model
 * @param deviation z, number of spreads (-); zero for the model as it is
 */
public record DoubtfulDryMass(DryMassModel original, double deviation) implements DryMassModel {

    public DoubtfulDryMass {
        Require.within("dry mass", "number of scatters (-)", deviation, -10, 10);
    }

    @Override
    public MassTable estimate(StageContents stage) {
        MassTable table = original.estimate(stage);
        double factor = Math.pow(1 + table.spread(), deviation);
        List<MassLine> lines =
                table.lines().stream().map(line -> moved(line, factor)).toList();
        return new MassTable(lines, table.growthMargin());
    }

    private static MassLine moved(MassLine line, double factor) {
        if (line.stated()) {
            return line;
        }
        return new MassLine(line.name(), factor * line.mass(), line.scatter(), line.source(), line.made());
    }

    @Override
    public double fairing() {
        return original.fairing();
    }
}
