package dev.penstock.vehicle.ascent;

/**
 * How the thrust of a flight is pointed, part after part:
 *
 * <pre>
 * upwards                         from release until the speed through the air is that of the tilt
 * tilted by a fixed angle         until the path has turned as far
 * along the path through the air  until the dynamic pressure has fallen below that of thin air
 * tan(pitch) = a + b (t - t0)     to the orbit, pitch above the horizon of the place
 * </pre>
 *
 * Without thrust the angle has no meaning.
 *
 * @param tiltSpeed speed through the air at which the tilt begins (m/s)
 * @param tiltTime time at which it begins (s)
 * @param tilt the tilt from the vertical (rad)
 * @param pathTime time from which thrust is along the path (s)
 * @param thinAir dynamic pressure below which thrust leaves the path (Pa)
 * @param tangentTime t0 (s)
 * @param tangentStart a (-)
 * @param tangentRate b (1/s)
 */
public record SteeringLaw(
        double tiltSpeed,
        double tiltTime,
        double tilt,
        double pathTime,
        double thinAir,
        double tangentTime,
        double tangentStart,
        double tangentRate) {}
