package dev.penstock.cooling.jacket;

import dev.penstock.cooling.coolant.DeteriorationOnset;
import dev.penstock.cooling.design.CoolantRoute;
import dev.penstock.cooling.gas.SootLayer;
import dev.penstock.cooling.march.JacketRun;
import dev.penstock.cooling.march.LegField;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.provenance.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What the reader of a marched jacket must know. */
final class JacketWarnings {

    private static final double BRANCH_MISMATCH = 0.05;

    private final JacketRun run;
    private final String jacket;
    private final FluidState inlet;
    private final FluidState outlet;
    private final List<Warning> warnings = new ArrayList<>();
    private int cells;
    private int uncovered;
    private int beyond;
    private int firstBeyond = -1;
    private double coldestBeyond = Double.POSITIVE_INFINITY;
    private int twoPhase;
    private int firstTwoPhase = -1;
    private int hotWall;
    private int deteriorated;
    private int firstDeteriorated = -1;

    JacketWarnings(JacketRun run, FluidState inlet, FluidState outlet) {
        this.run = run;
        this.jacket = run.question.design().circuit().label();
        this.inlet = inlet;
        this.outlet = outlet;
    }

    List<Warning> collect(Optional<ExtensionResult> extension) {
        try (FluidCursor cursor = run.properties.newCursor()) {
            run.forEachCell((field, c) -> count(field, c, cursor));
        }
        if (uncovered > 0) {
            add(
                    run.correlation.card().id(),
                    "%d of %d cells lie outside the range of the correlation (%s)",
                    uncovered,
                    cells,
                    run.correlation.card().range());
        }
        if (twoPhase > 0) {
            add(
                    jacket,
                    "coolant is two-phase in %d of %d cells, nearest the injector at x = %.4g m (area ratio %.4g); heat"
                            + " transfer there is that of a saturated mixture and uncertain",
                    twoPhase,
                    cells,
                    run.grid.x[firstTwoPhase],
                    run.grid.areaRatio[firstTwoPhase]);
        }
        if (beyond > 0) {
            add(
                    jacket,
                    "coolant is heated beyond what its properties are known for in %d of %d cells, first at x = %.4g m (area"
                            + " ratio %.4g)",
                    beyond,
                    cells,
                    run.grid.x[firstBeyond],
                    run.grid.areaRatio[firstBeyond]);
        }
        if (hotWall > 0) {
            add(
                    jacket,
                    "channel floor is hotter than %.4g K, the end of the fluid's model, in %d of %d cells; properties"
                            + " at the wall are those at the end",
                    run.properties.highestTemperature(),
                    hotWall,
                    cells);
        }
        if (deteriorated > 0) {
            add(
                    DeteriorationOnset.CARD.id(),
                    "heat transfer may deteriorate near the pseudo-critical temperature in %d of %d cells, nearest the"
                            + " injector at x = %.4g m (area ratio %.4g); the wall may run hotter than shown",
                    deteriorated,
                    cells,
                    run.grid.x[firstDeteriorated],
                    run.grid.areaRatio[firstDeteriorated]);
        }
        branches();
        oxidizer();
        soot();
        fluidModel();
        extension.ifPresent(e -> add(
                jacket,
                "the jacket ends at area ratio %.4g; beyond it a %s extension of %s is assumed, at %.0f K where it"
                        + " starts",
                e.startAreaRatio(),
                Words.of(e.kind()),
                e.material(),
                e.startTemperature()));
        return warnings;
    }

