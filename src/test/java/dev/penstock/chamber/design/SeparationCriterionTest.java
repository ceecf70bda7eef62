package dev.penstock.chamber.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.OutsideValidity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeparationCriterionTest {

    /** Formula values, to the digits given: Schmucker (NASA TM-77396), Stark (AIAA 2005-3940), Summerfield 0.4 (1954). */
    @ParameterizedTest
    @CsvSource({
        "SCHMUCKER, 2.5, 0.4329",
        "SCHMUCKER, 3, 0.3745",
        "SCHMUCKER, 3.5, 0.3328",
        "SCHMUCKER, 4, 0.3012",
        "STARK, 3, 0.3491",
        "SUMMERFIELD, 3, 0.4"
    })
    void separationPressureHasItsPublishedValue(SeparationCriterion criterion, double mach, double ratio) {
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
