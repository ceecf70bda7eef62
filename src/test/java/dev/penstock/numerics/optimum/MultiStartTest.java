package dev.penstock.numerics.optimum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.numerics.sampling.Workers;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MultiStartTest {

    private static final double[] NONE = {};

    /** A function between two ends, the same for every coordinate; the objective first, then the excesses. */
    private record Box(int dimensions, double low, double high, Function<double[], double[]> function)
            implements Problem {

        double[] values(Trial trial) {
            return Arrays.stream(trial.place()).map(u -> low + u * (high - low)).toArray();
        }

        @Override
        public Trial at(double[] place) {
            double[] x = Arrays.stream(place).map(u -> low + u * (high - low)).toArray();
            double[] f = function.apply(x);
            return new Trial(place, new double[] {f[0]}, Arrays.copyOfRange(f, 1, f.length));
        }
    }

    private static double rosenbrock(double[] x) {
        return IntStream.range(0, x.length - 1)
                .mapToDouble(i -> 100 * Math.pow(x[i + 1] - x[i] * x[i], 2) + Math.pow(1 - x[i], 2))
                .sum();
    }

    /** Rosenbrock's valley: an identity, zero where every coordinate is one. */
    @Test
    void findsTheEndOfRosenbrocksValleyInTenDimensions() {
        Box box = new Box(10, -2, 3, x -> new double[] {rosenbrock(x)});
        Optimum optimum = new MultiStart(box, Workers.HERE).search(Optional.empty(), 2, 20_000, 1);
        assertThat(optimum.best().objective()).isLessThan(1e-9);
        Arrays.stream(box.values(optimum.best())).forEach(x -> assertThat(x).isCloseTo(1, within(1e-4)));
    }

    /**
     * Problem 71 of Hock and Schittkowski, Test Examples for Nonlinear Programming Codes (1981): minimum 17.0140173 at
     * (1, 4.743, 3.821, 1.379). Its equality is written as two bounds.
     */
    private static final Box HS71 = new Box(4, 1, 5, x -> {
        double squares = Arrays.stream(x).map(v -> v * v).sum();
        return new double[] {
            x[0] * x[3] * (x[0] + x[1] + x[2]) + x[2],
            (25 - x[0] * x[1] * x[2] * x[3]) / 25,
            (squares - 40) / 40,
            (40 - squares) / 40
        };
    });

    @Test
    void solvesAPublishedProblemWithConstraints() {
        Optimum optimum = new MultiStart(HS71, Workers.HERE).search(Optional.empty(), 3, 3000, 1);
        assertThat(optimum.best().feasible()).isTrue();
        assertThat(optimum.best().objective()).isCloseTo(17.0140173, within(1e-4));
        double[] expected = {1, 4.742999, 3.821151, 1.379408};
        double[] found = HS71.values(optimum.best());
        IntStream.range(0, 4).forEach(i -> assertThat(found[i]).isCloseTo(expected[i], within(2e-3)));
        assertThat(optimum.starts()).anyMatch(Optimum.Start::smooth);
    }

    /**
     * Split of 9.3 km/s over three stages for the least start mass, m0/m_pay = Π (1 − ε)/(1/n − ε) with n = exp(Δv/v_e). By
     * Lagrange's multiplier v_e (1 − ε n) is the same of every stage at the optimum: an identity (Vertregt, A method for
     * calculating the mass ratios of step-rockets, J. Brit. Interplanet. Soc. 15, 1956, from memory).
     */
    @Test
    void findsTheClosedSplitOfStages() {
        double[] exhaust = {2900, 3300, 4400};
        double[] structure = {0.06, 0.09, 0.12};
        Box box = new Box(2, 0.05, 0.9, shares -> {
            double last = 1 - shares[0] - shares[1];
            double[] all = {shares[0], shares[1], last};
            double mass = 1;
            for (int i = 0; i < 3; i++) {
                double carried = Math.exp(-9300 * all[i] / exhaust[i]) - structure[i];
                if (carried <= 0 || all[i] <= 0) {
                    return new double[] {Double.NaN};
                }
                mass *= (1 - structure[i]) / carried;
            }
            return new double[] {mass};
        });
        double[] found = box.values(new MultiStart(box, Workers.HERE)
                .search(Optional.empty(), 4, 1000, 1)
                .best());
        double[] shares = {found[0], found[1], 1 - found[0] - found[1]};
        double[] multiplier = IntStream.range(0, 3)
                .mapToDouble(i -> exhaust[i] * (1 - structure[i] * Math.exp(9300 * shares[i] / exhaust[i])))
                .toArray();
        assertThat(multiplier[1]).isCloseTo(multiplier[0], within(1e-3 * multiplier[0]));
        assertThat(multiplier[2]).isCloseTo(multiplier[0], within(1e-3 * multiplier[0]));
    }

    @Test
    void theSameSeedGivesTheSameBitsOnTwoThreads() {
        Workers two = (count, work) -> IntStream.range(0, count).parallel().forEach(work);
        Optimum here = new MultiStart(HS71, Workers.HERE).search(Optional.empty(), 2, 400, 7);
        Optimum there = new MultiStart(HS71, two).search(Optional.empty(), 2, 400, 7);
        assertThat(there.best().place()).isEqualTo(here.best().place());
        assertThat(there.evaluations()).isEqualTo(here.evaluations());
        Optimum other = new MultiStart(HS71, Workers.HERE).search(Optional.empty(), 2, 400, 8);
        assertThat(other.best().place()).isNotEqualTo(here.best().place());
    }

    /** (n − 7)² + (x − 0.3)², and ten more for the first of two names: an identity. */
    private static final Problem MIXED = new Problem() {
        @Override
        public int dimensions() {
            return 3;
        }

        @Override
        public int count(int i) {
            return new int[] {0, 12, 2}[i];
        }

        @Override
        public boolean named(int i) {
            return i == 2;
        }

        @Override
        public Trial at(double[] place) {
            double n = Math.floor(12 * place[1]);
            double name = place[2] < 0.5 ? 10 : 0;
            return new Trial(place, new double[] {Math.pow(n - 7, 2) + Math.pow(place[0] - 0.3, 2) + name}, NONE);
        }
    };

    @Test
    void findsWholeNumbersAndTriesEveryName() {
        Optimum optimum = new MultiStart(MIXED, Workers.HERE).search(Optional.empty(), 1, 400, 3);
        assertThat(optimum.best().objective()).isLessThan(1e-9);
        assertThat(optimum.best().place()[1]).isEqualTo(7.5 / 12);
        assertThat(optimum.starts()).hasSizeGreaterThanOrEqualTo(2);
    }

    @Test
    void saysThatNothingKeepsTheConstraints() {
        Box box = new Box(2, 0, 1, x -> new double[] {x[0], 2 - x[0]});
        Optimum optimum = new MultiStart(box, Workers.HERE).search(Optional.empty(), 1, 200, 1);
        assertThat(optimum.best().feasible()).isFalse();
        assertThat(optimum.best().place()[0]).isCloseTo(1, within(1e-3));
    }

    @Test
    void goesAroundPlacesWithoutAnAnswer() {
        Box box =
                new Box(2, 0, 1, x -> new double[] {
                    x[0] > 0.4 && x[0] < 0.5 ? Double.NaN : Math.pow(x[0] - 0.6, 2) + Math.pow(x[1] - 0.2, 2)
                });
        Optimum optimum = new MultiStart(box, Workers.HERE).search(Optional.empty(), 3, 600, 1);
        assertThat(optimum.best().objective()).isLessThan(1e-8);
    }

    @Test
    void keepsWhatIsDoneWhenItIsStopped() {
        AtomicInteger asked = new AtomicInteger();
        Problem stopped = new Box(2, 0, 1, x -> {
            if (asked.incrementAndGet() > 60) {
                throw new CancellationException();
            }
            return new double[] {x[0] + x[1]};
        });
        Optimum optimum = new MultiStart(stopped, Workers.HERE).search(Optional.empty(), 2, 400, 1);
        assertThat(optimum.complete()).isFalse();
        assertThat(optimum.best().answered()).isTrue();
        asked.set(1000);
        assertThatThrownBy(() -> new MultiStart(stopped, Workers.HERE).search(Optional.empty(), 2, 400, 1))
                .isInstanceOf(CancellationException.class);
    }
}
