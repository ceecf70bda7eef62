package dev.penstock.numerics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Points that fill the unit cube evenly: Sobol's sequence (Commons Math), the same at every run. Percentiles of a smooth
 * function settle with far fewer points than with random ones.
 */
public final class LowDiscrepancy {

    private LowDiscrepancy() {}

    /**
     * @param dimensions number of dimensions, 1 to 1000
     * @param count number of points
     * @return the points, each with a coordinate in (0, 1) per dimension; the corner at the origin is left out
     */
    public static List<List<Double>> points(int dimensions, int count) {
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(dimensions);
        sequence.nextVector();
        List<List<Double>> points = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            List<Double> point = new ArrayList<>(dimensions);
            for (double x : sequence.nextVector()) {
                point.add(x);
            }
            points.add(List.copyOf(point));
        }
        return List.copyOf(points);
    }

    /**
     * The same points, all moved by one random vector and put back into the cube where they leave it (Cranley and Patterson):
     * as even as before, and different for each state of the random numbers.
     *
     * @param dimensions number of dimensions, 1 to 1000
     * @param count number of points
     * @param random gives the vector, a number per dimension
     * @return the points, each with a coordinate in [0, 1) per dimension
     */
    public static List<double[]> shifted(int dimensions, int count, SplittableRandom random) {
        double[] shift = new double[dimensions];
        Arrays.setAll(shift, i -> random.nextDouble());
        List<double[]> points = new ArrayList<>(count);
        for (List<Double> point : points(dimensions, count)) {
            double[] place = new double[dimensions];
            Arrays.setAll(place, i -> (point.get(i) + shift[i]) % 1);
            points.add(place);
        }
        return points;
    }
}
