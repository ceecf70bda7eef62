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
}
