package dev.penstock.chamber.contour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The net of characteristics and the flow at the throat that it starts from, against flows that are known exactly. */
class CharacteristicsTest {

    private static final CharacteristicGas GAS = new CharacteristicGas(1.2);

    /** A source: the flow leaves a point in all directions, and its Mach number follows from the area of the sphere alone. */
    private static CharacteristicPoint ofSource(double distance, double angle) {
        double mach = GAS.machAtAreaRatio(distance * distance);
        return new CharacteristicPoint(
                distance * Math.cos(angle), distance * Math.sin(angle), angle, GAS.nu(mach), mach);
    }

    /** Error of the point where characteristics from two points of a source meet, in its Mach number. */
    private static double error(double apart) {
        CharacteristicPoint met = UnitProcess.interior(GAS, ofSource(2, 0.3 + apart / 2), ofSource(2, 0.3 - apart / 2));
        double distance = Math.hypot(met.x(), met.r());
        CharacteristicPoint exact = ofSource(distance, Math.atan2(met.r(), met.x()));
        assertThat(met.angle()).isCloseTo(exact.angle(), within(apart * apart));
        return Math.abs(met.mach() - exact.mach());
    }

    /** Identity with a source flow; halving the mesh divides the error of a step by eight, that of a method of second order. */
    @Test
    void aSourceIsCarriedOnExactlyToSecondOrder() {
        double coarse = error(0.02);
        double fine = error(0.01);
        assertThat(coarse).isLessThan(1e-4);
        assertThat(coarse / fine).isBetween(6.0, 10.0);
    }

    /** The axis, where the radius is zero: the same flow to an error of the second order. */
    @Test
    void aSourceIsCarriedOnToItsAxis() {
        double[] errors = new double[2];
        for (int i = 0; i < 2; i++) {
            CharacteristicPoint axis = UnitProcess.axis(GAS, ofSource(2, 0.01 / (i + 1)));
            assertThat(axis.r()).isZero();
            assertThat(axis.angle()).isZero();
            errors[i] = Math.abs(axis.mach() - GAS.machAtAreaRatio(axis.x() * axis.x()));
        }
        assertThat(errors[0]).isLessThan(3e-4);
        assertThat(errors[0] / errors[1]).isBetween(3.5, 9.0);
    }

    /** Conservation: through a cap of the sphere flows its share of the sphere's flow, whichever way the line is laid. */
    @Test
    void aLineAcrossASourcePassesItsShare() {
        double limit = 0.4;
        double sum = 0;
        int parts = 400;
        for (int i = 0; i < parts; i++) {
            double bent = 2 + 0.3 * Math.sin(Math.PI * i / parts);
            double next = 2 + 0.3 * Math.sin(Math.PI * (i + 1) / parts);
            sum += ofSource(bent, limit * i / parts).massFlowTo(ofSource(next, limit * (i + 1) / parts), GAS);
        }
        // ∫ sin φ dφ over a sphere of radius 1 with the sonic flux, over the area π of a throat of radius 1
        assertThat(sum).isCloseTo(2 * (1 - Math.cos(limit)), within(1e-5));
    }

    /** Identities of the throat flow: tangent to the wall at the throat plane, sonic on the axis behind it, free of rotation. */
    @Test
    void theFlowAtTheThroatFitsItsWall() {
        for (double curvature : new double[] {0.4, 1.5}) {
            TransonicFlow flow = new TransonicFlow(GAS, curvature);
            assertThat(flow.radialVelocity(0, 1)).isCloseTo(0, within(1e-14));
            double sonic = flow.axisPosition(1);
            assertThat(sonic).isPositive();
            assertThat(flow.axialVelocity(sonic, 0)).isCloseTo(1, within(1e-14));
            assertThat(flow.axialVelocity(flow.axisPosition(1.05), 0))
                    .isCloseTo(GAS.velocityRatio(1.05), within(1e-14));
            assertThat(flow.radialVelocity(0.1, 0)).isZero();
            double h = 1e-4;
            double across = (flow.axialVelocity(0.05, 0.6 + h) - flow.axialVelocity(0.05, 0.6 - h)) / (2 * h);
            double along = (flow.radialVelocity(0.05 + h, 0.6) - flow.radialVelocity(0.05 - h, 0.6)) / (2 * h);
            assertThat(across).isCloseTo(along, within(1e-9));
            // small disturbances of a sonic flow: the wall bends away by its curvature
            assertThat(flow.radialVelocity(h, 1) / h * curvature).isCloseTo(1, within(1e-9));
        }
    }

    /** Prandtl-Meyer angles of a perfect gas of 1.4 in any table of compressible flow: 26.380° at Mach 2, 49.757° at Mach 3. */
    @Test
    void prandtlMeyerAnglesAreThoseOfTheTables() {
        CharacteristicGas air = new CharacteristicGas(1.4);
        assertThat(Math.toDegrees(air.nu(2))).isCloseTo(26.380, within(1e-3));
        assertThat(Math.toDegrees(air.nu(3))).isCloseTo(49.757, within(1e-3));
        assertThat(air.mach(air.nu(2.7), 1.2)).isCloseTo(2.7, within(1e-12));
        assertThat(1 / air.massFlux(2)).isCloseTo(1.6875, within(1e-10)); // area ratio at Mach 2, by hand 27/16
    }
}
