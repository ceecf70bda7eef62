package dev.penstock.chamber.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.OutsideValidity;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeparationCriterionTest {

    /**
     * Another author's fit to other nozzles, as a function of chamber over ambient pressure alone: Kalt and Badal, p_s/p_a =
     * 2/3 (p_a/p_c)^0.2 (J. Spacecraft 2(3), 1965, from memory). The Mach number is that at which the isentropic flow of air (γ 1.4)
     * has fallen to p_s. All of them state a scatter of about 15 %.
     */
    @ParameterizedTest
    @CsvSource({"SUMMERFIELD, 15", "SCHMUCKER, 15", "SCHMUCKER, 30", "SCHMUCKER, 60", "STARK, 15", "STARK, 30"})
    void nozzlesSeparateWhereAnotherAuthorSaysTheyDo(SeparationCriterion criterion, double chamberOverAmbient) {
        double expected = 2.0 / 3 * Math.pow(chamberOverAmbient, -0.2);
        double temperatureRatio = Math.pow(chamberOverAmbient / expected, 0.4 / 1.4);
        double mach = Math.sqrt((temperatureRatio - 1) * 2 / 0.4);
        assertThat(criterion.pressureRatio(mach)).isCloseTo(expected, within(0.15 * expected));
    }

    /** Faster flow follows the wall further down, except where the criterion is a constant. */
    @Test
    void fasterFlowSeparatesAtLowerPressure() {
        for (SeparationCriterion criterion : List.of(SeparationCriterion.SCHMUCKER, SeparationCriterion.STARK)) {
            for (double mach = 1.6; mach < 5; mach += 0.2) {
                assertThat(criterion.pressureRatio(mach + 0.2)).isLessThan(criterion.pressureRatio(mach));
            }
        }
    }

    /** Worked by hand from the relations of NASA TM-77396 and AIAA 2005-3940: holds their constants, not the relations. */
    @ParameterizedTest
    @CsvSource({
        "SCHMUCKER, 2.5, 0.4329",
        "SCHMUCKER, 3, 0.3745",
        "SCHMUCKER, 3.5, 0.3328",
        "SCHMUCKER, 4, 0.3012",
        "STARK, 3, 0.3491"
    })
    void constantsAreEnteredRightly(SeparationCriterion criterion, double mach, double ratio) {
        assertThat(criterion.pressureRatio(mach)).isCloseTo(ratio, within(5.1e-5));
    }

    @Test
    void separationPressureNeverExceedsTheAmbientPressure() {
        for (SeparationCriterion criterion : SeparationCriterion.values()) {
            assertThat(criterion.pressureRatio(1)).isLessThanOrEqualTo(1);
            assertThat(criterion.card().sources()).isNotEmpty();
        }
    }

    @Test
    void subsonicFlowIsRefused() {
        assertThatThrownBy(() -> SeparationCriterion.STARK.pressureRatio(0.5)).isInstanceOf(OutsideValidity.class);
    }
}
