package dev.penstock.vehicle.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.provenance.Spread;
import org.junit.jupiter.api.Test;

/** Learning, regressions and the sharing of a stage among its flights. */
class CostTradeTest {

    /** Wright's statement [wright-1936, from memory]: with a slope of 0.8 each doubling takes a fifth off the average. */
    @Test
    void eachDoublingTakesTheSameShareOff() {
        LearningCurve curve = new LearningCurve(0.8);
        assertThat(curve.wrightAverage(2)).isCloseTo(0.8, within(1e-12));
        assertThat(curve.wrightAverage(8)).isCloseTo(0.512, within(1e-12));
        assertThat(curve.unit(64) / curve.unit(32)).isCloseTo(0.8, within(1e-12));
    }

    /** Identity: the average of two units by Crawford is (1 + p)/2, above Wright's p; without learning it is one. */
    @Test
    void averagesAddUpUnits() {
        assertThat(new LearningCurve(0.8).average(2)).isCloseTo(0.9, within(1e-12));
        assertThat(new LearningCurve(0.8).average(1)).isEqualTo(1);
        assertThat(new LearningCurve(1).average(37.5)).isCloseTo(1, within(1e-12));
        assertThat(new LearningCurve(0.85).average(100)).isGreaterThan(new LearningCurve(0.85).wrightAverage(100));
    }

    /** The regression at its own unit mass is its coefficient, and the band is more than a factor of two. */
    @Test
    void theBandIsAtLeastAFactorOfTwo() {
        assertThat(CostRelations.engine(1)).isEqualTo(5.16);
        assertThat(CostRelations.stage(1)).isEqualTo(1.30);
        LaunchCost cost = new LaunchCost(10, 10, 50, new Spread(1, 2, 6), 10_000);
        assertThat(cost.total().mode()).isEqualTo(52);
        assertThat(cost.total().low()).isLessThanOrEqualTo(52 / 2.0);
        assertThat(cost.total().high()).isGreaterThanOrEqualTo(52 * 2.0);
        assertThat(cost.perTonne()).isCloseTo(5.2, within(1e-12));
    }
}
