package dev.penstock.vehicle.ascent;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;

/**
 * Puts a flight, which is computed in the plane of its orbit, into space and over the ground.
 *
 * <pre>
 * u = u0 + θ,  sin u0 = sin φ / sin i;  θ = s/R + ω cos i · t
 * r = |r| (cos Ω cos u − sin Ω sin u cos i,  sin Ω cos u + cos Ω sin u cos i,  sin u sin i)
 * sin(latitude) = z/|r|,  longitude = atan2(y, x) − ω t
 * </pre>
 *
 * φ is the latitude of the launch site, s the distance over the ground; Ω puts the site on the x axis's meridian at release, so that
 * longitudes count from the site eastwards. Northwards, straight into the plane. Where no latitude is known the launch is from the
 * equator.
 *
 * @param planet the planet
 * @param inclination inclination of the orbit (rad)
 * @param latitude latitude of the launch site (rad)
 */
public record OrbitPlane(Planet planet, double inclination, double latitude) {

    public static final ModelCard CARD = ModelCard.definition(
            "vehicle.orbit-plane",
            "A flight in the plane of its orbit, in space and over the ground",
            "u = u0 + θ, sin u0 = sin φ / sin i; θ = s/R + ω cos i t; longitude from the site",
            "launch straight into the plane, northwards; round planet",
            "exact for a flight in its plane; the air's motion across the plane is left out");

    public OrbitPlane {
        Require.within("orbit plane", "inclination (rad)", inclination, 0, Math.PI);
        Require.within("orbit plane", "latitude (rad)", latitude, -Math.PI / 2, Math.PI / 2);
    }

    /**
     * A place and its motion.
     *
     * @param x position towards the site's meridian at release (m)
     * @param y position a quarter turn east of it (m)
     * @param z position northwards (m)
     * @param vx speed along x (m/s)
     * @param vy speed along y (m/s)
     * @param vz speed along z (m/s)
     */
    public record Place(double x, double y, double z, double vx, double vy, double vz) {}

    /**
     * A place over the turning ground.
     *
     * @param latitude latitude (rad)
     * @param longitude longitude east of the launch site (rad), -π to π
     */
    public record Ground(double latitude, double longitude) {}

    /**
     * @param point a moment of the flight
     * @return place and motion in the frame that does not turn, its axes as above
     */
    public Place place(AscentPoint point) {
        double radius = planet.radius() + point.altitude();
        double up = point.airSpeed() * Math.sin(point.pathAngle());
        double east = point.airSpeed() * Math.cos(point.pathAngle()) + airRotation() * radius;
        double u = argument(point);
        double[] outwards = direction(u);
        double[] onwards = direction(u + Math.PI / 2);
        return new Place(
                radius * outwards[0],
                radius * outwards[1],
                radius * outwards[2],
                up * outwards[0] + east * onwards[0],
                up * outwards[1] + east * onwards[1],
                up * outwards[2] + east * onwards[2]);
    }

    /**
     * @param point a moment of the flight
     * @return the place below it
     */
    public Ground ground(AscentPoint point) {
        double[] outwards = direction(argument(point));
        double longitude = Math.atan2(outwards[1], outwards[0]) - planet.rotationRate() * point.time();
        return new Ground(
                Math.asin(Math.max(-1, Math.min(1, outwards[2]))), Math.IEEEremainder(longitude, 2 * Math.PI));
    }

    private double airRotation() {
        return planet.rotationRate() * Math.cos(inclination);
    }

    private double argument(AscentPoint point) {
        return start() + point.downrange() / planet.radius() + airRotation() * point.time();
    }

    /** Angle from the node to the launch site; none for an orbit over the equator. */
    private double start() {
        double sine = Math.sin(inclination);
        return sine == 0 ? 0 : Math.asin(Math.max(-1, Math.min(1, Math.sin(latitude) / sine)));
    }

    private double[] direction(double u) {
        double site = Math.atan2(Math.cos(inclination) * Math.sin(start()), Math.cos(start()));
        double x = Math.cos(u);
        double y = Math.sin(u) * Math.cos(inclination);
        return new double[] {
            Math.cos(site) * x + Math.sin(site) * y,
            Math.cos(site) * y - Math.sin(site) * x,
            Math.sin(u) * Math.sin(inclination)
        };
    }
}
