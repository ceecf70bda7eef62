package dev.penstock.study;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.cycles.questions.BuiltEngine;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.questions.OperatingCommand;
import dev.penstock.cycles.questions.OperatingOutcome;
import dev.penstock.cycles.questions.OperatingPoint;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.quantities.Constants;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A built engine at every combination of the air around it, throttle and mixture ratio. Each setting is balanced as the hardware
 * that it is ({@link BuiltEngine}); the air moves thrust alone.
 *
 * @param design the engine as balanced
 * @param surroundings the air, pressures or altitudes rising
 * @param throttles chamber pressure over that of the design (-), rising
 * @param mixtureRatios oxidizer over fuel leaving the tanks (-), rising
 * @param points every combination; the mixture ratio moves slowest, then the throttle, the air fastest
 */
public record EngineTable(
        EngineBalance design,
        List<Surrounding> surroundings,
        List<Double> throttles,
        List<Double> mixtureRatios,
        List<Point> points) {

    /**
     * The air around an engine.
     *
     * @param altitude geometric altitude (m), where that was asked for
     * @param pressure ambient pressure (Pa)
     */
    public record Surrounding(OptionalDouble altitude, double pressure) {}

    /**
     * A combination.
     *
     * @param surrounding the air
     * @param throttle chamber pressure over that of the design (-)
     * @param mixtureRatio oxidizer over fuel leaving the tanks (-)
     * @param state the engine there, if it can follow
     * @param failure why it cannot; empty if it can
     */
    public record Point(
            Surrounding surrounding, double throttle, double mixtureRatio, Optional<State> state, String failure) {}

    /**
     * The engine there.
     *
     * @param operating what does not depend on the air
     * @param thrust thrust (N)
     * @param impulse specific impulse (s)
     * @param exitPressure one-dimensional pressure at the nozzle's exit while it is full (Pa)
     * @param separationAreaRatio area ratio at which the flow leaves the wall (-); empty if it fills the nozzle
     */
    public record State(
            OperatingPoint operating,
            double thrust,
            double impulse,
            double exitPressure,
            OptionalDouble separationAreaRatio) {}

    public EngineTable {
        surroundings = List.copyOf(surroundings);
        throttles = List.copyOf(throttles);
        mixtureRatios = List.copyOf(mixtureRatios);
        points = List.copyOf(points);
    }

    /**
     * @param study puts the questions
     * @param design the engine as balanced
     * @param surroundings the air, pressures or altitudes rising
     * @param throttles chamber pressure over that of the design (-)
     * @param mixtureRatios oxidizer over fuel leaving the tanks (-)
     * @return the table; its axes rise, each value once
     */
    public static EngineTable of(
            EngineStudy study,
            EngineBalance design,
            List<Surrounding> surroundings,
            List<Double> throttles,
            List<Double> mixtureRatios) {
        List<Double> rising = rising(throttles);
        List<Double> ratios = rising(mixtureRatios);
        BuiltEngine engine = study.built(design);
        List<Map<Double, OperatingOutcome>> settings =
                Parallel.map(ratios, r -> "", ratio -> settings(engine, rising, ratio), Progress.NONE);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < ratios.size(); i++) {
            for (double throttle : rising) {
                OperatingOutcome outcome = settings.get(i).get(throttle);
                for (Surrounding air : surroundings) {
                    points.add(point(air, throttle, ratios.get(i), outcome));
                }
            }
        }
        return new EngineTable(design, surroundings, rising, ratios, points);
    }

    private static List<Double> rising(List<Double> values) {
        return values.stream().sorted().distinct().toList();
    }

    /** From the throttle nearest to the design outwards, so that each has a neighbour to start from. */
    private static Map<Double, OperatingOutcome> settings(BuiltEngine engine, List<Double> throttles, double ratio) {
        List<OperatingCommand> commands = throttles.stream()
                .sorted(Comparator.comparingDouble(t -> Math.abs(Math.log(t))))
                .map(t -> OperatingCommand.throttle(t).withMixtureRatio(ratio))
                .toList();
        Map<Double, OperatingOutcome> outcomes = new LinkedHashMap<>();
        engine.offDesign(commands).forEach(o -> outcomes.put(o.command().throttle(), o));
        return outcomes;
    }

    private static Point point(Surrounding air, double throttle, double ratio, OperatingOutcome outcome) {
        if (outcome.point().isEmpty()) {
            return new Point(air, throttle, ratio, Optional.empty(), outcome.reason());
        }
        try {
            return new Point(
                    air, throttle, ratio, Optional.of(state(outcome.point().get(), air.pressure())), "");
        } catch (OutsideValidity e) {
            return new Point(air, throttle, ratio, Optional.empty(), e.getMessage());
        }
    }

    private static State state(OperatingPoint operating, double pressure) {
        ChamberPerformance chamber = operating.nozzles().chamber();
        double thrust = operating.nozzles().thrustAt(pressure);
        return new State(
                operating,
                thrust,
                thrust / operating.massFlow() / Constants.STANDARD_GRAVITY,
                chamber.profile().exit().pressure(),
                chamber.separationAreaRatio(pressure));
    }

    /** @return the settings that the engine cannot follow, each with the reason, each once */
    public List<String> failures() {
        return points.stream()
                .filter(p -> p.state().isEmpty())
                .map(p -> "throttle " + p.throttle() + ", mixture ratio " + p.mixtureRatio() + ", ambient pressure "
                        + p.surrounding().pressure() + " Pa: " + p.failure())
                .distinct()
                .toList();
    }
}
