package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;

/**
 * A tank: cylinder between two ellipsoidal heads of height R/√2, or the bare ellipsoid where the volume does not fill
 * the heads of the full diameter.
 *
 * @param volume inner volume (m³)
 * @param radius largest radius (m)
 * @param cylinderLength length of the cylinder (m)
 * @param headHeight height of one head (m)
 */
public record TankShape(double volume, double radius, double cylinderLength, double headHeight) {

    /** Semi-axis ratio of the heads: √2, the classic compromise between height and hoop compression. */
    private static final double HEAD_RATIO = Math.sqrt(2);

    /** Surface of a whole oblate ellipsoid over R²: 2π (1 + (1 − e²)/e · artanh e), e² = 1 − 1/HEAD_RATIO². */
    private static final double ELLIPSOID_AREA = ellipsoidArea();

    /**
     * @param volume inner volume (m³)
     * @param diameter diameter available (m)
     * @return the tank
     */
    public static TankShape of(double volume, double diameter) {
        Require.positive("tank", "volume (m³)", volume);
        Require.positive("tank", "diameter (m)", diameter);
        double radius = diameter / 2;
        double heads = 4.0 / 3 * Math.PI * radius * radius * radius / HEAD_RATIO;
        if (volume <= heads) {
            double own = radius * Math.cbrt(volume / heads);
            return new TankShape(volume, own, 0, own / HEAD_RATIO);
        }
        return new TankShape(volume, radius, (volume - heads) / (Math.PI * radius * radius), radius / HEAD_RATIO);
    }

    /** @return overall length (m) */
    public double length() {
        return cylinderLength + 2 * headHeight;
    }

    /** @return surface of one head (m²) */
    public double headArea() {
        return ELLIPSOID_AREA * radius * radius / 2;
    }

    /** @return surface of the cylinder (m²) */
    public double cylinderArea() {
        return 2 * Math.PI * radius * cylinderLength;
    }

    /** @return whole surface (m²) */
    public double area() {
        return cylinderArea() + 2 * headArea();
    }

    private static double ellipsoidArea() {
        double e = Math.sqrt(1 - 1 / (HEAD_RATIO * HEAD_RATIO));
        double artanh = 0.5 * Math.log((1 + e) / (1 - e));
        return 2 * Math.PI * (1 + (1 - e * e) / e * artanh);
    }
}
