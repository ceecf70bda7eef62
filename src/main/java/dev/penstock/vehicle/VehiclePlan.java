package dev.penstock.vehicle;

import dev.penstock.errors.Require;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What is asked of a vehicle. Payload or start mass is given and the other follows.
 *
 * @param name name for tables
 * @param description what it is for
 * @param payload payload (kg), if given
 * @param startMass start mass (kg), if given
 * @param mission ideal speed gain asked for, term by term
 * @param stages stages, lowest first
 * @param sources what supports an input, by its dotted key
 * @param notes remarks on assumed inputs that must reach the reader
 */
public record VehiclePlan(
        String name,
        String description,
        OptionalDouble payload,
        OptionalDouble startMass,
        DeltaVBudget mission,
        List<StagePlan> stages,
        Map<String, String> sources,
        List<String> notes) {

    public VehiclePlan {
        payload.ifPresent(value -> Require.positive(name, "payload (kg)", value));
        startMass.ifPresent(value -> Require.positive(name, "start mass (kg)", value));
        Require.within(name, "number of stages", stages.size(), 1, 6);
        stages = List.copyOf(stages);
        sources = Map.copyOf(sources);
        notes = List.copyOf(notes);
    }
}
