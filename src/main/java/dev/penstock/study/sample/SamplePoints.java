package dev.penstock.study.sample;

import dev.penstock.errors.InvalidInput;
import dev.penstock.numerics.design.DesignKind;
import dev.penstock.numerics.design.GridDesign;
import dev.penstock.numerics.design.LatinHypercube;
import dev.penstock.numerics.design.ScrambledSobol;
import dev.penstock.numerics.design.UnitDesign;
import dev.penstock.study.VaryText;
import dev.penstock.study.space.CasePaths;
import dev.penstock.study.space.StudySpace;
import dev.penstock.study.space.Variable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** The points of a study: which inputs vary, and which of their values go together. */
final class SamplePoints {

    private static final int MOST_INPUTS = 1000;

    private final StudySpace space;
    private final Supplier<UnitDesign> design;

    private SamplePoints(StudySpace space, Supplier<UnitDesign> design) {
        this.space = space;
        this.design = design;
    }

    /**
     * @param paths reads the inputs of a case
     * @param request what is asked for
     * @return the points
     * @throws InvalidInput if an input cannot be varied so, or there are too many points
     */
    static SamplePoints of(CasePaths paths, SampleRequest request) {
        if (request.design() == DesignKind.GRID) {
            return grid(paths, request);
        }
        StudySpace space = paths.space(request.vary());
        if (space.size() > MOST_INPUTS) {
            throw new InvalidInput("", "--vary", space.size() + " inputs", "vary no more than " + MOST_INPUTS);
        }
        int points = request.points();
        return new SamplePoints(
                space,
                request.design() == DesignKind.SOBOL
                        ? () -> new ScrambledSobol(points, space.size(), request.seed())
                        : () -> new LatinHypercube(points, space.size(), request.seed()));
    }

    private static SamplePoints grid(CasePaths paths, SampleRequest request) {
        CasePaths.Counted counted = paths.counted(request.vary());
        StudySpace space = counted.space();
        List<Integer> counts = new ArrayList<>();
        long product = 1;
        int open = 0;
        for (int i = 0; i < space.size(); i++) {
            int own = space.variables().get(i).count();
            Optional<VaryText> said = Optional.ofNullable(
                    counted.said().get(space.variables().get(i).path()));
            if (own > 0 && said.filter(s -> s.count().isPresent()).isPresent()) {
                throw new InvalidInput(
                        "", "--vary", said.get().text(), "a grid takes each of its whole values; leave the count out");
            }
            counts.add(said.map(s -> s.count().orElse(own)).orElse(own));
            open += counts.get(i) == 0 ? 1 : 0;
            product = Math.min((long) UnitDesign.MOST_POINTS + 1, product * Math.max(1, counts.get(i)));
        }
        int each = open == 0 ? 1 : shared(request, product, open);
        counts.replaceAll(count -> count == 0 ? each : count);
        checkSize(request, product * Math.pow(each, open));
        List<GridDesign.Axis> axes = new ArrayList<>();
        for (int i = 0; i < counts.size(); i++) {
            Variable variable = space.variables().get(i);
            axes.add(new GridDesign.Axis(counts.get(i), variable.count() == 0));
        }
        return new SamplePoints(space, () -> new GridDesign(axes));
    }

    /** How many values each input gets that says none, so that the grid has no more points than were asked for. */
    private static int shared(SampleRequest request, long product, int open) {
        int each = 1;
        while (product * Math.pow(each + 1.0, open) <= request.points()) {
            each++;
        }
        if (each < 2) {
            throw new InvalidInput(
                    "",
                    "--points",
                    Integer.toString(request.points()),
                    "a grid needs two values of each input or more; give more points, or counts as in PATH=FROM..TO:COUNT");
        }
        return each;
    }

    private static void checkSize(SampleRequest request, double size) {
        int most = request.points() > 0 ? request.points() : UnitDesign.MOST_POINTS;
        if (size > most) {
            throw new InvalidInput(
                    "", "--vary", "more than " + most + " combinations", "vary fewer inputs or give lower counts");
        }
    }

    StudySpace space() {
        return space;
    }

    /** The points by their number, for one thread. */
    UnitDesign design() {
        return design.get();
    }
}
