package dev.penstock.claims.picture;

import dev.penstock.errors.InvalidInput;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What somebody has marked on a picture of an engine.
 *
 * @param width width of the picture (px)
 * @param angleOfView angle that the width takes up before the camera (rad)
 * @param markError half of the 90 % interval of a mark (px)
 * @param reference line of known length
 * @param referenceLength its length (m)
 * @param referenceError half of the 90 % interval of that (m)
 * @param along whether the known length runs along the nozzle's axis, and not across the line of sight
 * @param depth how much nearer or farther than the exit the known length may be (m); empty for one exit diameter
 * @param throat diameter of the throat
 * @param exit rim of the exit
 * @param length from throat to exit along the axis
 * @param facing which way the exit faces
 */
public record PictureMarks(
        double width,
        double angleOfView,
        double markError,
        Segment reference,
        double referenceLength,
        double referenceError,
        boolean along,
        OptionalDouble depth,
        Optional<Segment> throat,
        Optional<Rim> exit,
        Optional<Segment> length,
        Facing facing) {

    private static final int NARROWEST_PICTURE = 16;
    private static final int WIDEST_PICTURE = 100_000;
    private static final int WIDEST_VIEW_DEGREES = 150;

    public PictureMarks {
        require(
                width >= NARROWEST_PICTURE && width <= WIDEST_PICTURE,
                "width of the picture",
                width,
                NARROWEST_PICTURE + " to " + WIDEST_PICTURE + " pixels");
        require(
                angleOfView > 0 && angleOfView <= Math.toRadians(WIDEST_VIEW_DEGREES),
                "angle of view",
                angleOfView,
                "above 0 to " + WIDEST_VIEW_DEGREES + " degrees");
        require(
                markError > 0 && markError <= 0.1 * width,
                "error of a mark",
                markError,
                "above zero, a tenth of the width at most");
        require(referenceLength > 0 && referenceLength < 1e4, "known length", referenceLength, "above zero, in metres");
        require(
                referenceError >= 0 && referenceError < referenceLength,
                "error of the known length",
                referenceError,
                "from zero to less than the length itself");
        require(depth.orElse(0) >= 0, "depth", depth.orElse(0), "zero or more");
    }

    private static void require(boolean fine, String what, double value, String allowed) {
        if (!fine) {
            throw new InvalidInput("", what, String.format(Locale.ROOT, "%.4g", value), "allowed is " + allowed);
        }
    }
}
