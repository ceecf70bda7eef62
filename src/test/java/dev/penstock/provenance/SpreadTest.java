package dev.penstock.provenance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.TriangularDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Held against the triangular distribution of Apache Commons Math. */
class SpreadTest {

    @ParameterizedTest
    @CsvSource({"1, 2, 5", "-3, -3, 4", "0, 7, 7"})
    void isATriangularDistribution(double low, double mode, double high) {
        Spread spread = new Spread(low, mode, high);
        TriangularDistribution reference = new TriangularDistribution(low, mode, high);
        for (double p = 0; p <= 1; p += 0.0625) {
            double value = spread.quantile(p);
            assertThat(value).isCloseTo(reference.inverseCumulativeProbability(p), within(1e-12));
            assertThat(spread.probability(value)).isCloseTo(p, within(1e-12));
        }
        assertThat(spread.probability(low - 1)).isZero();
        assertThat(spread.probability(high + 1)).isEqualTo(1);
        assertThat(spread.mean()).isCloseTo(reference.getNumericalMean(), within(1e-12));
        assertThat(Math.pow(spread.standardDeviation(), 2)).isCloseTo(reference.getNumericalVariance(), within(1e-12));
    }
}
