package dev.penstock.claims.figure;

import dev.penstock.provenance.Figure;
import dev.penstock.quantities.Notation;
import dev.penstock.study.space.CaseAnswer;
import dev.penstock.study.space.StudyFigure;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A number that a candidate publishes.
 *
 * @param path path, ending in the SI unit
 * @param title name for people
 * @param notation how people read it
 * @param of its value of a candidate, SI; empty where that has none
 */
public record ClaimFigure(String path, String title, Notation notation, Function<Candidate, OptionalDouble> of) {

    /** A figure that every concept has. */
    static ClaimFigure of(StudyFigure figure) {
        return new ClaimFigure(figure.path(), figure.title(), figure.notation(), c -> figure.of()
                .apply(new CaseAnswer(List.of(c.balance()), c.vehicle())));
    }

    static <T> ClaimFigure of(String path, Figure<T> figure, Function<Candidate, java.util.Optional<T>> owner) {
        return new ClaimFigure(path, figure.title(), figure.notation(), c -> owner.apply(c)
                .map(figure::number)
                .orElse(OptionalDouble.empty()));
    }
}
