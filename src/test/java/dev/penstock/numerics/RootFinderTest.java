package dev.penstock.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.NotConverged;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class RootFinderTest {

    @Test
    void findsARootInFewEvaluations() {
        RootFinder.Root root = RootFinder.between("cubic", x -> x * x * x - 2, 0, 2, 1e-12);
        assertThat(root.value()).isEqualTo(Math.cbrt(2), within(1e-11));
        assertThat(root.evaluations()).isLessThanOrEqualTo(15);
    }

    @Test
    void aNonFiniteValueEndsTheSearchInsteadOfBecomingARoot() {
        assertThatThrownBy(
                        () -> RootFinder.between("gap", x -> x > 0.4 && x < 0.6 ? Double.NaN : x - 0.5, 0, 1.3, 1e-12))
                .isInstanceOf(NotConverged.class)
                .hasMessageContaining("the function is NaN at 0.");
    }

    @Test
    void namesBothEndsWhenThereIsNoSignChange() {
        assertThatThrownBy(() -> RootFinder.between("parabola", x -> x * x + 1, 0, 2, 1e-12))
                .isInstanceOf(NotConverged.class)
                .hasMessageContaining("parabola")
                .hasMessageContaining("no sign change between 0.0000000 (1.0000000) and 2.0000000 (5.0000000)");
    }

    @Test
    void smallRootsKeepTheirRelativeAccuracy() {
        RootFinder.Root root = RootFinder.between("small", x -> x - 3.0e-9, 0, 1, 1e-12);
        assertThat(root.value() / 3.0e-9).isEqualTo(1, within(1e-5));
    }

    /** Effort by count: a nearly straight function takes a handful of evaluations, its bounds none. */
    @Test
    void aRootNearAGuessTakesFewEvaluations() {
        RootFinder.Root root = RootFinder.near("power law", x -> 1.8 * x - 3 + 0.01 * x * x, -50, 50, 1, 2, 1e-10);
        assertThat(root.value()).isCloseTo(1.6515138991168, within(1e-10));
        assertThat(Math.abs(root.residual())).isLessThan(1e-9);
        assertThat(root.evaluations()).isLessThanOrEqualTo(6);
    }

    @Test
    void aFunctionWithoutARootEndsAtTheNearerBound() {
        assertThat(RootFinder.near("below", x -> x - 5, 0, 3, 1, 1, 1e-9).value())
                .isEqualTo(3);
        assertThat(RootFinder.near("above", x -> x + 5, 0, 3, 1, 1, 1e-9).value())
                .isEqualTo(0);
    }

    /** Property: whatever steps and plateaus a rising function has, the search ends at its change of sign. */
    @Test
    void jumpsAndPlateausDoNotDeceiveTheSearch() {
        for (double at = 0.05; at < 1; at += 0.05) {
            double jump = at;
            assertThat(RootFinder.near("jump", x -> x < jump ? -1e-3 : 100, 0, 1, 0.5, 1, 1e-9)
                            .value())
                    .isCloseTo(jump, within(2e-6));
            assertThat(RootFinder.near("cube", x -> Math.pow(x - jump, 3), 0, 1, 0.9, 1, 1e-6)
                            .value())
                    .isCloseTo(jump, within(1e-2));
        }
    }

    /** Effort by count: with the right slope a straight function is hit by the second evaluation. */
    @Test
    void theFirstStepTakesTheGuessedSlope() {
        RootFinder.Root root = RootFinder.near("straight", x -> 4 * (x - 2), -10, 10, 1, 4, 1e-9);
        assertThat(root.value()).isEqualTo(2);
        assertThat(root.evaluations()).isEqualTo(2);
        assertThat(RootFinder.near("bent", x -> x * x - 2, 0, 10, 1.4, 2.8, 1e-9)
                        .evaluations())
                .isEqualTo(4);
    }

    /** A root found near a guess is as near as asked for, from wherever the search begins and however wrong the slope is. */
    @Test
    void aRootNearAGuessIsAsNearAsAskedFor() {
        for (double guess = -8; guess <= 8; guess += 1) {
            for (double slope : new double[] {0.05, 1, 40}) {
                RootFinder.Root root = RootFinder.near("growth", x -> Math.expm1(x - 1), -10, 10, guess, slope, 1e-9);
                assertThat(root.value()).isCloseTo(1, within(1e-9));
                assertThat(root.evaluations()).isLessThanOrEqualTo(30);
            }
        }
    }

    /** A guess beyond a bound is taken as the bound; a root on a bound is one. */
    @Test
    void boundsHoldFromTheFirstEvaluationOn() {
        RootFinder.Root root = RootFinder.near(
                "held",
                x -> {
                    assertThat(x).isBetween(0.0, 3.0);
                    return x - 1;
                },
                0,
                3,
                7,
                1,
                1e-9);
        assertThat(root.value()).isCloseTo(1, within(1e-9));
        assertThat(RootFinder.near("low end", x -> x, 0, 3, 2, 1, 1e-9).value()).isZero();
        assertThat(RootFinder.near("high end", x -> x - 3, 0, 3, 1, 2, 1e-9).value())
                .isEqualTo(3);
    }

    /** Effort by count, summed over where the root lies: bends, plateaus, jumps and triple roots cost what they did (7 to 50 each). */
    @Test
    void oddFunctionsCostNoMoreThanTheyDid() {
        int bend = 0;
        int plateau = 0;
        int jump = 0;
        int cube = 0;
        for (double at = 0.05; at < 1; at += 0.05) {
            double r = at;
            bend += effort(x -> (x < r ? 1e-3 : 100) * (x - r), 1e-9);
            plateau += effort(x -> Math.max(-1, Math.min(1, (x - r) / 0.03)), 1e-9);
            jump += effort(x -> x < r ? -1e-3 : 100, 1e-9);
            cube += effort(x -> Math.pow(x - r, 3), 1e-6);
        }
        assertThat(bend).isBetween(19 * 3, 135);
        assertThat(plateau).isBetween(19 * 3, 160);
        assertThat(jump).isBetween(19 * 10, 1000);
        assertThat(cube).isBetween(19 * 10, 800);
    }

    private static int effort(DoubleUnaryOperator function, double tolerance) {
        return RootFinder.near("odd", function, 0, 1, 0.9, 1, tolerance).evaluations();
    }

    /** Around zero a relative tolerance asks for nothing; the search ends at a thousandth of it times the bounds. */
    @Test
    void aRootAtZeroIsFoundToTheSizeOfItsBounds() {
        RootFinder.Root root = RootFinder.between("odd power", x -> Math.pow(x, 5), -1e6, 2e6, 1e-6);
        assertThat(root.value()).isCloseTo(0, within(2e-3));
        assertThat(root.evaluations()).isLessThanOrEqualTo(80);
        assertThat(RootFinder.between("root", Math::cbrt, -1e6, 2e6, 1e-6).evaluations())
                .isLessThanOrEqualTo(27);
    }

    /** Effort and residual are those of the root handed back. */
    @Test
    void theResidualIsThatOfTheRoot() {
        int[] asked = new int[1];
        RootFinder.Root root = RootFinder.between(
                "counted",
                x -> {
                    asked[0]++;
                    return x * x - 2;
                },
                0,
                2,
                1e-6);
        assertThat(root.evaluations()).isEqualTo(asked[0]);
        assertThat(root.residual()).isEqualTo(root.value() * root.value() - 2);
    }

    /** A step that has jumped to a bound must not keep the bracket open there: the other end would creep for ever. */
    @Test
    void aBoundThatWasAskedIsNoReasonToCreep() {
        RootFinder.Root root = RootFinder.near("growth", x -> Math.expm1(x - 1), -10, 10, -8, 40, 1e-9);
        assertThat(root.value()).isCloseTo(1, within(1e-9));
    }

    /** Effort by count over 51 ways to begin, exactly: another rule for when to halve or to stop would show. */
    @Test
    void theWayToTheRootIsTheSameAsEver() {
        assertThat(total(x -> (x - 1) + 10 * (x - 1) * (x - 1) * (x - 1))).isEqualTo(845);
        assertThat(total(x -> x < 1 ? 1e-3 * (x - 1) : 1e3 * (x - 1) * (x - 1) * (x - 1)))
                .isEqualTo(264);
        assertThat(total(x -> Math.max(-1, x * x * x - 1))).isEqualTo(780);
    }

    private static int total(DoubleUnaryOperator function) {
        int sum = 0;
        for (int guess = -8; guess <= 8; guess++) {
            for (double slope : new double[] {0.05, 1, 40}) {
                RootFinder.Root root = RootFinder.near("way", function, -10, 10, guess, slope, 1e-9);
                assertThat(root.value()).isCloseTo(1, within(1e-6));
                sum += root.evaluations();
            }
        }
        return sum;
    }
}
