package dev.penstock.vehicle.stage;

import static dev.penstock.provenance.Place.given;
import static dev.penstock.provenance.Place.own;
import static dev.penstock.provenance.Place.stated;
import static dev.penstock.quantities.Notation.TONNES;
import static dev.penstock.quantities.Notation.fixed;
import static dev.penstock.quantities.Notation.significant;
import static dev.penstock.vehicle.stage.StageFigures.KILOGRAMS;
import static dev.penstock.vehicle.stage.StageFigures.SPEED;

import dev.penstock.cycles.origin.Definitions;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Place;
import dev.penstock.provenance.Trail;
import dev.penstock.quantities.Notation;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.plan.DeltaVBudget;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;

/** What a sized vehicle publishes: the whole, its velocity budget, its engines, each stage. */
public final class VehicleFigures {

    private static final ModelCard CHAIN = StageFigures.card(
            "chain",
            "Stage by stage from start mass to payload, or back",
            "carried = m0 − loaded − dry; the start mass at which it equals what stands on top",
            "where the stage closes");
    private static final ModelCard FACTOR = StageFigures.card(
            "isp-factor",
            "Specific impulse needed over that there is",
            "the common factor at which both payload and start mass hold",
            "where both are given");

    /**
     * An engine of a vehicle with the file that it was balanced from.
     *
     * @param engine the engine
     * @param file name of its concept file
     */
    public record FittedEngine(EnginePerformance engine, String file) {

        private static List<FittedEngine> of(VehicleSizing vehicle) {
            Map<String, FittedEngine> engines = new LinkedHashMap<>();
            for (int i = 0; i < vehicle.stages().size(); i++) {
                StageSizing stage = vehicle.stages().get(i);
                fit(engines, stage.engine(), vehicle.plan().stages().get(i).engineFile());
                stage.boosters()
                        .flatMap(BoosterSizing::liquid)
                        .ifPresent(b -> fit(engines, b.engine(), b.plan().engineFile()));
            }
            return List.copyOf(engines.values());
        }

        private static void fit(Map<String, FittedEngine> engines, EnginePerformance engine, Optional<Path> file) {
            String name = file.map(f -> f.getFileName().toString()).orElse("the same file");
            engines.putIfAbsent(engine.name(), new FittedEngine(engine, name));
        }
    }

    /** Figures that a vehicle takes from an engine. */
    public static final FigureTable<FittedEngine> ENGINES = FigureTable.<FittedEngine>named(
                    fitted -> fitted.engine().name())
            .number("isp_vacuum_s", "specific impulse, vacuum", fixed("s", "s", 1, 1), f -> f.engine()
                    .vacuumIsp())
            .from(balanced())
            .number("thrust_vacuum_N", "thrust, vacuum", Notation.FORCE, f -> f.engine()
                    .vacuumThrust())
            .from(balanced())
            .number("mass_flow_kg_s", "mass flow", Notation.MASS_FLOW, f -> f.engine()
                    .massFlow())
            .from(balanced())
            .number("mixture_ratio", "mixture ratio", significant("", 4), f -> f.engine()
                    .mixtureRatio())
            .from(balanced())
            .optional(
                    "diluent_share",
                    "share of a third fluid in what flows",
                    significant("", 4),
                    f -> f.engine().diluentShare() > 0
                            ? OptionalDouble.of(f.engine().diluentShare())
                            : OptionalDouble.empty())
            .from(balanced())
            .leftOutIfAbsent()
            .number("mass_kg", "mass", KILOGRAMS, f -> f.engine().mass())
            .from(balanced())
            .number("chamber_pressure_Pa", "chamber pressure", Notation.PRESSURE, f -> f.engine()
                    .chamberPressure())
            .from(balanced())
            .number("oxidizer_density_kg_m3", "density of the oxidizer", Notation.DENSITY, f -> f.engine()
                    .oxidizer()
                    .density())
            .from(balanced())
            .number("oxidizer_tank_pressure_Pa", "pressure of the oxidizer", Notation.PRESSURE, f -> f.engine()
                    .oxidizer()
                    .tankPressure())
            .from(balanced())
            .number("fuel_density_kg_m3", "density of the fuel", Notation.DENSITY, f -> f.engine()
                    .fuel()
                    .density())
            .from(balanced())
            .number("fuel_tank_pressure_Pa", "pressure of the fuel", Notation.PRESSURE, f -> f.engine()
                    .fuel()
                    .tankPressure())
            .from(balanced())
            .table();

    /** Figures of a term of the velocity budget. */
    public static final FigureTable<DeltaVBudget.Term> BUDGET = FigureTable.named(DeltaVBudget.Term::name)
            .word("name", "term", DeltaVBudget.Term::name)
            .number("delta_v_m_s", "speed", SPEED, DeltaVBudget.Term::value)
            .from((term, at) -> Optional.of(
                            stated(term.inputs().toArray(String[]::new)).paths(at))
                    .filter(inputs -> !inputs.isEmpty())
                    .map(inputs -> new Origin(term.model().orElseThrow(), inputs))
                    .orElseGet(() -> Origin.given("term of the velocity budget", term.source())))
            .word("source", "source", DeltaVBudget.Term::source)
            .table();

