package dev.penstock.claims.prior;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.input.Belief;
import org.junit.jupiter.api.Test;

/** The 95th percentile of a normal distribution lies 1.6449 deviations from its mean: a table value. */
class PriorTest {

    private static final double NINETY = 1.6449;

    @Test
    void nineOfTenLieBetweenTheEndsOfANormalLogarithm() {
        Prior prior = Prior.of(Belief.mostly(2, 18, "somewhere"), 1);
        assertThat(prior.value(0, Double.NaN)).isCloseTo(6, within(1e-12));
        assertThat(prior.value(-NINETY, Double.NaN)).isCloseTo(2, within(1e-3));
        assertThat(prior.value(NINETY, Double.NaN)).isCloseTo(18, within(1e-3));
        assertThat(prior.source()).isEqualTo("somewhere");
    }

    @Test
    void nothingLiesBeyondTheEndsOfFactors() {
        Prior prior = Prior.of(Belief.factors(2, 18), 1);
        assertThat(prior.value(0, Double.NaN)).isCloseTo(6, within(1e-12));
        assertThat(prior.value(9, Double.NaN)).isCloseTo(18, within(1e-6));
    }

    /** Otherwise no polynomial of the coordinate follows the figures, and samples of the posterior stay too near each other. */
    @Test
    void coordinatesAreStraightInValuesOrTheirLogarithms() {
        for (double normal : new double[] {-4, -1, 0.5, 3}) {
            assertStraight(Prior.of(Belief.mostly(2, 18, "somewhere"), 1), normal, true);
            assertStraight(Prior.of(Belief.factors(2, 18), 1), normal, true);
            assertStraight(Prior.of(Belief.differences(2, 18), 1), normal, false);
        }
    }

    private static void assertStraight(Prior prior, double normal, boolean logarithm) {
        double low = logarithm ? Math.log(2) : 2;
        double high = logarithm ? Math.log(18) : 18;
        double value = prior.value(normal, Double.NaN);
        assertThat(logarithm ? Math.log(value) : value)
                .isCloseTo(0.5 * (low + high) + 0.5 * prior.place(normal) * (high - low), within(1e-9));
    }

    @Test
    void partsOfAStoichiometricRatioGoWithIt() {
        Prior prior = Prior.of(Belief.differences(0.5, 1).ofStoichiometric(), 4);
        assertThat(prior.value(0, Double.NaN)).isCloseTo(3, within(1e-12));
    }
}
