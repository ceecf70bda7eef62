package dev.penstock.turbomachinery.turbine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.combustion.WorkingFluid;
import dev.penstock.errors.LimitReached;
import dev.penstock.turbomachinery.PerfectGas;
import org.junit.jupiter.api.Test;

/** Identity: a perfect gas of constant heat capacity, whose expansion has a closed form. */
class BoostTurbineTest {

    private static final double HEAT_CAPACITY = 2800;
    private static final double EXPONENT = 1 / 8.0;
    private static final WorkingFluid PERFECT = new PerfectGas(HEAT_CAPACITY, 8 / 7.0);
    private static final double INLET = 900 * HEAT_CAPACITY;

    /** By hand: T2 = 900 K (1/16)^(1/8) = 636.40 K, drop 738.09 kJ/kg; 100 kW at 0.5 take 0.27097 kg/s. */
    @Test
    void besideOthersItTakesTheFlowThatGivesItsPower() {
        assertThat(BoostTurbine.driveFlow(100e3, PERFECT, 8e6, INLET, 0.5e6, 0.5))
                .isCloseTo(0.27097, within(1e-5));
    }

    /** By hand: 100 kW out of 5 kg/s at 0.5 are 40 kJ/kg, so T2s = 885.714 K and p2 = 0.5 MPa (885.714/900)^8 = 0.43993 MPa. */
    @Test
    void inTheExhaustItTakesThePressureThatGivesItsPower() {
        assertThat(BoostTurbine.exitPressure(100e3, PERFECT, 0.5e6, INLET, 5, 0.5))
                .isCloseTo(0.43993e6, within(10.0))
                .isCloseTo(0.5e6 * Math.pow(1 - 40e3 / INLET, 1 / EXPONENT), within(1e-3));
    }

    @Test
    void moreThanTheExhaustHasIsALimitWithItsNumbers() {
        assertThatThrownBy(() -> BoostTurbine.exitPressure(5e6, PERFECT, 0.5e6, INLET, 5, 0.5))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("kJ");
    }
}
