package dev.penstock.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.NotConverged;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.numerics.BoundedSystemSolver.Solution;
import dev.penstock.numerics.BoundedSystemSolver.Unknown;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Test functions with roots known by construction: Moré, Garbow and Hillstrom, ACM TOMS 7(1), 1981. */
class BoundedSystemSolverTest {

    private static final List<String> TWO = List.of("first equation", "second equation");

    private static Unknown unknown(String name, double low, double high, double scale, double start) {
        return new Unknown(name, "-", low, high, scale, start);
    }

    /** Rosenbrock's function as a system, no. 1 of the collection: root (1, 1) from (-1.2, 1). */
    @Test
    void solvesTheRosenbrockSystem() {
        Solution root = new BoundedSystemSolver("Rosenbrock", 200)
                .solve(
                        List.of(unknown("x", -10, 10, 1, -1.2), unknown("y", -10, 10, 1, 1)),
                        TWO,
                        (x, r) -> {
                            r[0] = 10 * (x[1] - x[0] * x[0]);
                            r[1] = 1 - x[0];
                        },
                        1e-12);
        assertThat(root.values().get(0)).isCloseTo(1, within(1e-10));
        assertThat(root.values().get(1)).isCloseTo(1, within(1e-10));
        assertThat(root.evaluations()).isLessThan(100);
    }

    /** Powell's badly scaled function, no. 3 of the collection: root (1.098e-5, 9.106) from (0, 1). */
    @Test
    void solvesPowellsBadlyScaledSystem() {
        Solution root = new BoundedSystemSolver("Powell", 300)
                .solve(
                        List.of(unknown("x", 0, 1, 1e-5, 1e-6), unknown("y", 0, 100, 10, 1)),
                        TWO,
                        (x, r) -> {
                            r[0] = 1e4 * x[0] * x[1] - 1;
                            r[1] = Math.exp(-x[0]) + Math.exp(-x[1]) - 1.0001;
                        },
                        1e-10);
        assertThat(root.values().get(0)).isCloseTo(1.098e-5, within(1e-8));
        assertThat(root.values().get(1)).isCloseTo(9.106, within(1e-3));
    }

    /** The second root of x² = 4 lies outside the bounds; the logarithm has no value left of 0.5. */
    @Test
    void staysInsideBoundsAndShortensStepsThatFail() {
        Solution root = new BoundedSystemSolver("bounded", 100)
                .solve(
                        List.of(unknown("x", 0, 100, 1, 50), unknown("y", 0.1, 10, 1, 9)),
                        TWO,
                        (x, r) -> {
                            if (x[1] < 0.5) {
                                throw new OutsideValidity("test", "y (-)", x[1], "0.5 or more");
                            }
                            r[0] = x[0] * x[0] - 4;
                            r[1] = Math.log(x[1] - 0.49) - Math.log(0.51) + x[0] - 2;
                        },
                        1e-11);
        assertThat(root.values().get(0)).isCloseTo(2, within(1e-9));
        assertThat(root.values().get(1)).isCloseTo(1, within(1e-9));
    }

    @Test
    void aRootOnTheBoundIsFound() {
        Solution root = new BoundedSystemSolver("edge", 100)
                .solve(
                        List.of(unknown("x", 1, 5, 1, 3)),
                        List.of("equation"),
                        (x, r) -> r[0] = (x[0] - 1) * (x[0] + 3),
                        1e-12);
        assertThat(root.values().get(0)).isCloseTo(1, within(1e-10));
    }

    @Test
    void aChangedSystemIsSolvedAgainInFewEvaluations() {
        BoundedSystemSolver solver = new BoundedSystemSolver("warm", 100);
        double[] level = {2};
        BoundedSystemSolver.Equations equations = (x, r) -> {
            r[0] = x[0] * x[0] + x[1] - level[0];
            r[1] = x[0] * x[1] - 0.5 * level[0];
        };
        List<Unknown> unknowns = List.of(unknown("x", 0, 10, 1, 1.2), unknown("y", 0, 10, 1, 0.9));
        Solution first = solver.solve(unknowns, TWO, equations, 1e-11);
        level[0] = 2.001;
        List<Unknown> warm = List.of(
                unknowns.get(0).startingAt(first.values().get(0)),
                unknowns.get(1).startingAt(first.values().get(1)));
        Solution second = solver.solve(warm, TWO, equations, 1e-11);
        assertThat(second.evaluations()).isLessThanOrEqualTo(6);
    }

