package dev.penstock.turbomachinery.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UllageGasTest {

    private static final FluidLibrary FLUIDS = FluidLibrary.open();

    private static UllageGas gas(String id, double pressure, UllageGas.Law law, double exponent) {
        Fluid fluid = FLUIDS.propellant(id).fluid();
        return new UllageGas(fluid, fluid.atPressureTemperature(pressure, 293.15), law, exponent);
    }

    /** Independent library: CoolProp 8.0.0 by density with temperature, entropy or pressure, called from Python. */
    @ParameterizedTest
    @CsvSource({
        "helium,   ISOTHERMAL, 1.5, 1329036.89, 293.150",
        "helium,   ISOTHERMAL, 3.0,  662380.67, 293.150",
        "helium,   ISENTROPIC, 1.5, 1012728.78, 223.349",
        "helium,   ISENTROPIC, 3.0,  317362.53, 140.445",
        "nitrogen, ISOTHERMAL, 3.0,  668258.50, 293.150",
        "nitrogen, ISENTROPIC, 3.0,  422044.46, 187.032",
        "nitrogen, POLYTROPIC, 3.0,  535161.04, 235.735",
    })
    void realGasFollowsItsEquationOfState(String id, UllageGas.Law law, double ratio, double p, double t) {
        FluidState state = gas(id, 2e6, law, 1.2).at(ratio);
        assertThat(state.pressure()).isCloseTo(p, withinPercentage(0.001));
        assertThat(state.temperature()).isCloseTo(t, within(0.01));
    }

    /** Limit: a thin gas is ideal, so p B stays at one temperature and p B^(5/3) at one entropy of a monatomic gas. */
    @Test
    void aThinMonatomicGasIsIdeal() {
        for (double ratio : new double[] {1.2, 2, 5}) {
            assertThat(gas("helium", 2e4, UllageGas.Law.ISOTHERMAL, 1).at(ratio).pressure() * ratio)
                    .isCloseTo(2e4, withinPercentage(0.02));
            assertThat(gas("helium", 2e4, UllageGas.Law.ISENTROPIC, 1).at(ratio).pressure() * Math.pow(ratio, 5.0 / 3))
                    .isCloseTo(2e4, withinPercentage(0.1));
        }
    }

    /** Identity: nothing is added, so density goes with the inverse of the volume. */
    @Test
    void densityFollowsTheVolume() {
        for (UllageGas.Law law : UllageGas.Law.values()) {
            UllageGas gas = gas("nitrogen", 3e6, law, 1.15);
            assertThat(gas.at(2.7).density())
                    .as(law.name())
                    .isCloseTo(gas.start().density() / 2.7, withinPercentage(1e-5));
            assertThat(gas.at(1)).isEqualTo(gas.start());
        }
    }

    @Test
    void aShrinkingUllageIsRefused() {
        assertThatThrownBy(() -> gas("helium", 2e6, UllageGas.Law.ISOTHERMAL, 1).at(0.9))
                .isInstanceOf(OutsideValidity.class);
    }
}