    private void count(LegField field, int c, FluidCursor cursor) {
        cells++;
        uncovered += field.covered[c] ? 0 : 1;
        if (field.bulk[c] > run.properties.edgeTemperature(field.pressure[c])) {
            beyond++;
            firstBeyond = field.bulk[c] < coldestBeyond ? c : firstBeyond;
            coldestBeyond = Math.min(coldestBeyond, field.bulk[c]);
        }
        hotWall += field.floor[c] > run.properties.highestTemperature() ? 1 : 0;
        double quality = run.properties.quality(field.pressure[c], field.enthalpy[c]);
        if (quality > 0 && quality < 1) {
            twoPhase++;
            firstTwoPhase = firstTwoPhase < 0 ? c : Math.min(firstTwoPhase, c);
        }
        if (deteriorates(field, c, cursor)) {
            deteriorated++;
            firstDeteriorated = firstDeteriorated < 0 ? c : Math.min(firstDeteriorated, c);
        }
    }

    private boolean deteriorates(LegField field, int c, FluidCursor cursor) {
        double reduced = field.pressure[c] / run.pseudoCritical.criticalPressure();
        if (!(reduced > 1 && reduced < DeteriorationOnset.HIGHEST_REDUCED_PRESSURE)) {
            return false;
        }
        double middle = run.pseudoCritical.at(field.pressure[c]);
        if (!(field.bulk[c] < middle && field.floor[c] > middle)) {
            return false;
        }
        double flux = field.coolantCoefficient[c] * (field.floor[c] - field.bulk[c]);
        return flux / field.massFlux[c] > DeteriorationOnset.fluxOverMassFlux(cursor, field.pressure[c], middle);
    }

    /** A crack lets an oxidizer through the wall into gas that is rich in fuel there. Common practice, no source. */
    private void oxidizer() {
        Propellant coolant = run.question.coolant();
        if (coolant.roles().contains(Propellant.Role.OXIDIZER)) {
            add(
                    jacket,
                    "%s is an oxidizer: through a crack in the wall it meets hot gas that is richer in fuel near the wall,"
                            + " and outside the jacket whatever burns in it; leaks are not estimated",
                    coolant.name());
        }
    }

    /** How much soot counts, and whether its thickness was measured at such a pressure. */
    private void soot() {
        if (!(SootJudgement.resistance(run) > 0)) {
            return;
        }
        add(
                SootLayer.CARD.id(),
                "soot on the wall takes %.0f %% off the heat flux at the throat; its thickness is one measurement, and a"
                        + " textbook has %.1f times as much",
                100 * SootJudgement.shareTaken(run),
                SootLayer.TEXTBOOK_OVER_MEASURED);
        double pressure = run.grid.gas.pressure();
        boolean stated = run.question.design().gasSide().sootResistance().isPresent();
        if (!stated && !SootLayer.measuredAt(pressure)) {
            add(
                    SootLayer.CARD.id(),
                    "soot was measured from %.1f to %.1f MPa of chamber pressure; at %.3g MPa that of the nearer end is"
                            + " taken",
                    SootLayer.LOWEST_PRESSURE / 1e6,
                    SootLayer.HIGHEST_PRESSURE / 1e6,
                    pressure / 1e6);
        }
    }

    /** The branches of a split end in one manifold; sized apart, they need not arrive with one pressure. */
    private void branches() {
        double drop = run.question.inletPressure() - run.outletPressure;
        double spread = run.highestBranchPressure - run.outletPressure;
        boolean split = run.question.design().route().kind() == CoolantRoute.Kind.SPLIT;
        if (split && spread > BRANCH_MISMATCH * drop) {
            add(
                    jacket,
                    "the branches of the split arrive with pressures %.3g MPa apart; the lower one is taken, so the other"
                            + " needs an orifice or another share",
                    spread / 1e6);
        }
    }

    /** What the fluid's own model says of the coolant as it enters and leaves, each sentence once. */
    private void fluidModel() {
        Set<Warning> said = new LinkedHashSet<>();
        Fluid fluid = run.properties.fluid();
        said.addAll(fluid.warnings(inlet));
        said.addAll(fluid.warnings(outlet));
        warnings.addAll(said);
    }

    private void add(String source, String format, Object... values) {
        warnings.add(new Warning(source, String.format(Locale.ROOT, format, values)));
    }
}
