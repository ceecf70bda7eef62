package dev.penstock.numerics.optimum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.numerics.sampling.Workers;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class GeneticFrontierTest {

    private record Of(int dimensions, Function<double[], Trial> function) implements Problem {
        @Override
        public Trial at(double[] place) {
            return function.apply(place);
        }
    }

    /** Zitzler, Deb and Thiele (2000), first function, in ten dimensions: the front is f2 = 1 − √f1. */
    private static final Problem ZDT1 = new Of(10, x -> {
        double g = 1 + 9 * Arrays.stream(x).skip(1).average().orElseThrow();
        return new Trial(x, new double[] {x[0], g * (1 - Math.sqrt(x[0] / g))}, new double[0]);
    });

    @Test
    void findsAPublishedFront() {
        Frontier frontier = new GeneticFrontier(ZDT1, Workers.HERE).search(Optional.empty(), 60, 200, 1);
        List<double[]> points =
                frontier.points().stream().map(Trial::objectives).toList();
        assertThat(points).hasSizeGreaterThan(50);
        assertThat(points).allSatisfy(p -> assertThat(p[1]).isCloseTo(1 - Math.sqrt(p[0]), within(0.02)));
        // ∫(1 − (1 − √x)) dx from 0 to 1 is 2/3: the closed front below (1, 1).
        assertThat(Hypervolume.of(points, new double[] {1, 1})).isCloseTo(2.0 / 3, within(0.01));
        assertThat(frontier.growth()).isSorted().hasSize(201);
    }

    /**
     * Binh and Korn (1997): f1 = 4x² + 4y², f2 = (x − 5)² + (y − 5)² under two circles. On the front x = y up to 3, then
     * y = 3 and x up to 5: their paper, and Deb et al. (2002).
     */
    private static final Problem BINH_KORN = new Of(2, u -> {
        double x = 5 * u[0];
        double y = 3 * u[1];
        return new Trial(
                u, new double[] {4 * x * x + 4 * y * y, Math.pow(x - 5, 2) + Math.pow(y - 5, 2)}, new double[] {
                    (Math.pow(x - 5, 2) + y * y - 25) / 25, (7.7 - Math.pow(x - 8, 2) - Math.pow(y + 3, 2)) / 7.7
                });
    });

    @Test
    void findsAPublishedFrontUnderConstraints() {
        Frontier frontier = new GeneticFrontier(BINH_KORN, Workers.HERE).search(Optional.empty(), 60, 100, 1);
        assertThat(frontier.points()).hasSizeGreaterThan(50).allMatch(Trial::feasible);
        for (Trial trial : frontier.points()) {
            double f1 = trial.objectives()[0];
            double closed =
                    f1 <= 72 ? 2 * Math.pow(Math.sqrt(f1 / 8) - 5, 2) : Math.pow(Math.sqrt(f1 / 4 - 9) - 5, 2) + 4;
            assertThat(trial.objectives()[1]).isBetween(closed - 1e-9, closed + 0.5);
        }
        double[] ends =
                frontier.points().stream().mapToDouble(t -> t.objectives()[0]).toArray();
        assertThat(ends[0]).isLessThan(1);
        assertThat(ends[ends.length - 1]).isGreaterThan(130);
    }

    @Test
    void theSameSeedGivesTheSameBitsOnTwoThreads() {
        Workers two = (count, work) -> IntStream.range(0, count).parallel().forEach(work);
        Frontier here = new GeneticFrontier(BINH_KORN, Workers.HERE).search(Optional.empty(), 20, 10, 4);
        Frontier there = new GeneticFrontier(BINH_KORN, two).search(Optional.empty(), 20, 10, 4);
        assertThat(there.growth()).isEqualTo(here.growth());
        assertThat(there.points().stream().map(Trial::place).toArray(double[][]::new))
                .isDeepEqualTo(here.points().stream().map(Trial::place).toArray(double[][]::new));
    }

    @Test
    void saysThatNoPlaceKeepsTheConstraints() {
        Problem never = new Of(2, x -> new Trial(x, new double[] {x[0], x[1]}, new double[] {1 + x[0]}));
        Frontier frontier = new GeneticFrontier(never, Workers.HERE).search(Optional.empty(), 10, 5, 1);
        assertThat(frontier.points()).isEmpty();
        assertThat(frontier.hypervolume()).isZero();
    }

    /** By hand: two boxes of 2 × 1 and 1 × 2 that share 1 × 1; in three dimensions the same with heights 1 and 2. */
    @Test
    void volumesAreThoseOfBoxes() {
        assertThat(Hypervolume.of(List.of(new double[] {0, 1}, new double[] {1, 0}), new double[] {2, 2}))
                .isEqualTo(3);
        assertThat(Hypervolume.of(List.of(new double[] {0, 1, 1}, new double[] {1, 0, 0}), new double[] {2, 2, 2}))
                .isEqualTo(2 + 3);
        assertThat(Hypervolume.of(List.of(new double[] {3, 0}), new double[] {2, 2}))
                .isZero();
    }
}
