package dev.penstock.vehicle.reading;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ConceptDocument;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.InputFile;
import dev.penstock.input.InputGroup;
import dev.penstock.input.InputTable;
import dev.penstock.vehicle.plan.AscentPlan;
import dev.penstock.vehicle.plan.BoosterPlan;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.MissionInputs;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.StageInputs;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehicleInputs;
import dev.penstock.vehicle.plan.VehiclePlan;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads what is asked of a vehicle: a file of its own in {@code cycles/vehicles/}, whose stages name the concept files of
 * their engines, or the {@code [vehicle]} table of a concept, whose engine serves every stage.
 */
public final class VehicleReader {

    private static final InputGroup BOOSTERS = StageInputs.boosters(true);
    private static final String STAGE = StageInputs.stage(true).key();

    private final FluidLibrary fluids;

    /** @param fluids where pressurants are looked up */
    public VehicleReader(FluidLibrary fluids) {
        this.fluids = fluids;
    }

    /**
     * @param file vehicle file
     * @param changes values by dotted path that replace or add to what the file says; those of its engines count for nothing
     * @return the plan; every stage names its engine's concept file, resolved against the folder of the vehicle file
     * @throws InvalidInput with every problem of the file together
     */
    public VehiclePlan read(Path file, Map<String, String> changes) {
        return read(file, InputFile.read(file, EngineChanges.of(changes).own()));
    }

    /**
     * @param file where the text is kept, or is to be: engines are looked for from there
     * @param text text of a vehicle file
     * @param changes values by dotted path that replace or add to what the text says
     * @return the plan
     * @throws InvalidInput with every problem of the text together
     */
    public VehiclePlan parse(Path file, String text, Map<String, String> changes) {
        return read(
                file,
                InputFile.parse(
                        String.valueOf(file.getFileName()),
                        text,
                        EngineChanges.of(changes).own()));
    }

    /**
     * @param file where the text is kept: engines are looked for from there
     * @param input a vehicle file, read without changes; it may be shared between threads
     * @param changes values by dotted path that replace or add to what the text says
     * @return the plan
     * @throws InvalidInput with every problem of the text together
     */
    public VehiclePlan parse(Path file, InputFile input, Map<String, String> changes) {
        return read(file, input.with(EngineChanges.of(changes).own()));
    }

    private VehiclePlan read(Path file, InputFile input) {
        InputTable root = input.root().as(VehicleInputs.FILE);
        Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(Path.of("."));
        String name = root.read(VehicleInputs.NAME);
        Optional<VehiclePlan> plan = plan(root, name, Optional.of(folder), input);
        input.finish();
        return plan.orElseThrow();
    }

    /**
     * Reads the {@code [vehicle]} table of a concept, and nothing else of it.
     *
     * @param file name of the concept's file, for messages
     * @param text its text
     * @param changes values by dotted path that replace or add to what the text says
     * @return the plan; empty if the concept has no such table
     * @throws InvalidInput with every problem of the table together
     */
    public Optional<VehiclePlan> readConcept(String file, String text, Map<String, String> changes) {
        InputFile input = InputFile.parse(file, text, changes);
        if (!input.root().has(VehicleInputs.IN_CONCEPT.key())) {
            return Optional.empty();
        }
        InputTable table = input.root().table(VehicleInputs.IN_CONCEPT).as(VehicleInputs.IN_CONCEPT);
        Optional<VehiclePlan> plan = plan(table, input.root().text("name"), Optional.empty(), input);
        input.finish(table);
        return Optional.of(plan.orElseThrow());
    }

    /**
     * @param concept a concept
     * @return the plan of its {@code [vehicle]} table; empty if it has none
     * @throws InvalidInput with every problem of the table together
     */
    public Optional<VehiclePlan> of(Concept concept) {
        ConceptDocument document = concept.document();
        return readConcept(document.file(), document.text(), document.changes());
    }

