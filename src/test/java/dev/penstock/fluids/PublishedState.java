package dev.penstock.fluids;

import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.validation.Evidence;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** One row of {@code published-states.csv}: a property from outside, with its kind and source. */
record PublishedState(
        String fluid,
        String given,
        double pressure,
        double temperature,
        String quantity,
        double expected,
        String unit,
        double tolerance,
        Evidence kind,
        String source) {

    static final Path HOME = Path.of("").toAbsolutePath();

    private static final Path TABLE = HOME.resolve("src/test/resources/fluids/published-states.csv");
    private static final int COLUMNS = 10;

    private static final Map<String, ToDoubleFunction<FluidState>> QUANTITIES = Map.of(
            "pressure", FluidState::pressure,
            "temperature", FluidState::temperature,
            "density", FluidState::density,
            "entropy", FluidState::entropy,
            "isobaric_heat_capacity", FluidState::isobaricHeatCapacity,
            "isochoric_heat_capacity", FluidState::isochoricHeatCapacity,
            "sound_speed", FluidState::soundSpeed,
            "viscosity", FluidState::viscosity,
            "conductivity", FluidState::conductivity);

    static List<PublishedState> all() {
        try {
            return Files.readAllLines(TABLE).stream()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(PublishedState::of)
                    .collect(Collectors.toList());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static PublishedState of(String line) {
        String[] c = line.split(",", COLUMNS);
        return new PublishedState(
                c[0],
                c[1],
                Double.parseDouble(c[2]),
                Double.parseDouble(c[3]),
                c[4],
                Double.parseDouble(c[5]),
                c[6],
                Double.parseDouble(c[7]),
                Evidence.of(c[8], c[9]),
                c[9].replace("\"", ""));
    }

    double computed(FluidLibrary library) {
        Fluid model = library.propellant(fluid).fluid();
        FluidState state =
                switch (given) {
                    case "pt" -> model.atPressureTemperature(pressure, temperature);
                    case "sat" -> model.saturatedLiquid(temperature);
                    default -> model.saturatedLiquid(boilingPoint(model));
                };
        return QUANTITIES.get(quantity).applyAsDouble(state);
    }

    private double boilingPoint(Fluid model) {
        double low = model.range().minimumTemperature();
        double high = Math.min(
                model.range().maximumTemperature(), model.criticalTemperature().orElse(1e9) * 0.9999);
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (model.vapourPressure(middle) < pressure) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** @return the state in words */
    String where() {
        return switch (given) {
            case "pt" -> String.format(Locale.ROOT, "%.5g MPa, %.6g K", pressure / 1e6, temperature);
            case "sat" -> String.format(Locale.ROOT, "saturated liquid, %.6g K", temperature);
            default -> String.format(Locale.ROOT, "boiling at %.6g MPa", pressure / 1e6);
        };
    }
}
