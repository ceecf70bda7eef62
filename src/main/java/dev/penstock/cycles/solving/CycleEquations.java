package dev.penstock.cycles.solving;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.sheet.BalanceModels;
import dev.penstock.cycles.sheet.CarriedValues;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Residual;
import dev.penstock.cycles.sheet.Values;
import dev.penstock.numerics.BoundedSystemSolver;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The equations of an arrangement with chamber and jacket held: lays it out at what the solver tries, and remembers the last sheet,
 * which mostly is that of the solution. Not thread-safe.
 */
final class CycleEquations implements BoundedSystemSolver.Equations {

    private final BalanceModels balanceModels;
    private final CarriedValues assumed;
    private final List<String> names = new ArrayList<>();
    private double[] lastTried = {};
    private Optional<Flowsheet> lastSheet = Optional.empty();

    CycleEquations(BalanceModels balanceModels, CarriedValues assumed, int unknowns) {
        this.balanceModels = balanceModels;
        this.assumed = assumed;
        for (int i = 0; i < unknowns; i++) {
            names.add("equation " + (i + 1));
        }
    }

    /** Names of the equations, known once they were evaluated. */
    List<String> names() {
        return names;
    }

    @Override
    public void evaluate(double[] x, double[] residuals) {
        lastSheet = Optional.empty();
        Flowsheet sheet = Flowsheet.passing(balanceModels, assumed);
        balanceModels.countEvaluation();
        Cycle cycle = Cycle.of(balanceModels.concept().cycle());
        cycle.layOut(sheet, Values.tried(x));
        List<Residual> list = sheet.residuals();
        if (list.size() != residuals.length) {
            throw new IllegalStateException(
                    cycle.id() + " has " + residuals.length + " unknowns but " + list.size() + " equations");
        }
        for (int i = 0; i < residuals.length; i++) {
            residuals[i] = list.get(i).value() / list.get(i).scale();
            names.set(i, list.get(i).name());
        }
        lastTried = x.clone();
        lastSheet = Optional.of(sheet);
    }

    /** The sheet that was laid out last, if it was at these values. */
    Optional<Flowsheet> sheetAt(List<Double> values) {
        boolean there = values.size() == lastTried.length;
        for (int i = 0; there && i < lastTried.length; i++) {
            there = values.get(i) == lastTried[i];
        }
        return there ? lastSheet : Optional.empty();
    }
}
