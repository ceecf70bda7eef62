package dev.penstock.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.NotConverged;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.numerics.BoundedSystemSolver.Equations;
import dev.penstock.numerics.BoundedSystemSolver.Solution;
import dev.penstock.numerics.BoundedSystemSolver.Unknown;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Single steps of the solver, seen through the points at which it asks the equations: first the start, then one point beside it
 * per unknown for the slopes, then the first step.
 */
class BoundedStepTest {

    private final List<double[]> asked = new ArrayList<>();

    private static Unknown unknown(double low, double high, double start) {
        return new Unknown("x" + start, "-", low, high, 1, start);
    }

    private static List<String> names(int n) {
        return List.of("first equation", "second equation", "third equation").subList(0, n);
    }

    /** r = r0 + A (x − x0), written down wherever it is asked. */
    private Equations linear(double[][] a, double[] x0, double[] r0) {
        return (x, r) -> {
            asked.add(x.clone());
            for (int row = 0; row < r.length; row++) {
                r[row] = r0[row];
                for (int column = 0; column < x.length; column++) {
                    r[row] += a[row][column] * (x[column] - x0[column]);
                }
            }
        };
    }

    private double[] firstStep() {
        return asked.get(1 + asked.get(0).length);
    }

    /**
     * The root (1.2, 0.5) lies beyond x = 1, where the search starts. Worked by hand: with x held, the least of (y − 0.7)² + (y −
     * 0.5)² is at y = 0.6, with 0.1 left in each equation. A step that was only cut off at the bound would go to y = 0.5.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1, -1})
    void anUnknownPushedOutwardsIsHeldWhileTheOtherTakesTheBestStepWithoutIt(double sign) {
        double[][] a = {{sign, 1}, {0, 1}};
        List<Unknown> unknowns = List.of(sign > 0 ? unknown(0, 1, 1) : unknown(-1, 0, -1), unknown(-10, 10, 0));
        NotConverged failure = catchThrowableOfType(NotConverged.class, () -> new BoundedSystemSolver("held", 50)
                .solve(unknowns, names(2), linear(a, new double[] {sign, 0}, new double[] {-0.7, -0.5}), 1e-10));
        assertThat(firstStep()[0]).isEqualTo(sign);
        assertThat(firstStep()[1]).isCloseTo(0.6, within(1e-6));
        assertThat(failure.worstResidual()).isCloseTo(0.1, within(1e-6));
        assertThat(failure)
                .hasMessageContaining("x" + sign + " is on its bound")
                .hasMessageContaining("no step makes it smaller");
    }

    /**
     * Holding one unknown may push the next one out. Worked by least squares: (0.75, −0.125, −0.5) with all three, (0.0625, −0.125)
     * for y and z with x held, −0.25 for z alone; where it ends, the slope of Σr² still pushes x and y outwards.
     */
    @Test
    void holdingOneUnknownMayHoldTheNext() {
        double[][] a = {{0, -2, 1}, {0, 2, 0}, {-1, -2, 0}};
        NotConverged failure = catchThrowableOfType(NotConverged.class, () -> new BoundedSystemSolver("corner", 50)
                .solve(
                        List.of(unknown(0, 1, 1), unknown(0, 1, 1), unknown(-10, 10, 0)),
                        names(3),
                        linear(a, new double[] {1, 1, 0}, new double[] {0.25, 0.25, 0.5}),
                        1e-10));
        assertThat(firstStep()[0]).isEqualTo(1);
        assertThat(firstStep()[1]).isEqualTo(1);
        assertThat(firstStep()[2]).isCloseTo(-0.25, within(1e-6));
        assertThat(failure.worstResidual()).isCloseTo(0.5, within(1e-6));
        assertThat(failure).hasMessageContaining("third equation");
    }

