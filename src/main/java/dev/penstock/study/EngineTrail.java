package dev.penstock.study;

import dev.penstock.cycles.BalanceTrail;
import dev.penstock.cycles.Definitions;
import dev.penstock.cycles.EngineBalance;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Trail;
import java.util.List;

/** The trail of an engine with the figures by which engines are compared: the largest, the sum, the tightest of several. */
public final class EngineTrail {

    private EngineTrail() {}

    /**
     * @param balance balanced engine
     * @return the trail of all its numbers and figures
     */
    public static Trail of(EngineBalance balance) {
        Trail trail = BalanceTrail.of(balance);
        for (Measure measure : Measure.ALL) {
            measure.value().apply(balance).ifPresent(value -> {
                if (path(measure).startsWith("figures.")) {
                    List<String> inputs = inputs(trail, measure);
                    trail.record(
                            "figures." + measure.key(),
                            value,
                            measure.unit(),
                            card(measure),
                            inputs.toArray(String[]::new));
                }
            });
        }
        return trail;
    }

    /**
     * @param measure a figure that the engine has
     * @return path of the figure in the trail
     */
    public static String path(Measure measure) {
        return switch (measure.key()) {
            case "turbine_temperature_K",
                    "turbine_pressure_ratio",
                    "discharge_pressure_Pa",
                    "pump_power_W",
                    "tightest_margin" -> "figures." + measure.key();
            case "coolant_temperature_rise_K",
                    "coolant_pressure_drop_Pa",
                    "peak_wall_temperature_K",
                    "peak_heat_flux_W_m2" -> "cooling." + measure.key();
            default -> "engine." + measure.key();
        };
    }

    private static ModelCard card(Measure measure) {
        return switch (measure.key()) {
            case "pump_power_W" -> Definitions.SUM;
            case "tightest_margin" -> Definitions.SMALLEST;
            default -> Definitions.EXTREME;
        };
    }

    private static List<String> inputs(Trail trail, Measure measure) {
        return switch (measure.key()) {
            case "turbine_temperature_K" -> all(trail, "turbines.", ".inlet_temperature_K");
            case "turbine_pressure_ratio" -> all(trail, "turbines.", ".pressure_ratio");
            case "discharge_pressure_Pa" -> all(trail, "pumps.", ".discharge_pressure_Pa");
            case "pump_power_W" -> all(trail, "pumps.", ".power_W");
            case "tightest_margin" -> all(trail, "limits.", ".margin");
            default -> throw new IllegalStateException("nobody says where the figure " + measure.key() + " comes from");
        };
    }

    private static List<String> all(Trail trail, String start, String end) {
        return trail.entries().stream()
                .map(Trail.Entry::path)
                .filter(path -> path.startsWith(start) && path.endsWith(end))
                .toList();
    }
}
