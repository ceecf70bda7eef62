package dev.penstock.chamber.contour;

import dev.penstock.numerics.RootFinder;

/** Relations of a calorically perfect gas that a characteristic net needs. Pressures over stagnation pressure. */
public final class CharacteristicGas {

    private final double gamma;
    private final double root;

    public CharacteristicGas(double gamma) {
        this.gamma = gamma;
        this.root = Math.sqrt((gamma + 1) / (gamma - 1));
    }

    double gamma() {
        return gamma;
    }

    /** Prandtl-Meyer angle (rad). */
    double nu(double mach) {
        double b = Math.sqrt(mach * mach - 1);
        return root * Math.atan(b / root) - Math.atan(b);
    }

    /** Mach number at a Prandtl-Meyer angle, by Newton's method from a nearby one. */
    double mach(double nu, double guess) {
        double m = Math.max(1.0001, guess);
        for (int i = 0; i < 30; i++) {
            double b = Math.sqrt(m * m - 1);
            double slope = b / (m * (1 + (gamma - 1) / 2 * m * m));
            double step = (nu(m) - nu) / slope;
            double next = Math.max(1 + (m - 1) / 4, m - step);
            if (Math.abs(next - m) < 1e-13 * m) {
                return next;
            }
            m = next;
        }
        return m;
    }

    public double pressure(double mach) {
        return Math.pow(1 + (gamma - 1) / 2 * mach * mach, -gamma / (gamma - 1));
    }

    /** Momentum flux ρ v² over stagnation pressure. */
    public double momentum(double mach) {
        return gamma * mach * mach * pressure(mach);
    }

    /** Mass flux ρ v over its sonic value. */
    double massFlux(double mach) {
        return mach * Math.pow(2 / (gamma + 1) * (1 + (gamma - 1) / 2 * mach * mach), -(gamma + 1) / (2 * (gamma - 1)));
    }

    /** Velocity over the sonic one. */
    double velocityRatio(double mach) {
        return mach * Math.sqrt((gamma + 1) / (2 + (gamma - 1) * mach * mach));
    }

    /** Mach number from the velocity over the sonic one. */
    double machOfVelocity(double ratio) {
        double square = ratio * ratio;
        return Math.sqrt(2 * square / (gamma + 1 - (gamma - 1) * square));
    }

    /** Vacuum thrust coefficient of one-dimensional flow to an exit Mach number. */
    double vacuumThrustCoefficient(double mach) {
        return (pressure(mach) + momentum(mach)) / massFlux(mach);
    }

    /** Supersonic Mach number at an area ratio. */
    public double machAtAreaRatio(double areaRatio) {
        return RootFinder.between("Mach number at an area ratio", m -> 1 / massFlux(m) - areaRatio, 1, 60, 1e-12)
                .value();
    }
}
