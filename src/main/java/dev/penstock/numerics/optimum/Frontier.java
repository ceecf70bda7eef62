package dev.penstock.numerics.optimum;

import java.util.List;

/**
 * What a search for trade-offs found.
 *
 * @param points feasible places that nothing dominates, by their first objective; none if no place keeps the constraints
 * @param reference place from which the hypervolume counts: the worst of each objective among the first generation that had
 *     feasible places
 * @param growth hypervolume after each generation, in the product of the objectives' units
 * @param evaluations places tried
 * @param complete whether all generations were done
 */
public record Frontier(List<Trial> points, double[] reference, List<Double> growth, int evaluations, boolean complete) {

    public Frontier {
        points = List.copyOf(points);
        growth = List.copyOf(growth);
    }

    /** @return hypervolume at the end; zero without a feasible place */
    public double hypervolume() {
        return growth.isEmpty() ? 0 : growth.get(growth.size() - 1);
    }
}
