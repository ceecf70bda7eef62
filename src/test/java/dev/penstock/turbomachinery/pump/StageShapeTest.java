package dev.penstock.turbomachinery.pump;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StageShapeTest {

    /** Published: head of whole axial hydrogen pumps is 1.5 to 2.0 u² [nasa-sp-125, section 6.2], with four to six stages. */
    @Test
    void axialStagesMakeTheHeadOfPublishedPumps() {
        assertThat(4 * StageShape.AXIAL_HEAD_COEFFICIENT).isLessThan(1.5);
        assertThat(5 * StageShape.AXIAL_HEAD_COEFFICIENT).isBetween(1.5, 2.0);
        // a wheel of 0.22 is 26 % larger for the same head
        assertThat(Math.sqrt(StageShape.AXIAL_HEAD_COEFFICIENT / 0.22)).isBetween(1.25, 1.27);
    }
}
