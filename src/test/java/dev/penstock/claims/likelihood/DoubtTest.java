package dev.penstock.claims.likelihood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Numbers by hand; the sum of squares is an identity. */
class DoubtTest {

    @Test
    void whatInputsExplainIsNotCountedTwice() {
        // Misses of 5 % in all, of which inputs explain 3 % (9 s of 300 s): 4 % are left, 12 s of 300 s; 3 s by inputs
        // that are held.
        Doubt doubt = Doubt.of("engine.isp_vacuum_s", 300, 3, 9, 0.05);
        assertThat(doubt.of(300)).isCloseTo(Math.hypot(3, 12), within(1e-9));
        assertThat(doubt.of(150)).isCloseTo(0.5 * Math.hypot(3, 12), within(1e-9));
    }

    @Test
    void inputsThatExplainMoreLeaveNothing() {
        assertThat(Doubt.of("engine.mass_kg", 100, 20, 30, 0.22).of(100)).isCloseTo(20, within(1e-9));
    }

    @Test
    void whatInputsDoAtSeaLevelDoesNotVanishWithTheFigure() {
        Doubt doubt = Doubt.of("engine.isp_sea_level_s", 200, 3, 6, 0.05);
        assertThat(doubt.of(0)).isCloseTo(3, within(1e-9));
        assertThat(doubt.of(200)).isCloseTo(Math.hypot(3, 8), within(1e-9));
    }

    @Test
    void aDoubtIsNotNegative() {
        assertThatThrownBy(() -> new Doubt(-1, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