    private Optional<VehiclePlan> plan(InputTable table, String name, Optional<Path> folder, InputFile file) {
        String prefix = table.path().isEmpty() ? "" : table.path() + ".";
        Map<String, String> sources =
                file.sources(table.table(VehicleInputs.SOURCES), prefix, "vehicle file, no source given");
        String description = table.read(VehicleInputs.DESCRIPTION);
        OptionalDouble payload = table.number(VehicleInputs.PAYLOAD);
        OptionalDouble startMass = table.number(VehicleInputs.START_MASS);
        if (!table.has(VehicleInputs.PAYLOAD) && !table.has(VehicleInputs.START_MASS)) {
            table.problem(
                    VehicleInputs.PAYLOAD,
                    "missing, and start_mass too",
                    "give one of the two and the other follows, or both for the specific impulse needed");
        }
        List<String> notes = new ArrayList<>();
        MissionReader mission = new MissionReader(table.table(MissionInputs.MISSION), notes);
        Optional<DeltaVBudget> budget = mission.budget();
        Optional<AscentPlan> ascent = new AscentReader(table.table(MissionInputs.ASCENT), mission).plan();
        List<StagePlan> stages = stages(table, folder);
        if (!stages.isEmpty()) {
            int last = stages.size() - 1;
            StagePlan coasting = stages.get(last);
            mission.parkingCoast()
                    .ifPresent(time -> stages.set(
                            last, coasting.withAllowances(coasting.allowances().withCoast(time))));
        }
        Optional<BoosterPlan> boosters = table.has(BOOSTERS)
                ? new BoosterReader(table.table(BOOSTERS), folder, fluids).boosters()
                : Optional.empty();
        sharesAllOrNone(table, stages);
        if (!file.sound() || budget.isEmpty()) {
            return Optional.empty();
        }
        VehiclePlan plan = new VehiclePlan(
                name,
                description,
                payload,
                startMass,
                budget.get(),
                stages,
                boosters,
                ascent,
                sources,
                notes,
                file.inputs());
        if (plan.firstStageGoesToOrbit() && stages.get(0).recovery().mode() != Recovery.Mode.NONE) {
            table.problem(
                    StageInputs.RECOVERY.key() + "." + StageInputs.MODE.key(),
                    stages.get(0).recovery().mode().key(),
                    "the only stage goes to orbit: coming back from there is not computed, leave it out");
            return Optional.empty();
        }
        return Optional.of(plan);
    }

    private List<StagePlan> stages(InputTable table, Optional<Path> folder) {
        List<StagePlan> stages = new ArrayList<>();
        if (table.has(STAGE)) {
            List<InputTable> tables = table.tables(STAGE);
            for (int i = 0; i < tables.size(); i++) {
                stages.add(new StageReader(tables.get(i), folder, fluids).stage("stage " + (i + 1), i, tables.size()));
            }
            if (tables.isEmpty() || tables.size() > 6) {
                table.problem(STAGE, tables.size() + " stages", "write 1 to 6 tables [[stage]], lowest stage first");
            }
        } else if (folder.isPresent()) {
            table.problem(STAGE, "missing", "write a table [[stage]] for each stage, lowest stage first");
        } else {
            int count = table.read(VehicleInputs.STAGES);
            for (int i = 0; i < count; i++) {
                String name = count == 1 ? "single stage" : "stage " + (i + 1);
                stages.add(new StageReader(table, folder, fluids).stage(name, i, count));
            }
        }
        return stages;
    }

    private static void sharesAllOrNone(InputTable table, List<StagePlan> stages) {
        List<StagePlan> with =
                stages.stream().filter(s -> s.deltaVShare().isPresent()).toList();
        if (with.isEmpty()) {
            return;
        }
        double sum =
                with.stream().mapToDouble(s -> s.deltaVShare().getAsDouble()).sum();
        if (with.size() < stages.size()) {
            table.problem(
                    STAGE,
                    with.size() + " of " + stages.size() + " stages have a delta_v_share",
                    "give a share to every stage, or to none for the optimum split");
        } else if (stages.size() > 1 && !(Math.abs(sum - 1) < 1e-6)) {
            table.problem(STAGE, "delta_v_share adds up to " + sum, "the shares of all stages must add up to 1");
        }
    }
}
