package dev.penstock.cooling.march;

import dev.penstock.cooling.gas.HotGasProfile;
import dev.penstock.cooling.gas.HotGasStation;
import dev.penstock.errors.FailureSubject;
import dev.penstock.errors.OutsideValidity;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Where cells end along the wall. Cylinder, convergent part and nozzle, and what lies to either side of a joint (an inlet manifold, a
 * slot, the end of a jacket), are pieces: a face stands at every end of one, so that no cell belongs to two. A piece has a share of the
 * cells that no dimension enters, so that faces move as evenly as the wall does.
 * <pre>
 * measure     ∫ds/r over its whole + ∫|d√ln(A/A_t)| over its whole
 * cells       even in the measure within a piece
 * share       15 % cylinder, 27.5 % convergent part, 57.5 % nozzle, of those that there are; three quarters of a piece to the side of the
 *             throat from a joint, one quarter beyond
 * </pre>
 * The measure makes cells short where the wall is narrow, and resolves the throat however long the chamber. A jacket that begins on the
 * nozzle has as many cells before it as in it. The shares are those of usual engines by the measure alone; own choice.
 */
final class WallPieces {

    private static final double CYLINDER = 0.15;
    private static final double CONVERGENT = 0.275;
    private static final double NOZZLE = 0.575;
    private static final double TOWARDS_THROAT = 0.75;

    /** Radii that differ by less are those of a cylinder (-). */
    private static final double STRAIGHT = 1e-9;

    /** Pieces shorter than this share of the measure are none (-). */
    private static final double NONE = 1e-9;

    private final List<HotGasStation> stations;
    private final double throatRadius;

    /** Measure at each station (-). */
    final double[] measure;

    /** Measure at the faces of the cells, first and last included (-). */
    final double[] faces;

    /**
     * @param profile hot side
     * @param startAreaRatio nozzle area ratio at which the jacket begins (-); empty begins it at the injector
     * @param endAreaRatio nozzle area ratio at which it ends (-)
     * @param joints where else no cell may straddle: logarithms of area ratio, negative upstream (-)
     * @param ownCells number of cells of the jacket
     * @throws OutsideValidity if the jacket ends before it begins, or has fewer cells than pieces
     */
    WallPieces(
            HotGasProfile profile,
            OptionalDouble startAreaRatio,
            double endAreaRatio,
            List<Double> joints,
            int ownCells) {
        stations = profile.stations();
        throatRadius = profile.throatRadius();
        measure = measured();
        double throat = throat();
        double end = Math.max(throat, onNozzle(throatRadius * Math.sqrt(endAreaRatio)));
        double[] between = joints.stream().mapToDouble(this::joint).sorted().toArray();
        int first = startAreaRatio.isPresent() ? ownCells : 0;
        faces = new double[first + ownCells + 1];
        double start = 0;
        if (startAreaRatio.isPresent()) {
            start = onNozzle(throatRadius * Math.sqrt(startAreaRatio.getAsDouble()));
            divide(0, start, throat, between, 0, first);
        }
        if (!(start < end)) {
            throw new OutsideValidity(
                    FailureSubject.JACKET,
                    "cooling jacket",
                    "area ratio at which it ends (-)",
                    endAreaRatio,
                    "beyond the area ratio at which it begins, " + startAreaRatio.orElse(1));
        }
        divide(start, end, throat, between, first, ownCells);
    }

    private double[] measured() {
        int n = stations.size();
        double[] slender = new double[n];
        double[] opened = new double[n];
        for (int i = 1; i < n; i++) {
            HotGasStation before = stations.get(i - 1);
            HotGasStation here = stations.get(i);
            slender[i] = slender[i - 1]
                    + Math.hypot(here.x() - before.x(), here.radius() - before.radius())
                            / (0.5 * (here.radius() + before.radius()));
            opened[i] = opened[i - 1] + Math.abs(opening(here) - opening(before));
        }
        double[] sum = new double[n];
        for (int i = 1; i < n; i++) {
            sum[i] = slender[i] / slender[n - 1] + opened[i] / opened[n - 1];
        }
        return sum;
    }

    /** √ln(A/A_t), which grows evenly away from a round throat. */
    private double opening(HotGasStation station) {
        return Math.sqrt(2 * Math.log(Math.max(1, station.radius() / throatRadius)));
    }

