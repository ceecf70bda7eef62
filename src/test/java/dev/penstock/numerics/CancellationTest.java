package dev.penstock.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Work that nobody waits for any more ends, whichever solver it is in. */
class CancellationTest {

    /** One piece of work for each solver. */
    enum Solver {
        ROOT_BETWEEN(() -> RootFinder.between("x", x -> x - 1, 0, 3, 1e-9)),
        ROOT_NEAR(() -> RootFinder.near("x", x -> x - 1, 0, 3, 2, 1, 1e-9)),
        MINIMUM(() -> Minimizer.between("x", x -> x * x, -1, 2, 1e-6, 100)),
        MINIMUM_OF_SEVERAL(() -> Minimizer.within(
                "x",
                x -> x[0] * x[0] + x[1] * x[1],
                new double[] {0.5, 0.5},
                new double[] {-1, -1},
                new double[] {1, 1},
                0.1,
                1e-3,
                100)),
        INTEGRAL(() -> new OdeIntegrator("x", new double[] {1e-6}, 1e-6, 1)
                .integrate((t, y, d) -> d[0] = 1, 0, new double[] {0}, 1, List.of(), (t, y) -> {})),
        SYSTEM(() -> new BoundedSystemSolver("x", 50)
                .solve(
                        List.of(new BoundedSystemSolver.Unknown("x", "-", -5, 5, 1, 1)),
                        List.of("a"),
                        (x, r) -> r[0] = x[0] - 2,
                        1e-9)),
        FIXED_POINT(() -> new FixedPoint(2, 1).next(new double[] {1}, new double[] {2}));

        private final Runnable work;

        Solver(Runnable work) {
            this.work = work;
        }
    }

    @ParameterizedTest
    @EnumSource
    void everySolverAsksWhetherToStop(Solver solver) {
        solver.work.run();
        assertThatThrownBy(() -> Cancellation.during(() -> true, () -> {
                    solver.work.run();
                    return "";
                }))
                .isInstanceOf(CancellationException.class);
        solver.work.run();
    }

    /** Work inside work ends for either reason, and what was asked before is asked again afterwards. */
    @Test
    void innerWorkEndsWithTheOuter() {
        boolean[] stop = new boolean[1];
        Cancellation.during(() -> stop[0], () -> {
            Cancellation.during(() -> false, () -> {
                Cancellation.check();
                stop[0] = true;
                assertThatThrownBy(Cancellation::check).isInstanceOf(CancellationException.class);
                stop[0] = false;
                return "";
            });
            Cancellation.check();
            return "";
        });
        BooleanSupplier afterwards = Cancellation.current();
        assertThat(afterwards.getAsBoolean()).isFalse();
    }
}
