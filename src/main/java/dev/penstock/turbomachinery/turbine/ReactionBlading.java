package dev.penstock.turbomachinery.turbine;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Blading efficiency of 50 % reaction stages, total to static, from symmetric velocity triangles.
 * <pre>
 * x = U/c1, ξ = 1/φ² - 1, c2²/c1² = 1 + x² - 2x cos α
 * work of a stage over c1²:            x(2 cos α - x)
 * isentropic drop of a stage over c1²: ξ + x(2 cos α - x) + (c2²/c1²)/(2n)
 * </pre>
 * Both rows lose ξ; the leaving velocity c2 drives the next stage and is lost behind the last of n. The velocity ratio
 * ν = U/C0 with C0² = 2·drop of a stage gives x by a quadratic equation.
 */
public final class ReactionBlading {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.reaction-blading",
            "Reaction turbine efficiency over velocity ratio",
            "η = w/(ξ + w + c2²/(2n)), w = x(2 cos α - x), c2² = 1 + x² - 2x cos α, over c1²; ν² = x²/[2(ξ + w + c2²/(2n))]",
            "50 % reaction, full admission, n stages of equal drop",
            "peak of built machines 3 to 10 points lower; the turbine's efficiency factor takes them off",
            List.of("nasa-sp-8110"));

    private ReactionBlading() {}

    /**
     * @param velocityRatio ν = U/C0 with C0 from the drop of one stage (-)
     * @param stages n, 1 or more
     * @param nozzleAngle α (rad)
     * @param rowCoefficient φ, velocity coefficient of each row (-), below 1
     * @return total-to-static efficiency (-); negative where the wheel outruns the gas
     */
    public static double efficiency(double velocityRatio, int stages, double nozzleAngle, double rowCoefficient) {
        double x = speedRatio(velocityRatio, stages, nozzleAngle, rowCoefficient);
        double work = x * (2 * Math.cos(nozzleAngle) - x);
        return work / drop(x, stages, nozzleAngle, rowCoefficient);
    }

    /**
     * @param stages n
     * @param nozzleAngle α (rad)
     * @param rowCoefficient φ (-)
     * @return velocity ratio near the peak (-): that of axial leaving, U = c1 cos α
     */
    public static double best(int stages, double nozzleAngle, double rowCoefficient) {
        double x = Math.cos(nozzleAngle);
        return x / Math.sqrt(2 * drop(x, stages, nozzleAngle, rowCoefficient));
    }

    /**
     * @param velocityRatio ν = U/C0 of one stage (-)
     * @param stages n
     * @param nozzleAngle α (rad)
     * @param rowCoefficient φ (-)
     * @return c1/C0 (-)
     */
    static double jetOverSpouting(double velocityRatio, int stages, double nozzleAngle, double rowCoefficient) {
        return velocityRatio / speedRatio(velocityRatio, stages, nozzleAngle, rowCoefficient);
    }

    private static double drop(double x, int stages, double nozzleAngle, double rowCoefficient) {
        double cos = Math.cos(nozzleAngle);
        double loss = 1 / (rowCoefficient * rowCoefficient) - 1;
        return loss + x * (2 * cos - x) + (1 + x * x - 2 * x * cos) / (2 * stages);
    }

    /** Solves x² = 2ν²·drop(x) for the positive root. */
    private static double speedRatio(double velocityRatio, int stages, double nozzleAngle, double rowCoefficient) {
        double nu2 = 2 * velocityRatio * Require.positive(CARD.id(), "velocity ratio (-)", velocityRatio);
        double cos = Math.cos(nozzleAngle);
        double loss = 1 / (rowCoefficient * rowCoefficient) - 1;
        double share = 1 / (2.0 * stages);
        double a = 1 + nu2 * (1 - share);
        double b = -2 * nu2 * cos * (1 - share);
        double c = -nu2 * (loss + share);
        return (-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a);
    }
}
