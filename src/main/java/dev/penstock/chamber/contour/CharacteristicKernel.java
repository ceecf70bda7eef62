package dev.penstock.chamber.contour;

import dev.penstock.errors.NotConverged;
import java.util.ArrayList;
import java.util.List;

/**
 * The expanding part of a supersonic nozzle by the method of characteristics: from the transonic throat along the circular
 * arc of the wall, axisymmetric, irrotational, calorically perfect gas.
 * <pre>
 * C+  dr/dx = tan(θ + μ)   d(θ − ν) = −sin θ sin μ/(r cos(θ + μ)) dx
 * C−  dr/dx = tan(θ − μ)   d(θ + ν) = +sin θ sin μ/(r cos(θ − μ)) dx
 * </pre>
 * The net starts on a line from the throat wall to the axis, filled by {@link TransonicFlow}, and grows by C− lines from
 * wall points to the axis. Each point is found with mean coefficients, corrected until it stands still. Source:
 * [zucrow-1977]. Lengths are in throat radii.
 */
final class CharacteristicKernel {

    private static final int START_POINTS = 31;
    private static final double AXIS_MACH = 1.08;

    private final CharacteristicGas gas;
    private final double arc;
    private List<CharacteristicPoint> line;

    /**
     * @param gas gas
     * @param upstreamCurvature wall curvature radius upstream of the throat (throat radii)
     * @param arc wall curvature radius downstream of the throat (throat radii)
     */
    CharacteristicKernel(CharacteristicGas gas, double upstreamCurvature, double arc) {
        this.gas = gas;
        this.arc = arc;
        List<CharacteristicPoint> start = startingLine(new TransonicFlow(gas, upstreamCurvature));
        line = List.of(start.get(start.size() - 1));
        for (int i = start.size() - 2; i >= 0; i--) {
            line = fallingLine(start.get(i), line, 0);
        }
    }

    /** The latest C− line, from the wall to the axis. */
    List<CharacteristicPoint> line() {
        return line;
    }

    double axisMach() {
        return line.get(line.size() - 1).mach();
    }

    /** Moves on to the C− line of the arc point of a wall angle (rad). */
    void advanceTo(double wallAngle) {
        double x = arc * Math.sin(wallAngle);
        double r = 1 + arc * (1 - Math.cos(wallAngle));
        int[] first = new int[1];
        CharacteristicPoint wall = wallPoint(x, r, wallAngle, first);
        line = fallingLine(wall, line, first[0]);
    }

    private List<CharacteristicPoint> startingLine(TransonicFlow throat) {
        double end = throat.axisPosition(AXIS_MACH);
        List<CharacteristicPoint> points = new ArrayList<>(START_POINTS);
        for (int i = 0; i < START_POINTS; i++) {
            double r = 1 - (double) i / (START_POINTS - 1);
            double x = end * (1 - r * r);
            double u = throat.axialVelocity(x, r);
            double v = throat.radialVelocity(x, r);
            double mach = gas.machOfVelocity(Math.hypot(u, v));
            points.add(new CharacteristicPoint(x, r, Math.atan2(v, u), gas.nu(mach), mach));
        }
        return points;
    }

    /** C− line from a point down to the axis, met by the C+ from the points of an old line from an index on. */
    private List<CharacteristicPoint> fallingLine(CharacteristicPoint top, List<CharacteristicPoint> old, int first) {
        List<CharacteristicPoint> next = new ArrayList<>(old.size() + 2);
        next.add(top);
        CharacteristicPoint last = top;
        for (int j = first; j < old.size(); j++) {
            last = UnitProcess.interior(gas, last, old.get(j));
            next.add(last);
        }
        next.add(UnitProcess.axis(gas, last));
        return next;
    }

    /** Flow at a wall point; tells through {@code first} the first point of the line that lies below its C+. */
    private CharacteristicPoint wallPoint(double x, double r, double wallAngle, int[] first) {
        CharacteristicPoint start = line.get(0);
        double guess = start.nu() + Math.max(0, wallAngle - start.angle());
        CharacteristicPoint p = new CharacteristicPoint(x, r, wallAngle, guess, gas.mach(guess, start.mach()));
        CharacteristicPoint foot = start;
        for (int i = 0; i < UnitProcess.CORRECTIONS; i++) {
            foot = footOfRise(p, UnitProcess.slope(foot, p, 1), first);
            double nu = wallAngle - (foot.angle() - foot.nu()) + UnitProcess.source(foot, p, 1) * (x - foot.x());
            boolean still = Math.abs(nu - p.nu()) < UnitProcess.TOLERANCE;
            p = new CharacteristicPoint(x, r, wallAngle, nu, gas.mach(nu, p.mach()));
            if (still) {
                break;
            }
        }
        return p;
    }

    /** Where the straight C+ through a wall point leaves the line. */
    private CharacteristicPoint footOfRise(CharacteristicPoint wall, double slope, int[] first) {
        for (int j = 0; j < line.size() - 1; j++) {
            CharacteristicPoint a = line.get(j);
            CharacteristicPoint b = line.get(j + 1);
            double heightA = a.r() - wall.r() - slope * (a.x() - wall.x());
            double heightB = b.r() - wall.r() - slope * (b.x() - wall.x());
            if (heightB <= 0) {
                first[0] = j + 1;
                return a.towards(b, Math.max(0, Math.min(1, heightA / (heightA - heightB))), gas);
            }
        }
        throw new NotConverged(
                "characteristic net", line.size(), Double.NaN, "no wave reaches the wall at x " + wall.x());
    }
}
