package dev.penstock.turbomachinery.pump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.validation.Evidence;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class GulichEfficiencyTest {

    @Test
    void agreesWithAnIndependentCalculation() {
        // [gulich-2014] table 3.9, from memory; values computed independently
        assertThat(GulichEfficiency.of(25, 0.1, 2)).isCloseTo(0.8211, within(2e-4));
        assertThat(GulichEfficiency.of(37.93, 0.7836, 1)).isCloseTo(0.897, within(1e-3));
        assertThat(GulichEfficiency.of(36.22, 0.08764, 1)).isCloseTo(0.858, within(1e-3));
    }

    @Test
    void rocketFactorPutsTheSamplePumpInsideItsSpread() {
        // published: the A-1 oxidizer pump of [nasa-sp-125] has 0.707 at Q 0.7836 m³/s and nq 37.93
        double industrial = GulichEfficiency.of(37.93, 0.7836, 1);
        assertThat(0.707 / industrial).isBetween(0.76, 0.94);
    }

    /** Tolerance: the reading of the chart (1 point) and that each row stands for a band of flows a factor of three wide. */
    @ParameterizedTest
    @CsvFileSource(resources = "/turbomachinery/industrial-efficiency.csv", numLinesToSkip = 1)
    void agreesWithTheChartOfIndustrialPumps(
            double gpm, double specificSpeed, double percent, String kind, String source) {
        assertThat(Evidence.of(kind, source)).isEqualTo(Evidence.PUBLISHED);
        double nq = SpecificSpeed.metric(specificSpeed / SpecificSpeed.inUsUnits(1));
        double flow = gpm * 3.785411784e-3 / 60;
        assertThat(100 * GulichEfficiency.of(nq, flow, 1)).isCloseTo(percent, within(6.0));
    }

    @Property(tries = 300)
    void staysBetweenZeroAndOne(
            @ForAll @DoubleRange(min = 0.5, max = 400) double nq,
            @ForAll @DoubleRange(min = -6, max = 1.5) double logFlow,
            @ForAll @IntRange(min = 1, max = 3) int stages) {
        assertThat(GulichEfficiency.of(nq, Math.pow(10, logFlow), stages))
                .isGreaterThan(0)
                .isLessThan(1);
    }

    @Property(tries = 300)
    void growsWithSize(
            @ForAll @DoubleRange(min = 8, max = 100) double nq,
            @ForAll @DoubleRange(min = -5, max = 0.7) double logFlow) {
        double flow = Math.pow(10, logFlow);
        assertThat(GulichEfficiency.of(nq, 1.2 * flow, 1)).isGreaterThan(GulichEfficiency.of(nq, flow, 1) - 2e-3);
        assertThat(GulichEfficiency.of(nq, 1.2 * flow, 2)).isGreaterThan(GulichEfficiency.of(nq, flow, 2));
    }

    @Property(tries = 300)
    void hasNoJumps(
            @ForAll @DoubleRange(min = 1, max = 200) double nq,
            @ForAll @DoubleRange(min = -6, max = 1) double logFlow) {
        double flow = Math.pow(10, logFlow);
        double here = GulichEfficiency.of(nq, flow, 1);
        assertThat(GulichEfficiency.of(nq * (1 + 1e-7), flow * (1 + 1e-7), 1)).isCloseTo(here, within(1e-6));
    }
}
