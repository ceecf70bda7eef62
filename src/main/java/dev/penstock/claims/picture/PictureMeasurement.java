package dev.penstock.claims.picture;

import dev.penstock.errors.InvalidInput;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;

/**
 * Lengths read off a picture by a pinhole camera far enough away: everything at one distance has one scale.
 * <pre>
 * k = L_ref c/l_ref,  c = cos θ if the known length runs along the axis, otherwise 1
 * D = k w/(2 tan(α/2))                        distance from the camera
 * d_exit = 2 a k,  d_throat = l k,  L = l k/cos θ,  sin θ = b/a of the exit's rim
 * pixel:        √2 δ/l of each line,  and δ(b/a) (b/a)/(1 - (b/a)²) + ½ δ(b/a)² where cos θ goes in
 * facing known: d_throat (1 ± Δ/D),  L = L_seen/(1 ∓ L_seen sin θ/D),  Δ = L sin θ,  upper sign if the exit faces the camera
 * perspective:  r/(1 - r),  r = Δz/D,  Δz = how far known length and exit may stand apart, and the depth L sin θ between throat and exit
 * reference:    ΔL_ref/L_ref
 * </pre>
 * The three add up by their squares. Lengths in m, marks in px, angles in rad.
 */
public final class PictureMeasurement {

    public static final ModelCard CARD = new ModelCard(
            "claims.picture",
            "Lengths measured in a picture",
            "length = pixels x (known length / its pixels) / cos(tilt); sin(tilt) = b/a of the exit's rim",
            "a camera several engine lengths away; no distortion by the lens; a round exit",
            "as stated with each value: marks, distances from the camera, known length, added by their squares",
            List.of("definition", "common practice, no source"));

    /** Depth of a nozzle that nobody measured, in exit diameters: common practice, no source. */
    private static final double USUAL_DEPTH = 1.5;

    /** Share of the depth between throat and exit that stays unsure where its sign is known: common practice, no source. */
    private static final double UNSURE_MEASURED = 0.2;

    private static final double UNSURE_USUAL = 0.5;

    /** A depth of a smaller share of the distance is that of a nozzle seen from the side (-). */
    private static final double SYMMETRIC = 1e-3;

    /** Nearer than this share of the distance nothing can be told (-). */
    private static final double NEAREST = 0.9;

    /** Beyond this tilt a length along the axis is all error (deg). */
    private static final int STEEPEST_DEGREES = 75;

    private static final double STEEPEST = Math.sin(Math.toRadians(STEEPEST_DEGREES));

    private final PictureMarks marks;
    private final double ratio;
    private final double cosine;
    private final double tiltShare;
    private final double scale;
    private final double distance;

    /**
     * @param marks what was marked
     * @throws InvalidInput if a tilt is needed that nothing shows, or the nozzle points too near to the camera
     */
    public PictureMeasurement(PictureMarks marks) {
        this.marks = marks;
        this.ratio = marks.exit().map(Rim::ratio).orElse(0.0);
        boolean needed = marks.along() || marks.length().isPresent();
        if (needed && marks.exit().isEmpty()) {
            throw new InvalidInput(
                    "",
                    "exit",
                    "not marked",
                    "mark the rim of the exit first: its ellipse tells how the nozzle is tilted");
        }
        if (needed && ratio > STEEPEST) {
            throw new InvalidInput(
                    "",
                    "exit",
                    Math.round(Math.toDegrees(tilt())) + " deg",
                    "the nozzle points so near to the camera that lengths along it cannot be read; " + STEEPEST_DEGREES
                            + " deg at most");
        }
        double error = marks.exit().map(e -> e.ratioError(marks.markError())).orElse(0.0);
        this.tiltShare = ratio > STEEPEST ? 0 : error * ratio / (1 - ratio * ratio) + 0.5 * error * error;
        this.cosine = Math.sqrt(1 - ratio * ratio);
        this.scale = marks.referenceLength()
                * (marks.along() ? cosine : 1)
                / marks.reference().length();
        this.distance = scale * marks.width() / (2 * Math.tan(0.5 * marks.angleOfView()));
    }

