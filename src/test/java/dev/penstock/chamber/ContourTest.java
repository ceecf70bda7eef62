package dev.penstock.chamber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.contour.ChamberContour;
import dev.penstock.chamber.contour.ContourBuilder;
import dev.penstock.chamber.contour.ContourPoint;
import dev.penstock.chamber.contour.RaoAngles;
import dev.penstock.chamber.design.CombustorDesign;
import dev.penstock.chamber.design.NozzleDesign;
import dev.penstock.chamber.loss.DivergenceLoss;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Walls of thrust chambers: lengths, areas, volumes, angles. */
class ContourTest {

    /** Sample A-1 of NASA SP-125: area ratio 14, 80 % bell, 27.4° and 9.8° (from memory), read from the same chart. */
    @Test
    void bellAnglesAgreeWithThePublishedSample() {
        RaoAngles.Angles angles = RaoAngles.of(14, 0.8);
        assertThat(Math.toDegrees(angles.inflection())).isCloseTo(27.4, within(1.0));
        assertThat(Math.toDegrees(angles.exit())).isCloseTo(9.8, within(1.0));
        assertThat(angles.warning()).isEmpty();
    }

    @Test
    void bellAnglesOutsideTheChartCarryAWarning() {
        assertThat(RaoAngles.of(150, 0.8).warning()).isPresent();
        assertThat(RaoAngles.of(40, 1.0).warning()).isPresent();
    }

    /** Factor of a cone, NASA SP-125 equation 4-8: 15° gives 0.98296. */
    @Test
    void fifteenDegreeConeHasItsDivergenceFactor() {
        assertThat(DivergenceLoss.factor(Math.toRadians(15))).isCloseTo(0.98296, within(5e-6));
        assertThat(DivergenceLoss.factor(0)).isEqualTo(1);
    }

    /** NASA SP-125 equation 4-7, worked by hand: r_t 1, ε 16, R 0.382, 15°: (3 + 0.382·0.0352762)/0.267949 = 11.2464. */
    @Test
    void coneHasTheLengthOfTheFormula() {
        assertThat(ContourBuilder.coneLength(16, 1, 0.382, Math.toRadians(15))).isCloseTo(11.2464, within(1e-4));
    }

    @Property(tries = 60)
    void wallMeetsItsAreasLengthAndVolume(
            @ForAll @DoubleRange(min = 1.3, max = 300) double areaRatio,
            @ForAll @DoubleRange(min = 0.6, max = 1.0) double fraction,
            @ForAll @DoubleRange(min = 1.2, max = 6) double contraction,
            @ForAll @DoubleRange(min = 0.01, max = 0.12) double throat) {
        CombustorDesign combustor = Designs.combustor(contraction, 1.5);
        ContourBuilder.Drawing drawing =
                ContourBuilder.draw(combustor, Designs.bell(areaRatio, fraction), areaRatio, throat);
        ChamberContour c = drawing.contour();
        assertThat(c.exitRadius()).isCloseTo(throat * Math.sqrt(areaRatio), within(1e-9 * throat));
        assertThat(c.radiusAt(0)).isCloseTo(throat, within(1e-12));
        assertThat(c.radiusAt(-c.chamberLength())).isCloseTo(throat * Math.sqrt(contraction), within(1e-9 * throat));
        double length = c.chamberVolume() / (Math.PI * throat * throat);
        assertThat(length).isCloseTo(1.5, within(1e-9));
        double before = throat;
        for (ContourPoint point : c.points()) {
            if (point.x() > 0) {
                assertThat(point.radius()).isGreaterThanOrEqualTo(before);
                before = point.radius();
            }
        }
        double middle = (1 + areaRatio) / 2;
        assertThat(c.areaRatioAt(c.divergentStation(middle))).isCloseTo(middle, within(1e-6 * middle));
    }

    @ParameterizedTest
    @CsvSource({"CONE, 10, 1.0", "BELL, 10, 0.8", "BELL, 60, 0.9"})
    void slopesRunSmoothlyThroughTheJoints(NozzleDesign.Shape shape, double areaRatio, double fraction) {
        NozzleDesign nozzle = shape == NozzleDesign.Shape.CONE
                ? Designs.cone(areaRatio, Math.toRadians(15))
                : Designs.bell(areaRatio, fraction);
        ChamberContour c = ContourBuilder.draw(Designs.combustor(3, 1), nozzle, areaRatio, 0.1)
                .contour();
        double last = 0;
        for (int i = 1; i < c.points().size(); i++) {
            ContourPoint a = c.points().get(i - 1);
            ContourPoint b = c.points().get(i);
            double angle = Math.atan2(b.radius() - a.radius(), b.x() - a.x());
            assertThat(Math.abs(angle - last)).as("turn at x = %s", b.x()).isLessThan(Math.toRadians(2.5));
            last = angle;
        }
    }

    @Test
    void tooShortACombustorIsDrawnWithoutCylinderAndSaysSo() {
        ContourBuilder.Drawing drawing = ContourBuilder.draw(Designs.combustor(4, 0.3), Designs.bell(20), 20, 0.3);
        assertThat(drawing.warnings()).anyMatch(w -> w.message().contains("no cylinder is drawn"));
    }

    @Test
    void contourIsWrittenAsPoints() {
        ChamberContour c = ContourBuilder.draw(Designs.combustor(3, 1), Designs.bell(20), 20, 0.1)
                .contour();
        String[] lines = c.toCsv().split("\n");
        assertThat(lines[0]).isEqualTo("x_m,radius_m,area_ratio");
        assertThat(lines).hasSize(c.points().size() + 1);
        assertThat(lines[lines.length - 1]).endsWith(",20.0000");
    }
}
