package dev.penstock.turbomachinery.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.errors.OutsideValidity;
import org.junit.jupiter.api.Test;

/** A mass in the middle of a shaft, and the smooth minimum by which limits of speed meet. */
class CriticalSpeedTest {

    /**
     * Worked by hand: 50 mm, 0.4 m, 20 kg. I = π 0.05⁴/64 = 3.06796e-7 m⁴, stiffness 48 · 200e9 · I/0.4³ = 4.60194e7 N/m, over 20 kg
     * 2.30097e6, the root of it 1516.9 rad/s.
     */
    @Test
    void stiffnessOverMassGivesTheFrequency() {
        assertThat(CriticalSpeed.first(0.05, 0.4, 20)).isCloseTo(1516.9, within(0.05));
    }

    /** Dimensions: with d² and L^-3/2 and m^-1/2. */
    @Test
    void itGoesWithTheDimensions() {
        double base = CriticalSpeed.first(0.05, 0.4, 20);
        assertThat(CriticalSpeed.first(0.10, 0.4, 20)).isCloseTo(4 * base, withinPercentage(1e-10));
        assertThat(CriticalSpeed.first(0.05, 1.6, 20)).isCloseTo(base / 8, withinPercentage(1e-10));
        assertThat(CriticalSpeed.first(0.05, 0.4, 80)).isCloseTo(base / 2, withinPercentage(1e-10));
        assertThatThrownBy(() -> CriticalSpeed.first(0, 0.4, 20)).isInstanceOf(OutsideValidity.class);
        assertThatThrownBy(() -> CriticalSpeed.first(0.05, -1, 20)).isInstanceOf(OutsideValidity.class);
        assertThatThrownBy(() -> CriticalSpeed.first(0.05, 0.4, Double.NaN)).isInstanceOf(OutsideValidity.class);
    }

    /** Limits: never above the smallest, below it by at most the 24th root of their number, and on it where the others are far. */
    @Test
    void theSmoothLeastIsJustBelowTheLeast() {
        assertThat(Smooth.least(7)).isEqualTo(7);
        assertThat(Smooth.least(7, 7)).isCloseTo(7 / Math.pow(2, 1.0 / 24), withinPercentage(1e-10));
        assertThat(Smooth.least(7, 7, 7)).isCloseTo(7 / Math.pow(3, 1.0 / 24), withinPercentage(1e-10));
        assertThat(Smooth.least(7, 21)).isCloseTo(7, withinPercentage(1e-9));
        assertThat(Smooth.least(7, Double.POSITIVE_INFINITY)).isEqualTo(7);
        for (double other = 5; other < 12; other += 0.25) {
            assertThat(Smooth.least(7, other))
                    .isLessThanOrEqualTo(Math.min(7, other))
                    .isGreaterThan(0.97 * Math.min(7, other))
                    .isEqualTo(Smooth.least(other, 7));
            assertThat(Smooth.greatest(7, other))
                    .isGreaterThanOrEqualTo(Math.max(7, other) * (1 - 1e-15))
                    .isLessThan(1.03 * Math.max(7, other));
        }
    }

    /** Identity: units do not matter, and it rises with each. */
    @Test
    void theSmoothLeastScalesAndRises() {
        assertThat(Smooth.least(70e3, 80e3)).isCloseTo(1e4 * Smooth.least(7, 8), withinPercentage(1e-10));
        double last = 0;
        for (double other = 5; other < 9; other += 0.1) {
            double least = Smooth.least(7, other);
            assertThat(least).isGreaterThan(last);
            last = least;
        }
    }
}
