package dev.penstock.reports.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SmoothFieldTest {

    private static final double[] XS = {0, 1, 2, 4};
    private static final double[] YS = {0, 2, 3};

    private static double[][] values(java.util.function.DoubleBinaryOperator f) {
        double[][] values = new double[YS.length][XS.length];
        for (int j = 0; j < YS.length; j++) {
            for (int i = 0; i < XS.length; i++) {
                values[j][i] = f.applyAsDouble(XS[i], YS[j]);
            }
        }
        return values;
    }

    /** Area by the shoelace formula. */
    private static double area(List<List<Curve.Point>> polygons) {
        double sum = 0;
        for (List<Curve.Point> p : polygons) {
            for (int i = 0; i < p.size(); i++) {
                Curve.Point a = p.get(i);
                Curve.Point b = p.get((i + 1) % p.size());
                sum += 0.5 * (a.x() * b.y() - b.x() * a.y());
            }
        }
        return sum;
    }

    @Test
    void aPlaneStaysAPlane() {
        SmoothField plane = SmoothField.through(XS, YS, values((x, y) -> x + 2 * y));
        assertThat(plane.range()).containsExactly(new double[] {0, 10}, within(1e-12));
        for (Curve.Point p : plane.at(5).get(0)) {
            assertThat(p.x() + 2 * p.y()).isCloseTo(5, within(1e-9));
        }
        // Above x + 2y = 5 in a box of 4 by 3: the box less the trapezium between x = 0 (y 2.5) and x = 4 (y 0.5).
        assertThat(area(plane.above(5))).isCloseTo(12 - 4 * (2.5 + 0.5) / 2, within(1e-9));
        assertThat(area(plane.above(5)) + area(plane.below(5))).isCloseTo(12, within(1e-9));
        assertThat(area(plane.above(Double.NEGATIVE_INFINITY))).isCloseTo(12, within(1e-9));
    }

    @Test
    void nothingIsDrawnBeyondTheValuesOfTheGrid() {
        SmoothField step = SmoothField.through(XS, YS, values((x, y) -> x < 1.5 ? 0 : 1));
        assertThat(step.range()).containsExactly(new double[] {0, 1}, within(1e-12));
    }

    @Test
    void aCellWithoutACornerIsEmpty() {
        SmoothField field = SmoothField.through(XS, YS, values((x, y) -> x == 0 && y == 0 ? Double.NaN : x));
        assertThat(field.hasGaps()).isTrue();
        assertThat(area(field.above(Double.NEGATIVE_INFINITY))).isCloseTo(12 - 2, within(1e-9));
    }
}
