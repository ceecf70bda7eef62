package dev.penstock.numerics.optimum;

import dev.penstock.provenance.ModelCard;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.vector.constrained.InequalityConstraint;
import org.hipparchus.optim.nonlinear.vector.constrained.SQPOptimizerS;
import org.hipparchus.optim.nonlinear.vector.constrained.SQPOption;
import org.hipparchus.optim.nonlinear.vector.constrained.TwiceDifferentiableFunction;

/**
 * Finishes a search where objective and constraints are smooth: sequential quadratic programming (Hipparchus) over the
 * continuous coordinates, slopes by central differences. Where they are not, or the programme fails, nothing is lost: the
 * state keeps the best that was tried.
 */
final class SmoothFinish {

    static final ModelCard CARD = new ModelCard(
            "numerics.sequential-quadratic",
            "Sequential quadratic programming on differences",
            "min grad f . d + d B d/2, e + grad e . d <= 0",
            "smooth objectives and constraints, continuous coordinates",
            "slopes by central differences over 1e-4 of each range",
            List.of("schittkowski-1985"));

    private static final double STEP = 1e-4;
    private static final int ITERATIONS = 60;

    private final SearchState state;
    private final Penalty penalty;
    private final List<Integer> free;
    private final double[] from;

    private double[] lastPlace = {};
    private double[] lastValues = {};
    private double[] lastSlopePlace = {};
    private double[][] lastSlopes = {};

    /** A finish that goes on from a place. */
    SmoothFinish(SearchState state, Penalty penalty, List<Integer> free, double[] from) {
        this.state = state;
        this.penalty = penalty;
        this.free = free;
        this.from = from.clone();
    }

    /** A place without an answer: the programme ends there. */
    private static final class NoAnswer extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NoAnswer() {
            super("no answer", null, false, false);
        }
    }

    void run() {
        int n = free.size();
        double[] start = new double[n];
        for (int i = 0; i < n; i++) {
            start[i] = from[free.get(i)];
        }
        SQPOption option = new SQPOption();
        option.setMaxLineSearchIteration(20);
        option.setEps(1e-9);
        try {
            RealVector end = new SQPOptimizerS()
                    .optimize(
                            new MaxIter(ITERATIONS),
                            new MaxEval(ITERATIONS * 50),
                            new InitialGuess(start),
                            new ObjectiveFunction(new Objective()),
                            new Kept(),
                            option)
                    .getX();
            values(end.toArray());
        } catch (CancellationException stopped) {
            throw stopped;
        } catch (RuntimeException failed) {
            // Hipparchus ends a programme without a solution in several ways, with a null of its own among them.
            // What was tried on the way counts all the same.
        }
    }

    /** The objective, then the excess of each constraint. */
    private double[] values(double[] x) {
        if (!Arrays.equals(x, lastPlace)) {
            double[] place = from.clone();
            for (int i = 0; i < x.length; i++) {
                if (!Double.isFinite(x[i])) {
                    throw new NoAnswer();
                }
                place[free.get(i)] = x[i];
            }
            Trial trial = state.at(place);
            if (!trial.answered()) {
                throw new NoAnswer();
            }
            double[] values = new double[1 + trial.excess().length];
            values[0] = penalty.scaled(trial.objective());
            System.arraycopy(trial.excess(), 0, values, 1, trial.excess().length);
            lastPlace = x.clone();
            lastValues = values;
        }
        return lastValues;
    }

    /** A row for each of the values. */
    private double[][] slopes(double[] x) {
        if (!Arrays.equals(x, lastSlopePlace)) {
            double[] here = values(x);
            double[][] slopes = new double[here.length][x.length];
            for (int i = 0; i < x.length; i++) {
                double[] low = x.clone();
                double[] high = x.clone();
                low[i] = Math.max(0, Math.min(1 - STEP, x[i] - STEP));
                high[i] = Math.min(1, Math.max(STEP, x[i] + STEP));
                double[] below = values(low);
                double[] above = values(high);
                for (int k = 0; k < here.length; k++) {
                    slopes[k][i] = (above[k] - below[k]) / (high[i] - low[i]);
                }
            }
            lastSlopePlace = x.clone();
            lastSlopes = slopes;
        }
        return lastSlopes;
    }

    private final class Objective extends TwiceDifferentiableFunction {

        @Override
        public int dim() {
            return free.size();
        }

        @Override
        public double value(RealVector x) {
            return values(x.toArray())[0];
        }

        @Override
        public RealVector gradient(RealVector x) {
            return new ArrayRealVector(slopes(x.toArray())[0], true);
        }

        @Override
        public RealMatrix hessian(RealVector x) {
            throw new IllegalStateException("the programme builds its own");
        }
    }

    /** Constraints and ends, each zero or more where it is kept. */
    private final class Kept extends InequalityConstraint {

        Kept() {
            super(new ArrayRealVector(state.best().excess().length + 2 * free.size()));
        }

        @Override
        public int dim() {
            return free.size();
        }

        @Override
        public RealVector value(RealVector x) {
            double[] values = values(x.toArray());
            int n = free.size();
            double[] kept = new double[values.length - 1 + 2 * n];
            for (int k = 1; k < values.length; k++) {
                kept[k - 1] = -values[k];
            }
            for (int i = 0; i < n; i++) {
                kept[values.length - 1 + 2 * i] = x.getEntry(i);
                kept[values.length + 2 * i] = 1 - x.getEntry(i);
            }
            return new ArrayRealVector(kept, false);
        }

        @Override
        public RealMatrix jacobian(RealVector x) {
            double[][] slopes = slopes(x.toArray());
            int n = free.size();
            double[][] rows = new double[slopes.length - 1 + 2 * n][n];
            for (int k = 1; k < slopes.length; k++) {
                for (int i = 0; i < n; i++) {
                    rows[k - 1][i] = -slopes[k][i];
                }
            }
            for (int i = 0; i < n; i++) {
                rows[slopes.length - 1 + 2 * i][i] = 1;
                rows[slopes.length + 2 * i][i] = -1;
            }
            return new Array2DRowRealMatrix(rows, false);
        }
    }
}
