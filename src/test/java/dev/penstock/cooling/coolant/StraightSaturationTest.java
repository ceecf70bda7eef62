package dev.penstock.cooling.coolant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.state.Fluid;
import org.junit.jupiter.api.Test;

class StraightSaturationTest {

    private final Fluid mmh = FluidLibrary.open().propellant("mmh").fluid();
    private final SaturationColumns line = StraightSaturation.of(mmh).orElseThrow();

    /** Identity with the fluid's own vapour pressure and liquid, between nodes as at them. */
    @Test
    void theLineIsThatOfTheFluid() {
        double hot = Math.min(
                mmh.range().maximumTemperature(),
                0.99 * mmh.criticalTemperature().orElse(Double.MAX_VALUE));
        for (double t = 0.75 * hot; t < hot; t += 0.031 * hot) {
            double at = line.place(mmh.vapourPressure(t));
            assertThat(line.atPlace(at, SaturationColumns.TEMPERATURE)).isCloseTo(t, withinPercentage(0.05));
            assertThat(line.atPlace(at, SaturationColumns.ENTHALPY))
                    .isCloseTo(mmh.saturatedLiquid(t).enthalpy(), withinPercentage(0.5));
        }
    }

    /** Below its first node and beyond its last the line keeps their values. */
    @Test
    void theLineKeepsItsEnds() {
        int t = SaturationColumns.TEMPERATURE;
        double top = line.place(line.highestPressure());
        assertThat(line.atPlace(top + 1, t)).isEqualTo(line.atPlace(top, t));
        assertThat(line.atPlace(-100, t)).isEqualTo(line.atPlace(-200, t)).isLessThan(line.atPlace(top, t));
        assertThat(line.hasVapour()).isFalse();
    }
}
