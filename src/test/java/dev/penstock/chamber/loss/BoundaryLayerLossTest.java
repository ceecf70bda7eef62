package dev.penstock.chamber.loss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BoundaryLayerLossTest {

    /** Published: on a flat plate Blasius has θ = 0.664 x/√Re; Thwaites' quadrature is 1 % above it, whatever the steps. */
    @Test
    void aLaminarLayerOnAPlateIsBlasius() {
        double theta = 0;
        for (int i = 0; i < 10; i++) {
            theta = BoundaryLayerLoss.laminar(theta, 4e-5, 1.5, 0.06);
        }
        double blasius = 0.664 * 0.6 / Math.sqrt(1.5 * 0.6 / 4e-5);
        assertThat(theta / blasius).isBetween(1.0, 1.02);
    }

    /** A limit: laminar to 320, turbulent from 1000, half way at their geometric mean, rising without a step. */
    @Test
    void aLayerTurnsTurbulentSmoothly() {
        assertThat(BoundaryLayerLoss.turbulentShare(50)).isZero();
        assertThat(BoundaryLayerLoss.turbulentShare(320)).isZero();
        assertThat(BoundaryLayerLoss.turbulentShare(Math.sqrt(320e3))).isCloseTo(0.5, within(1e-12));
        assertThat(BoundaryLayerLoss.turbulentShare(1000)).isCloseTo(1, within(1e-12));
        assertThat(BoundaryLayerLoss.turbulentShare(1e5)).isEqualTo(1);
        double before = 0;
        for (double reynolds = 100; reynolds < 3000; reynolds *= 1.01) {
            double now = BoundaryLayerLoss.turbulentShare(reynolds);
            assertThat(now).isBetween(before, before + 0.015);
            before = now;
        }
    }
}
