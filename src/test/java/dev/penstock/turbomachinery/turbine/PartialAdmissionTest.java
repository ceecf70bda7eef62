package dev.penstock.turbomachinery.turbine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.OutsideValidity;
import org.junit.jupiter.api.Test;

class PartialAdmissionTest {

    /** Limit: nothing is lost where the whole wheel is fed. */
    @Test
    void fullAdmissionLosesNothing() {
        assertThat(PartialAdmission.efficiency(0.6, 1, 0.3, 2)).isEqualTo(0.6);
    }

    /**
     * Worked by hand, half the wheel fed: (1 − ε)/ε = 1; ends of the arc 1/(3 · 70) = 0.0047619; pumping 2 · 0.4/π · 0.09 · 2 =
     * 0.0458366, over 0.6 0.0763944; 0.6/1.0811563 = 0.554961.
     */
    @Test
    void halfAWheelLosesByItsEndsAndByPumping() {
        assertThat(PartialAdmission.efficiency(0.6, 0.5, 0.3, 2)).isCloseTo(0.554961, within(1e-6));
    }

    /** Limit of small losses: the published difference, η(1 − ends) − pumping. */
    @Test
    void smallLossesAreThosePublished() {
        double idle = 0.01 / 0.99;
        double published = 0.7 * (1 - idle / (3 * 70)) - 2 * 0.4 / Math.PI * idle * 0.2 * 0.2 * 1.5;
        assertThat(PartialAdmission.efficiency(0.7, 0.99, 0.2, 1.5)).isCloseTo(published, within(2e-6));
    }

    /** Less of the wheel is never better, a faster blade loses more, and no arc is so small that the efficiency turns negative. */
    @Test
    void smallerArcsAndFasterBladesLoseMore() {
        double last = 0;
        for (double admission = 0.001; admission <= 1; admission += 0.037) {
            double efficiency = PartialAdmission.efficiency(0.6, admission, 0.4, 2);
            assertThat(efficiency).isGreaterThan(last).isLessThanOrEqualTo(0.6);
            assertThat(PartialAdmission.efficiency(0.6, admission, 0.5, 2)).isLessThanOrEqualTo(efficiency);
            last = efficiency;
        }
        assertThatThrownBy(() -> PartialAdmission.efficiency(0.6, 1.01, 0.3, 2)).isInstanceOf(OutsideValidity.class);
        assertThatThrownBy(() -> PartialAdmission.efficiency(0.6, 0, 0.3, 2)).isInstanceOf(OutsideValidity.class);
    }
}
