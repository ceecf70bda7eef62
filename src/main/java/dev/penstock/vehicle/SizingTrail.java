package dev.penstock.vehicle;

import dev.penstock.cycles.origin.Definitions;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Trail;
import dev.penstock.vehicle.ascent.AscentOptimizer;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.engine.LoadedPropellant;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Records where every number of a sized vehicle comes from: the plan with who said so, the engines by their concept files,
 * the speed budget term by term, and each stage.
 */
public final class SizingTrail {

    private static final ModelCard ORBIT = card(
            "orbit", "Speed on an orbit", "v = √(μ (2/r − 1/a)), or the difference of two such speeds", "round planet");
    private static final ModelCard ROTATION =
            card("rotation", "Speed of the rotating ground", "ω R cos i", "launch into the plane of the orbit");
    private static final ModelCard RESERVE = card("reserve", "Share of the budget kept back", "x Σ Δv", "everywhere");
    private static final ModelCard FACTOR = card(
            "isp-factor",
            "Specific impulse needed over that there is",
            "the common factor at which both payload and start mass hold",
            "where both are given");

    private final VehicleSizing vehicle;
    private final Trail trail = new Trail();

    private SizingTrail(VehicleSizing vehicle) {
        this.vehicle = vehicle;
    }

    /**
     * @param vehicle sized vehicle
     * @return the trail of all its numbers
     */
    public static Trail of(VehicleSizing vehicle) {
        return new SizingTrail(vehicle).make();
    }

    static ModelCard card(String id, String title, String equation, String range) {
        return new ModelCard(
                "vehicle." + id, title, equation, range, "exact within its assumptions", List.of("definition"));
    }

    private Trail make() {
        plan();
        List<String> budget = budget();
        StageTrail stages = new StageTrail(trail, vehicle, budget);
        List<String> bases = new ArrayList<>();
        for (int i = 0; i < vehicle.stages().size(); i++) {
            StageSizing stage = vehicle.stages().get(i);
            engine(stage.engine(), vehicle.plan().stages().get(i).engineFile());
            stage.boosters().ifPresent(b -> engine(b.engine(), b.plan().engineFile()));
            bases.add(stages.stage(i));
        }
        whole(bases, budget);
        return trail;
    }

    private void plan() {
        for (InputValue input : vehicle.plan().inputs()) {
            try {
                double value = Double.parseDouble(input.value());
                String what = input.given() ? "stated by the plan" : "default of the plan";
                trail.given("plan." + local(input.key()), value, input.unit(), what, input.source());
            } catch (NumberFormatException word) {
                // A word or an open value decides which model is used, and has no number to trace.
                continue;
            }
        }
    }

    /** Keys of a concept's own table read like those of a vehicle file. */
    private static String local(String key) {
        return key.startsWith("vehicle.") ? key.substring("vehicle.".length()) : key;
    }

    private void engine(EnginePerformance engine, Optional<Path> file) {
        String p = "engines." + Trail.slug(engine.name());
        String source = file.map(f -> f.getFileName().toString()).orElse("the same file");
        give(p + ".isp_vacuum_s", engine.vacuumIsp(), "s", source);
        give(p + ".thrust_vacuum_N", engine.vacuumThrust(), "N", source);
        give(p + ".mass_flow_kg_s", engine.massFlow(), "kg/s", source);
        give(p + ".mixture_ratio", engine.mixtureRatio(), "", source);
        give(p + ".mass_kg", engine.mass(), "kg", source);
        give(p + ".chamber_pressure_Pa", engine.chamberPressure(), "Pa", source);
        propellant(p + ".oxidizer", engine.oxidizer(), source);
        propellant(p + ".fuel", engine.fuel(), source);
    }

    private void propellant(String p, LoadedPropellant propellant, String source) {
        give(p + "_density_kg_m3", propellant.density(), "kg/m³", source);
        give(p + "_tank_pressure_Pa", propellant.tankPressure(), "Pa", source);
    }

    private void give(String path, double value, String unit, String file) {
        trail.given(path, value, unit, "balance of the engine", "engine balanced from " + file);
    }

    private List<String> budget() {
        List<String> paths = new ArrayList<>();
        for (DeltaVBudget.Term term : vehicle.plan().mission().terms()) {
            String path = "delta_v_budget." + Trail.slug(term.name()) + ".delta_v_m_s";
            ModelCard card = model(term);
            List<String> from = plan(trail, card == AscentOptimizer.CARD ? "ascent." : "mission.");
            if (term.source().equals("given") || term.source().contains("memory") || from.isEmpty()) {
                trail.given(path, term.value(), "m/s", "term of the speed budget", term.source());
            } else {
                trail.record(path, term.value(), "m/s", card, from.toArray(String[]::new));
            }
            paths.add(path);
        }
        put("delta_v_budget.total_m_s", vehicle.plan().mission().total(), "m/s", Definitions.SUM, paths);
        return paths;
    }

    private static ModelCard model(DeltaVBudget.Term term) {
        return switch (term.kind()) {
            case SPEED, MANOEUVRE, CREDIT -> term.name().contains("ground") ? ROTATION : ORBIT;
            case LOSS -> AscentOptimizer.CARD;
            case RESERVE -> RESERVE;
        };
    }

    /** Paths of the plan's numbers whose key starts with one of the prefixes. */
    static List<String> plan(Trail trail, String... prefixes) {
        return trail.entries().stream()
                .map(Trail.Entry::path)
                .filter(path -> Stream.of(prefixes).anyMatch(prefix -> path.startsWith("plan." + prefix)))
                .toList();
    }

    private void whole(List<String> bases, List<String> budget) {
        VehicleSizing v = vehicle;
        List<String> chain = new ArrayList<>(budget);
        bases.forEach(b -> chain.addAll(List.of(b + ".isp_s", b + ".dry_mass_kg")));
        String lowest = bases.get(0) + ".start_mass_kg";
        put(
                "start_mass_kg",
                v.startMass(),
                "kg",
                Definitions.SAME,
                List.of(v.plan().startMass().isPresent() ? "plan.start_mass" : lowest));
        boolean given = v.plan().payload().isPresent();
        List<String> payload = given ? List.of("plan.payload") : joined(chain, "plan.start_mass");
        put("payload_kg", v.payload(), "kg", given ? Definitions.SAME : StageTrail.CHAIN, payload);
        put("payload_fraction", v.payloadFraction(), "", Definitions.RATIO, List.of("payload_kg", "start_mass_kg"));
        put("propellant_mass_kg", v.propellantMass(), "kg", Definitions.SUM, all(bases, ".propellant_mass_kg"));
        put("dry_mass_kg", v.dryMass(), "kg", Definitions.SUM, all(bases, ".dry_mass_kg"));
        put("delta_v_m_s", v.deltaV(), "m/s", Definitions.SUM, all(bases, ".delta_v_m_s"));
        v.ispFactor()
                .ifPresent(f ->
                        put("isp_needed_over_isp", f, "", FACTOR, joined(chain, "plan.payload", "plan.start_mass")));
    }

    /** The same figure of every stage, boosters included where they have it. */
    private List<String> all(List<String> bases, String key) {
        return bases.stream()
                .flatMap(b -> Stream.of(b + key, b + ".boosters" + key))
                .filter(trail::has)
                .toList();
    }

    private static List<String> joined(List<String> some, String... more) {
        List<String> all = new ArrayList<>(some);
        all.addAll(List.of(more));
        return all;
    }

    private void put(String path, double value, String unit, ModelCard card, List<String> from) {
        trail.record(path, value, unit, card, from.stream().filter(trail::has).toArray(String[]::new));
    }
}
