package dev.penstock.fluids.correlation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidRange;
import dev.penstock.fluids.state.FluidState;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Liquids by correlation, over the whole of their range: stable, monotonic, invertible. */
class CorrelationFluidPropertyTest {

    private static final FluidLibrary LIBRARY = FluidLibrary.open(Path.of("").toAbsolutePath());

    @Provide
    Arbitrary<String> liquids() {
        List<String> ids = LIBRARY.ids().stream()
                .filter(id -> LIBRARY.propellant(id).fluid() instanceof CorrelationFluid)
                .toList();
        return Arbitraries.of(ids);
    }

    @Property(tries = 400)
    void everyStateIsStableMonotonicAndInvertible(
            @ForAll("liquids") String id,
            @ForAll @DoubleRange(min = 0, max = 1) double warm,
            @ForAll @DoubleRange(min = 0, max = 1) double pressed) {
        Fluid fluid = LIBRARY.propellant(id).fluid();
        FluidRange range = fluid.range();
        double t = range.minimumTemperature() + (range.maximumTemperature() - 1 - range.minimumTemperature()) * warm;
        double lowest = 1.05 * Math.max(fluid.vapourPressure(t + 1), 1e5);
        double p = lowest * Math.pow(0.98 * range.maximumPressure() / lowest, pressed);
        FluidState state = fluid.atPressureTemperature(p, t);
        FluidState squeezed = fluid.atPressureTemperature(p * 1.01, t);
        FluidState warmed = fluid.atPressureTemperature(p, t + 0.5);
        assertThat(squeezed.density()).isGreaterThan(state.density());
        assertThat(squeezed.viscosity()).isGreaterThan(state.viscosity());
        assertThat(warmed.density()).isLessThan(state.density());
        assertThat(warmed.viscosity()).isLessThan(state.viscosity());
        assertThat(warmed.enthalpy()).isGreaterThan(state.enthalpy());
        assertThat(warmed.vapourPressure().orElseThrow())
                .isGreaterThan(state.vapourPressure().orElseThrow());
        assertThat(state.isobaricHeatCapacity() / state.isochoricHeatCapacity()).isBetween(1.0, 2.5);
        assertThat(state.soundSpeed()).isBetween(80.0, 2500.0);
        assertThat(state.prandtl()).isBetween(0.5, 500.0);
        assertThat(fluid.atPressureEnthalpy(p, state.enthalpy()).temperature()).isCloseTo(t, within(1e-8 * t));
        assertThat(fluid.atPressureEntropy(p, state.entropy()).temperature()).isCloseTo(t, within(1e-8 * t));
    }

    /** Newton's steps from room temperature leave the liquid here; the state exists all the same. */
    @Example
    void aStateNearBoilingIsFoundFromItsEnthalpyAndEntropy() {
        Fluid kerosene = LIBRARY.propellant("rp-1").fluid();
        FluidState hot = kerosene.atPressureTemperature(465095.9181398995, 579.3217758609767);
        assertThat(kerosene.atPressureEnthalpy(hot.pressure(), hot.enthalpy()).temperature())
                .isCloseTo(hot.temperature(), within(1e-8 * hot.temperature()));
        assertThat(kerosene.atPressureEntropy(hot.pressure(), hot.entropy()).temperature())
                .isCloseTo(hot.temperature(), within(1e-8 * hot.temperature()));
    }

    @Example
    void belowItsVapourPressureThereIsNoState() {
        Fluid tetroxide = LIBRARY.propellant("nitrogen-tetroxide").fluid();
        assertThatThrownBy(() -> tetroxide.atPressureTemperature(1e5, 310))
                .isInstanceOf(PropertyFailure.class)
                .hasMessageContaining("it boils there")
                .hasMessageContaining("nitrogen-tetroxide");
        assertThatThrownBy(() -> tetroxide.atPressureTemperature(1e6, 500))
                .hasMessageContaining("within 262.000 to 390.000 K");
        assertThatThrownBy(() -> tetroxide.atPressureEnthalpy(1e6, 1e7)).hasMessageContaining("no temperature from");
        assertThatThrownBy(() -> tetroxide.atPressureTemperature(Double.NaN, 300))
                .isInstanceOf(PropertyFailure.class);
        assertThatThrownBy(() -> tetroxide.atPressureTemperature(1e6, Double.NaN))
                .isInstanceOf(PropertyFailure.class);
    }
}
