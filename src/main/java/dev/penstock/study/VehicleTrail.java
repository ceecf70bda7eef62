package dev.penstock.study;

import dev.penstock.cycles.origin.Definitions;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.Figure;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Trail;
import dev.penstock.vehicle.FlightFigures;
import dev.penstock.vehicle.SizingTrail;
import dev.penstock.vehicle.ascent.AscentDynamics;
import dev.penstock.vehicle.ascent.AscentOptimizer;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.stage.RocketEquation;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Records where the numbers of a sized vehicle come from: its own, those of its flight, down to those of its engines. */
public final class VehicleTrail {

    private static final List<String> WHOLE = List.of(
            "start_mass_kg",
            "payload_kg",
            "payload_fraction",
            "propellant_mass_kg",
            "dry_mass_kg",
            "delta_v_m_s",
            "isp_needed_over_isp");

    private final VehicleSizing vehicle;
    private final Trail trail;

    private VehicleTrail(VehicleSizing vehicle) {
        this.vehicle = vehicle;
        this.trail = SizingTrail.of(vehicle);
    }

    /**
     * @param vehicle sized vehicle
     * @param flight its flight, if it was sized on one
     * @param engines its engines by name
     * @return the trail of its numbers
     */
    public static Trail of(VehicleSizing vehicle, Optional<AscentResult> flight, Map<String, EngineBalance> engines) {
        VehicleTrail result = new VehicleTrail(vehicle);
        engines.forEach((name, balance) -> {
            String at = engine(name);
            EngineTrail.of(balance)
                    .entries()
                    .forEach(e -> result.trail.record(
                            at + e.path(),
                            e.value(),
                            e.unit(),
                            e.model(),
                            e.inputs().stream().map(i -> at + i).toArray(String[]::new)));
            tie(result.trail, name, at);
        });
        for (StageSizing s : vehicle.stages()) {
            String impulse = engine(s.engine().name()) + "engine.isp_vacuum_s";
            if (result.trail.has(impulse)) {
                result.trail.record(stage(s) + "isp_s", s.isp(), "s", Definitions.SAME, impulse);
            }
        }
        flight.ifPresent(result::flight);
        for (String key : WHOLE) {
            result.trail
                    .entry(key)
                    .ifPresent(e -> result.trail.record(
                            "vehicle." + key,
                            e.value(),
                            e.unit(),
                            e.model(),
                            e.inputs().toArray(String[]::new)));
        }
        return result.trail;
    }

    /**
     * @param vehicle vehicle that a concept asks for
     * @param engine the concept's engine
     * @return the trail of the vehicle's numbers, to be included in that of the engine
     */
    public static Trail ofConcept(VehicleSizing vehicle, EngineBalance engine) {
        Trail trail = SizingTrail.of(vehicle);
        tie(trail, engine.concept().name(), "");
        return trail;
    }

    /** Ties what the vehicle takes from an engine to the engine's own numbers. */
    private static void tie(Trail trail, String name, String engine) {
        for (String key : List.of(
                "isp_vacuum_s",
                "thrust_vacuum_N",
                "mass_flow_kg_s",
                "mixture_ratio",
                "mass_kg",
                "chamber_pressure_Pa")) {
            String path = engine(name) + key;
            trail.entry(path)
                    .ifPresent(
                            e -> trail.record(path, e.value(), e.unit(), Definitions.SAME, engine + "engine." + key));
        }
    }

    private static String engine(String name) {
        return "engines." + Trail.slug(name) + ".";
    }

    /**
     * @param stage a stage
     * @return path of its numbers, without the last part
     */
    public static String stage(StageSizing stage) {
        return "stages." + Trail.slug(stage.name()) + ".";
    }

    /** What a flight depends on. */
    private List<String> flown() {
        List<String> paths = new ArrayList<>();
        for (StageSizing s : vehicle.stages()) {
            paths.addAll(List.of(stage(s) + "start_mass_kg", stage(s) + "isp_s", stage(s) + "thrust_to_weight"));
        }
        return paths;
    }

    private void flight(AscentResult a) {
        List<String> from = flown();
        for (DeltaVBudget.Term term : vehicle.plan().mission().terms()) {
            if (term.kind() != DeltaVBudget.Kind.MANOEUVRE && term.kind() != DeltaVBudget.Kind.RESERVE) {
                String path = "delta_v_budget." + Trail.slug(term.name()) + ".delta_v_m_s";
                put(path, term.value(), "m/s", AscentDynamics.CARD, from);
            }
        }
        Map<String, ModelCard> others = Map.of(
                "steering_loss_m_s", AscentOptimizer.CARD,
                "tilt_rad", AscentOptimizer.CARD,
                "delta_v_left_m_s", RocketEquation.CARD);
        for (Figure<AscentResult> figure : FlightFigures.FLIGHT.figures()) {
            if (figure.key().endsWith("altitude_m")) {
                continue; // asked of the mission
            }
            figure.number(a)
                    .ifPresent(value -> put(
                            "flight." + figure.key(),
                            value,
                            figure.notation().siUnit(),
                            others.getOrDefault(figure.key(), AscentDynamics.CARD),
                            from));
        }
    }

    private void put(String path, double value, String unit, ModelCard card, List<String> inputs) {
        trail.record(path, value, unit, card, inputs.toArray(String[]::new));
    }
}
