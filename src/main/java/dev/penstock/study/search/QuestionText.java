package dev.penstock.study.search;

import dev.penstock.errors.InvalidInput;
import dev.penstock.study.space.CasePaths;
import dev.penstock.study.space.StudyCase;
import java.util.ArrayList;
import java.util.List;

/**
 * A question as somebody writes it, on a command line, in a file or on a page.
 *
 * @param vary inputs to vary
 * @param minimise figures that should be small
 * @param maximise figures that should be large
 * @param subjectTo constraints
 * @param figures figures to tell of beside those; of a sensitivity those to explain
 */
public record QuestionText(
        List<String> vary, List<String> minimise, List<String> maximise, List<String> subjectTo, List<String> figures) {

    private static final String FIGURES = "--figures";

    public QuestionText {
        vary = List.copyOf(vary);
        minimise = List.copyOf(minimise);
        maximise = List.copyOf(maximise);
        subjectTo = List.copyOf(subjectTo);
        figures = List.copyOf(figures);
    }

    /**
     * @param subject the case
     * @return the question, of one objective
     * @throws InvalidInput if something asked for cannot be used
     */
    public Question optimise(StudyCase subject) {
        return question(subject, 1, 1);
    }

    /**
     * @param subject the case
     * @return the question, of two or three objectives
     * @throws InvalidInput if something asked for cannot be used
     */
    public Question frontier(StudyCase subject) {
        return question(subject, 2, 3);
    }

    /**
     * @param subject the case
     * @return the figures to explain, one at least, and no objective
     * @throws InvalidInput if something asked for cannot be used
     */
    public Question sensitivity(StudyCase subject) {
        CasePaths paths = subject.paths();
        if (figures.isEmpty()) {
            throw new InvalidInput(
                    "", FIGURES, "missing", "write figures to explain, for example engine.isp_vacuum_s,engine.mass_kg");
        }
        return new Question(subject, paths.space(vary), List.of(), List.of(), paths.figures(FIGURES, figures));
    }

    private Question question(StudyCase subject, int least, int most) {
        CasePaths paths = subject.paths();
        int count = minimise.size() + maximise.size();
        if (count < least || count > most) {
            throw new InvalidInput(
                    "",
                    "number of objectives",
                    String.valueOf(count),
                    least == most
                            ? "write one: --minimise FIGURE or --maximise FIGURE"
                            : "write " + least + " or " + most + ", for example --minimise engine.mass_kg --maximise"
                                    + " engine.isp_vacuum_s");
        }
        List<Objective> objectives = new ArrayList<>();
        paths.figures("--minimise", minimise).forEach(f -> objectives.add(new Objective(f, false)));
        paths.figures("--maximise", maximise).forEach(f -> objectives.add(new Objective(f, true)));
        return new Question(
                subject, paths.space(vary), objectives, paths.constraints(subjectTo), paths.figures(FIGURES, figures));
    }
}
