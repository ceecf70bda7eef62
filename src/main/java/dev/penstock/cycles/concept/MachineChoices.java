package dev.penstock.cycles.concept;

import dev.penstock.errors.PenstockException;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.speed.SpeedLimit;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * What machines are while equations are solved, so that nothing jumps: kinds, stages, and the speeds that annuli allow. Each is
 * renewed at a solution, from what its machine did there, until the solution asks for what it was solved with: so it does not
 * matter from where the solution was reached. Where two sets of stages ask for each other in turn, the one of fewer stages is kept, which
 * {@link #askedOtherwise} tells.
 * Not thread-safe.
 */
public final class MachineChoices {

    /** Speed of the shaft over that at which its annulus meets its limit (-): common practice, no source. */
    private static final double BELOW_ANNULUS_LIMIT = 0.99;

    private static final double SLOWEST_CHANGE = 0.6;

    /** Order of the mean by which the limits of a shaft's speed take turns: how little a far one matters. */
    private static final double ORDER_OF_LIMITS = 24;

    private static final double STEEPEST = 0.9;
    private static final Comparator<StageSet> FEWEST = Comparator.comparingInt(StageSet::stages);

    /** Speed that an annulus allows as it was used and as it came out (logarithms of rad/s). */
    private record Tried(double used, double found) {}

    private final Map<String, PumpDesign> pumps = new HashMap<>();
    private final Map<String, TurbineDesign> turbines = new HashMap<>();
    private final Map<TurbinePlace, SpeedLimit> annuli = new EnumMap<>(TurbinePlace.class);

    private final Map<String, Supplier<PumpDesign>> pumpsAgain = new HashMap<>();
    private final Map<String, Supplier<TurbineDesign>> turbinesAgain = new HashMap<>();
    private final Map<TurbinePlace, Supplier<SpeedLimit>> annuliAgain = new EnumMap<>(TurbinePlace.class);
    private final Map<TurbinePlace, Double> speeds = new EnumMap<>(TurbinePlace.class);
    private final Map<TurbinePlace, Tried> tried = new EnumMap<>(TurbinePlace.class);

    private final List<StageSet> seen = new ArrayList<>();
    private final List<StageSet> atSolutions = new ArrayList<>();
    private Optional<StageSet> kept = Optional.empty();

    /**
     * @param id pump
     * @param design what the concept fixes
     * @param choice how the rest is chosen
     * @return the pump as it is held
     */
    public PumpDesign settle(String id, PumpDesign design, UnaryOperator<PumpDesign> choice) {
        Supplier<PumpDesign> again = () -> design.settled() ? design : staged(design, choice.apply(design));
        pumpsAgain.put(id, again);
        return pumps.computeIfAbsent(id, i -> kept.map(k -> k.pumps().get(id))
                .filter(k -> !design.settled())
                .map(k -> staged(design, k))
                .orElseGet(again));
    }

    private static PumpDesign staged(PumpDesign design, PumpDesign chosen) {
        return design.withStages(chosen.type(), chosen.stages().orElseThrow());
    }

    /** A pump as it is held, if it is. */
    public Optional<PumpDesign> heldPump(String id) {
        return Optional.ofNullable(pumps.get(id));
    }

    /** As {@link #settle}, for a turbine. */
    public TurbineDesign settleTurbine(String id, TurbineDesign design, UnaryOperator<TurbineDesign> choice) {
        Supplier<TurbineDesign> again = () -> choice.apply(design);
        turbinesAgain.put(id, again);
        return turbines.computeIfAbsent(id, i -> kept.map(k -> k.turbines().get(id))
                .map(k -> design.withStages(k.type(), k.stages().orElseThrow()))
                .orElseGet(again));
    }

    /**
     * Speed at which the annulus of a turbine reaches its limit. It depends on the turbine's flow, which depends on the speed:
     * so it is held while equations are solved.
     */
    public void holdAnnulusLimit(TurbinePlace place, double speed, Supplier<SpeedLimit> limit) {
        annuliAgain.put(place, limit);
        speeds.put(place, speed);
        annuli.computeIfAbsent(place, p -> bounded(limit.get(), speed));
    }

    private static SpeedLimit bounded(SpeedLimit found, double speed) {
        return found.at(Math.max(BELOW_ANNULUS_LIMIT * found.speed(), SLOWEST_CHANGE * speed));
    }

    /** Speed that an annulus allows as it is held, if it is. */
    public Optional<SpeedLimit> annulusLimit(TurbinePlace place) {
        return Optional.ofNullable(annuli.get(place));
    }

    // ---- renewed between the rounds

    /**
     * Chooses kinds and stages anew from what the machines did in the last pass.
     *
     * @param solved whether that was a solution with chamber and jackets as they are, not one on the way
     * @return whether any differs from what was held
     */
    public boolean renewStages(boolean solved) {
        see();
        if (kept.isPresent()) {
            return false;
        }
        StageSet before = stages();
        StageSet now = asked();
        pumps.putAll(now.pumps());
        turbines.putAll(now.turbines());
        see();
        if (now.sameAs(before)) {
            return false;
        }
        if (solved) {
            atSolutions.add(before);
            keepFewestOfTurns(before, now);
        }
        return !stages().sameAs(before);
    }

    /** Once a set comes back, those since its last time ask for each other in turn. */
    private void keepFewestOfTurns(StageSet before, StageSet now) {
        for (int i = 0; i < atSolutions.size(); i++) {
            if (atSolutions.get(i).sameAs(now)) {
                StageSet fewest = atSolutions.subList(i, atSolutions.size()).stream()
                        .min(FEWEST)
                        .orElse(before);
                pumps.putAll(fewest.pumps());
                turbines.putAll(fewest.turbines());
                keepStages(fewest);
                return;
            }
        }
    }

    /**
     * Renews the speeds that annuli allow from what the turbines did in the last pass.
     *
     * @return by how much a shaft's speed moves with them, at most (-)
     */
    public double renewAnnuli() {
        double most = 0;
        for (Map.Entry<TurbinePlace, Supplier<SpeedLimit>> annulus : annuliAgain.entrySet()) {
            most = Math.max(most, renewed(annulus.getKey(), annulus.getValue()));
        }
        return most;
    }

    /** By how much the shaft of a turbine whose annulus is renewed moves with it (-). */
    private double renewed(TurbinePlace place, Supplier<SpeedLimit> again) {
        double speed = speeds.get(place);
        double used = Math.log(annuli.get(place).speed());
        SpeedLimit found = bounded(again.get(), speed);
        double asked = Math.log(found.speed());
        Tried last = tried.put(place, new Tried(used, asked));
        double next = asked;
        if (last != null && used != last.used) {
            double slope = Math.max(-STEEPEST, Math.min(STEEPEST / 2, (asked - last.found) / (used - last.used)));
            next = (asked - slope * used) / (1 - slope);
        }
        annuli.put(place, found.at(Math.exp(next)));
        double share = Math.min(1, Math.pow(speed / Math.exp(used), ORDER_OF_LIMITS));
        return share * Math.abs(asked - used);
    }

    /** Begins with the annuli of an earlier balance of the same arrangement; kinds and stages are chosen anew. */
    public void adopt(MachineChoices earlier) {
        annuli.putAll(earlier.annuli);
    }

    /** Kinds and stages of the machines as they are now. */
    public StageSet stages() {
        return new StageSet(pumps, turbines);
    }

    private void see() {
        StageSet now = stages();
        if (seen.stream().noneMatch(now::sameAs)) {
            seen.add(now);
        }
    }

    /** Sees the kinds and stages that the machines of the last pass ask for, if they can be chosen there. */
    public void seeWhereEnded() {
        try {
            renewStages(false);
        } catch (PenstockException e) {
            // where a search fails, machines may be outside all models: then nothing is asked for
        }
    }

    /** The different sets of stages that were chosen, in their order. */
    public List<StageSet> seen() {
        return List.copyOf(seen);
    }

    /** What the machines would be by what they did in the last pass, if that differs from what they are: only where stages are kept. */
    public Optional<StageSet> askedOtherwise() {
        return kept.map(k -> asked()).filter(asked -> !asked.sameAs(stages()));
    }

    private StageSet asked() {
        Map<String, PumpDesign> askedPumps = new HashMap<>();
        Map<String, TurbineDesign> askedTurbines = new HashMap<>();
        pumpsAgain.forEach((id, again) -> askedPumps.put(id, again.get()));
        turbinesAgain.forEach((id, again) -> askedTurbines.put(id, again.get()));
        return new StageSet(askedPumps, askedTurbines);
    }

    /** Machines that are chosen from now on have these kinds and stages. */
    public void keepStages(StageSet stages) {
        kept = Optional.of(stages);
    }
}
