package dev.penstock.turbomachinery.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.errors.OutsideValidity;
import org.junit.jupiter.api.Test;

class SealPurgeTest {

    /**
     * Worked by hand for 60 mm: gap 50 µm, two gaps of area 2 π 0.06 · 50e-6 = 1.88496e-5 m²; helium R = 2077.3 J/(kg·K), at 290 K
     * √(γ/(RT)) = 1.66333e-3 s/m, choking factor (3/4)² = 0.5625; ṁ = 0.8 · 1.88496e-5 · 0.6e6 · 1.66333e-3 · 0.5625 = 8.4656e-3 kg/s.
     */
    @Test
    void heliumChokesInBothGaps() {
        assertThat(SealPurge.flow(0.06)).isCloseTo(8.4656e-3, within(2e-6));
    }

    /** Limits: a small seal leaks by its fixed gap, with d; a large one by the part that grows, with d². */
    @Test
    void theGapGrowsWithTheShaft() {
        assertThat(SealPurge.flow(2e-4) / SealPurge.flow(1e-4)).isCloseTo(2, withinPercentage(0.5));
        assertThat(SealPurge.flow(200) / SealPurge.flow(100)).isCloseTo(4, withinPercentage(0.5));
        assertThatThrownBy(() -> SealPurge.flow(0)).isInstanceOf(OutsideValidity.class);
    }
}