    @Test
    void aSystemWithoutRootNamesTheWorstEquationAndTheBound() {
        assertThatThrownBy(() -> new BoundedSystemSolver("no root", 100)
                        .solve(
                                List.of(unknown("x", 0, 1, 1, 0.2), unknown("y", 0, 1, 1, 0.2)),
                                TWO,
                                (x, r) -> {
                                    r[0] = x[0] - 3;
                                    r[1] = x[1] - 0.5;
                                },
                                1e-10))
                .isInstanceOf(NotConverged.class)
                .hasMessageContaining("first equation")
                .hasMessageContaining("x is on its bound 1");
    }

    @Test
    void aSystemWithoutUnknownsIsSolvedAlready() {
        assertThat(new BoundedSystemSolver("empty", 10)
                        .solve(List.of(), List.of(), (x, r) -> {}, 1e-10)
                        .values())
                .isEmpty();
    }

    /** Effort by count: steps lengthen while they pay, corrections of rank one spare slopes, and both cost what they did. */
    @Test
    void awayFromTheRootStepsLengthen() {
        Solution far = new BoundedSystemSolver("far", 100)
                .solve(
                        List.of(unknown("x", -1e9, 1e9, 1, 0), unknown("y", -1e9, 1e9, 1, 0)),
                        TWO,
                        (x, r) -> {
                            r[0] = (x[0] - 8) / 8;
                            r[1] = (x[1] + x[0] - 11) / 8;
                        },
                        1e-10);
        assertThat(far.values().get(0)).isCloseTo(8, within(1e-8));
        assertThat(far.values().get(1)).isCloseTo(3, within(1e-8));
        assertThat(far.evaluations()).isLessThanOrEqualTo(30);
        Solution curve = new BoundedSystemSolver("curve", 100)
                .solve(
                        List.of(unknown("x", -50, 50, 1, 0.5), unknown("y", -50, 50, 1, 2)),
                        TWO,
                        (x, r) -> {
                            r[0] = x[0] * x[0] + x[1] * x[1] - 25;
                            r[1] = Math.exp(0.3 * x[0]) - x[1];
                        },
                        1e-10);
        assertThat(Math.hypot(curve.values().get(0), curve.values().get(1))).isCloseTo(5, within(1e-9));
        assertThat(curve.evaluations()).isLessThanOrEqualTo(20);
        assertThat(curve.iterations()).isLessThanOrEqualTo(13);
    }

    /** Broyden's tridiagonal function of six unknowns, no. 30 of the collection with a weaker bend; effort by count. */
    @Test
    void solvesAChainOfSixUnknowns() {
        List<Unknown> unknowns = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            unknowns.add(unknown("x" + i, -20, 20, 2, 1 + 0.5 * i));
            names.add("equation " + i);
        }
        Solution chain = new BoundedSystemSolver("chain", 500)
                .solve(
                        unknowns,
                        names,
                        (x, r) -> {
                            for (int i = 0; i < 6; i++) {
                                double before = i == 0 ? 0 : x[i - 1];
                                double behind = i == 5 ? 0 : x[i + 1];
                                r[i] = (3 - 0.5 * x[i]) * x[i] - before - 2 * behind + 1;
                            }
                        },
                        1e-10);
        assertThat(chain.worstResidual()).isLessThanOrEqualTo(1e-10);
        assertThat(chain.evaluations()).isBetween(20, 600);
    }

    /** Where every unknown is held on its bound there is no step; that is said, with the bound. */
    @Test
    void aRootBeyondTheOnlyBoundIsNotFound() {
        assertThatThrownBy(() -> new BoundedSystemSolver("held", 50)
                        .solve(List.of(unknown("x", 0, 3, 1, 3)), List.of("a"), (x, r) -> r[0] = x[0] - 5, 1e-10))
                .isInstanceOf(NotConverged.class)
                .hasMessageContaining("x is on its bound 3");
    }

    /** Of equal residuals the first is named. */
    @Test
    void theFirstOfTheWorstEquationsIsNamed() {
        assertThatThrownBy(() -> new BoundedSystemSolver("twins", 50)
                        .solve(
                                List.of(unknown("x", 0, 3, 1, 1), unknown("y", 0, 3, 1, 1)),
                                List.of("first", "second"),
                                (x, r) -> {
                                    r[0] = 2;
                                    r[1] = -2;
                                },
                                1e-10))
                .isInstanceOf(NotConverged.class)
                .hasMessageContaining("twins, first");
    }
}
