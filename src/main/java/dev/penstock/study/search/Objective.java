package dev.penstock.study.search;

import dev.penstock.study.space.StudyFigure;

/**
 * A figure that should be as small, or as large, as it can be.
 *
 * @param figure the figure
 * @param most whether it should be large
 */
public record Objective(StudyFigure figure, boolean most) {

    /**
     * @param value value of the figure, SI
     * @return what is to be small
     */
    double cost(double value) {
        return most ? -value : value;
    }

    /** @return what is wanted of it, for documents */
    public String goal() {
        return most ? "maximise" : "minimise";
    }

    /** @return what is wanted of it, for people */
    public String readable() {
        return (most ? "most " : "least ") + figure.title();
    }
}
