package dev.penstock.cooling.coolant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.Cases;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.table.FluidTables;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The boiling line against the full model, and against the table on whose borders it lies. */
class SaturationLineTest {

    private static final double[] SHARES = {0.001, 0.003, 0.01, 0.03, 0.1, 0.3, 0.6, 0.9, 0.97};

    @ParameterizedTest
    @ValueSource(strings = {"methane", "hydrogen", "oxygen", "propane", "ammonia", "ethanol", "water"})
    void bothSidesAreThoseOfTheModel(String id) {
        Fluid fluid = Cases.FLUIDS.propellant(id).fluid();
        SaturationLine line = SaturationLine.of(fluid).orElseThrow();
        double coldest = fluid.vapourPressure(fluid.range().minimumTemperature() * 1.001);
        for (double share : SHARES) {
            double pressure = share * fluid.criticalPressure().orElseThrow();
            if (pressure < coldest) {
                continue;
            }
            double t = line.temperature(pressure);
            assertThat(fluid.vapourPressure(t)).isCloseTo(pressure, within(2e-4 * pressure));
            FluidState liquid = fluid.saturatedLiquid(t);
            FluidState vapour = fluid.atPressureTemperature(pressure, t * (1 + 1e-6));
            double latent = vapour.enthalpy() - liquid.enthalpy();
            assertThat(line.liquidEnthalpy(pressure)).isCloseTo(liquid.enthalpy(), within(1e-3 * latent));
            assertThat(line.vapourEnthalpy(pressure)).isCloseTo(vapour.enthalpy(), within(1e-3 * latent));
            assertThat(line.liquidDensity(pressure)).isCloseTo(liquid.density(), within(1e-3 * liquid.density()));
            assertThat(line.vapourDensity(pressure)).isCloseTo(vapour.density(), within(2e-3 * vapour.density()));
            double[] ofLiquid = {liquid.isobaricHeatCapacity(), liquid.viscosity(), liquid.conductivity()};
            double[] ofVapour = {vapour.isobaricHeatCapacity(), vapour.viscosity(), vapour.conductivity()};
            for (int k = 0; k < ofLiquid.length; k++) {
                assertThat(line.blend(pressure, k, 0)).isCloseTo(ofLiquid[k], within(0.02 * ofLiquid[k]));
                assertThat(line.blend(pressure, k, 1)).isCloseTo(ofVapour[k], within(0.05 * ofVapour[k]));
            }
        }
    }

    /** Beside the critical point too: else a boiling coolant asks the full model at each step of its way. */
    @ParameterizedTest
    @ValueSource(strings = {"methane", "hydrogen", "propane"})
    void whatLiesJustBesideTheLineIsServedByTheTable(String id) {
        Fluid fluid = Cases.FLUIDS.propellant(id).fluid();
        SaturationLine line = SaturationLine.of(fluid).orElseThrow();
        try (FluidCursor table = FluidTables.of(fluid).cursor()) {
            for (double share : new double[] {0.1, 0.5, 0.9, 0.99, 0.999, 0.9999}) {
                double pressure = share * fluid.criticalPressure().orElseThrow();
                double liquid = line.liquidEnthalpy(pressure);
                double vapour = line.vapourEnthalpy(pressure);
                assertThat(vapour).isGreaterThan(liquid);
                table.setPressureEnthalpy(pressure, liquid);
                assertThat(table.density()).isCloseTo(line.liquidDensity(pressure), within(0.03 * table.density()));
                table.setPressureEnthalpy(pressure, vapour);
                assertThat(table.density()).isCloseTo(line.vapourDensity(pressure), within(0.03 * table.density()));
            }
        }
    }
}