    /** On a bound, but pushed inwards: nothing is held, and a linear system takes one step. */
    @ParameterizedTest
    @ValueSource(doubles = {1, -1})
    void anUnknownOnItsBoundIsFreeToMoveInwards(double sign) {
        List<Unknown> unknowns = List.of(sign > 0 ? unknown(0, 1, 1) : unknown(-1, 0, -1), unknown(-10, 10, 0));
        Solution root = new BoundedSystemSolver("inwards", 50)
                .solve(
                        unknowns,
                        names(2),
                        linear(new double[][] {{sign, 1}, {0, 1}}, new double[] {0.5 * sign, 0.5}, new double[] {0, 0}),
                        1e-8);
        assertThat(root.values().get(0)).isCloseTo(0.5 * sign, within(1e-8));
        assertThat(root.iterations()).isEqualTo(1);
        assertThat(root.evaluations()).isEqualTo(4).isEqualTo(asked.size());
    }

    /** Identity: no point outside the bounds is ever asked, not even for a slope. */
    @Test
    void noPointOutsideTheBoundsIsAsked() {
        new BoundedSystemSolver("inside", 50)
                .solve(
                        List.of(unknown(0, 1, 1), unknown(2, 3, 3)),
                        names(2),
                        (x, r) -> {
                            asked.add(x.clone());
                            r[0] = x[0] * x[1] - 1;
                            r[1] = x[1] - 2;
                        },
                        1e-10);
        assertThat(asked).allSatisfy(x -> {
            assertThat(x[0]).isBetween(0.0, 1.0);
            assertThat(x[1]).isBetween(2.0, 3.0);
        });
    }

    /** The first step is one scale long at most, straight at the root where all directions are alike, and not much shorter. */
    @Test
    void theFirstStepStaysInsideTheTrustRegion() {
        Solution root = new BoundedSystemSolver("far", 50)
                .solve(
                        List.of(unknown(-100, 100, 0), unknown(-100, 100, 0)),
                        names(2),
                        linear(new double[][] {{1, 0}, {0, 1}}, new double[] {3, 4}, new double[] {0, 0}),
                        1e-9);
        double[] step = firstStep();
        assertThat(Math.hypot(step[0], step[1])).isBetween(1.0 / 3, 1.0);
        assertThat(step[1] / step[0]).isCloseTo(4.0 / 3, within(1e-4));
        // at 1 a time to within 2.3 or so of the root, where a step gains enough to lengthen the next one
        assertThat(root.iterations()).isBetween(4, 8);
    }

    /** A damped step turns from the Newton step towards steepest descent: here the steep equation is served first. */
    @Test
    void aShortenedStepServesTheSteepEquationFirst() {
        new BoundedSystemSolver("steep", 60)
                .solve(
                        List.of(unknown(-1e6, 1e6, 0), unknown(-1e6, 1e6, 0)),
                        names(2),
                        linear(new double[][] {{10, 0}, {0, 1}}, new double[] {0.5, 5}, new double[] {0, 0}),
                        1e-9);
        double[] step = firstStep();
        assertThat(Math.hypot(step[0], step[1])).isBetween(1.0 / 3, 1.0);
        assertThat(step[0] / 0.5).isGreaterThan(3 * step[1] / 5);
    }

    /** Limit: of the roots of a singular system, the one nearest to the start. */
    @Test
    void aSingularSystemIsSolvedAtTheNearestRoot() {
        Solution root = new BoundedSystemSolver("singular", 50)
                .solve(
                        List.of(unknown(-10, 10, 0), unknown(-10, 10, 0)),
                        names(2),
                        linear(new double[][] {{1, 1}, {2, 2}}, new double[] {0.6, 0.2}, new double[] {0, 0}),
                        1e-9);
        assertThat(root.values().get(0)).isCloseTo(0.4, within(1e-6));
        assertThat(root.values().get(1)).isCloseTo(0.4, within(1e-6));
        assertThat(root.iterations()).isEqualTo(1);
    }

