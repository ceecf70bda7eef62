package dev.penstock.vehicle.stage;

import dev.penstock.input.InputValue;
import dev.penstock.provenance.Place;
import dev.penstock.provenance.Place.Role;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.plan.VehicleInputs;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What is around each part of a sized vehicle: its inputs of the plan, its engine, what it carries. */
final class VehiclePlaces {

    private static final String ROOT = "plan.";
    private static final String IN_CONCEPT = VehicleInputs.IN_CONCEPT.key() + ".";

    private VehiclePlaces() {}

    /** Path of an input: keys of a concept's own table read like those of a vehicle file. */
    static String path(InputValue input) {
        String key = input.key();
        return ROOT + (key.startsWith(IN_CONCEPT) ? key.substring(IN_CONCEPT.length()) : key);
    }

    /** Place of the vehicle as a whole, with every input of its plan that is a number. */
    static Place of(VehicleSizing vehicle) {
        List<String> inputs = vehicle.plan().inputs().stream()
                .filter(input -> input.number().isPresent())
                .map(VehiclePlaces::path)
                .toList();
        return Place.at("").with(Role.GIVEN, inputs).with(Role.PLAN, inputs);
    }

    /** A stage has a table of its own, or shares those of the vehicle with all others. */
    static Place stage(VehicleSizing vehicle, StageSizing stage, Place at) {
        int index = vehicle.stages().indexOf(stage);
        List<String> own = starting(at, "stage[" + index + "].");
        List<String> shared =
                starting(at, "allowances.", "dry_mass.", "thrust_to_weight", "engines", "diameter", "recovery.");
        List<StageSizing> above =
                vehicle.stages().subList(index + 1, vehicle.stages().size());
        return at.with(Role.GIVEN, own.isEmpty() ? shared : own)
                .with(Role.ENGINE, engine(stage.engine()))
                .with(Role.TARGET, asked(vehicle))
                .with(
                        Role.BEFORE,
                        List.of(
                                above.isEmpty()
                                        ? "payload_kg"
                                        : StageFigures.STAGES
                                                .paths("stages", above, "start_mass_kg")
                                                .get(0)));
    }

    /** Speed budget, and what each stage does with its propellant: together they decide who gains how much. */
    private static List<String> asked(VehicleSizing vehicle) {
        List<String> paths = new ArrayList<>(VehicleFigures.BUDGET.paths(
                "delta_v_budget", vehicle.plan().mission().terms(), "delta_v_m_s"));
        for (String key : List.of("isp_s", "structural_coefficient")) {
            paths.addAll(StageFigures.STAGES.paths("stages", vehicle.stages(), key));
        }
        return paths;
    }

    static Place boosters(StageSizing stage, BoosterSizing boosters, Place at) {
        Place place = at.with(Role.GIVEN, starting(at, "boosters."));
        return boosters.liquid()
                .map(liquid -> place.with(Role.ENGINE, engine(liquid.engine())))
                .orElseGet(() -> place.with(Role.ENGINE, List.of()));
    }

    private static List<String> engine(EnginePerformance engine) {
        return List.of(EnginePerformance.path(engine.name()));
    }

    private static List<String> starting(Place at, String... starts) {
        return at.all(Role.PLAN).stream()
                .filter(path -> Stream.of(starts).anyMatch(start -> path.startsWith(start, ROOT.length())))
                .toList();
    }

    /** Paths of a figure of every line of a dry mass. */
    static List<String> lines(Place at, String list, MassTable table, String key) {
        return StageFigures.DRY_MASS.paths(at.own(list), StageFigures.DryLine.of(table), key);
    }
}
