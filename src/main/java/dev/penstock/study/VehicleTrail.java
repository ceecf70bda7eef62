package dev.penstock.study;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.BalanceTrail;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.provenance.Figure;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Place;
import dev.penstock.provenance.Trail;
import dev.penstock.vehicle.FlightFigures;
import dev.penstock.vehicle.ascent.AscentDynamics;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.stage.StageFigures;
import dev.penstock.vehicle.stage.VehicleFigures;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Records where the numbers of a sized vehicle come from: its own, those of its flight, down to those of its engines. */
public final class VehicleTrail {

    private VehicleTrail() {}

    /**
     * @param vehicle sized vehicle
     * @param flight its flight, if it was sized on one
     * @param engines its engines by name
     * @return the trail of its numbers
     */
    public static Trail of(VehicleSizing vehicle, Optional<AscentResult> flight, Map<String, EngineBalance> engines) {
        Trail trail = VehicleFigures.trail(vehicle);
        engines.forEach((name, balance) -> {
            String at = engine(name);
            BalanceTrail.of(balance)
                    .entries()
                    .forEach(e -> trail.record(
                            at + e.path(),
                            e.value(),
                            e.unit(),
                            new Origin(
                                    e.model(),
                                    e.inputs().stream().map(i -> at + i).toList())));
            tie(trail, name, at);
        });
        flight.ifPresent(flown -> flight(vehicle, flown, trail));
        for (Figure<VehicleSizing> figure : VehicleFigures.ALL.figures()) {
            trail.entry(figure.key())
                    .ifPresent(e -> trail.record(
                            "vehicle." + e.path(), e.value(), e.unit(), new Origin(e.model(), e.inputs())));
        }
        return trail;
    }

    /**
     * @param vehicle vehicle that a concept asks for
     * @param engine the concept's engine
     * @return the trail of the vehicle's numbers, to be included in that of the engine
     */
    public static Trail ofConcept(VehicleSizing vehicle, EngineBalance engine) {
        Trail trail = VehicleFigures.trail(vehicle);
        tie(trail, engine.concept().name(), "");
        return trail;
    }

    /** Ties what the vehicle takes from an engine to the engine's own numbers. */
    private static void tie(Trail trail, String name, String engine) {
        for (Figure<VehicleFigures.FittedEngine> figure : VehicleFigures.ENGINES.figures()) {
            String key = figure.key();
            String own = engine + "engine." + key;
            String path = engine(name) + key;
            trail.entry(path)
                    .filter(entry -> trail.has(own)
                            || engine.isEmpty()
                                    && EngineFigures.HEADLINE.at(key).isPresent())
                    .ifPresent(e -> trail.record(path, e.value(), e.unit(), ModelCard.SAME, own));
        }
    }

    private static String engine(String name) {
        return EnginePerformance.path(name) + ".";
    }

    /** What flight takes and gives follows from what the stages weigh and thrust. */
    private static void flight(VehicleSizing vehicle, AscentResult flight, Trail trail) {
        List<String> from = Stream.of("start_mass_kg", "isp_s", "thrust_to_weight")
                .flatMap(key -> StageFigures.STAGES.paths("stages", vehicle.stages(), key).stream())
                .toList();
        VehicleFigures.BUDGET.placed("delta_v_budget", vehicle.plan().mission().terms()).stream()
                .filter(term -> !term.thing().afterAscent())
                .forEach(term -> trail.record(
                        term.at().own("delta_v_m_s"),
                        term.thing().value(),
                        "m/s",
                        new Origin(AscentDynamics.CARD, from)));
        FlightFigures.FLIGHT.record(flight, Place.at("flight").with(Place.Role.BEFORE, from), trail);
    }
}
