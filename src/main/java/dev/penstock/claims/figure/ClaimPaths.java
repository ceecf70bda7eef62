package dev.penstock.claims.figure;

import dev.penstock.cycles.reading.ConceptInputs;
import dev.penstock.input.Input;
import dev.penstock.input.InputKind;
import dev.penstock.input.Spelling;
import dev.penstock.quantities.Dimension;
import dev.penstock.study.space.CaseFigures;
import dev.penstock.vehicle.plan.MissionInputs;
import dev.penstock.vehicle.plan.VehicleInputs;
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
    private static final String LOSSES = VEHICLE + MissionInputs.MISSION.key() + "." + MissionInputs.LOSSES.key() + ".";

    /** How full a body of a stated shape is. */
    public static final String FILLING = BODY + "filling";

    /** What people call a part in whose table no figure stands. */
    private static final Map<String, String> CALLED = Map.of(
            "nozzle.exit_diameter", "engine.exit_diameter",
            "nozzle.throat_diameter", "engine.throat_diameter",
            "nozzle.length", "chamber.nozzle_length",
            "chamber.length", "chamber.length",
            "engine.mass_flow", "engine.mass_flow",
            "turbines.power", "figures.pump_power");

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
     * @return whether it is a loss of speed in the ascent, which has a name of the file's own
     */
    public static boolean ofLoss(String path) {
        return path.startsWith(LOSSES);
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
        return CaseFigures.named(CALLED.getOrDefault(path, path), ClaimPaths::exact);
    }

    private static Optional<ClaimFigure> exact(String path) {
        Optional<ClaimFigure> own =
                CandidateFigures.ALL.at(path).filter(f -> f.isNumber()).map(f -> ClaimFigure.of(path, f, Optional::of));
        return own.or(() -> CaseFigures.ofConcept(path).map(ClaimFigure::of));
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

    /** Edits from a path to a known one, or to the first words of its name and one more for the rest. */
    private static int edits(String path, String known) {
        int least = Spelling.distance(path, known);
        for (int i = known.indexOf('_'); i > 0; i = known.indexOf('_', i + 1)) {
            least = Math.min(least, 1 + Spelling.distance(path, known.substring(0, i)));
        }
        return least;
    }

    /**
     * @param path a path that names nothing
     * @return what to write instead, as the end of a sentence
     */
    public static String near(String path) {
        List<String> known = new ArrayList<>(INPUTS.keySet());
        known.addAll(CALLED.keySet());
        CaseFigures.usual(false).forEach(figure -> known.add(CaseFigures.withoutUnit(figure)));
        int most = 1 + (path.length() - path.lastIndexOf('.')) / 3;
        return known.stream()
                .filter(k -> edits(path, k) <= most)
                .min(Comparator.<String>comparingInt(k -> edits(path, k)).thenComparing(Comparator.naturalOrder()))
                .map(k -> "did you mean \"" + k + "\"?")
                .orElse("write the path of an input or figure, for example \"engine.isp_vacuum\"");
    }
}
