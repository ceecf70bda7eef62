package dev.penstock.fluids.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

class PatchBasisTest {

    private static double[] sampled(DoubleBinaryOperator f) {
        double[] values = new double[PatchBasis.SIZE];
        for (int i = 0; i < PatchBasis.ORDER; i++) {
            for (int j = 0; j < PatchBasis.ORDER; j++) {
                values[i * PatchBasis.ORDER + j] = f.applyAsDouble(PatchBasis.NODES[i], PatchBasis.NODES[j]);
            }
        }
        return values;
    }

    /** Identity: a polynomial of the fifth degree in both is its own interpolant, to its coefficients. */
    @Test
    void aPolynomialComesBack() {
        DoubleBinaryOperator f = (x, y) -> 3 - 2 * x + y * y * x - 0.5 * Math.pow(x, 5) * Math.pow(y, 4);
        double[] c = PatchBasis.powers(sampled(f));
        assertThat(c[0]).isCloseTo(3, within(1e-12));
        assertThat(c[PatchBasis.ORDER]).isCloseTo(-2, within(1e-12));
        assertThat(c[PatchBasis.ORDER + 2]).isCloseTo(1, within(1e-12));
        assertThat(c[5 * PatchBasis.ORDER + 4]).isCloseTo(-0.5, within(1e-12));
        for (double x = -1; x <= 1; x += 0.37) {
            for (double y = -1; y <= 1; y += 0.41) {
                assertThat(PatchBasis.value(c, x, y)).isCloseTo(f.applyAsDouble(x, y), within(1e-12));
            }
        }
    }

    /** T5(x) = 16x⁵ − 20x³ + 5x counts whole in the first variable, T4(y) = 8y⁴ − 8y² + 1 by a fifth in the second. */
    @Test
    void theTailIsTheHighestTerms() {
        double[] tail = new double[2];
        PatchBasis.tail(sampled((x, y) -> 16 * Math.pow(x, 5) - 20 * x * x * x + 5 * x), tail);
        assertThat(tail[0]).isCloseTo(1, within(1e-12));
        assertThat(tail[1]).isCloseTo(0, within(1e-12));
        PatchBasis.tail(sampled((x, y) -> 3 * (8 * Math.pow(y, 4) - 8 * y * y + 1)), tail);
        assertThat(tail[0]).isCloseTo(0, within(1e-12));
        assertThat(tail[1]).isCloseTo(0.6, within(1e-12));
    }

    /** A twisted plane is its own level; a peak counts three times the mean at most; the level stays above zero. */
    @Test
    void aLevelIsAPlaneAboveZero() {
        double[] plane = PatchBasis.level(sampled((x, y) -> 2 + 0.3 * x - 0.1 * y + 0.05 * x * y));
        assertThat(plane[0]).isCloseTo(2, within(1e-12));
        assertThat(plane[PatchBasis.ORDER]).isCloseTo(0.3, within(1e-12));
        assertThat(plane[1]).isCloseTo(-0.1, within(1e-12));
        assertThat(plane[PatchBasis.ORDER + 1]).isCloseTo(0.05, within(1e-12));
        double[] values = sampled((x, y) -> 1);
        values[14] = 1e6;
        values[20] = -5;
        assertThat(PatchBasis.level(values)[0]).isBetween(1.0, 1.7);
        double[] steep = PatchBasis.level(sampled((x, y) -> x > 0 ? 9 : 1));
        assertThat(PatchBasis.value(steep, -1, -1)).isPositive();
        assertThat(PatchBasis.value(steep, -1, 1)).isPositive();
    }
}
