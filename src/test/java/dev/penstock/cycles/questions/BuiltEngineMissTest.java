package dev.penstock.cycles.questions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

class BuiltEngineMissTest {

    private static final DescriptiveStatistics NARROW = samples(IntStream.rangeClosed(-10, 10)
            .mapToDouble(i -> 100 * Math.exp(1e-3 * i))
            .toArray());

    private static DescriptiveStatistics samples(double... values) {
        return new DescriptiveStatistics(values);
    }

    /** By hand: Student's 95th percentile with 16 degrees of freedom is 1.7459, the normal one 1.6449; variance of −10 to 10 is 36.667. */
    @Test
    void whatSamplesDoNotExplainIsTheRest() {
        BuiltEngineMiss miss = new BuiltEngineMiss("mass", 0.184, 16);
        double whole = 0.184 * 1.745884 / 1.644854;
        assertThat(miss.beyond(NARROW)).isCloseTo(Math.sqrt(whole * whole - 36.6667e-6), within(1e-6));
    }

    @Test
    void samplesThatExplainAllStayAsTheyAre() {
        DescriptiveStatistics wide = samples(50, 100, 200);
        BuiltEngineMiss miss = new BuiltEngineMiss("mass", 0.1, 16);
        assertThat(miss.beyond(wide)).isZero();
        assertThat(BuiltEngineMiss.percentile(wide, 0, 5)).isEqualTo(wide.getPercentile(5));
        assertThat(miss.beyond(samples(-1, 0, 1))).isZero();
    }

    /** Limit: samples all alike leave the miss alone, ln(q/q50) = ±1.6449 m; the median stays. */
    @Test
    void aMissAloneIsLogNormal() {
        DescriptiveStatistics alike = samples(200, 200, 200);
        assertThat(BuiltEngineMiss.percentile(alike, 0.1, 95)).isCloseTo(200 * Math.exp(0.1644854), within(1e-4));
        assertThat(BuiltEngineMiss.percentile(alike, 0.1, 5)).isCloseTo(200 * Math.exp(-0.1644854), within(1e-4));
        assertThat(BuiltEngineMiss.percentile(alike, 0.1, 50)).isEqualTo(200);
    }

    /** By hand: 3-4-5. */
    @Test
    void spreadsAddInQuadrature() {
        DescriptiveStatistics three =
                samples(DoubleStream.of(-3, -3, 0, 3, 3).map(Math::exp).toArray());
        assertThat(Math.log(BuiltEngineMiss.percentile(three, 4 / 1.644854, 95)))
                .isCloseTo(5, within(1e-5));
    }

    /** Identity: a family has its own miss of impulse, and one of mass with all others; an input has none. */
    @Test
    void figuresAreKnownByTheirPaths() {
        assertThat(BuiltEngineMiss.of("engine.isp_vacuum_s", true))
                .isNotEqualTo(BuiltEngineMiss.of("engine.isp_vacuum_s", false));
        assertThat(BuiltEngineMiss.of("engine.mass_kg", true))
                .isPresent()
                .isEqualTo(BuiltEngineMiss.of("engine.thrust_to_weight", false));
        assertThat(BuiltEngineMiss.of("pumps.fuel-pump.speed_rad_s", true)).isPresent();
        assertThat(BuiltEngineMiss.of("figures.pump_power_W", true)).isPresent();
        assertThat(BuiltEngineMiss.of("engine.chamber_pressure_Pa", true)).isEmpty();
    }
}
