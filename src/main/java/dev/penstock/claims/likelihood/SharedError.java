package dev.penstock.claims.likelihood;

import dev.penstock.claims.file.Claim;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Claims whose predictions are off together: impulses in vacuum and at sea level, sea-level thrust and the flow for a thrust all follow one
 * combustion and one nozzle. What the surest of them is doubted by, as a share, all of them have in common; the rest is each one's own.
 * <pre>
 * C = diag(σᵢ² + sᵢ² − wᵢ²) + w wᵀ,  wᵢ = ± r pᵢ,  r = least of sᵢ/pᵢ,  − for the flow
 * ln L = −½ dᵀ C⁻¹ d − ½ ln(det C/Π σᵢ²)
 * </pre>
 * of values that are claimed; with one of them alone this is {@link Claim#logLikelihood}. The inverse of diagonal and product is that of
 * [sherman-1950]. Not thread-safe: one object gathers the claims of one candidate.
 */
final class SharedError {

    static final ModelCard CARD = new ModelCard(
            "claims.shared-error",
            "Likelihood of claims whose predictions are off together",
            "ln L = -d' C^-1 d/2 - ln(det C/prod sigma^2)/2, C = diag(sigma^2 + s^2 - w^2) + w w', w = r p",
            "vacuum and sea-level impulse, sea-level thrust, mass flow",
            "that they share as much as the surest is doubted by is a choice",
            List.of("sherman-1950"));

    private double least = Double.POSITIVE_INFINITY;
    private int count;
    private final int[] signs;
    private final double[] distances;
    private final double[] predictions;
    private final double[] sigmas;
    private final double[] doubts;

    SharedError(int most) {
        signs = new int[most];
        distances = new double[most];
        predictions = new double[most];
        sigmas = new double[most];
        doubts = new double[most];
    }

    /** Which way a figure goes with what all have in common; zero for a figure that has nothing of it. */
    static int sign(String path) {
        return switch (path) {
            case ChamberAlone.IMPULSE_VACUUM, ChamberAlone.IMPULSE_SEA_LEVEL, ChamberAlone.THRUST_SEA_LEVEL -> 1;
            case ChamberAlone.FLOW -> -1;
            default -> 0;
        };
    }

    /**
     * @param sign which way the figure goes
     * @param claim a claim of a value
     * @param predicted its prediction, SI
     * @param doubt standard deviation of the prediction, SI
     */
    void add(int sign, Claim claim, double predicted, double doubt) {
        signs[count] = sign;
        distances[count] = claim.surplus(predicted) * claim.sigma();
        predictions[count] = Math.abs(predicted);
        sigmas[count] = claim.sigma();
        doubts[count] = doubt;
        least = Math.min(least, predicted == 0 ? 0 : doubt / Math.abs(predicted));
        count++;
    }

    /** @return natural logarithm of the likelihood of all that were added, but for a constant */
    double logLikelihood() {
        double sum = 0;
        double along = 0;
        double common = 1;
        for (int i = 0; i < count; i++) {
            double w = signs[i] * least * predictions[i];
            double own = sigmas[i] * sigmas[i] + Math.max(0, doubts[i] * doubts[i] - w * w);
            sum += distances[i] * distances[i] / own + Math.log(own / (sigmas[i] * sigmas[i]));
            along += distances[i] * w / own;
            common += w * w / own;
        }
        return -0.5 * (sum - along * along / common + Math.log(common));
    }
}
