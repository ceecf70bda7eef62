package dev.penstock.chamber.contour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.Designs;
import dev.penstock.chamber.design.NozzleDesign;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Contours by the method of characteristics, checked by the finite-volume march and by mass conservation. */
class IdealContourTest {

    /** Identity: a uniform exit stream at the design Mach number carries the throat's flow, ε = C_d ε(M). */
    @Test
    void fullContourEndsAtTheAreaOfItsDesignMachNumber() {
        CharacteristicGas gas = new CharacteristicGas(1.2);
        List<ContourPoint> wall = IdealContour.full(3.5, 1.2, 1.5, 0.382);
        ContourPoint end = wall.get(wall.size() - 1);
        double discharge = 1 - 2.2 / (96 * 2.25); // Sauer and Hall, first order, from memory
        assertThat(end.radius() * end.radius() * gas.massFlux(3.5) / discharge).isCloseTo(1, within(4e-3));
    }

    /** Limit: uniform parallel flow loses nothing to divergence. Independent method: finite volumes. */
    @Test
    void fullContourDeliversTheOneDimensionalImpulse() {
        List<ContourPoint> wall = IdealContour.full(3.5, 1.2, 1.5, 0.382);
        ChamberContour contour = new ChamberContour(
                wall, 1, 0.94, 1.5, 1, wall.get(wall.size() - 1).x());
        TwoDimensionalFlow.Result flow = TwoDimensionalFlow.of(contour, 1.5, 1.2, 32);
        assertThat(flow.efficiency()).isCloseTo(1, within(1.5e-3));
        assertThat(flow.exitWallPressure()).isCloseTo(1, within(0.02));
    }

    /** Published for many nozzles (NASA SP-8120, from memory): truncated ideal and optimum parabola differ by about 0.1 %. */
    @Test
    void truncatedContourPerformsLikeTheParabola() {
        NozzleDesign nozzle = NozzleDesign.usual(
                OptionalDouble.of(40), OptionalDouble.empty(), NozzleDesign.Shape.IDEAL, 0.8, Math.toRadians(15));
        TruncatedIdeal ideal = TruncatedIdeal.of(nozzle, 40);
        assertThat(ideal.efficiency()).isCloseTo(BellTable.efficiency(40, 0.8, 1.2), within(2e-3));
        ChamberContour contour = ContourBuilder.draw(Designs.combustor(2.5, 1.2), nozzle, 40, 0.1)
                .contour();
        assertThat(contour.exitRadius()).isCloseTo(0.1 * Math.sqrt(40), within(1e-6));
        assertThat(contour.nozzleLength())
                .isCloseTo(0.8 * ContourBuilder.coneLength(40, 0.1, 0.0382, Math.toRadians(15)), within(2e-3));
    }
}
