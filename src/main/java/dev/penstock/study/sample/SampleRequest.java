package dev.penstock.study.sample;

import dev.penstock.errors.InvalidInput;
import dev.penstock.numerics.design.DesignKind;
import dev.penstock.numerics.design.UnitDesign;
import dev.penstock.study.StudyInputs;
import java.util.List;

/**
 * What somebody asks of a study of many points.
 *
 * @param name name of the study
 * @param vary inputs to vary: {@code path=from..to}, for a grid with {@code :count}, {@code path=value,value,...}, {@code
 *     path=spread} or {@code spreads}
 * @param design how the points lie
 * @param points number of points; 0 if a grid counts its values itself
 * @param seed chooses one of all designs of that kind; a grid has but one
 * @param batch points of a batch
 * @param figures further figures, by their paths
 * @param subjectTo constraints, as {@link dev.penstock.study.space.CasePaths#constraints} reads them
 */
public record SampleRequest(
        String name,
        List<String> vary,
        DesignKind design,
        int points,
        int seed,
        int batch,
        List<String> figures,
        List<String> subjectTo) {

    public SampleRequest {
        vary = List.copyOf(vary);
        figures = List.copyOf(figures);
        subjectTo = List.copyOf(subjectTo);
        boolean grid = design == DesignKind.GRID;
        if (points < (grid ? 0 : 1) || points > UnitDesign.MOST_POINTS) {
            throw new InvalidInput(
                    "",
                    "--points",
                    points == 0 ? "missing" : Integer.toString(points),
                    "write how many points, 1 to " + UnitDesign.MOST_POINTS);
        }
        if (batch < 1 || batch > StudyInputs.LARGEST_BATCH) {
            throw new InvalidInput("", "--batch", Integer.toString(batch), "write 1 to " + StudyInputs.LARGEST_BATCH);
        }
    }

    /**
     * @param points points of a batch
     * @return the same in other batches
     */
    public SampleRequest inBatchesOf(int points) {
        return new SampleRequest(name, vary, design, this.points, seed, points, figures, subjectTo);
    }
}
