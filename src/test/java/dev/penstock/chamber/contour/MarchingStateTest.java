package dev.penstock.chamber.contour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MarchingStateTest {

    private static final double GAMMA = 1.3;
    private static final int CELLS = 8;

    /** Identity: a uniform stream in a straight pipe goes on as it is, and carries the same mass and push through every surface. */
    @Test
    void aUniformStreamStaysUniform() {
        CharacteristicGas gas = new CharacteristicGas(GAMMA);
        double speed = gas.velocityRatio(2);
        MarchingState now = new MarchingState(gas, CELLS);
        double[] r = new double[CELLS + 1];
        double[] x0 = new double[CELLS + 1];
        double[] x1 = new double[CELLS + 1];
        for (int j = 0; j <= CELLS; j++) {
            r[j] = j / (double) CELLS;
            x1[j] = 0.02;
        }
        for (int j = 0; j < CELLS; j++) {
            now.set(j, speed, 0);
        }
        now.collect(x0, r);
        double mass = now.totalMass();
        double axial = now.totalAxial();
        // over π: momentum flux and pressure on the unit circle; the mass flux is momentum over speed
        assertThat(axial).isCloseTo(gas.momentum(2) + gas.pressure(2), within(1e-12));
        assertThat(mass).isCloseTo(gas.momentum(2) / speed, within(1e-12));
        now.sides(x0, r, x1, r);
        MarchingState next = new MarchingState(gas, CELLS);
        next.advanceFrom(now, now, x0, r, x1, r);
        assertThat(next.totalMass()).isCloseTo(mass, within(1e-12));
        assertThat(next.totalAxial()).isCloseTo(axial, within(1e-12));
        for (int j = 0; j < CELLS; j++) {
            assertThat(next.mach(j)).isCloseTo(2, within(1e-9));
            assertThat(next.pressure(j)).isCloseTo(gas.pressure(2), within(1e-9));
        }
    }

    /** Mach's angle is arcsin 1/2 = 30° in a stream at Mach 2 along the axis; the step allows for 0.3 on top of its slope. */
    @Test
    void theSteepestCharacteristicIsThatOfMachsAngle() {
        CharacteristicGas gas = new CharacteristicGas(GAMMA);
        MarchingState now = new MarchingState(gas, 1);
        now.set(0, gas.velocityRatio(2), 0);
        assertThat(now.steepest(new double[2], new double[] {0, 1}))
                .isCloseTo(Math.tan(Math.toRadians(30)) + 0.3, within(1e-9));
    }
}
