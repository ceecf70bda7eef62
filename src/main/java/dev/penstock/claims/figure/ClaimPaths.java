package dev.penstock.claims.figure;

import dev.penstock.cycles.reading.ConceptInputs;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.input.Input;
import dev.penstock.input.InputKind;
import dev.penstock.input.Spelling;
import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.vehicle.plan.VehicleInputs;
import dev.penstock.vehicle.stage.StageFigures;
import dev.penstock.vehicle.stage.VehicleFigures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds what a path of a claim means: an input of a concept, a figure of an engine ("engine.isp_vacuum"), or one of the
 * vehicle behind "vehicle." ("vehicle.start_mass", of the first stage too: "vehicle.burn_time"). The unit at the end of a
 * figure's path may be left out.
 */
public final class ClaimPaths {

    private static final String VEHICLE = "vehicle.";
    private static final String BODY = "body.";

    /** What people call a part in whose table no figure stands. */
    private static final Map<String, String> CALLED = Map.of(
            "nozzle.exit_diameter", "engine.exit_diameter",
            "nozzle.throat_diameter", "engine.throat_diameter",
            "nozzle.length", "chamber.nozzle_length",
            "chamber.length", "chamber.length",
            "engine.mass_flow", "engine.mass_flow",
            "turbines.power", "figures.pump_power");

    private static final List<String> UNITS = List.of(
            "", "_Pa", "_K", "_s", "_N", "_m", "_kg", "_kg_s", "_W", "_m_s", "_rad_s", "_m3", "_m_s2", "_J_kg",
            "_kg_m3", "_W_m2", "_kg_mol", "_J");

    private static final Map<String, Input<?>> INPUTS =
            ConceptInputs.ofAll(VehicleInputs.IN_CONCEPT).all();

    private ClaimPaths() {}

    /**
     * @param path a path
     * @return whether it is about a vehicle
     */
    public static boolean ofVehicle(String path) {
        return path.startsWith(VEHICLE) || path.startsWith(BODY);
    }

    /**
     * @param path a path
     * @return the input of a concept that it names
     */
    public static Optional<Input<?>> input(String path) {
        return Optional.ofNullable(INPUTS.get(path));
    }

    /**
     * @param path a path, with or without the unit at its end
     * @return the figure that it names
     */
    public static Optional<ClaimFigure> figure(String path) {
        String meant = CALLED.getOrDefault(path, path);
        for (String unit : UNITS) {
            Optional<ClaimFigure> found = exact(meant + unit);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<ClaimFigure> exact(String path) {
        Optional<ClaimFigure> own =
                CandidateFigures.ALL.at(path).filter(f -> f.isNumber()).map(f -> ClaimFigure.of(path, f, Optional::of));
        if (own.isPresent()) {
            return own;
        }
        if (!path.startsWith(VEHICLE)) {
            return EngineFigures.ALL
                    .at(path)
                    .filter(f -> f.isNumber())
                    .map(f -> ClaimFigure.of(path, f, c -> Optional.of(c.balance())));
        }
        String rest = path.substring(VEHICLE.length());
        return VehicleFigures.ALL
                .at(rest)
                .filter(f -> f.isNumber())
                .map(f -> ClaimFigure.of(path, f, Candidate::vehicle))
                .or(() -> StageFigures.STAGES
                        .at(rest)
                        .filter(f -> f.isNumber())
                        .map(f -> ClaimFigure.of(
                                path, f, c -> c.vehicle().map(v -> v.stages().get(0)))));
    }

    /**
     * @param path a path
     * @return what its values measure; empty if it names no number
     */
    public static Optional<Dimension> dimension(String path) {
        Optional<Dimension> ofInput = input(path).flatMap(i -> dimension(i.kind()));
        return ofInput.or(() -> figure(path).flatMap(f -> of(f.notation().siUnit())));
    }

    private static Optional<Dimension> dimension(InputKind<?> kind) {
        if (kind instanceof InputKind.Quantity quantity) {
            return Optional.of(quantity.dimension());
        }
        return kind instanceof InputKind.Many<?> many ? dimension(many.element()) : Optional.empty();
    }

    private static Optional<Dimension> of(String unit) {
        for (Dimension dimension : Dimension.values()) {
            if (dimension.siUnit().equals(unit)) {
                return Optional.of(dimension);
            }
        }
        return Optional.empty();
    }

    /**
     * @param path a path that names nothing
     * @return what to write instead, as the end of a sentence
     */
    public static String near(String path) {
        List<String> known = new ArrayList<>(INPUTS.keySet());
        known.addAll(CALLED.keySet());
        collect("engine.", EngineFigures.HEADLINE, known);
        collect("figures.", EngineFigures.EXTREMES, known);
        collect(VEHICLE, VehicleFigures.ALL, known);
        collect(VEHICLE, StageFigures.STAGES, known);
        return known.stream()
                .min(Comparator.comparingInt(k -> Spelling.distance(k, path)))
                .filter(k -> Spelling.distance(k, path) <= 2 + path.length() / 3)
                .map(k -> "did you mean \"" + k + "\"?")
                .orElse("write the path of an input or figure, for example \"engine.isp_vacuum\"");
    }

    private static void collect(String prefix, FigureTable<?> table, List<String> known) {
        table.figures().stream().filter(f -> f.isNumber()).forEach(f -> {
            String key = f.key();
            UNITS.stream()
                    .filter(u -> !u.isEmpty() && key.endsWith(u))
                    .max(Comparator.comparingInt(String::length))
                    .ifPresentOrElse(
                            u -> known.add(prefix + key.substring(0, key.length() - u.length())),
                            () -> known.add(prefix + key));
        });
    }
}
