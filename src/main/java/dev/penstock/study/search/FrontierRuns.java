package dev.penstock.study.search;

import dev.penstock.numerics.optimum.Frontier;
import dev.penstock.numerics.optimum.GeneticFrontier;
import dev.penstock.numerics.sampling.Workers;
import dev.penstock.study.Parallel;
import dev.penstock.study.Progress;
import dev.penstock.study.space.StudyPoint;
import dev.penstock.study.space.StudySpace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Searches the frontier of a case, and balances its points once more. */
public final class FrontierRuns {

    private final Workers workers;
    private final PointJournal journal;

    /** Keeps nothing. */
    public FrontierRuns() {
        this(Parallel.WORKERS, PointJournal.NONE);
    }

    /** @param journal keeps the points, and knows those of earlier runs */
    public FrontierRuns(PointJournal journal) {
        this(Parallel.WORKERS, journal);
    }

    FrontierRuns(Workers workers, PointJournal journal) {
        this.workers = workers;
        this.journal = journal;
    }

    /**
     * @param question what is asked, of two or three objectives
     * @param population points of a generation
     * @param generations generations after the first
     * @param seed seed of the random numbers
     * @param progress told of each point
     * @param cancelled asked before each point; once it says yes, the generations that are done are the answer
     * @return the frontier
     */
    public FrontierResult run(
            Question question,
            int population,
            int generations,
            long seed,
            Progress progress,
            BooleanSupplier cancelled) {
        StudySpace space = question.space();
        Tally tally = new Tally(
                progress, population * (1 + generations), question.objectives().get(0));
        CaseProblem problem = new CaseProblem(question, tally, journal, cancelled);
        StudyPoint filed = question.asFiled();
        Optional<double[]> from = question.subject().own(space).map(space::shares);
        Frontier frontier = new GeneticFrontier(problem, workers).search(from, population, generations, seed);
        StudyPoint[] again = new StudyPoint[frontier.points().size()];
        workers.forEach(
                again.length,
                i -> again[i] = question.subject()
                        .evaluate(space, space.values(frontier.points().get(i).place()), question.figures()));
        List<Double> reference = new ArrayList<>();
        for (int k = 0; k < question.objectives().size(); k++) {
            reference.add(question.objectives().get(k).cost(frontier.reference()[k]));
        }
        return new FrontierResult(
                question,
                filed,
                List.of(again).stream().filter(question::feasible).toList(),
                reference,
                frontier.growth(),
                frontier.evaluations(),
                seed,
                frontier.complete());
    }
}
