package dev.penstock.study;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.sheet.EngineBalance;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Chamber pressure against turbine temperature, one line per cycle, for the same propellants and thrust.
 *
 * @param concept the concept whose propellants, thrust, nozzle, feeds and jacket every cycle takes
 * @param temperatures turbine temperatures asked for, rising (K)
 * @param lines one per cycle with turbines, in the order of {@link Cycle#all()}
 * @param complete whether everything was tried
 */
public record CycleReach(Concept concept, List<Double> temperatures, List<Line> lines, boolean complete) {

    /** What decides how hot the gas before the turbines is. */
    public enum Basis {
        /** The engineer: a burner's mixture gives any temperature. */
        CHOSEN,
        /** The jacket: the line follows the chamber pressure up to the reach. */
        JACKET,
        /** The propellant that decomposes. */
        DECOMPOSITION
    }

    /**
     * One cycle.
     *
     * @param cycle the cycle
     * @param basis what decides the turbine temperature
     * @param points points, in the order of their temperatures or, along a jacket's line, of their chamber pressures
     * @param failure why the cycle has no point at all; empty text if it has one
     */
    public record Line(Cycle cycle, Basis basis, List<Point> points, String failure) {

        public Line {
            points = List.copyOf(points);
        }

        /** @return points that have an engine */
        public List<Point> closed() {
            return points.stream().filter(p -> p.balance().isPresent()).toList();
        }
    }

    /**
     * One turbine temperature.
     *
     * @param asked temperature asked for (K); empty where the cycle decides it
     * @param balance the engine there, if there is one
     * @param limit limit that binds; empty text below the reach and where there is no engine
     * @param why one sentence on what ends the search there, or why there is no engine
     */
    public record Point(OptionalDouble asked, Optional<EngineBalance> balance, String limit, String why) {

        static Point reached(OptionalDouble asked, LimitResult result) {
            return new Point(asked, Optional.of(result.balance()), result.bindingLimit(), result.explanation());
        }

        /** @return temperature before the hottest turbine (K); the one asked for where there is no engine */
        public OptionalDouble temperature() {
            return balance.isPresent() ? hottest(balance.get()) : asked;
        }
    }

    public CycleReach {
        temperatures = List.copyOf(temperatures);
        lines = List.copyOf(lines);
    }

    static OptionalDouble hottest(EngineBalance balance) {
        return balance.turbines().stream()
                .mapToDouble(t -> t.inlet().temperature())
                .max();
    }
}
