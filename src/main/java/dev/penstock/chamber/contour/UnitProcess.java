package dev.penstock.chamber.contour;

import dev.penstock.errors.NotConverged;

/** Single steps of a characteristic net: where two characteristics meet, and where one meets the axis. */
final class UnitProcess {

    static final int CORRECTIONS = 20;
    static final double TOLERANCE = 1e-12;

    private UnitProcess() {}

    /**
     * @param gas gas
     * @param falling a point on the C− through the wanted point
     * @param rising a point on the C+ through it
     * @return the point where they meet; up- or downstream of the given ones
     */
    static CharacteristicPoint interior(
            CharacteristicGas gas, CharacteristicPoint falling, CharacteristicPoint rising) {
        CharacteristicPoint p = new CharacteristicPoint(
                (falling.x() + rising.x()) / 2,
                (falling.r() + rising.r()) / 2,
                falling.angle(),
                falling.nu(),
                falling.mach());
        for (int i = 0; i < CORRECTIONS; i++) {
            double down = slope(falling, p, -1);
            double up = slope(rising, p, 1);
            double x = (falling.r() - rising.r() + up * rising.x() - down * falling.x()) / (up - down);
            double r = rising.r() + up * (x - rising.x());
            double plus = falling.angle() + falling.nu() + source(falling, p, -1) * (x - falling.x());
            double minus = rising.angle() - rising.nu() - source(rising, p, 1) * (x - rising.x());
            CharacteristicPoint next = point(gas, x, r, (plus + minus) / 2, (plus - minus) / 2, p.mach());
            boolean still = Math.abs(next.nu() - p.nu()) + Math.abs(next.x() - p.x()) < TOLERANCE;
            p = next;
            if (still) {
                break;
            }
        }
        return p;
    }

    /**
     * @param gas gas
     * @param falling a point on a C−
     * @return where that C− meets the axis
     */
    static CharacteristicPoint axis(CharacteristicGas gas, CharacteristicPoint falling) {
        CharacteristicPoint p = new CharacteristicPoint(
                falling.x() + falling.r(), 0, 0, falling.nu() + falling.angle(), falling.mach());
        for (int i = 0; i < CORRECTIONS; i++) {
            double x = falling.x() - falling.r() / slope(falling, p, -1);
            double nu = falling.angle() + falling.nu() + source(falling, p, -1) * (x - falling.x());
            CharacteristicPoint next = point(gas, x, 0, 0, nu, p.mach());
            boolean still = Math.abs(next.nu() - p.nu()) + Math.abs(next.x() - p.x()) < TOLERANCE;
            p = next;
            if (still) {
                break;
            }
        }
        return p;
    }

    /** Slope of a characteristic between two points: side +1 for C+, −1 for C−. */
    static double slope(CharacteristicPoint a, CharacteristicPoint b, int side) {
        return Math.tan((a.angle() + b.angle() + side * (a.mu() + b.mu())) / 2);
    }

    /** sin θ sin μ/(r cos(θ ± μ)), mean of both ends; on the axis sin θ/r is that of the other end. */
    static double source(CharacteristicPoint a, CharacteristicPoint b, int side) {
        return (source(a, side, perRadius(a, b)) + source(b, side, perRadius(b, a))) / 2;
    }

    private static double source(CharacteristicPoint p, int side, double perRadius) {
        return perRadius * Math.sin(p.mu()) / Math.cos(p.angle() + side * p.mu());
    }

    private static double perRadius(CharacteristicPoint p, CharacteristicPoint other) {
        CharacteristicPoint used = p.r() > 1e-9 ? p : other;
        return used.r() > 1e-9 ? Math.sin(used.angle()) / used.r() : 0;
    }

    private static CharacteristicPoint point(
            CharacteristicGas gas, double x, double r, double angle, double nu, double guess) {
        if (!(nu > 0 && Double.isFinite(x) && Double.isFinite(r))) {
            throw new NotConverged("characteristic net", CORRECTIONS, nu, "no supersonic flow at x " + x);
        }
        return new CharacteristicPoint(x, r, angle, nu, gas.mach(nu, guess));
    }
}
