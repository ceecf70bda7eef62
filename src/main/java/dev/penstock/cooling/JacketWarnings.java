package dev.penstock.cooling;

import dev.penstock.errors.Warning;
import java.util.List;
import java.util.Locale;

/** What the reader of a marched jacket must know. */
final class JacketWarnings {

    private static final String JACKET = "cooling jacket";

    private JacketWarnings() {}

    static void collect(JacketRun run, List<Warning> warnings) {
        int uncovered = 0;
        int boiling = 0;
        int hotWall = 0;
        int cells = 0;
        int firstBoiling = -1;
        double hottest = run.properties.highestTemperature();
        for (List<LegField> branch : run.fields) {
            for (LegField field : branch) {
                for (int c = 0; c < run.grid.cells; c++) {
                    if (!field.visited[c]) {
                        continue;
                    }
                    cells++;
                    uncovered += field.covered[c] ? 0 : 1;
                    hotWall += field.floor[c] > hottest ? 1 : 0;
                    double quality = run.properties.quality(field.pressure[c], field.enthalpy[c]);
                    if (quality > 0 && quality < 1) {
                        boiling++;
                        firstBoiling = firstBoiling < 0 ? c : firstBoiling;
                    }
                }
            }
        }
        if (uncovered > 0) {
            warnings.add(new Warning(
                    run.correlation.card().id(),
                    uncovered + " of " + cells + " cells lie outside the range of the correlation ("
                            + run.correlation.card().range() + ")"));
        }
        if (boiling > 0) {
            warnings.add(new Warning(
                    JACKET,
                    String.format(
                            Locale.ROOT,
                            "coolant is two-phase in %d of %d cells, first seen at x = %.4g m (area ratio %.4g); heat"
                                    + " transfer there is that of the saturated mixture and uncertain",
                            boiling,
                            cells,
                            run.grid.x[firstBoiling],
                            run.grid.areaRatio[firstBoiling])));
        }
        if (hotWall > 0) {
            warnings.add(new Warning(
                    JACKET,
                    String.format(
                            Locale.ROOT,
                            "channel floor is hotter than %.4g K, the end of the fluid's model, in %d of %d cells;"
                                    + " properties at the wall are those at the end",
                            hottest,
                            hotWall,
                            cells)));
        }
    }
}
