package dev.penstock.study.search;

import dev.penstock.numerics.variance.Screening;
import dev.penstock.numerics.variance.SobolIndices;
import dev.penstock.study.space.StudyCase;
import dev.penstock.study.space.StudyFigure;
import dev.penstock.study.space.StudySpace;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * Which inputs move which figures of a case.
 *
 * @param subject the case
 * @param space inputs whose indices were found
 * @param figures figures asked for; whether the case closes last
 * @param results what was found of each figure
 * @param screened effects of every input on every figure, by the input's path; empty if none was screened
 * @param failures how often each reason kept a point from closing
 * @param evaluations points asked for
 * @param seed seed of the random numbers
 */
public record SensitivityResult(
        StudyCase subject,
        StudySpace space,
        List<StudyFigure> figures,
        List<SobolIndices.Result> results,
        Map<String, List<Screening.Effect>> screened,
        Map<String, Integer> failures,
        int evaluations,
        long seed) {

    public SensitivityResult {
        figures = List.copyOf(figures);
        results = List.copyOf(results);
        screened = Collections.unmodifiableMap(screened);
        failures = Collections.unmodifiableMap(failures);
    }

    /** @return share of the points that close (-) */
    public double shareThatCloses() {
        return results.get(results.size() - 1).mean();
    }

    /** @return whether all points were asked */
    public boolean complete() {
        return results.get(0).complete();
    }
}
