package dev.penstock.combustion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.OutsideValidity;
import org.junit.jupiter.api.Test;

class EmpiricalWorkingFluidTest {

    private final EmpiricalWorkingFluid gas = new EmpiricalWorkingFluid("gas", 2750, 1.1, 900, -1e6);

    /** R = 2750 · 0.1/1.1 = 250 J/(kg·K): M = 8.314462618/250; at 10 bar and 1000 K ρ = 4 kg/m³, a = √(1.1 · 250 · 1000). */
    @Test
    void oneStateByHand() {
        WorkingState state = gas.atPressureTemperature(1e6, 1000);
        assertThat(gas.molarMass()).isCloseTo(0.0332578505, within(1e-9));
        assertThat(state.density()).isCloseTo(4, within(1e-9));
        assertThat(state.enthalpy()).isCloseTo(-1e6 + 275e3, within(1e-6));
        assertThat(state.entropy()).isCloseTo(2750 * Math.log(10 / 9.0) - 250 * Math.log(10), within(1e-6));
        assertThat(state.soundSpeed()).isCloseTo(524.4044, within(1e-4));
        assertThat(gas.inletTemperature()).isEqualTo(900);
    }

    /** Identities: every pair of inputs leads to the same state, and along an isentrope T goes with p^((γ−1)/γ). */
    @Test
    void everyPairOfInputsLeadsToTheSameState() {
        WorkingState state = gas.atPressureTemperature(2e6, 800);
        assertThat(gas.atPressureEnthalpy(2e6, state.enthalpy()).temperature()).isCloseTo(800, within(1e-9));
        assertThat(gas.atPressureEntropy(2e6, state.entropy()).temperature()).isCloseTo(800, within(1e-9));
        assertThat(gas.atPressureEntropy(0.5e6, state.entropy()).temperature())
                .isCloseTo(800 * Math.pow(0.25, 0.1 / 1.1), within(1e-9));
        assertThatThrownBy(() -> gas.atPressureEnthalpy(1e6, -1e6 - 2750 * 901)).isInstanceOf(OutsideValidity.class);
    }
}
