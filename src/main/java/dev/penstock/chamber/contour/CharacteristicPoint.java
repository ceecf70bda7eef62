package dev.penstock.chamber.contour;

/**
 * A point of a characteristic net.
 *
 * @param x distance from the throat over throat radius (-)
 * @param r distance from the axis over throat radius (-)
 * @param angle flow angle (rad)
 * @param nu Prandtl-Meyer angle (rad)
 * @param mach Mach number (-)
 */
record CharacteristicPoint(double x, double r, double angle, double nu, double mach) {

    /** Mach angle (rad). */
    double mu() {
        return Math.asin(1 / mach);
    }

    /** Point part of the way to another one. */
    CharacteristicPoint towards(CharacteristicPoint other, double share, CharacteristicGas gas) {
        double nuThere = nu + share * (other.nu - nu);
        return new CharacteristicPoint(
                x + share * (other.x - x),
                r + share * (other.r - r),
                angle + share * (other.angle - angle),
                nuThere,
                gas.mach(nuThere, mach));
    }

    /** Mass flow between this point and an outer one over ρ* a* A_t: mean of both ends. */
    double massFlowTo(CharacteristicPoint outer, CharacteristicGas gas) {
        double dx = outer.x - x;
        double dr = outer.r - r;
        return share(gas, dx, dr) + outer.share(gas, dx, dr);
    }

    private double share(CharacteristicGas gas, double dx, double dr) {
        return gas.massFlux(mach) * r * (Math.cos(angle) * dr - Math.sin(angle) * dx);
    }
}
