package dev.penstock.cycles.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.origin.PartKey;
import org.junit.jupiter.api.Test;

/** Dumped turbine gas against the ambient pressure. */
class ExhaustJetTest {

    private static final double GAMMA = 1.2;

    /** Area ratio 10: Mach 3.2783, p_e/p_0 0.0125373, vacuum coefficient 1.74231 at γ 1.2 (handbook of check numbers, computed). */
    private static ExhaustJet jet(double totalPressure) {
        double throat = 0.01;
        return new ExhaustJet(
                PartKey.EXHAUST, 5, 1.74231 * totalPressure * throat, 10 * throat, throat, totalPressure, GAMMA, 0);
    }

    @Test
    void aFullNozzleLosesPressureTimesExitArea() {
        ExhaustJet jet = jet(5e6);
        assertThat(jet.separatedAt(101_325)).isFalse();
        assertThat(jet.thrustAt(101_325)).isCloseTo(jet.vacuumThrust() - 101_325 * 0.1, within(1e-9));
        assertThat(jet.thrustAt(0)).isEqualTo(jet.vacuumThrust());
    }

    /** Published: Schmucker's (1.88 M − 1)^−0.64 [schmucker-1973]; the nozzle is as good as one cut where the flow leaves the wall. */
    @Test
    void anOverexpandedNozzleIsCutOffWhereTheFlowLeavesTheWall() {
        ExhaustJet jet = jet(1e6);
        assertThat(jet.separatedAt(101_325)).isTrue();
        assertThat(jet.thrustAt(101_325)).isGreaterThan(jet.vacuumThrust() - 101_325 * 0.1 + 1000);
        // wall pressure at M 2.5, γ 1.2, is 0.0459 p_0; Schmucker has it at 0.4329 p_a
        double mach = 2.5;
        double wall = 1e6 * Math.pow(1 + 0.1 * mach * mach, -6);
        double ambient = wall / 0.4329;
        double area = Math.pow(2 / 2.2 * (1 + 0.1 * mach * mach), 5.5) / mach;
        double cut = wall / 1e6 * area * (1 + GAMMA * mach * mach) - ambient / 1e6 * area;
        assertThat(jet.thrustAt(ambient) / (1e6 * 0.01)).isCloseTo(cut, within(0.002));
    }

    @Test
    void thrustFallsWithoutAStep() {
        ExhaustJet jet = jet(1e6);
        double last = jet.thrustAt(0);
        for (double p = 500; p < 4e5; p += 500) {
            double now = jet.thrustAt(p);
            assertThat(now).isLessThanOrEqualTo(last);
            assertThat(last - now).isLessThan(500 * 0.1 * 1.01 + 1);
            last = now;
        }
    }
}
