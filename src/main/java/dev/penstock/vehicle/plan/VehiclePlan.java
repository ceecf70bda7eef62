package dev.penstock.vehicle.plan;

import dev.penstock.errors.Require;
import dev.penstock.input.InputValue;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What is asked of a vehicle. Payload or start mass is given and the other follows; if both are given, the specific impulse
 * that is needed follows.
 *
 * @param name name for tables
 * @param description what it is for
 * @param payload payload (kg), if given
 * @param startMass start mass (kg), if given
 * @param mission ideal delta-v asked for, term by term
 * @param stages stages, lowest first
 * @param boosters boosters beside the first stage
 * @param ascent how it flies, where it goes to an orbit
 * @param sources what supports an input, by its dotted key
 * @param notes remarks on assumed inputs that must reach the reader
 * @param inputs every input with its value, in the order of reading
 */
public record VehiclePlan(
        String name,
        String description,
        OptionalDouble payload,
        OptionalDouble startMass,
        DeltaVBudget mission,
        List<StagePlan> stages,
        Optional<BoosterPlan> boosters,
        Optional<AscentPlan> ascent,
        Map<String, String> sources,
        List<String> notes,
        List<InputValue> inputs) {

    /** An ideal speed gain (m/s) above which a stage that comes back comes from something like an orbit: judgement. */
    private static final double ORBITAL = 7000;

    public VehiclePlan {
        payload.ifPresent(value -> Require.positive(name, "payload (kg)", value));
        startMass.ifPresent(value -> Require.positive(name, "start mass (kg)", value));
        Require.within(name, "number of stages", stages.size(), 1, 6);
        stages = List.copyOf(stages);
        sources = Map.copyOf(sources);
        notes = List.copyOf(notes);
        inputs = List.copyOf(inputs);
    }

    /** A plan that no file stands behind. */
    public VehiclePlan(
            String name,
            String description,
            OptionalDouble payload,
            OptionalDouble startMass,
            DeltaVBudget mission,
            List<StagePlan> stages,
            Optional<BoosterPlan> boosters,
            Optional<AscentPlan> ascent,
            Map<String, String> sources,
            List<String> notes) {
        this(name, description, payload, startMass, mission, stages, boosters, ascent, sources, notes, List.of());
    }

    /** @return whether the first stage itself goes to orbit, or so fast that it might as well */
    public boolean firstStageGoesToOrbit() {
        return stages.size() == 1 && (ascent.isPresent() || mission.total() > ORBITAL);
    }

    /** @return the concept files of all engines, boosters included, each once; empty where the concept's own serves all */
    public List<Path> engineFiles() {
        return Stream.concat(
                        stages.stream().map(StagePlan::engineFile),
                        boosters.stream().map(BoosterPlan::engineFile))
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }

    /**
     * @param newMission ideal delta-v asked for
     * @return the same plan with that mission
     */
    public VehiclePlan withMission(DeltaVBudget newMission) {
        return new VehiclePlan(
                name, description, payload, startMass, newMission, stages, boosters, ascent, sources, notes, inputs);
    }

    /**
     * @param newStages stages, lowest first
     * @return the same plan with these
     */
    public VehiclePlan withStages(List<StagePlan> newStages) {
        return new VehiclePlan(
                name, description, payload, startMass, mission, newStages, boosters, ascent, sources, notes, inputs);
    }

    /**
     * @param newPayload payload (kg), if given
     * @param newStartMass start mass (kg), if given
     * @return the same plan for these
     */
    public VehiclePlan withMasses(OptionalDouble newPayload, OptionalDouble newStartMass) {
        return new VehiclePlan(
                name, description, newPayload, newStartMass, mission, stages, boosters, ascent, sources, notes, inputs);
    }

    /**
     * @param newNotes remarks on assumed inputs
     * @return the same plan with these
     */
    public VehiclePlan withNotes(List<String> newNotes) {
        return new VehiclePlan(
                name, description, payload, startMass, mission, stages, boosters, ascent, sources, newNotes, inputs);
    }
}
