package dev.penstock.fluids.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Derivatives and integrals of a polynomial, worked by hand: f = 2 + 3T − 4T² + 5T³. */
class PolynomialTest {

    private static final Polynomial F = new Polynomial(List.of(2.0, 3.0, -4.0, 5.0));

    @Test
    void valueAndDerivatives() {
        assertThat(F.value(2)).isEqualTo(2 + 6 - 16 + 40);
        assertThat(F.slope(2)).isEqualTo(3 - 16 + 60);
        assertThat(F.curvature(2)).isEqualTo(-8 + 60);
        assertThat(F.value(0)).isEqualTo(2);
        assertThat(F.slope(0)).isEqualTo(3);
        assertThat(F.curvature(0)).isEqualTo(-8);
        assertThat(new Polynomial(List.of(7.0)).slope(5)).isZero();
    }

    /** ∫₁³ f dT = 2·2 + 3·4 − 4·26/3 + 5·20; ∫₁³ f/T dT = 2 ln 3 + 3·2 − 4·4 + 5·26/3. */
    @Test
    void integrals() {
        assertThat(F.integral(1, 3)).isCloseTo(4 + 12 - 104.0 / 3 + 100, within(1e-12));
        assertThat(F.integralOverTemperature(1, 3)).isCloseTo(2 * Math.log(3) + 6 - 16 + 130.0 / 3, within(1e-12));
        assertThat(F.integral(3, 1)).isEqualTo(-F.integral(1, 3));
        assertThat(F.integral(1, 2) + F.integral(2, 3)).isCloseTo(F.integral(1, 3), within(1e-12));
    }
}