    /** Measure of the throat, x = 0. */
    private double throat() {
        for (int i = 1; i < measure.length; i++) {
            double from = stations.get(i - 1).x();
            double to = stations.get(i).x();
            if (to >= 0) {
                return between(measure[i - 1], measure[i], Math.max(0, -from / (to - from)));
            }
        }
        return measure[measure.length - 1];
    }

    /** Measure of the end of the cylinder; 0 without one. */
    private double cylinder() {
        double radius = stations.get(0).radius();
        int last = 0;
        while (last + 1 < measure.length && Math.abs(stations.get(last + 1).radius() - radius) <= STRAIGHT * radius) {
            last++;
        }
        return measure[last];
    }

    /** Measure of a place told by its area ratio, the injector or the exit where the wall ends before. */
    private double joint(double place) {
        double radius = throatRadius * Math.exp(0.5 * Math.abs(place));
        if (place >= 0) {
            return onNozzle(Math.max(radius, throatRadius));
        }
        for (int i = 1; i < measure.length && stations.get(i - 1).x() < 0; i++) {
            double high = stations.get(i - 1).radius();
            double low = stations.get(i).radius();
            if (low <= radius) {
                double along = high > low ? Math.max(0, (high - radius) / (high - low)) : 0;
                return between(measure[i - 1], measure[i], along);
            }
        }
        return throat();
    }

    /** Measure of the place on the nozzle with that radius. */
    private double onNozzle(double radius) {
        for (int i = measure.length - 1; i > 0 && stations.get(i).x() > 0; i--) {
            double low = stations.get(i - 1).radius();
            double high = stations.get(i).radius();
            if (low <= radius) {
                double along = high > low ? Math.min(1, (radius - low) / (high - low)) : 1;
                return between(measure[i - 1], measure[i], Math.max(0, along));
            }
        }
        throw new OutsideValidity(
                FailureSubject.JACKET,
                "cooling jacket",
                "radius at which it begins or ends (m)",
                radius,
                "at or beyond the throat");
    }

    /** Writes the faces from one measure to another: ends of pieces first, even within them. */
    private void divide(double from, double to, double throat, double[] joints, int firstFace, int cells) {
        double[] ends = new double[3 + joints.length];
        double[] shares = new double[ends.length];
        double[] main = {Math.min(cylinder(), throat), throat, measure[measure.length - 1]};
        double[] weight = {CYLINDER, CONVERGENT, NOZZLE};
        int pieces = 0;
        double done = from;
        for (int m = 0; m < main.length; m++) {
            double end = Math.min(to, main[m]);
            if (end - done <= NONE) {
                continue;
            }
            double last = end;
            double[] inside = Arrays.stream(joints).filter(j -> j < last - NONE).toArray();
            double left = weight[m];
            boolean upstream = m < 2;
            for (int k = 0; k < inside.length; k++) {
                if (inside[k] - done > NONE) {
                    double part = upstream ? 1 - TOWARDS_THROAT : TOWARDS_THROAT;
                    ends[pieces] = inside[k];
                    shares[pieces++] = part * left;
                    left *= 1 - part;
                    done = inside[k];
                }
            }
            ends[pieces] = end;
            shares[pieces++] = left;
            done = end;
        }
        if (cells < pieces) {
            throw new OutsideValidity(
                    FailureSubject.JACKET, "cooling jacket", "number of cells (-)", cells, pieces + " or more");
        }
        double all = Arrays.stream(shares).sum();
        double share = 0;
        int face = 0;
        double begin = from;
        faces[firstFace] = from;
        for (int p = 0; p < pieces; p++) {
            share += shares[p];
            int wanted = (int) Math.round(cells * share / all);
            int last = Math.min(cells - (pieces - 1 - p), Math.max(face + 1, wanted));
            for (int i = face + 1; i <= last; i++) {
                faces[firstFace + i] =
                        i == last ? ends[p] : between(begin, ends[p], (i - face) / (double) (last - face));
            }
            face = last;
            begin = ends[p];
        }
    }

    private static double between(double a, double b, double fraction) {
        return a + fraction * (b - a);
    }
}
