package dev.penstock.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.fluids.coolprop.CoolPropWay;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Transport by corresponding states with carbon dioxide against tables for nitrous oxide. */
@ParameterizedClass
@MethodSource("dev.penstock.fluids.coolprop.CoolPropWay#here")
class NitrousOxideTransportTest {

    @Parameter
    CoolPropWay way;

    private Fluid nitrousOxide() {
        return way.fluids().propellant("nitrous-oxide").fluid();
    }

    /** [perry-2008] table of liquid viscosities, DIPPR 101: exp(19.329 - 381.68/T - 4.8618 ln T), 210 to 283 K. */
    @ParameterizedTest
    @CsvSource({"225, 166.7e-6", "240, 135.4e-6", "260, 103.7e-6", "283, 77.4e-6"})
    void saturatedLiquidViscosityFollowsTheTable(double temperature, double viscosity) {
        assertThat(nitrousOxide().saturatedLiquid(temperature).viscosity())
                .isCloseTo(viscosity, within(0.08 * viscosity));
    }

    /** [vdi-heat-atlas-2010] dilute gas. */
    @ParameterizedTest
    @CsvSource({"250, 12.30e-6, 0.01395", "298.15, 14.62e-6, 0.01761", "400, 19.27e-6, 0.02535"})
    void dilutedGasFollowsTheTable(double temperature, double viscosity, double conductivity) {
        FluidState gas = nitrousOxide().atPressureTemperature(1e5, temperature);
        assertThat(gas.viscosity()).isCloseTo(viscosity, within(0.02 * viscosity));
        assertThat(gas.conductivity()).isCloseTo(conductivity, within(0.04 * conductivity));
    }

    @ParameterizedTest
    @CsvSource({"190", "216", "221", "250", "300", "309"})
    void aSaturatedStateHasTransportNearTheTriplePointAndTheCriticalPoint(double temperature) {
        FluidState liquid = nitrousOxide().saturatedLiquid(temperature);
        assertThat(liquid.viscosity()).isBetween(3e-5, 5e-4);
        assertThat(liquid.conductivity()).isBetween(0.05, 0.3);
    }
}
