package dev.penstock.vehicle.ascent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.numerics.OdeIntegrator;
import dev.penstock.vehicle.SampleEngines;
import java.util.List;
import org.junit.jupiter.api.Test;

class AscentDynamicsTest {

    private static final Atmosphere NO_AIR = altitude -> new Atmosphere.State(altitude, 0, 200, 0, 300);
    private static final double[] TIGHT = {1e-6, 1e-6, 1e-9, 1e-9, 1e-6, 1e-9, 1e-9, 1e-9, 1e-9, 1e-9, 1e-3, 1};

    private static AscentMission mission(Planet planet) {
        return new AscentMission(planet, 0, 200e3, 200e3, 1e9, 1e9, 1e9, 1);
    }

    private static OdeIntegrator integrator() {
        return new OdeIntegrator("test flight", TIGHT, 1e-13, 100);
    }

    @Test
    void verticalBurnWithoutAirFollowsTheClosedSolution() {
        // [curtis-2014] §11.4, v = c ln n − g t and h = c t (1 − ln n/(n−1)) − g t²/2; with c 3000 m/s, n 3, t 60 s and
        // g 9.81 m/s2 that is 2707.2 m/s and 63 467 m. A planet so large that g does not fall with height.
        double radius = 1e13;
        Planet flat = new Planet(9.81 * radius * radius, radius, 0);
        AscentDynamics dynamics = new AscentDynamics(mission(flat), NO_AIR, DragTable.USUAL, 1);
        Thrusters engine = Thrusters.of(SampleEngines.kerosene(3000), 1);
        double startMass = engine.massFlow() * 60 * 3 / 2; // burns two thirds in 60 s
        double[] y = new double[AscentDynamics.SIZE];
        y[AscentDynamics.X] = radius;
        y[AscentDynamics.MASS] = startMass;
        dynamics.burn(engine, 0);
        dynamics.point(AscentDynamics.Pointing.UPWARDS);
        integrator().integrate(dynamics, 0, y, 60, List.of(), (t, s) -> {});

        assertThat(y[AscentDynamics.MASS]).isCloseTo(startMass / 3, within(1e-9 * startMass));
        assertThat(y[AscentDynamics.VX])
                .isCloseTo(3000 * Math.log(3) - 9.81 * 60, within(1e-5)); // radius 1e13 m rounds to 2 mm
        assertThat(y[AscentDynamics.VX]).isCloseTo(2707.2, within(0.05));
        assertThat(y[AscentDynamics.X] - radius).isCloseTo(63_467, within(1.0));
        assertThat(y[AscentDynamics.GRAVITY]).isCloseTo(9.81 * 60, within(1e-5));
        assertThat(y[AscentDynamics.STEERING]).isCloseTo(0, within(1e-12));
    }

    @Test
    void coastKeepsEnergyAndAngularMomentum() {
        // identity: two-body motion; one revolution of an orbit 200 x 2000 km
        Planet earth = Planet.EARTH;
        AscentDynamics dynamics = new AscentDynamics(mission(earth), NO_AIR, DragTable.USUAL, 10);
        double[] y = new double[AscentDynamics.SIZE];
        y[AscentDynamics.X] = earth.radius() + 200e3;
        y[AscentDynamics.VY] = earth.speed(200e3, 200e3, 2000e3);
        y[AscentDynamics.MASS] = 1000;
        dynamics.coast();
        double energy = energy(y);
        double momentum = momentum(y);
        double[] worst = new double[2];
        integrator().integrate(dynamics, 0, y, 6500, List.of(), (t, s) -> {
            worst[0] = Math.max(worst[0], Math.abs(energy(s) / energy - 1));
            worst[1] = Math.max(worst[1], Math.abs(momentum(s) / momentum - 1));
        });
        assertThat(worst[0]).isLessThan(1e-9);
        assertThat(worst[1]).isLessThan(1e-9);
    }

    @Test
    void apogeeIsWhereVisVivaPutsIt() {
        Planet earth = Planet.EARTH;
        AscentDynamics dynamics = new AscentDynamics(mission(earth), NO_AIR, DragTable.USUAL, 10);
        double[] y = new double[AscentDynamics.SIZE];
        y[AscentDynamics.X] = earth.radius() + 200e3;
        y[AscentDynamics.VY] = earth.speed(200e3, 200e3, 2000e3);
        y[AscentDynamics.MASS] = 1000;
        dynamics.coast();
        integrator()
                .integrate(
                        dynamics,
                        0,
                        y,
                        10_000,
                        List.of((t, s) -> s[0] * s[2] + s[1] * s[3] + (t < 10 ? 1e9 : 0)),
                        (t, s) -> {});
        assertThat(Math.hypot(y[0], y[1]) - earth.radius()).isCloseTo(2000e3, within(1.0));
        assertThat(Math.hypot(y[2], y[3])).isCloseTo(earth.speed(2000e3, 200e3, 2000e3), within(1e-3));
    }

    private static double energy(double[] y) {
        return 0.5 * (y[2] * y[2] + y[3] * y[3]) - Planet.EARTH.gravitationalParameter() / Math.hypot(y[0], y[1]);
    }

    private static double momentum(double[] y) {
        return y[0] * y[3] - y[1] * y[2];
    }
}
