package dev.penstock.turbomachinery;

/**
 * Pitch diameter, blades and efficiency of a turbine whose kind and number of stages are settled.
 * <pre>
 * U = min(ν_best C0/√n, pitch-line limit, ω k τ^(1/3)/2),  τ = 0.6 ṁ Δhs/ω
 * h = ṁ/(ρ2 c_x π D ε),  ε = min(1, full-admission height over smallest height)
 * </pre>
 * The minima are smooth ones, so that a solver may cross from one to the other.
 */
final class TurbineWheel {

    private static final double NOMINAL_EFFICIENCY = 0.6;
    private static final double LEAST_HEIGHT_OVER_DIAMETER = 0.015;

    final double pitchLineSpeed;
    final double diameter;
    final double height;
    final double admission;

    /** Total-to-static efficiency with all losses (-). */
    final double efficiency;

    /**
     * @param gas isentropic expansion
     * @param speed shaft speed (rad/s)
     * @param design with kind and number of stages settled
     */
    TurbineWheel(GasExpansion gas, double speed, TurbineDesign design) {
        double stageVelocity = gas.spoutingVelocity / Math.sqrt(design.stages().orElseThrow());
        double best = Triangles.bestVelocityRatio(design);
        pitchLineSpeed = design.meanDiameter().isPresent()
                ? 0.5 * speed * design.meanDiameter().getAsDouble()
                : Smooth.least(greatestPitchLineSpeed(gas, speed, design), best * stageVelocity);
        diameter = 2 * pitchLineSpeed / speed;
        double ratio = pitchLineSpeed / stageVelocity;
        Triangles triangles = Triangles.of(design, ratio);
        double axial = triangles.axialVelocity() * stageVelocity;
        double fullHeight = gas.duty.massFlow() / (gas.ideal.density() * axial * Math.PI * diameter);
        double least = Smooth.greatest(design.minimumBladeHeight(), LEAST_HEIGHT_OVER_DIAMETER * diameter);
        admission = Smooth.least(1, fullHeight / least);
        height = fullHeight / admission;
        efficiency = triangles.withLosses(design, ratio, admission);
    }

    /**
     * @param gas isentropic expansion
     * @param speed shaft speed (rad/s)
     * @param design limits
     * @return highest pitch-line speed that the blade limit and the size of the wheel allow (m/s)
     */
    static double greatestPitchLineSpeed(GasExpansion gas, double speed, TurbineDesign design) {
        double torque = NOMINAL_EFFICIENCY * gas.duty.massFlow() * gas.drop / speed;
        double diameter = design.diameterCoefficient() * Math.cbrt(torque);
        return Smooth.least(design.pitchLineSpeedLimit(), 0.5 * speed * diameter);
    }
}
