package dev.penstock.reports.study;

import dev.penstock.quantities.Notation;
import dev.penstock.quantities.Scale;

/** An axis that shows a figure in the unit in which its reader reads it. */
record FigureAxis(String label, Scale scale) {

    static FigureAxis of(String title, Notation notation) {
        Scale scale = notation.axis();
        boolean plain = scale.unit().isEmpty() && scale.size() == 1;
        return new FigureAxis(
                plain && !notation.siUnit().isEmpty() ? title + " (" + notation.siUnit() + ")" : scale.label(title),
                scale);
    }

    /**
     * @param si value in SI
     * @return its place on the axis
     */
    double at(double si) {
        return scale.of(si);
    }
}
