package dev.penstock.study.search;

import dev.penstock.errors.InvalidInput;
import dev.penstock.numerics.optimum.MultiStart;
import dev.penstock.numerics.optimum.Optimum;
import dev.penstock.numerics.sampling.Workers;
import dev.penstock.study.Parallel;
import dev.penstock.study.Progress;
import dev.penstock.study.space.StudyPoint;
import dev.penstock.study.space.StudySpace;
import dev.penstock.study.space.Variable;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Searches a case for its best point, and balances what it found once more. */
public final class OptimumRuns {

    private final Workers workers;
    private final PointJournal journal;

    /** Keeps nothing. */
    public OptimumRuns() {
        this(Parallel.WORKERS, PointJournal.NONE);
    }

    /** @param journal keeps the points, and knows those of earlier runs */
    public OptimumRuns(PointJournal journal) {
        this(Parallel.WORKERS, journal);
    }

    OptimumRuns(Workers workers, PointJournal journal) {
        this.workers = workers;
        this.journal = journal;
    }

    /**
     * @param space inputs that vary
     * @return how many points each start tries at most where nobody says so
     */
    public static int usualEvaluations(StudySpace space) {
        return Math.max(400, 120 * space.size());
    }

    /**
     * @param question what is asked, of one objective
     * @param starts number of starts
     * @param evaluations points that each start tries at most
     * @param seed seed of the random numbers
     * @param progress told of each point
     * @param cancelled asked before each point; once it says yes, the best so far is the answer
     * @return the best point
     * @throws InvalidInput if there are more combinations of names than can be tried one by one
     */
    public OptimumResult run(
            Question question, int starts, int evaluations, long seed, Progress progress, BooleanSupplier cancelled) {
        StudySpace space = question.space();
        check(question);
        Tally tally =
                new Tally(progress, starts * evaluations, question.objectives().get(0));
        CaseProblem problem = new CaseProblem(question, tally, journal, cancelled);
        StudyPoint filed = question.asFiled();
        Optional<double[]> from = question.subject().own(space).map(space::shares);
        Optimum optimum = new MultiStart(problem, workers).search(from, starts, evaluations, seed);
        StudyPoint best =
                question.subject().evaluate(space, space.values(optimum.best().place()), question.figures());
        Objective objective = question.objectives().get(0);
        List<OptimumResult.Start> each = optimum.starts().stream()
                .map(s -> new OptimumResult.Start(
                        space.values(s.from()),
                        space.values(s.best().place()),
                        objective.cost(s.best().objective()),
                        s.best().feasible(),
                        s.evaluations(),
                        s.smooth(),
                        s.steps().stream().map(step -> step(objective, step)).toList()))
                .toList();
        return new OptimumResult(question, filed, best, each, optimum.evaluations(), seed, optimum.complete());
    }

    private static OptimumResult.Step step(Objective objective, Optimum.Step step) {
        return new OptimumResult.Step(
                step.evaluations(),
                objective.cost(step.trial().objective()),
                step.trial().feasible());
    }

    /**
     * @param question what is to be asked
     * @throws InvalidInput if there are more combinations of names than can be tried one by one
     */
    public void check(Question question) {
        long combinations = question.space().variables().stream()
                .filter(Variable::named)
                .mapToLong(Variable::count)
                .reduce(1, (a, b) -> Math.min(a * b, 1_000_000));
        if (combinations > MultiStart.MOST_COMBINATIONS) {
            throw new InvalidInput(
                    "",
                    "--vary",
                    combinations + " combinations of listed values",
                    "at most " + MultiStart.MOST_COMBINATIONS + " can be tried; list fewer, or give ranges");
        }
    }
}
