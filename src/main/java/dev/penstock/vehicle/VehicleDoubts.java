package dev.penstock.vehicle;

import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Spread;
import dev.penstock.vehicle.mass.DryMassInputs;
import dev.penstock.vehicle.mass.FactoredDryMass;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.MissionInputs;
import dev.penstock.vehicle.plan.StageInputs;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * What is uncertain of a vehicle beside its engines, each by its factor on the likely value: what is estimated of the dry mass of each
 * stage, drag loss, the other losses of the ascent, residual propellant, heat into cold tanks that coast. The spreads are those of the declared inputs, so that a study
 * which varies these inputs says the same; an input that the file states is exact, stage by stage. Split and numbers of engines stay as designed.
 */
public final class VehicleDoubts {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.doubts",
            "Spread of what a vehicle weighs and loses",
            "f m for all estimated lines of a stage together; f Δv of losses; f x of residuals; f by triangles",
            "vehicles whose split and engines are decided",
            "dry mass as flown stages show, the others by judgement",
            List.of("common practice, no source"));

    /** Losses other than drag, of a vehicle's own flight, over what the flight finds: judgement. */
    private static final Spread FLOWN_LOSSES = new Spread(0.88, 1, 1.12);

    private static final double MOST_RESIDUAL = 0.2;
    private static final InputGroup BOOSTERS = StageInputs.boosters(true);
    private static final InputGroup STAGES = StageInputs.stage(true);

    /** One of them: what it is, and its factor on the likely value. */
    private record Doubt(String name, Spread factor, Changed changed) {}

    /** A plan with one figure of it moved. */
    private interface Changed {
        VehiclePlan by(VehiclePlan plan, double factor);
    }

    private final VehicleSizing likely;
    private final List<Doubt> doubts = new ArrayList<>();

    /**
     * @param likely the vehicle with everything at its most likely value
     * @param flown whether its losses are those of its own flight
     */
    public VehicleDoubts(VehicleSizing likely, boolean flown) {
        this.likely = likely;
        for (int i = 0; i < likely.stages().size(); i++) {
            int stage = i;
            if (likely.stages().get(i).dryMass().scatter() > 0 && !exact(DryMassInputs.FACTOR, i)) {
                add(
                        "dry mass of " + likely.stages().get(i).name(),
                        DryMassInputs.FACTOR.standing().spread().orElseThrow(),
                        (plan, f) -> withDryMass(plan, stage, f));
            }
        }
        Spread drag = MissionInputs.DRAG_FACTOR.standing().spread().orElseThrow();
        Spread losses = flown
                ? FLOWN_LOSSES
                : MissionInputs.LOSS_FACTOR.standing().spread().orElseThrow();
        loss("drag loss", MissionInputs.DRAG_FACTOR, drag, DeltaVBudget.Kind.DRAG_LOSS, flown);
        loss("other losses of the ascent", MissionInputs.LOSS_FACTOR, losses, DeltaVBudget.Kind.LOSS, flown);
        Spread residual = StageInputs.RESIDUAL.standing().spread().orElseThrow();
        ofStages("residual propellant", StageInputs.RESIDUAL, residual.about(1), kept -> true, VehicleDoubts::moved);
        Spread leak = StageInputs.HEAT_LEAK.standing().spread().orElseThrow();
        ofStages(
                "heat into cold tanks in a coast",
                StageInputs.HEAT_LEAK,
                leak.about(1),
                kept -> kept.coast() > 0,
                (kept, f) -> kept.withHeatLeak(f * kept.heatLeak()));
    }

    /** A flight finds its own losses, whatever factor the file states on usual ones; a stated delta-v has none. */
    private void loss(String name, Input<?> input, Spread factor, DeltaVBudget.Kind kind, boolean flown) {
        boolean lost = likely.plan().mission().terms().stream().anyMatch(term -> term.kind() == kind);
        if (lost && (flown || !exact(input))) {
            add(name, factor, (plan, f) -> plan.withMission(budget(plan.mission(), kind, f)));
        }
    }

    /** One factor for all stages that it concerns and that do not state their figure. */
    private void ofStages(
            String name,
            Input<?> input,
            Spread factor,
            Predicate<Allowances> concerned,
            BiFunction<Allowances, Double, Allowances> change) {
        Set<Integer> moved = new HashSet<>();
        for (int i = 0; i < likely.plan().stages().size(); i++) {
            if (!exact(input, i) && concerned.test(likely.plan().stages().get(i).allowances())) {
                moved.add(i);
            }
        }
        if (!moved.isEmpty()) {
            add(name, factor, (plan, f) -> withAllowances(plan, moved, kept -> change.apply(kept, f)));
        }
    }

    private void add(String name, Spread factor, Changed changed) {
        String told = String.format(Locale.ROOT, "%s (%.2g to %.2g times)", name, factor.low(), factor.high());
        doubts.add(new Doubt(told, factor, changed));
    }

    /** Whether the file states it, and so counts as exact. */
    private boolean exact(Input<?> input) {
        return exact(said(input));
    }

    /** Whether the file states it of a stage, or of all stages together. */
    private boolean exact(Input<?> input, int stage) {
        List<InputValue> said = said(input);
        List<InputValue> own =
                said.stream().filter(value -> value.within(STAGES, stage)).toList();
        return exact(own.isEmpty() ? said : own);
    }

    private static boolean exact(List<InputValue> said) {
        return !said.isEmpty() && said.stream().allMatch(InputValue::given);
    }

    private List<InputValue> said(Input<?> input) {
        return likely.plan().inputs().stream()
                .filter(value -> value.input() == input && !value.within(BOOSTERS))
                .toList();
    }

    /** @return what is uncertain, with its spread, in the order in which {@link #plan} takes factors */
    public List<String> names() {
        return doubts.stream().map(Doubt::name).toList();
    }

    /** @return every factor at its most likely value, one */
    public List<Double> none() {
        return doubts.stream().map(doubt -> doubt.factor().mode()).toList();
    }

    /**
     * @param probabilities probability that each factor stays below its value (-)
     * @return the factors
     */
    public List<Double> factors(List<Double> probabilities) {
        List<Double> factors = new ArrayList<>();
        for (int i = 0; i < doubts.size(); i++) {
            factors.add(doubts.get(i).factor().quantile(probabilities.get(i)));
        }
        return factors;
    }

    /**
     * @param factors factor on the likely value of each uncertain figure (-)
     * @return the vehicle asked for with that, split and numbers of engines as designed
     */
    public VehiclePlan plan(List<Double> factors) {
        double total = likely.plan().mission().total();
        List<StagePlan> designed = new ArrayList<>();
        for (int i = 0; i < likely.stages().size(); i++) {
            designed.add(likely.plan()
                    .stages()
                    .get(i)
                    .withShare(likely.stages().get(i).deltaV() / total)
                    .withEngines(EngineCount.of(likely.stages().get(i).engines())));
        }
        VehiclePlan plan = likely.plan().withNotes(List.of()).withStages(designed);
        for (int i = 0; i < doubts.size(); i++) {
            plan = doubts.get(i).changed().by(plan, factors.get(i));
        }
        return plan;
    }

    private static VehiclePlan withDryMass(VehiclePlan plan, int index, double factor) {
        List<StagePlan> stages = new ArrayList<>(plan.stages());
        StagePlan stage = stages.get(index);
        stages.set(index, stage.withRecovery(new FactoredDryMass(stage.dryMass(), factor), stage.recovery()));
        return plan.withStages(stages);
    }

    private static VehiclePlan withAllowances(VehiclePlan plan, Set<Integer> moved, UnaryOperator<Allowances> change) {
        List<StagePlan> stages = new ArrayList<>(plan.stages());
        for (int i : moved) {
            StagePlan stage = stages.get(i);
            stages.set(i, stage.withAllowances(change.apply(stage.allowances())));
        }
        return plan.withStages(stages);
    }

    private static Allowances moved(Allowances kept, double factor) {
        return kept.withResidual(Math.min(Math.max(MOST_RESIDUAL, kept.residual()), factor * kept.residual()));
    }

    private static DeltaVBudget budget(DeltaVBudget likely, DeltaVBudget.Kind kind, double factor) {
        return new DeltaVBudget(likely.terms().stream()
                .map(term -> term.kind() == kind
                        ? new DeltaVBudget.Term(
                                term.kind(),
                                term.name(),
                                factor * term.value(),
                                term.source(),
                                term.model(),
                                term.inputs())
                        : term)
                .toList());
    }
}
