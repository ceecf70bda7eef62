package dev.penstock.study;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.provenance.Figure;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Notation;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A figure by which engines are compared, swept and sampled: any number that an engine publishes is one.
 *
 * @param path path of the figure, as in the trail
 * @param key key in documents, ending in the SI unit: the last part of the path for the usual figures, else the path
 * @param figure the figure, empty where a cycle does not have it
 */
public record Measure(String path, String key, Figure<EngineBalance> figure) {

    private static final String SEA_LEVEL = "engine.isp_sea_level_s";

    /** Figures that mean little where flow is separated at sea level. */
    private static final Set<String> AT_SEA_LEVEL = Set.of(SEA_LEVEL, "engine.thrust_sea_level_N");

    /** The usual figures, the most asked-for first. */
    public static final List<Measure> ALL = Stream.of(
                    "engine.isp_vacuum_s",
                    SEA_LEVEL,
                    "engine.thrust_vacuum_N",
                    "engine.chamber_pressure_Pa",
                    "engine.mixture_ratio",
                    "engine.mass_flow_kg_s",
                    "engine.mass_kg",
                    "engine.thrust_to_weight",
                    "engine.exit_diameter_m",
                    "figures.turbine_temperature_K",
                    "figures.turbine_pressure_ratio",
                    "figures.discharge_pressure_Pa",
                    "figures.pump_power_W",
                    "cooling.coolant_temperature_rise_K",
                    "cooling.coolant_pressure_drop_Pa",
                    "cooling.peak_wall_temperature_K",
                    "cooling.peak_heat_flux_W_m2",
                    "figures.tightest_margin")
            .map(path -> new Measure(
                    path,
                    path.substring(path.indexOf('.') + 1),
                    EngineFigures.ALL.at(path).orElseThrow()))
            .toList();

    /**
     * @param keys keys of usual figures
     * @return the figures, in that order
     */
    public static List<Figure<EngineBalance>> figures(List<String> keys) {
        return keys.stream().map(key -> named(key).orElseThrow().figure()).toList();
    }

    /** @return name for people */
    public String name() {
        return figure.title();
    }

    /** @return +1 if more is better, −1 if less is, 0 if neither */
    public int better() {
        return figure.better();
    }

    /** Figures that grow with an engine's size, so that no engine is better by them than one of another thrust. */
    private static final Set<String> WITH_SIZE =
            Set.of("engine.mass_kg", "engine.exit_diameter_m", "figures.pump_power_W", "figures.discharge_pressure_Pa");

    /** How far thrusts may differ among engines of one size (-). */
    private static final double ONE_SIZE = 0.05;

    /**
     * @param balances engines side by side
     * @return +1 if more is better among these engines, −1 if less is, 0 if neither
     */
    private int better(List<EngineBalance> balances) {
        DoubleSummaryStatistics thrust =
                balances.stream().mapToDouble(b -> b.engine().vacuumThrust()).summaryStatistics();
        boolean oneSize = thrust.getMax() <= (1 + ONE_SIZE) * thrust.getMin();
        return WITH_SIZE.contains(path) && !oneSize ? 0 : better();
    }

    /**
     * @param balance balanced engine
     * @param among engines side by side, this one among them
     * @return whether none of the others is better by this figure; never where no direction is better, no other has
     *     the figure, or its flow is separated so that nobody would run it there
     */
    public boolean best(EngineBalance balance, List<EngineBalance> among) {
        int direction = better(among);
        OptionalDouble own = of(balance);
        return direction != 0
                && among.stream().filter(other -> of(other).isPresent()).count() > 1
                && own.isPresent()
                && !separated(balance)
                && among.stream()
                        .filter(other -> !separated(other))
                        .flatMapToDouble(other -> of(other).stream())
                        .allMatch(value -> direction * value <= direction * own.getAsDouble());
    }

    /**
     * @param balance balanced engine
     * @return its figure, SI; empty where its cycle does not have it
     */
    public OptionalDouble of(EngineBalance balance) {
        return figure.number(balance);
    }

    /**
     * @param balance balanced engine
     * @return the figure for people, with what must be known of it; "-" where its cycle does not have it
     */
    public String text(EngineBalance balance) {
        OptionalDouble value = of(balance);
        if (value.isEmpty()) {
            return "-";
        }
        return notation().writeWithUnit(value.getAsDouble()) + (separated(balance) ? ", flow separated" : "");
    }

    /**
     * @param balance balanced engine
     * @return whether it is impulse or thrust at sea level of an engine whose flow is separated there
     */
    public boolean separated(EngineBalance balance) {
        return AT_SEA_LEVEL.contains(path) && balance.separatedAtSeaLevel();
    }

    /** @return how people read it */
    public Notation notation() {
        return figure.notation();
    }

    /**
     * @param balance balanced engine
     * @return its limit with the least margin, those aside by which a speed was chosen: what binds it
     */
    public static Optional<LimitCheck> tightest(EngineBalance balance) {
        return LimitCheck.tightest(balance.limits());
    }

    /**
     * @param key key of a usual figure, or the path of any number that an engine publishes, for example
     *     "pumps.fuel-pump.speed_rad_s"
     * @return the figure, if there is one
     */
    public static Optional<Measure> named(String key) {
        return ALL.stream()
                .filter(m -> m.key().equals(key) || m.path().equals(key))
                .findFirst()
                .or(() -> EngineFigures.ALL.at(key).filter(Figure::isNumber).map(f -> new Measure(key, key, f)));
    }
}
