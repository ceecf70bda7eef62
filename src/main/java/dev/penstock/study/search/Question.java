package dev.penstock.study.search;

import dev.penstock.study.space.Constraint;
import dev.penstock.study.space.StudyCase;
import dev.penstock.study.space.StudyFigure;
import dev.penstock.study.space.StudyPoint;
import dev.penstock.study.space.StudySpace;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What is asked of a case: what should be small or large, over which inputs, under which constraints.
 *
 * @param subject the case
 * @param space inputs that vary
 * @param objectives what should be small or large, one or more
 * @param constraints what must be kept
 * @param further figures to tell of beside those
 */
public record Question(
        StudyCase subject,
        StudySpace space,
        List<Objective> objectives,
        List<Constraint> constraints,
        List<StudyFigure> further) {

    public Question {
        objectives = List.copyOf(objectives);
        constraints = List.copyOf(constraints);
        further = List.copyOf(further);
    }

    /** @return the figures of objectives, constraints and what is told beside, in this order */
    public List<StudyFigure> figures() {
        List<StudyFigure> figures = new ArrayList<>();
        objectives.forEach(o -> figures.add(o.figure()));
        constraints.forEach(c -> figures.add(c.figure()));
        figures.addAll(further);
        return figures;
    }

    /**
     * @param point a point with the figures of this question
     * @return the value of each objective
     */
    public double[] costs(StudyPoint point) {
        return IntStream.range(0, objectives.size())
                .mapToDouble(k -> objectives.get(k).cost(point.figures()[k]))
                .toArray();
    }

    /**
     * @param point a point with the figures of this question
     * @return how far each constraint is missed
     */
    public double[] excess(StudyPoint point) {
        return IntStream.range(0, constraints.size())
                .mapToDouble(k -> constraints.get(k).excess(point.figures()[objectives.size() + k]))
                .toArray();
    }

    /**
     * @param point a point with the figures of this question
     * @return whether it has an answer that keeps all constraints
     */
    public boolean feasible(StudyPoint point) {
        return point.closes()
                && IntStream.range(0, objectives.size()).noneMatch(k -> Double.isNaN(point.figures()[k]))
                && IntStream.range(0, constraints.size())
                        .allMatch(k -> constraints.get(k).kept(point.figures()[objectives.size() + k]));
    }

    /** @return the point that the files themselves are, with no input changed */
    StudyPoint asFiled() {
        return subject.evaluate(new StudySpace(List.of()), new double[0], figures());
    }
}
