package dev.penstock.study.space;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.provenance.Figure;
import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.study.Measure;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.reading.EngineChanges;
import dev.penstock.vehicle.stage.StageFigures;
import dev.penstock.vehicle.stage.VehicleFigures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Finds the figure that a path means: of an engine ("engine.isp_vacuum_s"), or of the vehicle behind "vehicle."
 * ("vehicle.start_mass_kg", of the first stage too). The unit at the end may be left out.
 */
public final class CaseFigures {

    /** Path of whether all limits of the hardware are kept: 1 if they are, else 0. */
    public static final String WITHIN_LIMITS = "within_limits";

    private static final String VEHICLE = "vehicle.";

    private static final List<String> UNITS = List.of(
            "", "_Pa", "_K", "_s", "_N", "_m", "_kg", "_kg_s", "_W", "_m_s", "_rad_s", "_m3", "_m_s2", "_J_kg",
            "_kg_m3", "_W_m2", "_kg_mol", "_J");

    private CaseFigures() {}

    /**
     * @param path a path, with or without the unit at its end
     * @param find finds what a whole path means
     * @param <T> kind of what is found
     * @return what the path means
     */
    public static <T> Optional<T> named(String path, Function<String, Optional<T>> find) {
        return UNITS.stream()
                .map(unit -> find.apply(path + unit))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /**
     * @param path whole path of a figure of an engine, or of the vehicle that it drives
     * @return the figure of a concept
     */
    public static Optional<StudyFigure> ofConcept(String path) {
        return path.startsWith(VEHICLE)
                ? ofVehicle(path, path.substring(VEHICLE.length()))
                : ofEngine(path, path, CaseAnswer::engine);
    }

    /**
     * The same as people write it on a command line: the usual figures by their last word too, and whether limits are kept.
     *
     * @param path a path, with or without the unit at its end
     * @return the figure of a concept
     */
    public static Optional<StudyFigure> ofConceptNamed(String path) {
        return special(path)
                .or(() -> named(path, CaseFigures::ofConcept))
                .or(() -> named(path, p -> Measure.named(p).flatMap(m -> ofConcept(m.path()))));
    }

    /**
     * @param path a path, with or without the unit at its end and with or without "vehicle." before it
     * @param engines names of the vehicle's engines, in the order of {@link CaseAnswer#engines}
     * @return the figure of a vehicle
     */
    public static Optional<StudyFigure> ofVehicleNamed(String path, List<String> engines) {
        String own = path.startsWith(VEHICLE) ? path.substring(VEHICLE.length()) : path;
        return special(path).or(() -> named(own, p -> ofVehicleOrEngine(p, engines)));
    }

    private static Optional<StudyFigure> ofVehicleOrEngine(String path, List<String> engines) {
        for (int i = 0; i < engines.size(); i++) {
            String at = EngineChanges.at(engines.get(i));
            if (path.toLowerCase(Locale.ROOT).startsWith(at)) {
                int index = i;
                String rest = path.substring(at.length());
                String full = EnginePerformance.path(engines.get(i)) + "." + rest;
                return ofEngine(full, rest, answer -> answer.engines().get(index))
                        .or(() -> ofEngine(full, "engine." + rest, answer -> answer.engines()
                                .get(index)));
            }
        }
        return ofVehicle(path, path);
    }

    private static Optional<StudyFigure> special(String path) {
        return path.equals(WITHIN_LIMITS)
                ? Optional.of(new StudyFigure(
                        path,
                        "all limits kept",
                        Notation.COUNT,
                        false,
                        answer -> OptionalDouble.of(answer.withinLimits() ? 1 : 0)))
                : Optional.empty();
    }

    private static Optional<StudyFigure> ofEngine(String path, String own, Function<CaseAnswer, EngineBalance> engine) {
        return EngineFigures.ALL.at(own).filter(Figure::isNumber).map(f -> figure(path, f, false, engine));
    }

    private static Optional<StudyFigure> ofVehicle(String path, String own) {
        return VehicleFigures.ALL
                .at(own)
                .filter(Figure::isNumber)
                .map(f -> figure(path, f, true, answer -> answer.vehicle().orElseThrow()))
                .or(() -> StageFigures.STAGES
                        .at(own)
                        .filter(Figure::isNumber)
                        .map(f -> figure(path, f, true, answer -> answer.vehicle()
                                .orElseThrow()
                                .stages()
                                .get(0))));
    }

    private static <T> StudyFigure figure(
            String path, Figure<T> figure, boolean ofVehicle, Function<CaseAnswer, T> thing) {
        return new StudyFigure(
                path,
                figure.title(),
                figure.notation(),
                ofVehicle,
                answer -> ofVehicle && answer.vehicle().isEmpty()
                        ? OptionalDouble.empty()
                        : figure.number(thing.apply(answer)));
    }

    /**
     * @param path a path that names no number
     * @return whether it names a word or a list that engines or vehicles publish
     */
    public static boolean isText(String path) {
        String own = path.startsWith(VEHICLE) ? path.substring(VEHICLE.length()) : path;
        return Stream.of(EngineFigures.ALL.at(path), EngineFigures.HEADLINE.at(path), VehicleFigures.ALL.at(own))
                .flatMap(Optional::stream)
                .anyMatch(figure -> !figure.isNumber());
    }

    /**
     * @param ofVehicle whether the case is a vehicle
     * @return paths of the usual figures, to find the one that was meant
     */
    public static List<String> usual(boolean ofVehicle) {
        List<String> known = new ArrayList<>();
        if (!ofVehicle) {
            Measure.ALL.forEach(m -> known.add(m.path()));
            collect("engine.", EngineFigures.HEADLINE, known);
            collect("figures.", EngineFigures.EXTREMES, known);
        }
        for (String prefix : ofVehicle ? List.of("", VEHICLE) : List.of(VEHICLE)) {
            collect(prefix, VehicleFigures.ALL, known);
            collect(prefix, StageFigures.STAGES, known);
        }
        return known;
    }

    private static void collect(String prefix, FigureTable<?> table, List<String> known) {
        table.figures().stream().filter(Figure::isNumber).forEach(f -> known.add(prefix + f.key()));
    }

    /**
     * @param path path of a figure
     * @return the path without the unit at its end
     */
    public static String withoutUnit(String path) {
        return UNITS.stream()
                .filter(unit -> !unit.isEmpty() && path.endsWith(unit))
                .max(Comparator.comparingInt(String::length))
                .map(unit -> path.substring(0, path.length() - unit.length()))
                .orElse(path);
    }
}
