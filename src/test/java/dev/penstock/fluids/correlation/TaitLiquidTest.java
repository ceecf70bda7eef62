package dev.penstock.fluids.correlation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.property.Polynomial;
import java.util.List;
import org.junit.jupiter.api.Test;

class TaitLiquidTest {

    private static final double P0 = 1e5;

    /** 1.1 t/m³ at 300 K and falling, a bulk modulus of 1.5 GPa that falls too, 2 kJ/(kg·K) and rising: an invented liquid. */
    private static final TaitLiquid LIQUID = new TaitLiquid(
            new Polynomial(List.of(1400.0, -1.0)),
            new Polynomial(List.of(3e9, -5e6)),
            new Polynomial(List.of(1400.0, 2.0)),
            0.09,
            P0);

    /** B = 0.09 · 2·10⁹ − 10⁵; 1000/(1 − 0.09 ln(229.9/180)) = 1022.51777 kg/m³ at 50 MPa. */
    @Test
    void theVolumeIsTaits() {
        TaitLiquid steady = new TaitLiquid(
                new Polynomial(List.of(1000.0)),
                new Polynomial(List.of(2e9)),
                new Polynomial(List.of(2000.0)),
                0.09,
                P0);
        assertThat(1 / steady.volume(50e6, 300)).isCloseTo(1022.51776587, withinPercentage(1e-8));
        assertThat(steady.compression(50e6, 300)).isCloseTo(1.02251776587, withinPercentage(1e-8));
        // nothing moves with temperature: the entropy is that of a constant heat capacity, and K is the bulk modulus
        assertThat(steady.entropy(50e6, 350)).isCloseTo(2000 * Math.log(350 / 298.15), withinPercentage(1e-9));
        assertThat(steady.soundSpeed(P0, 300)).isCloseTo(Math.sqrt(2e9 / 1000), withinPercentage(1e-9));
    }

    /** Identities of one generating function: dh = T ds + v dp, ∂s/∂p = −∂v/∂T, cp = ∂h/∂T, a² = ∂p/∂ρ along an isentrope. */
    @Test
    void allPropertiesBelongTogether() {
        double p = 40e6;
        double t = 330;
        double dp = 1e4;
        double dt = 0.01;
        double byPressure = (LIQUID.entropy(p + dp, t) - LIQUID.entropy(p - dp, t)) / (2 * dp);
        double expansion = (LIQUID.volume(p, t + dt) - LIQUID.volume(p, t - dt)) / (2 * dt);
        assertThat(byPressure).isCloseTo(-expansion, withinPercentage(1e-3));
        double rise = (LIQUID.enthalpy(p + dp, t) - LIQUID.enthalpy(p - dp, t)) / (2 * dp);
        assertThat(rise).isCloseTo(t * byPressure + LIQUID.volume(p, t), withinPercentage(1e-3));
        double cp = (LIQUID.enthalpy(p, t + dt) - LIQUID.enthalpy(p, t - dt)) / (2 * dt);
        assertThat(LIQUID.isobaricHeatCapacity(p, t)).isCloseTo(cp, withinPercentage(1e-3));
        assertThat(t * (LIQUID.entropy(p, t + dt) - LIQUID.entropy(p, t - dt)) / (2 * dt))
                .isCloseTo(cp, withinPercentage(1e-3));
        double warmer = -byPressure * t / cp; // dT/dp along the isentrope
        double up = 1 / LIQUID.volume(p + dp, t + warmer * dp);
        double down = 1 / LIQUID.volume(p - dp, t - warmer * dp);
        assertThat(LIQUID.soundSpeed(p, t)).isCloseTo(Math.sqrt(2 * dp / (up - down)), withinPercentage(1e-3));
        assertThat(LIQUID.isochoricHeatCapacity(p, t)).isLessThan(cp);
        assertThat(LIQUID.enthalpy(P0, 298.15)).isZero();
    }
}
