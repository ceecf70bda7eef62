package dev.penstock.vehicle.ascent;

/**
 * How the thrust of a flight is pointed, part after part:
 *
 * <pre>
 * upwards                         from release until the speed through the air is that of the tilt
 * tilted by a fixed angle         until the path has turned as far
 * along the path through the air  up to the height of free steering
 * tan(pitch) = a + b (t - t0)     to the orbit, pitch above the horizon of the place, held within L/q of the path, q at least 1 Pa
 * </pre>
 *
 * Without thrust the angle has no meaning.
 *
 * @param tiltSpeed speed through the air at which the tilt begins (m/s)
 * @param tiltTime time at which it begins (s)
 * @param tilt the tilt from the vertical (rad)
 * @param pathTime time from which thrust is along the path (s)
 * @param freeAbove height from which thrust may leave the path (m)
 * @param angleLoad L, dynamic pressure q times the angle in radians between thrust and path that is not exceeded (Pa)
 * @param tangentTime t0 (s)
 * @param tangentStart a (-)
 * @param tangentRate b (1/s)
 */
public record SteeringLaw(
        double tiltSpeed,
        double tiltTime,
        double tilt,
        double pathTime,
        double freeAbove,
        double angleLoad,
        double tangentTime,
        double tangentStart,
        double tangentRate) {}