    /** Identity: with one unknown Broyden's update is the secant through the last two points. */
    @Test
    void theSecondStepIsTheSecant() {
        new BoundedSystemSolver("secant", 50)
                .solve(
                        List.of(unknown(0, 10, 1.5)),
                        names(1),
                        (x, r) -> {
                            asked.add(x.clone());
                            r[0] = x[0] * x[0] - 2;
                        },
                        1e-12);
        double first = asked.get(2)[0];
        assertThat(first).isCloseTo(1.5 - 0.25 / 3, within(1e-6)); // Newton
        double secant = first - (first * first - 2) * (first - 1.5) / (first * first - 1.5 * 1.5);
        assertThat(asked.get(3)[0]).isCloseTo(secant, within(1e-12));
    }

    /** Scales and signs: unknowns of very different size are stepped in their own scale. */
    @Test
    void slopesAreTakenInTheScaleOfTheUnknown() {
        new BoundedSystemSolver("scales", 50)
                .solve(
                        List.of(
                                new Unknown("flow", "kg/s", 0, 1e3, 10, 100),
                                new Unknown("pressure", "Pa", 0, 1e9, 1e6, 2e7)),
                        names(2),
                        (x, r) -> {
                            asked.add(x.clone());
                            r[0] = x[0] / 105 - 1;
                            r[1] = x[1] / 2.05e7 - 1;
                        },
                        1e-10);
        assertThat(asked.get(1)[0] - 100).isCloseTo(1e-5, within(1e-9));
        assertThat(asked.get(2)[1] - 2e7).isCloseTo(1, within(1e-6));
        assertThat(firstStep()[0]).isCloseTo(105, within(1e-4));
        assertThat(firstStep()[1]).isCloseTo(2.05e7, within(10.0));
    }

    /** Where a slope cannot be asked on one side, it is asked on the other. */
    @Test
    void aRefusedSlopeIsTakenOnTheOtherSide() {
        Solution root = new BoundedSystemSolver("cliff", 50)
                .solve(
                        List.of(unknown(0, 10, 1)),
                        names(1),
                        (x, r) -> {
                            asked.add(x.clone());
                            if (x[0] > 1) {
                                throw new OutsideValidity("test", "x (-)", x[0], "1 or less");
                            }
                            r[0] = 3 * (x[0] - 0.25);
                        },
                        1e-9);
        assertThat(root.values().get(0)).isCloseTo(0.25, within(1e-9));
        assertThat(root.evaluations()).isEqualTo(4);
        assertThat(asked.get(2)[0]).isEqualTo(1 - 1e-6);
    }

    /** A point without a value shortens the step, whether the equations refuse or return no number. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aPointWithoutValueShortensTheStep(boolean refuses) {
        Solution root = new BoundedSystemSolver("gap", 50)
                .solve(
                        List.of(unknown(0, 10, 0.5)),
                        names(1),
                        (x, r) -> {
                            if (x[0] > 0.95 && refuses) {
                                throw new OutsideValidity("test", "x (-)", x[0], "0.95 or less");
                            }
                            r[0] = x[0] > 0.95 ? Double.NaN : Math.pow(x[0], 4) - 0.6561;
                        },
                        1e-11);
        assertThat(root.values().get(0)).isCloseTo(0.9, within(1e-10)); // 0.9^4
    }

    @Test
    void aRefusalAtTheFirstGuessIsPassedOn() {
        assertThatThrownBy(() -> new BoundedSystemSolver("start", 50)
                        .solve(
                                List.of(unknown(0, 10, 1)),
                                names(1),
                                (x, r) -> {
                                    throw new OutsideValidity("test", "x (-)", x[0], "2 or more");
                                },
                                1e-9))
                .isInstanceOf(OutsideValidity.class);
        assertThatThrownBy(() -> new BoundedSystemSolver("start", 50)
                        .solve(List.of(unknown(0, 10, 1)), names(1), (x, r) -> r[0] = Double.NaN, 1e-9))
                .isInstanceOf(NotConverged.class)
                .hasMessageContaining("no value at the first guess");
    }

    /** With 5e-10 left that no step can take away, the search fails, or is content where that is acceptable. */
    @Test
    void whatRoundingLeavesIsAcceptedOnlyWhereTheCallerSaysSo() {
        Equations coarse = (x, r) -> r[0] = Math.rint((x[0] - 2) * 1e9) / 1e9 + 5e-10;
        List<Unknown> unknowns = List.of(unknown(0, 10, 1.2));
        Solution root = new BoundedSystemSolver("coarse", 100).solve(unknowns, names(1), coarse, 1e-12, 1e-9);
        assertThat(root.worstResidual()).isCloseTo(5e-10, within(1e-12));
        assertThat(root.values().get(0)).isCloseTo(2, within(1.1e-9));
        assertThatThrownBy(() -> new BoundedSystemSolver("coarse", 100).solve(unknowns, names(1), coarse, 1e-12, 1e-10))
                .isInstanceOf(NotConverged.class)
                .hasMessageContaining("no step makes it smaller");
    }

