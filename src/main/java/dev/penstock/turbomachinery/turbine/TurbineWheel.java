package dev.penstock.turbomachinery.turbine;

import dev.penstock.combustion.WorkingState;
import dev.penstock.turbomachinery.speed.Smooth;
import java.util.Optional;

/**
 * Pitch diameter, blades and efficiency of a turbine whose kind and number of stages are settled.
 * <pre>
 * U = min(ν_best C0/√n, pitch-line limit, ω k τ^(1/3)/2),  τ = 0.6 ṁ Δhs/ω
 * h = ṁ/(ρ2 c_x π D ε),  ρ2 at the exit pressure and h1 − η Δhs − c_x²/2,  ε = min(1, full-admission height over smallest height)
 * sin α = sin α_0 · max(1, A/A_max), at most sin 40°,  A = ṁ/(ρ2 c_x) at α_0, A_max = (annulus limit/ω)²
 * </pre>
 * Where the annulus would pass its limit the nozzles open, so that the gas leaves faster through less area. The minima are smooth ones, so that a solver may cross from one to the other.
 */
final class TurbineWheel {

    private static final double NOMINAL_EFFICIENCY = 0.6;
    private static final double LEAST_HEIGHT_OVER_DIAMETER = 0.015;
    private static final double WIDEST_ANGLE = Math.toRadians(40);

    /** Where a slower shaft is the better way to a smaller annulus: nozzles have 15° to 30° [nasa-sp-8110]. */
    private static final double WIDEST_USUAL_ANGLE = Math.toRadians(30);

    /** The design with the nozzle angle that it came to. */
    final TurbineDesign settled;

    final double pitchLineSpeed;
    final double diameter;
    final double height;
    final double admission;

    /** ω√A of the last rotor (m/s). */
    final double annulusSpeed;

    /** Total-to-static efficiency with all losses (-). */
    final double efficiency;

    /**
     * @param gas isentropic expansion
     * @param speed shaft speed (rad/s)
     * @param design with kind and number of stages settled
     */
    TurbineWheel(GasExpansion gas, double speed, TurbineDesign design) {
        double largestArea = square(design.annulusSpeedLimit() / speed);
        Annulus nominal = new Annulus(gas, speed, design, Optional.empty());
        double opening = Smooth.greatest(1, nominal.area / largestArea);
        double sine = Smooth.least(opening * Math.sin(design.nozzleAngle()), Math.sin(WIDEST_ANGLE));
        settled = design.withNozzleAngle(Math.max(Math.asin(sine), design.nozzleAngle()));
        Annulus annulus = new Annulus(gas, speed, settled, Optional.of(nominal.exit));
        pitchLineSpeed = annulus.pitchLineSpeed;
        diameter = 2 * pitchLineSpeed / speed;
        double fullHeight = annulus.area / (Math.PI * diameter);
        double least = Smooth.greatest(design.minimumBladeHeight(), LEAST_HEIGHT_OVER_DIAMETER * diameter);
        admission = Smooth.least(1, fullHeight / least);
        height = fullHeight / admission;
        annulusSpeed = speed * Math.sqrt(Math.PI * diameter * height);
        double axial = annulus.triangles.axialVelocity() * annulus.stageVelocity;
        efficiency = SizeLoss.efficiency(
                annulus.triangles.withLosses(settled, annulus.ratio, admission),
                diameter,
                height,
                nominal.exit,
                axial / Math.sin(settled.nozzleAngle()));
    }

    /**
     * @param gas isentropic expansion
     * @param speed a shaft speed near the answer (rad/s)
     * @param design with kind and number of stages settled
     * @return speed at which the annulus reaches its limit with nozzles as wide as is usual (rad/s)
     */
    static double annulusLimitedSpeed(GasExpansion gas, double speed, TurbineDesign design) {
        double angle = Math.max(design.nozzleAngle(), WIDEST_USUAL_ANGLE);
        return design.annulusSpeedLimit()
                / Math.sqrt(new Annulus(gas, speed, design.withNozzleAngle(angle), Optional.empty()).area);
    }

    private static double square(double x) {
        return x * x;
    }

    /** Flow area behind the last rotor at a nozzle angle. */
    private static final class Annulus {
        final double pitchLineSpeed;
        final double ratio;
        final double stageVelocity;
        final Triangles triangles;
        final WorkingState exit;
        final double area;

        /**
         * @param known static state behind the last rotor, if it is known from a nozzle angle nearby; a wider nozzle changes its density
         *     by a percent or two
         */
        Annulus(GasExpansion gas, double speed, TurbineDesign design, Optional<WorkingState> known) {
            stageVelocity = gas.spoutingVelocity / Math.sqrt(design.stages().orElseThrow());
            double best = Triangles.bestVelocityRatio(design);
            pitchLineSpeed = design.meanDiameter().isPresent()
                    ? 0.5 * speed * design.meanDiameter().getAsDouble()
                    : Smooth.least(greatestPitchLineSpeed(gas, speed, design), best * stageVelocity);
            ratio = pitchLineSpeed / stageVelocity;
            triangles = Triangles.of(design, ratio);
            double axial = triangles.axialVelocity() * stageVelocity;
            exit = known.orElseGet(() -> gas.behind(triangles.withLosses(design, ratio, 1), axial));
            area = gas.duty.massFlow() / (exit.density() * axial);
        }
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
