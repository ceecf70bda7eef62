package dev.penstock.vehicle;

import dev.penstock.provenance.ModelCard;
import dev.penstock.vehicle.mass.DoubtfulDryMass;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What is uncertain of a vehicle beside its engines, each by a number of standard deviations: dry mass of each stage, drag loss, the
 * other losses of the ascent, residual propellant. Split and numbers of engines stay as they were designed.
 */
public final class VehicleDoubts {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.doubts",
            "Spread of what a vehicle weighs and loses",
            "m (1 + s)^z for all estimated lines of a stage together, s their spread about flown stages; losses (1 + s z); residuals (1 + s)^z; z normal",
            "vehicles whose split and engines are decided",
            "losses 5 % where flown and 15 % where usual or stated, drag loss 30 %, residuals a factor of 1.5, by judgement",
            List.of("common practice, no source"));

    private static final double DRAG = 0.30;
    private static final double FLOWN_LOSSES = 0.05;
    private static final double ASSUMED_LOSSES = 0.15;
    private static final double RESIDUAL = 0.5;
    private static final double MOST_RESIDUAL = 0.2;

    private final VehicleSizing likely;
    private final boolean flown;

    /**
     * @param likely the vehicle with everything at its most likely value
     * @param flown whether its losses are those of its own flight
     */
    public VehicleDoubts(VehicleSizing likely, boolean flown) {
        this.likely = likely;
        this.flown = flown;
    }

    /** @return what is uncertain, with its spread, in the order in which {@link #plan} takes deviations */
    public List<String> names() {
        List<String> names = new ArrayList<>();
        likely.stages().forEach(stage -> names.add("dry mass of " + stage.name()));
        names.add(String.format(Locale.ROOT, "drag loss (± %.0f %%)", 100 * DRAG));
        names.add(String.format(Locale.ROOT, "other losses of the ascent (± %.0f %%)", 100 * otherLosses()));
        names.add(String.format(Locale.ROOT, "residual propellant (factor %.1f)", 1 + RESIDUAL));
        return names;
    }

    private double otherLosses() {
        return flown ? FLOWN_LOSSES : ASSUMED_LOSSES;
    }

    /**
     * @param deviations number of standard deviations of each uncertain figure (-)
     * @return the vehicle asked for with that, split and numbers of engines as designed
     */
    public VehiclePlan plan(List<Double> deviations) {
        int stages = likely.stages().size();
        double total = likely.plan().mission().total();
        double residuals = Math.pow(1 + RESIDUAL, deviations.get(stages + 2));
        List<StagePlan> changed = new ArrayList<>();
        for (int i = 0; i < stages; i++) {
            StagePlan stage = likely.plan().stages().get(i);
            Allowances allowances = stage.allowances();
            changed.add(stage.withShare(likely.stages().get(i).deltaV() / total)
                    .withEngines(EngineCount.of(likely.stages().get(i).engines()))
                    .withAllowances(new Allowances(
                            Math.min(Math.max(MOST_RESIDUAL, allowances.residual()), residuals * allowances.residual()),
                            allowances.startupTime(),
                            allowances.boilOff(),
                            allowances.ullage()))
                    .withRecovery(new DoubtfulDryMass(stage.dryMass(), deviations.get(i)), stage.recovery()));
        }
        return likely.plan()
                .withNotes(List.of())
                .withStages(changed)
                .withMission(budget(deviations.get(stages), deviations.get(stages + 1)));
    }

    private DeltaVBudget budget(double drag, double others) {
        List<DeltaVBudget.Term> terms = new ArrayList<>();
        for (DeltaVBudget.Term term : likely.plan().mission().terms()) {
            double factor =
                    switch (term.kind()) {
                        case DRAG_LOSS -> 1 + DRAG * drag;
                        case LOSS -> 1 + otherLosses() * others;
                        default -> 1;
                    };
            terms.add(new DeltaVBudget.Term(
                    term.kind(), term.name(), factor * term.value(), term.source(), term.model(), term.inputs()));
        }
        return new DeltaVBudget(terms);
    }
}
