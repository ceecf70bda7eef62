package dev.penstock.study.search;

import dev.penstock.study.space.StudyPoint;
import java.util.List;

/**
 * What one objective of a case costs of another.
 *
 * @param question what was asked
 * @param filed the case as its files are
 * @param points points that nothing dominates, by the first objective
 * @param reference the place from which the hypervolume counts, in the objectives' own signs, SI
 * @param growth hypervolume after each generation, in the product of the objectives' units
 * @param evaluations points tried
 * @param seed seed of the random numbers
 * @param complete whether the search came to its end
 */
public record FrontierResult(
        Question question,
        StudyPoint filed,
        List<StudyPoint> points,
        List<Double> reference,
        List<Double> growth,
        int evaluations,
        long seed,
        boolean complete) {

    public FrontierResult {
        points = List.copyOf(points);
        reference = List.copyOf(reference);
        growth = List.copyOf(growth);
    }

    /** @return hypervolume at the end */
    public double hypervolume() {
        return growth.isEmpty() ? 0 : growth.get(growth.size() - 1);
    }

    /**
     * The point that bulges farthest from the plane through the ends: giving a little more of one objective from there costs
     * much of another.
     * <pre>max (1 − Σ (f_k − best_k)/(worst_k − best_k))</pre>
     *
     * @return its place among the points; −1 with fewer than three
     */
    public int knee() {
        if (points.size() < 3) {
            return -1;
        }
        double[][] costs = points.stream().map(question::costs).toArray(double[][]::new);
        double[] low = costs[0].clone();
        double[] high = costs[0].clone();
        for (double[] point : costs) {
            for (int k = 0; k < point.length; k++) {
                low[k] = Math.min(low[k], point[k]);
                high[k] = Math.max(high[k], point[k]);
            }
        }
        int knee = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < costs.length; i++) {
            double sum = 0;
            for (int k = 0; k < low.length; k++) {
                sum += high[k] > low[k] ? (costs[i][k] - low[k]) / (high[k] - low[k]) : 0;
            }
            if (sum < least) {
                least = sum;
                knee = i;
            }
        }
        return knee;
    }
}
