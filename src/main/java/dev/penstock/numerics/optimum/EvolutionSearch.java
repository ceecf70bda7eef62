package dev.penstock.numerics.optimum;

import dev.penstock.provenance.ModelCard;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.ConvergenceChecker;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.apache.commons.math3.random.Well19937c;

/** One start of the evolution strategy with covariance matrix adaptation (Commons Math) over the coordinates that may move. */
final class EvolutionSearch {

    static final ModelCard CARD = new ModelCard(
            "numerics.evolution",
            "Evolution strategy with covariance matrix adaptation, under an exact penalty",
            "x ~ m + sigma N(0, C); F = (f - f0)/s + rho sum max(0, e)",
            "a few up to some tens of coordinates; whole numbers are rounded; the best of several starts may still be a local one",
            "stops when its best has not moved by 1e-13 of the objective's spread over 10 + 30 n/lambda generations",
            List.of("hansen-2006"));

    private static final double SPREAD = 0.2;
    private static final double STILL = 1e-13;
    private static final int MOST_GENERATIONS = 2000;

    private final SearchState state;
    private final Penalty penalty;
    private final List<Integer> free;

    EvolutionSearch(SearchState state, Penalty penalty, List<Integer> free) {
        this.state = state;
        this.penalty = penalty;
        this.free = free;
    }

    /** Searches from a place, with random numbers of a seed, for so many evaluations at most. */
    void run(double[] from, long seed, int most) {
        int n = free.size();
        double[] start = new double[n];
        double[] sigma = new double[n];
        for (int i = 0; i < n; i++) {
            start[i] = from[free.get(i)];
            sigma[i] = SPREAD;
        }
        double[] zeros = new double[n];
        double[] ones = new double[n];
        Arrays.fill(ones, 1);
        int population = 4 + (int) (3 * Math.log(n));
        Still still = new Still(10 + (30 * n + population - 1) / population);
        CMAESOptimizer optimizer = new CMAESOptimizer(
                MOST_GENERATIONS, Double.NEGATIVE_INFINITY, true, 0, 0, new Well19937c(seed), false, still);
        try {
            optimizer.optimize(
                    new MaxEval(most),
                    new ObjectiveFunction(x -> value(from, start, x)),
                    GoalType.MINIMIZE,
                    new InitialGuess(start),
                    new SimpleBounds(zeros, ones),
                    new CMAESOptimizer.Sigma(sigma),
                    new CMAESOptimizer.PopulationSize(population));
        } catch (TooManyEvaluationsException enough) {
            // The state has kept the best.
        }
    }

    private double value(double[] from, double[] start, double[] x) {
        double[] place = from.clone();
        double away = 0;
        for (int i = 0; i < x.length; i++) {
            place[free.get(i)] = x[i];
            away += (x[i] - start[i]) * (x[i] - start[i]);
        }
        return penalty.of(state.at(place), Math.sqrt(away));
    }

    /** Says when nothing moves any more. */
    private static final class Still implements ConvergenceChecker<PointValuePair> {

        private final Deque<Double> recent = new ArrayDeque<>();
        private final int generations;

        Still(int generations) {
            this.generations = generations;
        }

        @Override
        public boolean converged(int iteration, PointValuePair previous, PointValuePair current) {
            recent.addLast(Math.min(current.getValue(), recent.isEmpty() ? Double.MAX_VALUE : recent.peekLast()));
            if (recent.size() > generations) {
                recent.removeFirst();
            }
            return recent.size() == generations && recent.peekFirst() - recent.peekLast() < STILL;
        }
    }
}
