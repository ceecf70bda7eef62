package dev.penstock.claims.picture;

/**
 * A value measured in a picture, with half of its 90 % interval and the shares that make it up.
 *
 * @param path path of the claim that it makes
 * @param title what it is
 * @param unit SI unit; empty for a ratio
 * @param value value, SI
 * @param pixel what the marks' own error adds, as a share of the value (-)
 * @param perspective what unequal distances from the camera and the tilt read off the ellipse add (-)
 * @param reference what the error of the known length adds (-)
 */
public record Measured(
        String path, String title, String unit, double value, double pixel, double perspective, double reference) {

    public Measured {
        if (!(value > 0
                && pixel >= 0
                && perspective >= 0
                && reference >= 0
                && Double.isFinite(value * share(pixel, perspective, reference)))) {
            throw new IllegalArgumentException(path + " " + value);
        }
    }

    private static double share(double pixel, double perspective, double reference) {
        return Math.sqrt(pixel * pixel + perspective * perspective + reference * reference);
    }

    /** @return half of the 90 % interval, SI */
    public double half() {
        return value * share(pixel, perspective, reference);
    }
}
