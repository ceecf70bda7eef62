package dev.penstock.claims.likelihood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.claims.file.Claim;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Against the normal distribution of two dimensions, worked by hand. */
class SharedErrorTest {

    private static Claim claim(String path, double value, double sigma) {
        return new Claim(
                path, OptionalDouble.of(value), OptionalDouble.empty(), OptionalDouble.empty(), sigma, "by hand");
    }

    @Test
    void oneAloneIsTheClaimItself() {
        Claim impulse = claim("engine.isp_vacuum", 330, 2);
        SharedError one = new SharedError(1);
        one.add(1, impulse, 335, 4);
        assertThat(one.logLikelihood()).isCloseTo(impulse.logLikelihood(335, 4), within(1e-12));
        assertThat(new SharedError(3).logLikelihood()).isZero();
    }

    /**
     * 300 s within 1 % and 200 s within 2 %, so that 1 % is shared: C = (1 + 9, 3 · 2; 6, 4 + 16) with σ of 1 and 2 s. Its determinant is
     * 164, its inverse (20, −6; −6, 10)/164; with distances of 3 and 4 s the form is (180 − 144 + 160)/164.
     */
    @Test
    void twoImpulsesShareWhatTheSurerIsDoubtedBy() {
        SharedError two = new SharedError(2);
        two.add(1, claim("engine.isp_vacuum", 297, 1), 300, 3);
        two.add(1, claim("engine.isp_sea_level", 196, 2), 200, 4);
        assertThat(two.logLikelihood()).isCloseTo(-0.5 * (196.0 / 164 + Math.log(164.0 / 4)), within(1e-12));
    }

    /** A flow goes the other way: what is missed together looks alike once its sign is turned. */
    @Test
    void aFlowGoesTheOtherWay() {
        SharedError against = new SharedError(2);
        against.add(1, claim("engine.isp_vacuum", 297, 1), 300, 3);
        against.add(-1, claim("engine.mass_flow", 204, 2), 200, 4);
        SharedError along = new SharedError(2);
        along.add(1, claim("engine.isp_vacuum", 297, 1), 300, 3);
        along.add(1, claim("engine.isp_sea_level", 196, 2), 200, 4);
        assertThat(against.logLikelihood()).isCloseTo(along.logLikelihood(), within(1e-12));
    }
}
