package dev.penstock.study.refine;

import dev.penstock.study.Axis;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Where a sweep over two inputs needs more values: between two of them where a figure bends, and where a solution ends. Common
 * practice, no source: how far a value lies from the straight line between its neighbours, over the spread of the figure.
 */
public final class GridRefinement {

    /** What is straighter than this needs no more values (-). */
    private static final double STRAIGHT = 0.01;
    /** An edge of what has a solution weighs as much as a bend over the whole spread (-). */
    private static final double EDGE = 1;

    private GridRefinement() {}

    /** A gap between two values of an axis, and how much is to be seen in it. */
    private record Gap(int axis, int after, double bend) {}

    /**
     * @param axes the two axes, each with numbers that rise or fall
     * @param figures figures that are to be drawn, at a combination of values
     * @param most most combinations of the finer grid
     * @return the axes with more values; the same axes where nothing bends, or there is no room
     */
    public static List<Axis> finer(List<Axis> axes, List<Function<List<String>, OptionalDouble>> figures, int most) {
        List<Gap> gaps = new ArrayList<>();
        for (Function<List<String>, OptionalDouble> figure : figures) {
            double[][] field = field(axes, figure);
            double spread = spread(field);
            for (int axis = 0; axis < 2; axis++) {
                double[] at = numbers(axes.get(axis));
                double[][] lines = axis == 0 ? turned(field) : field;
                for (int i = 0; i + 1 < at.length; i++) {
                    gaps.add(new Gap(axis, i, bend(at, lines, i, spread)));
                }
            }
        }
        List<Axis> finer = axes;
        for (Gap gap : gaps.stream()
                .filter(g -> g.bend() > STRAIGHT)
                .sorted(Comparator.comparingDouble(Gap::bend).reversed())
                .toList()) {
            List<Axis> next = split(finer, axes.get(gap.axis()), gap);
            if (points(next) <= most) {
                finer = next;
            }
        }
        return finer;
    }

    private static int points(List<Axis> axes) {
        return axes.get(0).values().size() * axes.get(1).values().size();
    }

    private static List<Axis> split(List<Axis> finer, Axis first, Gap gap) {
        Axis own = finer.get(gap.axis());
        String left = first.values().get(gap.after());
        int at = own.values().indexOf(left);
        String right = first.values().get(gap.after() + 1);
        if (!own.values().get(at + 1).equals(right)) {
            return finer;
        }
        List<Axis> next = new ArrayList<>(finer);
        next.set(gap.axis(), own.between(at));
        return next;
    }

    /** How far the figure bends at either end of a gap, along the worst line across it. */
    private static double bend(double[] at, double[][] lines, int after, double spread) {
        double worst = 0;
        for (double[] line : lines) {
            if (Double.isNaN(line[after]) != Double.isNaN(line[after + 1])) {
                worst = Math.max(worst, EDGE);
            }
            for (int i : new int[] {after, after + 1}) {
                if (i > 0 && i + 1 < at.length && spread > 0) {
                    double share = (at[i] - at[i - 1]) / (at[i + 1] - at[i - 1]);
                    double off = Math.abs(line[i] - (1 - share) * line[i - 1] - share * line[i + 1]) / spread;
                    worst = Double.isNaN(off) ? worst : Math.max(worst, off);
                }
            }
        }
        return worst;
    }

    private static double[] numbers(Axis axis) {
        return axis.values().stream()
                .mapToDouble(v -> Axis.numberOf(v).orElseThrow())
                .toArray();
    }

    private static double[][] field(List<Axis> axes, Function<List<String>, OptionalDouble> figure) {
        return axes.get(0).values().stream()
                .map(x -> axes.get(1).values().stream()
                        .mapToDouble(y -> figure.apply(List.of(x, y)).orElse(Double.NaN))
                        .toArray())
                .toArray(double[][]::new);
    }

    private static double spread(double[][] field) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double[] line : field) {
            for (double value : line) {
                if (!Double.isNaN(value)) {
                    low = Math.min(low, value);
                    high = Math.max(high, value);
                }
            }
        }
        // What nobody would read off a map is no spread.
        return high - low > 1e-6 * Math.max(Math.abs(low), Math.abs(high)) ? high - low : 0;
    }

    private static double[][] turned(double[][] field) {
        double[][] turned = new double[field[0].length][field.length];
        for (int i = 0; i < field.length; i++) {
            for (int j = 0; j < field[i].length; j++) {
                turned[j][i] = field[i][j];
            }
        }
        return turned;
    }
}
