package dev.penstock.cooling.coolant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.Cases;
import dev.penstock.fluids.state.Fluid;
import org.junit.jupiter.api.Test;

/** Boiling line, nucleate boiling and its end. */
class BoilingTest {

    private static final double WATER_CRITICAL = 22.064e6;

    /** Pool boiling of water at 1 atm burns out near 1.1 to 1.3 MW/m² (textbook value, from memory). */
    @Test
    void poolLimitOfWaterIsTheTextbookOne() {
        assertThat(Boiling.poolLimit(WATER_CRITICAL, 101_325)).isBetween(1.0e6, 1.35e6);
    }

    /** Nucleate boiling of water at 1 atm: a superheat of about 20 K at 0.5 to 1.1 MW/m² (textbook curve, from memory). */
    @Test
    void superheatOfWaterIsOnTheTextbookCurve() {
        assertThat(Boiling.superheat(WATER_CRITICAL, 101_325, 0.8e6)).isBetween(14.0, 26.0);
    }

    /** Identity: flux and superheat are one relation read both ways. */
    @Test
    void superheatInvertsTheFlux() {
        double flux = Boiling.nucleateFlux(8e6, 2e6, 25);
        assertThat(Boiling.superheat(8e6, 2e6, flux)).isCloseTo(25, within(1e-9));
        assertThat(Boiling.nucleateFlux(8e6, 2e6, -1)).isZero();
    }

    /** Independent: Clausius and Clapeyron against the latent heat of the equation of state, water at 1 atm, 2256.5 kJ/kg. */
    @Test
    void latentHeatAgreesWithTheEquationOfState() {
        Fluid water = Cases.FLUIDS.propellant("water").fluid();
        SaturationLine line = SaturationLine.of(water).orElseThrow();
        double pressure = 101_325;
        double latent = line.vapourEnthalpy(pressure) - line.liquidEnthalpy(pressure);
        assertThat(latent).isCloseTo(2256.5e3, within(5e3));
        assertThat(Boiling.latentHeat(line, water.molarMass(), pressure)).isCloseTo(latent, within(0.03 * latent));
        assertThat(line.temperature(pressure)).isCloseTo(373.12, within(0.3));
    }

    /** A model of the liquid alone gets a line up to its critical point. */
    @Test
    void aLiquidOnlyModelBoilsUpToItsCriticalPressure() {
        SaturationLine line =
                SaturationLine.of(Cases.FLUIDS.propellant("mmh").fluid()).orElseThrow();
        assertThat(line.hasVapour()).isFalse();
        double critical =
                Cases.FLUIDS.propellant("mmh").fluid().criticalTemperature().orElseThrow();
        assertThat(line.temperature(4e6)).isBetween(line.temperature(1e6), critical);
    }

    @Test
    void subcoolingAndVelocityRaiseTheCriticalFlux() {
        double still = Boiling.criticalFlux(8e6, 2e6, 0, 60, 0, 0);
        assertThat(still).isCloseTo(Boiling.poolLimit(8e6, 2e6), within(1.0));
        assertThat(Boiling.criticalFlux(8e6, 2e6, 50, 60, 0.2, 0)).isGreaterThan(still);
        assertThat(Boiling.criticalFlux(8e6, 2e6, 50, 60, 0.2, 20e3))
                .isGreaterThan(Boiling.criticalFlux(8e6, 2e6, 50, 60, 0.2, 0) + 20e3 * 50);
    }
}
