package dev.penstock.study.search;

import dev.penstock.numerics.Cancellation;
import dev.penstock.numerics.optimum.Problem;
import dev.penstock.numerics.optimum.Trial;
import dev.penstock.study.space.StudyPoint;
import dev.penstock.study.space.Variable;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/** A question as the searches see it: a function of the unit cube, each place of which costs a balance. */
final class CaseProblem implements Problem {

    private final Question question;
    private final Tally tally;
    private final PointJournal journal;
    private final BooleanSupplier cancelled;

    CaseProblem(Question question, Tally tally, PointJournal journal, BooleanSupplier cancelled) {
        this.question = question;
        this.tally = tally;
        this.journal = journal;
        this.cancelled = cancelled;
    }

    @Override
    public int dimensions() {
        return question.space().size();
    }

    @Override
    public int count(int i) {
        return variable(i).count();
    }

    @Override
    public boolean named(int i) {
        return variable(i).named();
    }

    private Variable variable(int i) {
        return question.space().variables().get(i);
    }

    @Override
    public Trial at(double[] place) {
        StudyPoint point = point(place);
        Trial trial = new Trial(place, question.costs(point), question.excess(point));
        tally.one(trial);
        return trial;
    }

    /** The answer there, with all its figures. */
    StudyPoint point(double[] place) {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException("the study was stopped");
        }
        return Cancellation.during(
                cancelled,
                () -> journal.at(question, question.space(), question.space().values(place)));
    }
}
