package dev.penstock.vehicle.plan;

import dev.penstock.input.Belief;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.InputKind;
import dev.penstock.input.Usual;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.ArrayList;
import java.util.List;

/** Every input of a vehicle file, and of the table {@code [vehicle]} of a concept. */
public final class VehicleInputs {

    public static final Input<String> NAME =
            Input.text("name", "Name of the vehicle").example("\"New vehicle\"");
    public static final Input<String> DESCRIPTION =
            Input.text("description", "What it is for").usual(Usual.of("", "", ""));
    public static final Input<Double> PAYLOAD = Input.quantity("payload", Dimension.MASS, Range.POSITIVE, "Payload")
            .computed("follows from the start mass")
            .believed(Belief.factors(10, 1e5))
            .example("\"1000 kg\"");
    public static final Input<Double> START_MASS = Input.quantity(
                    "start_mass", Dimension.MASS, Range.POSITIVE, "Mass of the whole vehicle at the start")
            .computed("follows from the payload")
            .believed(Belief.factors(500, 5e6));
    public static final Input<Integer> STAGES = Input.whole("stages", 1, 6, "Number of stages, all with this engine")
            .usual(Usual.of(1, "a single stage", ""));

    public static final InputGroup SOURCES = InputGroup.free(
            "sources", "Where values come from, by key or by table; shown in reports", new InputKind.Text());

    /** What the engine of a concept is sized into. */
    public static final InputGroup IN_CONCEPT = InputGroup.table(
                    "vehicle",
                    "The vehicle that the engine drives: payload or start mass, the other follows",
                    join(
                            List.of(DESCRIPTION, PAYLOAD, START_MASS, STAGES),
                            StageInputs.stage(false).inputs()))
            .ifWritten()
            .with(MissionInputs.MISSION, MissionInputs.ASCENT)
            .with(StageInputs.stage(false).groups().toArray(InputGroup[]::new))
            .with(StageInputs.stage(false).repeated(), StageInputs.boosters(false), SOURCES);

    /** A vehicle file. */
    public static final InputGroup FILE = InputGroup.table("", "A vehicle", NAME, DESCRIPTION, PAYLOAD, START_MASS)
            .with(
                    MissionInputs.MISSION,
                    MissionInputs.ASCENT,
                    StageInputs.stage(true).repeated(),
                    StageInputs.boosters(true),
                    SOURCES);

    private VehicleInputs() {}

    private static Input<?>[] join(List<Input<?>> first, List<Input<?>> second) {
        List<Input<?>> all = new ArrayList<>(first);
        second.stream().filter(i -> i != StageInputs.NAME).forEach(all::add);
        return all.toArray(Input<?>[]::new);
    }
}
