package dev.penstock.chamber.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.combustion.WorkingState;
import dev.penstock.errors.OutsideValidity;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The nozzle flow in the limit of a calorically perfect gas, where every relation has a closed form. */
class PerfectGasNozzleTest {

    private static final double PC = 70e5;

    private static PerfectGas gas(double gamma) {
        return new PerfectGas(gamma, 360, PC, 3500);
    }

    /** Closed forms at γ 1.20, p_c 70 bar, to the digits of the table: area ratio, M, p_e/p_c, C_F vacuum, C_F at 1 atm. */
    @ParameterizedTest
    @CsvSource({"10, 3.2783, 0.0125373, 1.74231, 1.59756", "40, 4.2394, 0.00208742, 1.88427, 1.30527"})
    void areaRatioGivesTheClosedFormMachAndThrustCoefficient(
            double areaRatio, double mach, double pressureRatio, double vacuum, double seaLevel) {
        IsentropicFlow flow = gas(1.2).flow();
        WorkingState exit = flow.atAreaRatio(areaRatio);
        double v = flow.velocity(exit);
        assertThat(v / exit.soundSpeed()).isCloseTo(mach, within(5e-5));
        assertThat(exit.pressure() / PC).isCloseTo(pressureRatio, within(5e-6 * pressureRatio));
        double cf = (v + exit.pressure() / flow.flux(exit)) / flow.characteristicVelocity();
        assertThat(cf).isCloseTo(vacuum, within(5e-6));
        assertThat(cf - 101325 / PC * areaRatio).isCloseTo(seaLevel, within(5e-6));
    }

    /** Closed form: c* = √(R T₀/γ) ((γ+1)/2)^((γ+1)/(2(γ−1))). */
    @Property(tries = 50)
    void characteristicVelocityFollowsTheClosedForm(@ForAll @DoubleRange(min = 1.08, max = 1.66) double gamma) {
        double expected = Math.sqrt(360 * 3500 / gamma) * Math.pow((gamma + 1) / 2, (gamma + 1) / (2 * (gamma - 1)));
        assertThat(gas(gamma).flow().characteristicVelocity() / expected).isCloseTo(1, within(1e-10));
    }

    /** Closed form: ε = 1/M [2/(γ+1) (1 + (γ−1)/2 M²)]^((γ+1)/(2(γ−1))). */
    @Property(tries = 100)
    void everyAreaRatioIsFound(
            @ForAll @DoubleRange(min = 1.08, max = 1.66) double gamma,
            @ForAll @DoubleRange(min = 0.01, max = 6.2) double lnAreaRatio) {
        double areaRatio = Math.exp(lnAreaRatio);
        IsentropicFlow flow = gas(gamma).flow();
        WorkingState exit = flow.atAreaRatio(areaRatio);
        double m = flow.velocity(exit) / exit.soundSpeed();
        double closed = Math.pow(2 / (gamma + 1) * (1 + (gamma - 1) / 2 * m * m), (gamma + 1) / (2 * (gamma - 1))) / m;
        assertThat(m).isGreaterThanOrEqualTo(1);
        assertThat(closed / areaRatio).isCloseTo(1, within(1e-9));
    }

    @Test
    void areaRatioIsFoundWithFewStates() {
        for (double areaRatio : new double[] {1.05, 1.5, 2, 5, 20, 80, 400}) {
            IsentropicFlow flow = gas(1.18).flow();
            int throat = flow.evaluations();
            flow.atAreaRatio(areaRatio);
            assertThat(throat).isLessThanOrEqualTo(3);
            assertThat(flow.evaluations() - throat)
                    .as("area ratio %s", areaRatio)
                    .isLessThanOrEqualTo(8);
        }
    }

    @Test
    void profileAgreesWithTheFlowAndHasItsThroatAtTheLargestMassFlux() {
        PerfectGas gas = gas(1.2);
        GasProfile profile = gas.profile(60);
        IsentropicFlow flow = gas.flow();
        for (double areaRatio : new double[] {1.0001, 1.01, 1.3, 2, 3.7, 11, 33, 59.9}) {
            NozzleStation station = profile.at(areaRatio, true);
            WorkingState exact = flow.atAreaRatio(areaRatio);
            assertThat(station.temperature() / exact.temperature()).isCloseTo(1, within(1e-5));
            assertThat(station.pressure() / exact.pressure()).isCloseTo(1, within(3e-5));
            assertThat(station.massFlux() * areaRatio / flow.throatFlux()).isCloseTo(1, within(1e-9));
        }
        for (double areaRatio : new double[] {1.0001, 1.01, 1.3, 2, 4, 20, 300}) {
            NozzleStation station = profile.at(areaRatio, false);
            assertThat(station.massFlux() * areaRatio / flow.throatFlux()).isCloseTo(1, within(1e-9));
            assertThat(station.mach()).isLessThan(1);
            WorkingState exact = gas.at(station.pressure());
            assertThat(station.temperature() / exact.temperature()).isCloseTo(1, within(1e-5));
        }
        assertThat(profile.at(1, true)).isEqualTo(profile.throat());
    }

    @Test
    void areaRatioBelowOneIsRefusedInOneSentence() {
        assertThatThrownBy(() -> gas(1.2).flow().atAreaRatio(0.8))
                .isInstanceOf(OutsideValidity.class)
                .hasMessage("nozzle: area ratio (-) is 0.800000; allowed is 1.0 to 5000.0");
    }

    @Test
    void exitPressureAboveTheThroatIsRefusedInOneSentence() {
        assertThatThrownBy(() -> gas(1.2).flow().atExitPressure(80e5))
                .isInstanceOf(OutsideValidity.class)
                .hasMessageContaining("exit pressure (Pa) is 8.00000e+06")
                .hasMessageContaining("chamber pressure 7.00000e+06 Pa");
    }
}