    /** @return angle between the nozzle's axis and the plane of the picture (rad); zero where no exit is marked */
    public double tilt() {
        return Math.asin(ratio);
    }

    /** @return estimated distance between camera and engine (m) */
    public double distance() {
        return distance;
    }

    /** @return what the marks give, the exit first */
    public List<Measured> values() {
        List<Measured> values = new ArrayList<>();
        marks.exit()
                .ifPresent(rim -> values.add(line(
                        "nozzle.exit_diameter",
                        "exit diameter",
                        across(rim.longest()),
                        rim.longest(),
                        tiltOfScale(),
                        apart())));
        marks.throat()
                .ifPresent(throat -> values.add(line(
                        "nozzle.throat_diameter",
                        "throat diameter",
                        across(throat) * farther(),
                        throat,
                        tiltOfScale(),
                        apart() + unsureDepth())));
        if (marks.exit().isPresent() && marks.throat().isPresent()) {
            values.add(areaRatio(marks.exit().get().longest(), marks.throat().get()));
        }
        marks.length()
                .ifPresent(length -> values.add(line(
                        "nozzle.length",
                        "nozzle length, throat to exit",
                        lengthOf(length),
                        length,
                        marks.along() ? 0 : tiltShare,
                        apart() + unsureDepth())));
        return values;
    }

    private Measured line(String path, String title, double value, Segment line, double tilt, double apart) {
        double pixel =
                Math.hypot(line.share(marks.markError()), marks.reference().share(marks.markError()));
        return new Measured(
                path,
                title,
                "m",
                value,
                Math.hypot(pixel, tilt),
                perspective(apart),
                marks.referenceError() / marks.referenceLength());
    }

    /** What is nearer by Δz looks larger by D/(D - Δz). */
    private double perspective(double apart) {
        double part = Math.min(apart / distance, NEAREST);
        return part / (1 - part);
    }

    /** The known length cancels. */
    private Measured areaRatio(Segment exit, Segment throat) {
        double ofDiameters = exit.length() / (throat.length() * farther());
        double pixel = 2 * Math.hypot(exit.share(marks.markError()), throat.share(marks.markError()));
        return new Measured(
                "nozzle.area_ratio",
                "area ratio",
                "",
                ofDiameters * ofDiameters,
                pixel,
                2 * perspective(unsureDepth()),
                0);
    }

    /** Length across the line of sight (m). */
    private double across(Segment line) {
        return line.length() * scale;
    }

    /** Length along the nozzle's axis (m). */
    private double along(Segment line) {
        return across(line) / cosine;
    }

    private double tiltOfScale() {
        return marks.along() ? tiltShare : 0;
    }

    /** How far known length and exit may stand apart (m). */
    private double apart() {
        return marks.depth().orElseGet(() -> marks.exit()
                .map(Rim::longest)
                .or(marks::throat)
                .map(this::across)
                .orElse(0.0));
    }

    /** How much larger something at the throat is than it would be at the exit's distance. */
    private double farther() {
        return 1 + marks.facing().sign() * Math.min(depth() / distance, NEAREST);
    }

    /** From the exit's middle to the throat's, whose distance from the camera scales it. */
    private double lengthOf(Segment line) {
        double seen = along(line);
        double part = marks.facing().sign() * Math.min(seen * ratio / distance, 0.5 * NEAREST);
        return seen / (1 - part);
    }

    /** What is not known of the depth between throat and exit (m). */
    private double unsureDepth() {
        if (marks.facing() == Facing.UNKNOWN) {
            return depth();
        }
        return depth() * (marks.length().isPresent() ? UNSURE_MEASURED : UNSURE_USUAL);
    }

    /** @return whether it matters for the values which way the exit faces */
    public boolean facingMatters() {
        return marks.throat().isPresent() && depth() / distance > SYMMETRIC;
    }

    /** How much farther from the camera the throat may be than the exit, or nearer (m). */
    private double depth() {
        double length = marks.length()
                .map(this::lengthOf)
                .orElseGet(() -> USUAL_DEPTH
                        * marks.exit().map(rim -> across(rim.longest())).orElse(0.0));
        return length * ratio;
    }
}
