package dev.penstock.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** A corner along a wall, worked by hand. */
class LimitedDescentTest {

    /** What is small far from the origin, and how far a place is beyond a circle. */
    private static double[] circle(double[] x) {
        return new double[] {-x[0] - x[1], x[0] * x[0] + x[1] * x[1] - 0.5};
    }

    private static double sum(double[] values) {
        double beyond = Math.max(0, values[1]);
        return values[0] + 100 * beyond * beyond;
    }

    private static LimitedDescent.Values<double[]> values(Function<double[], double[]> of) {
        return new LimitedDescent.Values<>() {
            @Override
            public double[] at(double[] x) {
                return x.clone();
            }

            @Override
            public double[] of(double[] there) {
                return of.apply(there);
            }

            @Override
            public double[] anew(double[] best) {
                return best;
            }
        };
    }

    /** On x = y = t: -2 + 800 t c = 0 with c = 2 t² - 0.5, so that t = 0.502481. */
    @Test
    void followsAWallThatItsStartDoesNotSee() {
        double[] start = {0.2, 0.65};
        double[] end = new LimitedDescent(LimitedDescentTest::sum, 40, 1e-12)
                .from(values(LimitedDescentTest::circle), start, start, 0.01);
        assertThat(end[0]).isCloseTo(0.502481, within(1e-5));
        assertThat(end[1]).isCloseTo(0.502481, within(1e-5));
    }

    /** Without the wall both variables end at their bounds. */
    @Test
    void keepsToTheBounds() {
        double[] start = {0.5, 0.995};
        double[] end =
                new LimitedDescent(v -> v[0], 40, 1e-12).from(values(LimitedDescentTest::circle), start, start, 0.05);
        assertThat(end).containsExactly(new double[] {1, 1}, within(1e-9));
    }

    @Test
    void endsWhereItBeganIfNothingAroundHasValues() {
        double[] start = {0.5, 0.5};
        double[] end = new LimitedDescent(v -> v[0], 5, 1e-12)
                .from(values(x -> x == start ? circle(x) : new double[0]), start, start, 0.05);
        assertThat(end).isSameAs(start);
    }
}
