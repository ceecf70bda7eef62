package dev.penstock.claims.picture;

import dev.penstock.errors.InvalidInput;
import java.util.Locale;

/**
 * A line between two marks on a picture.
 *
 * @param x1 first mark, to the right (px)
 * @param y1 first mark, downwards (px)
 * @param x2 second mark, to the right (px)
 * @param y2 second mark, downwards (px)
 */
public record Segment(double x1, double y1, double x2, double y2) {

    /** Shorter lines are a slip of the hand. */
    private static final double SHORTEST = 3;

    public Segment {
        if (!(Math.hypot(x2 - x1, y2 - y1) >= SHORTEST)) {
            throw new InvalidInput(
                    "",
                    "marks",
                    String.format(Locale.ROOT, "(%.1f, %.1f) and (%.1f, %.1f)", x1, y1, x2, y2),
                    "two marks of a length must be " + (int) SHORTEST + " pixels apart at least");
        }
    }

    /** @return its length (px) */
    public double length() {
        return Math.hypot(x2 - x1, y2 - y1);
    }

    /**
     * @param error half of the 90 % interval of each mark along a direction (px)
     * @return half of the 90 % interval of the length, as a share of it (-): two marks that err independently
     */
    double share(double error) {
        return Math.sqrt(2) * error / length();
    }
}