    @Test
    void tooFewStepsAreSaidSo() {
        NotConverged failure = catchThrowableOfType(NotConverged.class, () -> new BoundedSystemSolver("short", 3)
                .solve(List.of(unknown(0, 1e6, 1)), names(1), (x, r) -> r[0] = x[0] - 1e5, 1e-9));
        assertThat(failure).hasMessageContaining("steps used up");
        assertThat(failure.iterations()).isEqualTo(3);
    }

    /** Effort by counts: slopes are kept from one solution to the next, until they are forgotten. */
    @Test
    void slopesAreKeptUntilForgotten() {
        BoundedSystemSolver solver = new BoundedSystemSolver("kept", 50);
        Equations equations = linear(new double[][] {{1, 0.3}, {0.2, 1}}, new double[] {0.5, 0.5}, new double[] {0, 0});
        List<Unknown> unknowns = List.of(unknown(0, 1, 0.1), unknown(0, 1, 0.9));
        assertThat(solver.solve(unknowns, names(2), equations, 1e-9).evaluations())
                .isEqualTo(4);
        assertThat(solver.solve(unknowns, names(2), equations, 1e-9).evaluations())
                .isEqualTo(2);
        solver.reset();
        assertThat(solver.solve(unknowns, names(2), equations, 1e-9).evaluations())
                .isEqualTo(4);
        Equations single = (x, r) -> r[0] = x[0] - 0.7;
        assertThat(solver.solve(unknowns.subList(0, 1), names(1), single, 1e-9).evaluations())
                .isEqualTo(3);
    }

    /** A kept slope of the wrong sign is found out by the step that it makes, and taken anew. */
    @Test
    void aKeptSlopeThatMisleadsIsTakenAnew() {
        BoundedSystemSolver solver = new BoundedSystemSolver("turned", 50);
        List<Unknown> unknowns = List.of(unknown(-10, 10, 0));
        solver.solve(unknowns, names(1), (x, r) -> r[0] = x[0] - 0.5, 1e-9);
        Solution turned = solver.solve(unknowns, names(1), (x, r) -> r[0] = 0.5 - x[0], 1e-9);
        assertThat(turned.values().get(0)).isCloseTo(0.5, within(1e-9));
        assertThat(turned.evaluations()).isEqualTo(4); // start, step astray, slope, root
    }

    @Test
    void unknownsThatMakeNoSenseAreRefused() {
        assertThatThrownBy(() -> unknown(1, 1, 1)).hasMessageContaining("1.00000 to 1.00000");
        assertThatThrownBy(() -> unknown(Double.NaN, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Unknown("x", "-", 0, 1, 0, 1)).hasMessageContaining("scale 0");
        assertThatThrownBy(() -> unknown(0, 1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThat(unknown(0, 1, 7).start()).isEqualTo(1);
        assertThat(unknown(0, 1, -7).start()).isZero();
        assertThat(unknown(0, 1, 0.5).startingAt(0.25)).isEqualTo(new Unknown("x0.5", "-", 0, 1, 1, 0.25));
        assertThatThrownBy(() -> new BoundedSystemSolver("uneven", 10)
                        .solve(List.of(unknown(0, 1, 0.5)), names(2), (x, r) -> {}, 1e-9))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("uneven: 1 unknowns");
    }
}
