package dev.penstock.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** States against figures from outside: each row names its kind and source. */
class PublishedStatesTest {

    private static final FluidLibrary LIBRARY = FluidLibrary.open(Path.of("").toAbsolutePath());

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

    @ParameterizedTest(name = "{0} {1} {2} Pa {3} K: {4}")
    @CsvFileSource(resources = "/fluids/published-states.csv")
    void statesAgreeWithFiguresFromOutside(
            String id,
            String given,
            double pressure,
            double temperature,
            String quantity,
            double expected,
            String unit,
            double tolerance,
            String kind,
            String source) {
        Fluid fluid = LIBRARY.propellant(id).fluid();
        FluidState state =
                switch (given) {
                    case "pt" -> fluid.atPressureTemperature(pressure, temperature);
                    case "sat" -> fluid.saturatedLiquid(temperature);
                    default -> fluid.saturatedLiquid(boilingPoint(fluid, pressure));
                };
        double got = QUANTITIES.get(quantity).applyAsDouble(state);
        assertThat(got)
                .as(
                        "%s of %s, %s (%s): expected %.7g, got %.7g %s, off by %.1e",
                        quantity, id, kind, source, expected, got, unit, got / expected - 1)
                .isCloseTo(expected, within(tolerance * expected));
    }

    private static double boilingPoint(Fluid fluid, double pressure) {
        double low = fluid.range().minimumTemperature();
        double high = Math.min(
                fluid.range().maximumTemperature(), fluid.criticalTemperature().orElse(1e9) * 0.9999);
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (fluid.vapourPressure(middle) < pressure) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    @ParameterizedTest(name = "{0} from {2} to {3} Pa")
    @CsvFileSource(resources = "/fluids/compressible-pumping.csv")
    void compressedLiquidsTakeTheWorkOfTheRealFluid(
            String id, double inlet, double low, double high, double density, double work, double outlet) {
        Fluid fluid = LIBRARY.propellant(id).fluid();
        FluidState in = fluid.atPressureTemperature(low, inlet);
        double ideal = fluid.atPressureEntropy(high, in.entropy()).enthalpy() - in.enthalpy();
        FluidState out = fluid.atPressureEnthalpy(high, in.enthalpy() + ideal / 0.7);
        assertThat(in.density()).isCloseTo(density, within(5e-4 * density));
        assertThat(ideal).isCloseTo(work, within(5e-4 * work));
        assertThat(out.temperature()).isCloseTo(outlet, within(5e-4 * outlet));
        assertThat(ideal).isLessThan((high - low) / in.density());
    }
}
