package dev.penstock.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.NotConverged;
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
}
