package dev.penstock.turbomachinery.turbine;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Blading efficiency of impulse turbines with one or two rotor rows per stage, from the velocity triangles of symmetric blades.
 * <pre>
 * with ν = U/C0 of the stage, jet speed φ C0 at angle α, relative speed kept to the share ψ in each row:
 * one row:  η = 2ν(φ cos α - ν)(1 + ψ)
 * two rows: η = 2ν(1 + ψ)[(φ cos α - ν) + (ψ(ψ(φ cos α - ν) - ν) - ν)]
 * </pre>
 * The second form follows the jet through the first rotor, the turning row (also ψ) and the second rotor. Without losses they
 * become 4ν(cos α - ν) and 8ν(cos α - 2ν). Tip leakage, windage and disk friction are not in here.
 */
public final class ImpulseBlading {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.impulse-blading",
            "Impulse turbine efficiency over velocity ratio",
            "one row: η = 2ν(φ cos α - ν)(1 + ψ); two rows: η = 2ν(1 + ψ)[(φ cos α - ν) + (ψ(ψ(φ cos α - ν) - ν) - ν)]",
            "ν up to φ cos α (one row), or to where the second rotor stops working (two rows)",
            "peak of built machines 5 to 15 points lower; the turbine's efficiency factor takes them off",
            List.of("nasa-sp-8110", "nasa-sp-125"));

    private ImpulseBlading() {}

    /**
     * @param velocityRatio ν = U/C0 of one stage (-)
     * @param nozzleAngle α (rad)
     * @param nozzleCoefficient φ (-)
     * @param bladeCoefficient ψ (-)
     * @return efficiency (-); negative where the wheel outruns the jet
     */
    public static double oneRow(
            double velocityRatio, double nozzleAngle, double nozzleCoefficient, double bladeCoefficient) {
        double nu = Require.positive(CARD.id(), "velocity ratio (-)", velocityRatio);
        return 2 * nu * (nozzleCoefficient * Math.cos(nozzleAngle) - nu) * (1 + bladeCoefficient);
    }

    /**
     * @param velocityRatio ν = U/C0 of one stage of two rows (-)
     * @param nozzleAngle α (rad)
     * @param nozzleCoefficient φ (-)
     * @param bladeCoefficient ψ (-)
     * @return efficiency (-); negative where the wheel outruns the jet
     */
    public static double twoRows(
            double velocityRatio, double nozzleAngle, double nozzleCoefficient, double bladeCoefficient) {
        double nu = Require.positive(CARD.id(), "velocity ratio (-)", velocityRatio);
        double psi = bladeCoefficient;
        double first = nozzleCoefficient * Math.cos(nozzleAngle) - nu;
        double second = psi * (psi * first - nu) - nu;
        return 2 * nu * (1 + psi) * (first + second);
    }

    /**
     * @param nozzleAngle α (rad)
     * @param nozzleCoefficient φ (-)
     * @return velocity ratio of the one-row peak (-)
     */
    public static double bestOneRow(double nozzleAngle, double nozzleCoefficient) {
        return 0.5 * nozzleCoefficient * Math.cos(nozzleAngle);
    }

    /**
     * @param nozzleAngle α (rad)
     * @param nozzleCoefficient φ (-)
     * @param bladeCoefficient ψ (-)
     * @return velocity ratio of the two-row peak (-)
     */
    public static double bestTwoRows(double nozzleAngle, double nozzleCoefficient, double bladeCoefficient) {
        double psi = bladeCoefficient;
        // η is 2(1+ψ)[aν - bν²] with the two sums below
        double a = nozzleCoefficient * Math.cos(nozzleAngle) * (1 + psi * psi);
        double b = 2 + psi + psi * psi;
        return 0.5 * a / b;
    }
}