    /** The whole vehicle. */
    public static final FigureTable<VehicleSizing> ALL = FigureTable.<VehicleSizing>ofOne()
            .word("name", "vehicle", v -> v.plan().name())
            .number("start_mass_kg", "start mass", TONNES, VehicleSizing::startMass)
            .from((v, at) -> new Origin(
                    ModelCard.SAME,
                    v.plan().startMass().isPresent()
                            ? given("start_mass").paths(at)
                            : stages(v, "start_mass_kg").subList(0, 1)))
            .lessIsBetter()
            .number("payload_kg", "payload", TONNES, VehicleSizing::payload)
            .from((v, at) -> v.plan().payload().isPresent()
                    ? new Origin(ModelCard.SAME, given("payload").paths(at))
                    : Origin.of(CHAIN, chain(v), given("start_mass").paths(at)))
            .moreIsBetter()
            .number(
                    "payload_fraction",
                    "payload share of the start mass",
                    significant("", "%", 100, 3),
                    VehicleSizing::payloadFraction)
            .by(Definitions.RATIO, own("payload_kg", "start_mass_kg"))
            .moreIsBetter()
            .number("propellant_mass_kg", "propellant mass, all stages", TONNES, VehicleSizing::propellantMass)
            .from((v, at) -> new Origin(Definitions.SUM, all(v, "propellant_mass_kg")))
            .lessIsBetter()
            .number("dry_mass_kg", "dry mass, all stages", TONNES, VehicleSizing::dryMass)
            .from((v, at) -> new Origin(Definitions.SUM, all(v, "dry_mass_kg")))
            .lessIsBetter()
            .number("delta_v_m_s", "ideal delta-v", SPEED, VehicleSizing::deltaV)
            .from((v, at) -> new Origin(Definitions.SUM, stages(v, "delta_v_m_s")))
            .number("height_m", "height of the stages, fairing apart", fixed("m", "m", 1, 1), VehicleSizing::height)
            .from((v, at) -> new Origin(Definitions.SUM, stages(v, "length_m")))
            .optional(
                    "isp_needed_over_isp",
                    "specific impulse needed over that there is",
                    significant("", 4),
                    VehicleSizing::ispFactor)
            .from((v, at) ->
                    Origin.of(FACTOR, chain(v), given("payload", "start_mass").paths(at)))
            .lessIsBetter()
            .leftOutIfAbsent()
            .each("stages", VehicleSizing::stages, StageFigures.STAGES, VehiclePlaces::stage)
            .each("delta_v_budget", v -> v.plan().mission().terms(), BUDGET)
            .word("definitions", "definitions", v -> VehicleSizing.DEFINITIONS)
            .each("warnings", VehicleSizing::warnings, CheckFigures.WARNINGS)
            .number("delta_v_budget.total_m_s", "sum", SPEED, v -> v.plan()
                    .mission()
                    .total())
            .from((v, at) -> new Origin(
                    Definitions.SUM,
                    BUDGET.paths("delta_v_budget", v.plan().mission().terms(), "delta_v_m_s")))
            .outsideDocuments()
            .each("engines", FittedEngine::of, ENGINES)
            .outsideDocuments()
            .table();

    private VehicleFigures() {}

    /**
     * @param vehicle sized vehicle
     * @return the trail of all its numbers, down to the inputs of its plan and what its engines give
     */
    public static Trail trail(VehicleSizing vehicle) {
        Trail trail = new Trail();
        for (InputValue input : vehicle.plan().inputs()) {
            String what = input.given() ? "stated by the plan" : "default of the plan";
            input.number()
                    .ifPresent(
                            value -> trail.given(VehiclePlaces.path(input), value, input.unit(), what, input.source()));
        }
        ALL.record(vehicle, VehiclePlaces.of(vehicle), trail);
        return trail;
    }

    /** What an engine that was balanced gives. */
    private static BiFunction<FittedEngine, Place, Origin> balanced() {
        return (fitted, at) -> Origin.given("balance of the engine", "engine balanced from " + fitted.file());
    }

    private static List<String> stages(VehicleSizing vehicle, String key) {
        return StageFigures.STAGES.paths("stages", vehicle.stages(), key);
    }

    /** The same figure of every stage and of the boosters beside it. */
    private static List<String> all(VehicleSizing vehicle, String key) {
        List<String> paths = new ArrayList<>(stages(vehicle, key));
        List<StageSizing> boosted = vehicle.stages().stream()
                .filter(stage -> stage.boosters().isPresent())
                .toList();
        paths.addAll(StageFigures.STAGES.paths("stages", boosted, "boosters." + key));
        return paths;
    }

    /** What decides how much goes up: the velocity budget, and what every stage does with its propellant. */
    private static List<String> chain(VehicleSizing vehicle) {
        List<String> paths = new ArrayList<>(
                BUDGET.paths("delta_v_budget", vehicle.plan().mission().terms(), "delta_v_m_s"));
        paths.addAll(stages(vehicle, "isp_s"));
        paths.addAll(all(vehicle, "dry_mass_kg"));
        paths.addAll(all(vehicle, "propellant_mass_kg"));
        return paths;
    }
}
