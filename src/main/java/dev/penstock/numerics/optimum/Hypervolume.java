package dev.penstock.numerics.optimum;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The volume between a front and a reference that is worse in everything. Exact: rectangles side by side for two objectives,
 * slices of such for three.
 */
public final class Hypervolume {

    private Hypervolume() {}

    /**
     * @param points objectives of each point, all to be small
     * @param reference a place worse than the front; what lies beyond it counts for nothing
     * @return the volume, in the product of the objectives' units
     */
    public static double of(List<double[]> points, double[] reference) {
        List<double[]> inside =
                points.stream().filter(p -> within(p, reference)).toList();
        return switch (reference.length) {
            case 1 ->
                inside.stream().mapToDouble(p -> reference[0] - p[0]).max().orElse(0);
            case 2 -> area(inside, reference);
            case 3 -> volume(inside, reference);
            default -> throw new IllegalArgumentException("one to three objectives");
        };
    }

    private static boolean within(double[] point, double[] reference) {
        for (int k = 0; k < reference.length; k++) {
            if (!(point[k] < reference[k])) {
                return false;
            }
        }
        return true;
    }

    private static double area(List<double[]> points, double[] reference) {
        List<double[]> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparingDouble((double[] p) -> p[0]).thenComparingDouble(p -> p[1]));
        double sum = 0;
        double lowest = reference[1];
        for (double[] p : sorted) {
            if (p[1] < lowest) {
                sum += (reference[0] - p[0]) * (lowest - p[1]);
                lowest = p[1];
            }
        }
        return sum;
    }

    private static double volume(List<double[]> points, double[] reference) {
        List<double[]> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparingDouble(p -> p[2]));
        double sum = 0;
        for (int i = 0; i < sorted.size(); i++) {
            double above = i + 1 < sorted.size() ? sorted.get(i + 1)[2] : reference[2];
            double height = above - sorted.get(i)[2];
            sum += height > 0 ? height * area(sorted.subList(0, i + 1), reference) : 0;
        }
        return sum;
    }
}
