package dev.penstock.turbomachinery.pump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.state.Fluid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InducerSuctionTest {

    @ParameterizedTest
    @CsvSource({"0.06, 59240", "0.08, 44240", "0.10, 35200", "0.12, 29140"}) // [nasa-sp-8052], computed independently
    void suctionSpecificSpeedFollowsBrumfield(double flowCoefficient, double expected) {
        double us = SpecificSpeed.inUsUnits(InducerSuction.suctionSpecificSpeed(flowCoefficient, 0));
        assertThat(us).isCloseTo(expected, withinPercentage(0.2));
    }

    @Test
    void hubTakesSuctionSpecificSpeed() {
        double open = InducerSuction.suctionSpecificSpeed(0.1, 0);
        assertThat(InducerSuction.suctionSpecificSpeed(0.1, 0.3))
                .isCloseTo(open * Math.sqrt(0.91), withinPercentage(1e-9));
    }

    @Test
    void diameterFollowsContinuity() {
        // computed independently: 0.08764 m³/s at 20 000 rpm, φ 0.10, hub ratio 0.3
        double d = InducerSuction.diameter(0.08764, 20000 * Math.PI / 30, 0.10, 0.3);
        assertThat(d).isCloseTo(0.1054, withinPercentage(0.1));
    }

    @Test
    void hydrogenSuppressionHeadAgreesWithAnIndependentCalculation() {
        // 20.37 K, ρl 70.85, ρv 1.338, L 445.5 kJ/kg, cp 9.66 kJ/(kg·K), slope 29.83 kPa/K: 37.39 m per unit B
        assertThat(SuppressionHead.perVolumeRatio(20.37, 29.83e3, 70.85, 1.338, 9660))
                .isCloseTo(37.39, withinPercentage(0.2));
    }

    @Test
    void hydrogenSuppressionHeadFollowsFromItsEquationOfState() {
        Fluid hydrogen = FluidLibrary.open().propellant("hydrogen").fluid();
        // independent library: CoolProp 8.0.0 from Python, slope by saturation states at 20.36 and 20.38 K, true vapour
        // density
        assertThat(SuppressionHead.perVolumeRatio(hydrogen, hydrogen.saturatedLiquid(20.37)))
                .isCloseTo(39.117, withinPercentage(0.3));
    }

    @Test
    void oxygenSuppressionHeadIsSmall() {
        Fluid oxygen = FluidLibrary.open().propellant("oxygen").fluid();
        // order of 1 to 4 m for a B of 1 to 3 [from memory]
        assertThat(SuppressionHead.perVolumeRatio(oxygen, oxygen.saturatedLiquid(90.2)))
                .isBetween(0.2, 2.0);
    }
}
