package dev.penstock.turbomachinery.turbine;

/**
 * Velocity triangles of a settled design at a velocity ratio, whatever its kind.
 *
 * @param efficiency of the blading alone (-); negative where the wheel outruns the gas
 * @param axialVelocity axial velocity behind the last rotor over the spouting velocity of a stage (-)
 */
record Triangles(double efficiency, double axialVelocity) {

    private static final double LEAST_EFFICIENCY = 0.02;

    /**
     * @param design with kind and number of stages settled
     * @param ratio pitch-line speed over the spouting velocity of one stage (-)
     * @return the triangles
     */
    static Triangles of(TurbineDesign design, double ratio) {
        int n = design.stages().orElseThrow();
        double alpha = design.nozzleAngle();
        double phi = design.nozzleCoefficient();
        double psi = design.bladeCoefficient();
        double sin = Math.sin(alpha);
        return switch (design.type()) {
            case IMPULSE -> new Triangles(ImpulseBlading.oneRow(ratio, alpha, phi, psi), phi * sin);
            // the gas has crossed three rows of blades before it leaves
            case VELOCITY_COMPOUNDED ->
                new Triangles(ImpulseBlading.twoRows(ratio, alpha, phi, psi), phi * psi * psi * psi * sin);
            default ->
                new Triangles(
                        ReactionBlading.efficiency(ratio, n, alpha, phi),
                        ReactionBlading.jetOverSpouting(ratio, n, alpha, phi) * sin);
        };
    }

    /**
     * @param design with kind and number of stages settled
     * @return pitch-line speed over the spouting velocity of one stage at which the blading is best (-)
     */
    static double bestVelocityRatio(TurbineDesign design) {
        return switch (design.type()) {
            case IMPULSE -> ImpulseBlading.bestOneRow(design.nozzleAngle(), design.nozzleCoefficient());
            case VELOCITY_COMPOUNDED ->
                ImpulseBlading.bestTwoRows(design.nozzleAngle(), design.nozzleCoefficient(), design.bladeCoefficient());
            default ->
                ReactionBlading.best(design.stages().orElseThrow(), design.nozzleAngle(), design.nozzleCoefficient());
        };
    }

    /**
     * @param design efficiency factor and number of stages
     * @param ratio pitch-line speed over the spouting velocity of one stage (-)
     * @param admission admitted share of the circumference (-)
     * @return total-to-static efficiency with secondary losses and those of partial admission (-), above 0
     */
    double withLosses(TurbineDesign design, double ratio, double admission) {
        return PartialAdmission.efficiency(
                Math.max(efficiency * design.efficiencyFactor(), LEAST_EFFICIENCY),
                admission,
                ratio / Math.sqrt(design.stages().orElseThrow()),
                ratio / axialVelocity);
    }
}
