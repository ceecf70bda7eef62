package dev.penstock.vehicle.ascent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class OrbitPlaneTest {

    private static final double RADIUS = Planet.EARTH.radius();
    private static final double OMEGA = Planet.EARTH.rotationRate();

    /** Over the equator the ground turns with the air: the vehicle is as far east of the site as it has gone over the ground. */
    @Test
    void overTheEquatorTheGroundTrackIsTheDistanceFlown() {
        OrbitPlane plane = new OrbitPlane(Planet.EARTH, 0, 0);
        OrbitPlane.Ground below = plane.ground(point(500, 200e3, 0.3 * RADIUS, 4000, 0.2));
        assertThat(below.latitude()).isCloseTo(0, within(1e-12));
        assertThat(below.longitude()).isCloseTo(0.3, within(1e-12));
    }

    @Test
    void aLaunchBeginsAtItsSite() {
        OrbitPlane plane = new OrbitPlane(Planet.EARTH, Math.toRadians(51.6), Math.toRadians(28.5));
        OrbitPlane.Ground site = plane.ground(point(0, 0, 0, 1, 1.5));
        assertThat(Math.toDegrees(site.latitude())).isCloseTo(28.5, within(1e-9));
        assertThat(site.longitude()).isCloseTo(0, within(1e-12));
    }

    /** A quarter turn from the node a path is as far north as its inclination: from the equator after R π/2 less the turning of the air. */
    @Test
    void theHighestLatitudeIsTheInclination() {
        double inclination = Math.toRadians(51.6);
        OrbitPlane plane = new OrbitPlane(Planet.EARTH, inclination, 0);
        double flown = RADIUS * (Math.PI / 2 - OMEGA * Math.cos(inclination) * 600);
        OrbitPlane.Ground below = plane.ground(point(600, 300e3, flown, 7000, 0));
        assertThat(below.latitude()).isCloseTo(inclination, within(1e-7));
        // ninety degrees from the node in space, less what the ground has turned
        assertThat(below.longitude()).isCloseTo(Math.PI / 2 - OMEGA * 600, within(1e-6));
    }

    /** Identities: |r| = R + h, r · v = |r| v_up, |v|² of air speed and turning air, and a plane of the stated inclination. */
    @Test
    void placeAndMotionFitTogether() {
        double inclination = Math.toRadians(97);
        OrbitPlane plane = new OrbitPlane(Planet.EARTH, inclination, Math.toRadians(34));
        OrbitPlane.Place p = plane.place(point(300, 150e3, 900e3, 5000, 0.1));
        double r = RADIUS + 150e3;
        double up = 5000 * Math.sin(0.1);
        double onwards = 5000 * Math.cos(0.1) + OMEGA * Math.cos(inclination) * r;
        assertThat(Math.sqrt(p.x() * p.x() + p.y() * p.y() + p.z() * p.z())).isCloseTo(r, within(1e-6));
        assertThat((p.x() * p.vx() + p.y() * p.vy() + p.z() * p.vz()) / r).isCloseTo(up, within(1e-6));
        assertThat(p.vx() * p.vx() + p.vy() * p.vy() + p.vz() * p.vz())
                .isCloseTo(up * up + onwards * onwards, within(1e-3));
        double momentum = p.x() * p.vy() - p.y() * p.vx();
        assertThat(momentum / (r * onwards)).isCloseTo(Math.cos(inclination), within(1e-9));
    }

    private static AscentPoint point(double time, double altitude, double downrange, double airSpeed, double angle) {
        return new AscentPoint(
                time, "coast", altitude, downrange, airSpeed, airSpeed, angle, angle, 1000, 0, 1, 300, 0, 0, 0, 0, 0);
    }
}
