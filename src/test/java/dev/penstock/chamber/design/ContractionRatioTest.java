package dev.penstock.chamber.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class ContractionRatioTest {

    @Test
    void followsThePublishedRelation() {
        // [humble-1995] from memory: 8.0 D_t^-0.6 + 1.25 with D_t in cm; by hand at 10 cm 8/3.98107 + 1.25
        assertThat(ContractionRatio.usual(0.10)).isCloseTo(3.2595, within(0.0001));
    }

    @Test
    void largeChambersAreNarrowAndSmallOnesAreBounded() {
        // the handbook's range for large engines is 1.3 to 2 (from memory)
        assertThat(ContractionRatio.usual(0.9)).isBetween(1.5, 2.0);
        assertThat(ContractionRatio.usual(0.001)).isCloseTo(10, withinPercentage(1e-9));
    }
}
