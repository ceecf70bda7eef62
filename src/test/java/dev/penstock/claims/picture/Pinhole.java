package dev.penstock.claims.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * A nozzle of known size before a pinhole camera, for tests: its exit's centre on the line of sight at a distance, its axis tilted
 * out of the picture's plane and turned within it, with a bar of known length beside the exit.
 */
public record Pinhole(
        int width,
        int height,
        double focal,
        double distance,
        double tilt,
        double turn,
        double exit,
        double throat,
        double length) {

    /** A point in the nozzle's own directions (m): along its axis, across it in the picture's plane, and out of that. */
    public double[] point(double along, double across, double out) {
        double depth = along * Math.sin(tilt) - out * Math.cos(tilt);
        double x = along * Math.cos(tilt) + out * Math.sin(tilt);
        double px = x * Math.cos(turn) - across * Math.sin(turn);
        double py = x * Math.sin(turn) + across * Math.cos(turn);
        return seen(px, py, depth);
    }

    /** A point beside the nozzle: to the right and downwards from the exit's centre, and farther than it (m). */
    public double[] seen(double right, double down, double farther) {
        double scale = focal / (distance + farther);
        return new double[] {0.5 * width + right * scale, 0.5 * height + down * scale};
    }

    /** A ring of the nozzle. */
    public List<double[]> ring(double along, double diameter) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < 720; i++) {
            double angle = Math.PI * i / 360;
            points.add(point(along, 0.5 * diameter * Math.cos(angle), 0.5 * diameter * Math.sin(angle)));
        }
        return points;
    }

    /** The longest line between two points of the rim, and the rim half-way between them. */
    public Rim rim() {
        double[] p = point(0, 0.5 * exit, 0);
        double[] q = point(0, -0.5 * exit, 0);
        double[] r = point(0, 0, 0.5 * exit);
        return new Rim(line(p, q), r[0], r[1]);
    }

    public Segment throatLine() {
        return line(point(length, 0.5 * throat, 0), point(length, -0.5 * throat, 0));
    }

    public Segment lengthLine() {
        return line(point(length, 0, 0), point(0, 0, 0));
    }

    public static Segment line(double[] p, double[] q) {
        return new Segment(p[0], p[1], q[0], q[1]);
    }
}
