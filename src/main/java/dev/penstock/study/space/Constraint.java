package dev.penstock.study.space;

import dev.penstock.errors.InvalidInput;
import dev.penstock.numerics.optimum.Trial;
import dev.penstock.quantities.Notation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What a figure must not exceed, or not fall below.
 *
 * @param figure the figure
 * @param atMost whether the bound is from above
 * @param bound the bound, SI
 */
public record Constraint(StudyFigure figure, boolean atMost, double bound) {

    /** Slack of the tightest limit that a search aims at, so that what it finds does keep all limits (-). */
    private static final double INSIDE = 2 * Trial.TOLERANCE;

    /**
     * All limits of all engines. What it bounds is the slack of the tightest, so that a search is led to where they are kept.
     *
     * @return the constraint
     */
    public static Constraint withinLimits() {
        StudyFigure slack = new StudyFigure(
                CaseFigures.WITHIN_LIMITS,
                "slack of the tightest limit",
                Notation.PERCENT,
                false,
                answer -> OptionalDouble.of(answer.leastSlack()));
        return new Constraint(slack, false, INSIDE);
    }

    /** @return whether it stands for all limits of the hardware */
    public boolean ofLimits() {
        return figure.path().equals(CaseFigures.WITHIN_LIMITS);
    }

    /**
     * @param value value of the figure, SI
     * @return how far it is beyond the bound, over the bound (-); below zero if it is kept, infinite if there is none
     */
    public double excess(double value) {
        if (Double.isNaN(value)) {
            return Double.POSITIVE_INFINITY;
        }
        double scale = bound == 0 || ofLimits() ? 1 : Math.abs(bound);
        return (atMost ? value - bound : bound - value) / scale;
    }

    /**
     * @param value value of the figure, SI
     * @return whether the constraint is kept
     */
    public boolean kept(double value) {
        return excess(value) <= Trial.TOLERANCE;
    }

    /** @return it as it may be written again */
    public String text() {
        return ofLimits() ? CaseFigures.WITHIN_LIMITS : figure.path() + (atMost ? "<=" : ">=") + bound;
    }

    /** @return it for people */
    public String readable() {
        if (ofLimits()) {
            return "all limits kept";
        }
        Notation notation = figure.notation();
        return figure.title() + (atMost ? " at most " : " at least ") + notation.writeWithUnit(bound);
    }

    /**
     * @param constraints constraints of one study
     * @throws InvalidInput if two of them leave no value for a figure
     */
    public static void agree(List<Constraint> constraints) {
        Map<String, List<Constraint>> byFigure = new LinkedHashMap<>();
        constraints.forEach(c -> byFigure.computeIfAbsent(c.figure().path(), p -> new ArrayList<>())
                .add(c));
        byFigure.forEach((path, list) -> {
            double low = list.stream()
                    .filter(c -> !c.atMost())
                    .mapToDouble(Constraint::bound)
                    .max()
                    .orElse(Double.NEGATIVE_INFINITY);
            double high = list.stream()
                    .filter(Constraint::atMost)
                    .mapToDouble(Constraint::bound)
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
            if (low > high) {
                throw new InvalidInput(
                        "",
                        "--subject-to",
                        path + "<=" + high + " and " + path + ">=" + low,
                        "no value keeps both; take one away");
            }
        });
    }
}
