package dev.penstock.claims.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Sums of squares: identities. */
class BandTest {

    private static final double NINETY = 1.6448536269514722;

    @Test
    void errorsAddByTheirSquares() {
        Band wide = new Band(-3, 0.5, 3).widened(4 / NINETY);
        assertThat(wide.p05()).isCloseTo(0.5 - Math.hypot(3.5, 4), within(1e-12));
        assertThat(wide.p95()).isCloseTo(0.5 + Math.hypot(2.5, 4), within(1e-12));
        assertThat(wide.p50()).isEqualTo(0.5);
    }

    @Test
    void whatIsPositiveStaysSo() {
        Band wide = new Band(50, 100, 200).widened(95);
        assertThat(wide.p05()).isPositive();
        assertThat(wide.p05() * wide.p95()).isCloseTo(1e4, within(1e-6));
        double whole = Math.hypot(Math.log(2), NINETY * 0.95);
        assertThat(wide.p95()).isCloseTo(100 * Math.exp(whole), within(1e-6));
    }

    @Test
    void withoutAnErrorNothingChanges() {
        assertThat(new Band(1, 2, 4).widened(0).p95()).isCloseTo(4, within(1e-12));
    }

    /** 1.860 is the 95th percentile of Student's distribution of eight degrees: a table value. */
    @Test
    void endsOfFewDrawsAreThoseOfAPredictionInterval() {
        double k = 1.860 * Math.sqrt(1 + 1.0 / 9) / NINETY;
        Band factors = new Band(50, 100, 200).ofFew(9);
        assertThat(factors.p05()).isCloseTo(100 * Math.pow(0.5, k), within(0.02));
        assertThat(factors.p95()).isCloseTo(100 * Math.pow(2, k), within(0.1));
        Band differences = new Band(-1, 1, 2).ofFew(9);
        assertThat(differences.p05()).isCloseTo(1 - 2 * k, within(1e-3));
        assertThat(differences.p95()).isCloseTo(1 + k, within(1e-3));
    }

    @Test
    void manyDrawsNeedNoWiderEnds() {
        assertThat(new Band(50, 100, 200).ofFew(1e6).p95()).isCloseTo(200, within(1e-3));
    }
}
