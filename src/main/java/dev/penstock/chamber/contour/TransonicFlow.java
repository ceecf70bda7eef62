package dev.penstock.chamber.contour;

/**
 * Flow near the throat of a nozzle with a circular-arc wall, by Sauer's small perturbation.
 * <pre>
 * u = 1 + α x + (γ+1) α² r²/4,   v = (γ+1) α² x r/2 + (γ+1)² α³ r³/16,   α² = 2/((γ+1) R)
 * </pre>
 * with x from the sonic point on the axis, which lies (γ+1) α/8 downstream of the throat plane. Source: [sauer-1947].
 * Lengths over throat radius, velocities over the sonic one; wall curvature radius R above about 1.
 */
final class TransonicFlow {

    private final CharacteristicGas gas;
    private final double g1;
    private final double alpha;
    private final double sonic;

    TransonicFlow(CharacteristicGas gas, double curvature) {
        this.gas = gas;
        this.g1 = gas.gamma() + 1;
        this.alpha = Math.sqrt(2 / (g1 * curvature));
        this.sonic = g1 * alpha / 8;
    }

    /** Distance from the throat plane to the axis point of a Mach number (throat radii). */
    double axisPosition(double mach) {
        return sonic + (gas.velocityRatio(mach) - 1) / alpha;
    }

    double axialVelocity(double throatX, double r) {
        return 1 + alpha * (throatX - sonic) + g1 * alpha * alpha * r * r / 4;
    }

    double radialVelocity(double throatX, double r) {
        return g1 * alpha * alpha * (throatX - sonic) * r / 2 + g1 * g1 * alpha * alpha * alpha * r * r * r / 16;
    }
}
