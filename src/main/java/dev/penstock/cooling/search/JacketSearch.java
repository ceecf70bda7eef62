package dev.penstock.cooling.search;

import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.ChannelRule;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cooling.wall.WallDesign;
import dev.penstock.errors.PenstockException;
import dev.penstock.numerics.Minimizer;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Looks for the channels with the smallest pressure drop that keep every limit. Varied are the pitch, the share of it that
 * is channel and, where the design leaves it open, the wall thickness; the heights follow for each from the wall limits. Missed limits weigh as penalties, with a margin of 1.5 %. Powell's BOBYQA
 * (Commons Math) from two starts and again from the best; deterministic. Safe to share between threads if its solver is.
 */
public final class JacketSearch {

    public static final ModelCard CARD = new ModelCard(
            "cooling.search",
            "Channels of the smallest pressure drop",
            "min dp/pc + penalties of missed limits over pitch, width share, wall thickness",
            "milled, printed and tube channels of the kinds that the jacket solver knows",
            "a local minimum",
            List.of("common practice, no source"));

    private static final int STARTS = 2;
    private static final int COARSE_CELLS = 60;
    private static final double FIRST_RADIUS = 0.2;
    private static final double LAST_RADIUS = 0.01;
    private static final double WORTHWHILE = 0.005;
    private static final double MARGIN = 0.015;
    private static final double SLENDERNESS = 14;
    private static final double PENALTY = 30;
    private static final double IMPOSSIBLE = 100;
    private static final double[] LOW = {0.8e-3, 0.3, 0.3e-3};
    private static final double[] HIGH = {6e-3, 0.7, 1.5e-3};

    private final JacketSolver solver;

    /** @param solver jacket solver */
    public JacketSearch(JacketSolver solver) {
        this.solver = solver;
    }

    /**
     * One evaluation that bettered the best so far.
     *
     * @param evaluation number of the evaluation
     * @param pressureDrop pressure drop (Pa)
     * @param worstMargin smallest relative margin of all limits (-); negative while one is missed
     */
    public record Step(int evaluation, double pressureDrop, double worstMargin) {}

    /**
     * What the search found.
     *
     * @param best the case with the best channels written out
     * @param result that jacket on the full grid
     * @param start the jacket as the solver sizes it by itself
     * @param steps how the best improved
     * @param evaluations jackets tried
     */
    public record Outcome(JacketCase best, JacketResult result, JacketResult start, List<Step> steps, int evaluations) {

        public Outcome {
            steps = List.copyOf(steps);
        }

        /** @return whether every limit is kept */
        public boolean feasible() {
            return result.feasible();
        }
    }

    /**
     * @param question case; its channels' kind, roughness and, if given, count and wall thickness are kept, sizes are not
     * @param evaluations jackets to try at most
     * @param progress told after each
     * @return the best jacket found, whether or not it keeps every limit
     */
    public Outcome search(JacketCase question, int evaluations, SearchProgress progress) {
        ChannelLayout asked = question.design().channels();
        ChannelLayout open = new ChannelLayout(asked.kind(), asked.count(), List.of(), asked.roughness());
        JacketCase base = question.withDesign(question.design().withChannels(open));
        JacketResult start = solver.solve(base);
        Trial trial = new Trial(base, evaluations, progress);
        trial.consider(base.withDesign(base.design().withChannels(start.layout())), solver.solve(trial.coarse(base)));
        double pitch = Math.min(
                HIGH[0], Math.max(LOW[0], ChannelRule.of(question).usual().pitch()));
        int variables = question.design().wall().thickness().isPresent() ? 2 : 3;
        double[] usual = {0.7 * pitch, 0.6, 0.7e-3};
        double[] coarse = {pitch, 0.5, 0.5e-3};
        trial.descend(Arrays.copyOf(usual, variables), FIRST_RADIUS, evaluations / STARTS);
        trial.descend(Arrays.copyOf(coarse, variables), FIRST_RADIUS, evaluations / STARTS);
        while (evaluations - trial.count > 2 * variables + 3) {
            double before = trial.bestValue;
            trial.descend(trial.bestPoint(usual, variables), 0.5 * FIRST_RADIUS, evaluations - trial.count);
            if (!(trial.bestValue < before * (1 - WORTHWHILE))) {
                break;
            }
        }
        JacketCase best = trial.best.withDesign(
                trial.best.design().withCells(question.design().cells()));
        return new Outcome(best, solver.solve(best), start, trial.steps, trial.count);
    }

    /** The function to be minimised, and the best case it has seen. */
    private final class Trial {

        private final JacketCase base;
        private final int all;
        private final SearchProgress progress;
        private final List<Step> steps = new ArrayList<>();
        private JacketCase best;
        private double bestValue = Double.POSITIVE_INFINITY;
        private double[] bestPoint = {};
        private int count;

        private Trial(JacketCase base, int all, SearchProgress progress) {
            this.base = base;
            this.all = all;
            this.progress = progress;
        }

        private JacketCase coarse(JacketCase question) {
            return question.withDesign(question.design()
                    .withCells(Math.min(COARSE_CELLS, question.design().cells())));
        }

        private void descend(double[] start, double radius, int budget) {
            Minimizer.within(
                    "channels of a cooling jacket",
                    this::value,
                    start,
                    Arrays.copyOf(LOW, start.length),
                    Arrays.copyOf(HIGH, start.length),
                    radius,
                    LAST_RADIUS,
                    Math.max(2 * start.length + 3, budget));
        }

        private double[] bestPoint(double[] otherwise, int variables) {
            return Arrays.copyOf(bestPoint.length == 0 ? otherwise : bestPoint, variables);
        }

        private double value(double[] x) {
            count++;
            double before = bestValue;
            double value = tried(x);
            if (bestValue < before) {
                bestPoint = x.clone();
            }
            return value;
        }

        private double tried(double[] x) {
            progress.step(Math.min(count, all), all);
            try {
                WallDesign wall = base.design().wall();
                WallDesign walled = x.length < 3
                        ? wall
                        : new WallDesign(
                                wall.material(),
                                OptionalDouble.of(
                                        Math.min(x[2], 0.25 * base.gas().throatRadius())),
                                wall.closeoutMaterial(),
                                wall.closeoutThickness(),
                                wall.coating());
                JacketCase question = coarse(base.withDesign(base.design().withWall(walled)));
                ChannelRule.Shape shape = new ChannelRule.Shape(x[0], x[1], SLENDERNESS);
                JacketCase sized = solver.sized(question, new ChannelRule(shape, shape, MARGIN));
                return consider(sized, solver.solve(sized));
            } catch (PenstockException e) {
                // a shape through which the coolant does not pass is a bad value, not the end of the search
                return IMPOSSIBLE;
            }
        }

        private double consider(JacketCase question, JacketResult result) {
            double value = result.pressureDrop() / question.gas().gas().pressure();
            double worst = Double.POSITIVE_INFINITY;
            for (LimitCheck limit : result.limits()) {
                worst = Math.min(worst, limit.margin());
                double missed = Math.max(0, MARGIN - limit.margin());
                value += PENALTY * Math.min(1, missed * missed + 0.02 * missed);
            }
            if (value < bestValue) {
                bestValue = value;
                best = question;
                steps.add(new Step(count, result.pressureDrop(), worst));
            }
            return value;
        }
    }
}
