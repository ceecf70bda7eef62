package dev.penstock.combustion.equilibrium;

import dev.penstock.combustion.species.DenseSystem;
import dev.penstock.quantities.Constants;
import java.util.Arrays;

/**
 * Newton's method for the least Gibbs energy of a mixture of gases and a given set of pure condensed species, per
 * kilogram of mixture. Unknowns are the element potentials, the logarithms of the moles of each gas species and of all
 * gas, the moles of each condensed species, and the logarithm of the temperature.
 * <pre>
 * for each gas species      ln n_j = ln n + Σ a_kj π_k - (g°_j/RT + ln(p/p°))
 * for each condensed one    Σ a_kc π_k = g°_c/RT
 * for each element          Σ a_kj n_j + Σ a_kc n_c = b_k
 * gas                       Σ n_j = n
 * and one of                T given;  h(T, n) given;  s(T, p, n) given
 * </pre>
 * g°, h and s of a gas are those at the pressure where gases take up room ({@link dev.penstock.combustion.species.SecondVirial}).
 * Gas species are eliminated by hand, so a linear system of elements + condensed + 2 unknowns remains; it is symmetric,
 * and the same matrix serves {@link GibbsSlopes}. Source: [nasa-rp-1311], part I, chapters 2 and 3, whose control of step
 * size is used; here the element potentials are carried along, so that a near-singular system (an element ratio that one
 * species fixes) can be regularised without moving the solution. Not thread-safe.
 */
final class GibbsNewton {

    private static final double R = Constants.MOLAR_GAS_CONSTANT;
    /** ln of the mole fraction that divides main from trace species in the control of step size [nasa-rp-1311]. */
    private static final double LOG_TRACE = -18.420681;
    /** ln of the mole fraction to which a trace species may grow in one step [nasa-rp-1311]. */
    private static final double LOG_TRACE_GROWTH = -9.2103404;
    /** Longest step of a main species in ln n_j, and of ln n and ln T times five [nasa-rp-1311]. */
    private static final double LONGEST = 2;
    /** Added to the diagonal, relative: far below what moves a step, far above round-off. */
    private static final double REGULARISATION = 1e-13;

    private static final double CONVERGED = 1e-11;
    /** Residual accepted where the last step was as small: round-off can stand in the way of the tighter one. */
    private static final double NEARLY_CONVERGED = 1e-9;

    private static final double LOWEST_TEMPERATURE = 20;
    private static final double HIGHEST_TEMPERATURE = 20000;
    /** ln of the smallest mole fraction carried. */
    private static final double LOG_FLOOR = -650;

    private final GibbsState state;
    private final ActiveSpecies species;
    private final int elements;
    private final int gas;
    private final double[] misalignment;
    private final double[] elementMissing;
    private final double[] logStep;
    private final double[][] matrix;
    private final double[] rightSide;
    private final double[] solution;
    private final DenseSystem system;

    private int rowN;
    private int rowT;
    private double worst;
    private double lastStep;
    private double heldEnthalpy;
    private double heldEntropy;
    private double heldHeatCapacity;
    private boolean broken;
    private boolean stepDue;
    private int iterations;

    GibbsNewton(GibbsState state) {
        this.state = state;
        species = state.species;
        elements = state.elements;
        gas = state.gas;
        misalignment = new double[gas];
        elementMissing = new double[elements];
        logStep = new double[gas];
        int capacity = elements + state.condensed + 2;
        matrix = new double[capacity][capacity];
        rightSide = new double[capacity];
        solution = new double[capacity];
        system = new DenseSystem(capacity);
    }

    /** @return matrix at the last residual check: elements, active condensed species, gas, temperature; read only */
    double[][] matrix() {
        return matrix;
    }

    /** @return steps since the count was last reset */
    int iterations() {
        return iterations;
    }

    void resetIterations() {
        iterations = 0;
    }

    /** Makes the next iteration take a step however good its start: what is found keeps no trace of where it was begun. */
    void takeStep() {
        stepDue = true;
    }

    double worstResidual() {
        return worst;
    }

    /** @return whether the last iteration ended on a number that is not finite or a singular system */
    boolean broken() {
        return broken;
    }

    /**
     * Iterates with the condensed species that are active now.
     *
     * @param assigned what is given
     * @param target enthalpy (J/kg) or entropy (J/(kg·K)); unused for a given temperature
     * @param pressure pressure (Pa)
     * @param limit most iterations
     * @return whether it converged
     */
    boolean iterate(Assigned assigned, double target, double pressure, int limit) {
        state.pressure = pressure;
        broken = false;
        lastStep = Double.POSITIVE_INFINITY;
        for (int i = 0; i < limit; i++) {
            assemble(assigned, target);
            if (!(worst < Double.POSITIVE_INFINITY)) {
                broken = true;
                return false;
            }
            if (!stepDue && (worst < CONVERGED || worst < NEARLY_CONVERGED && lastStep < NEARLY_CONVERGED)) {
                return true;
            }
            stepDue = false;
            iterations++;
            if (!step(assigned)) {
                broken = true;
                return false;
            }
        }
        return false;
    }

    /** Matrix and residuals at the present state; the right-hand side is the residual. */
    private void assemble(Assigned assigned, double target) {
        rowN = elements + state.activeCount();
        rowT = rowN + 1;
        for (int i = 0; i <= rowT; i++) {
            rightSide[i] = 0;
            Arrays.fill(matrix[i], 0, rowT + 1, 0);
        }
        species.thermo.evaluate(state.temperature, state.pressure);
        gasRows();
        elementRows();
        condensedRows();
        matrix[rowT][rowT] += heldHeatCapacity;
        double missing = 0;
        if (assigned == Assigned.ENTHALPY) {
            missing = target / (R * state.temperature) - heldEnthalpy;
        } else if (assigned == Assigned.ENTROPY) {
            missing = target / R - heldEntropy - matrix[rowN][rowN];
            for (int k = 0; k < elements; k++) {
                missing += state.potentials[k] * elementMissing[k];
            }
        }
        rightSide[rowT] += missing;
        worst = Math.max(worst, Math.abs(missing) / matrix[rowT][rowT]);
    }

    private void gasRows() {
        double[] h = species.thermo.h;
        double[] s = species.thermo.s;
        double[] cp = species.thermo.cp;
        double[] logMoles = state.logMoles;
        double[] moles = state.moles;
        double offset = Math.log(state.pressure / Constants.STANDARD_STATE_PRESSURE) - state.logGas;
        for (int j = 0; j < gas; j++) {
            misalignment[j] = h[j] - s[j] + logMoles[j] + offset;
            moles[j] = Math.exp(logMoles[j]);
        }
        for (int k = 0; k < elements; k++) {
            double[] ak = species.atoms[k];
            double potential = state.potentials[k];
            for (int j : species.holders[k]) {
                misalignment[j] -= ak[j] * potential;
            }
        }
        double sum = 0;
        double sumH = 0;
        double sumHH = 0;
        double sumCp = 0;
        double sumS = 0;
        double sumR = 0;
        double sumHR = 0;
        double sumAbsR = 0;
        for (int j = 0; j < gas; j++) {
            double n = moles[j];
            double nh = n * h[j];
            double r = misalignment[j];
            sum += n;
            sumH += nh;
            sumHH += nh * h[j];
            sumCp += n * cp[j];
            sumS += n * (s[j] - logMoles[j] - offset);
            sumR += n * r;
            sumHR += nh * r;
            sumAbsR += n * Math.abs(r);
        }
        state.gasMoles = Math.exp(state.logGas);
        double surplus = sum - state.gasMoles;
        matrix[rowN][rowN] = surplus;
        matrix[rowN][rowT] = sumH;
        matrix[rowT][rowN] = sumH;
        matrix[rowT][rowT] = sumHH;
        rightSide[rowN] = sumR - surplus;
        rightSide[rowT] = sumHR;
        heldEnthalpy = sumH;
        heldEntropy = sumS;
        heldHeatCapacity = sumCp;
        worst = Math.max(sumAbsR / sum, Math.abs(surplus) / state.gasMoles);
    }

    private void elementRows() {
        double[] h = species.thermo.h;
        double[] moles = state.moles;
        for (int k = 0; k < elements; k++) {
            double[] ak = species.atoms[k];
            double balance = 0;
            double withH = 0;
            double withR = 0;
            for (int j : species.holders[k]) {
                double an = ak[j] * moles[j];
                balance += an;
                withH += an * h[j];
                withR += an * misalignment[j];
            }
            matrix[k][rowN] = balance;
            matrix[rowN][k] = balance;
            matrix[k][rowT] = withH;
            matrix[rowT][k] = withH;
            for (int l = 0; l <= k; l++) {
                double[] al = species.atoms[l];
                double both = 0;
                for (int j : species.holdersOfBoth[k][l]) {
                    both += ak[j] * al[j] * moles[j];
                }
                matrix[k][l] = both;
                matrix[l][k] = both;
            }
            matrix[k][k] += REGULARISATION * (matrix[k][k] + state.b[k]);
            for (int i = 0; i < state.activeCount(); i++) {
                balance += ak[gas + state.active[i]] * state.condensedMoles[state.active[i]];
            }
            double missing = state.b[k] - balance;
            elementMissing[k] = missing;
            rightSide[k] = missing + withR;
            worst = Math.max(worst, Math.abs(missing) / state.b[k]);
        }
    }

    private void condensedRows() {
        for (int i = 0; i < state.activeCount(); i++) {
            int c = state.active[i];
            int j = gas + c;
            int row = elements + i;
            for (int k = 0; k < elements; k++) {
                matrix[k][row] = species.atoms[k][j];
                matrix[row][k] = species.atoms[k][j];
            }
            double affinity = state.affinity(c) - state.supersaturation[c];
            double n = state.condensedMoles[c];
            matrix[row][rowT] = species.thermo.h[j];
            matrix[rowT][row] = species.thermo.h[j];
            rightSide[row] = -affinity;
            heldEnthalpy += n * species.thermo.h[j];
            heldEntropy += n * species.thermo.s[j];
            heldHeatCapacity += n * species.thermo.cp[j];
            worst = Math.max(worst, Math.abs(affinity));
        }
    }

    private boolean step(Assigned assigned) {
        boolean heated = assigned != Assigned.TEMPERATURE;
        int size = heated ? rowT + 1 : rowT;
        System.arraycopy(rightSide, 0, solution, 0, size);
        if (!system.factor(matrix, size)) {
            return false;
        }
        system.solve(solution);
        double stepN = solution[rowN];
        double stepT = heated ? solution[rowT] : 0;
        double[] h = species.thermo.h;
        for (int j = 0; j < gas; j++) {
            logStep[j] = stepN + h[j] * stepT - misalignment[j];
        }
        for (int k = 0; k < elements; k++) {
            double[] ak = species.atoms[k];
            double step = solution[k];
            for (int j : species.holders[k]) {
                logStep[j] += ak[j] * step;
            }
        }
        double lambda = damping(stepN, stepT);
        if (!(lambda > 0)) {
            return false;
        }
        double moved = move(lambda, stepN, stepT);
        lastStep = lambda < 1 ? 1 : moved / state.gasMoles + Math.abs(stepN) + Math.abs(stepT);
        return true;
    }

    private double move(double lambda, double stepN, double stepT) {
        double moved = 0;
        double floor = state.logGas + LOG_FLOOR;
        double[] logMoles = state.logMoles;
        double[] moles = state.moles;
        for (int j = 0; j < gas; j++) {
            moved += moles[j] * Math.abs(logStep[j]);
            logMoles[j] = Math.max(floor, logMoles[j] + lambda * logStep[j]);
        }
        for (int k = 0; k < elements; k++) {
            state.potentials[k] += lambda * solution[k];
        }
        for (int i = 0; i < state.activeCount(); i++) {
            double change = solution[elements + i];
            state.condensedMoles[state.active[i]] += lambda * change;
            moved += Math.abs(change);
        }
        state.logGas += lambda * stepN;
        double t = state.temperature * Math.exp(lambda * stepT);
        state.temperature = Math.min(HIGHEST_TEMPERATURE, Math.max(LOWEST_TEMPERATURE, t));
        return moved;
    }

    /** Part of the step to take (-); NaN if the step is not a number. */
    private double damping(double stepN, double stepT) {
        double largest = Math.max(5 * Math.abs(stepT), 5 * Math.abs(stepN));
        double traceLimit = 1;
        for (int j = 0; j < gas; j++) {
            double step = logStep[j];
            if (step > 0) {
                double fraction = state.logMoles[j] - state.logGas;
                if (fraction > LOG_TRACE) {
                    largest = Math.max(largest, step);
                } else if (step > stepN) {
                    traceLimit = Math.min(traceLimit, Math.abs((LOG_TRACE_GROWTH - fraction) / (step - stepN)));
                }
            }
        }
        return Math.min(traceLimit, largest > LONGEST ? LONGEST / largest : largest >= 0 ? 1 : Double.NaN);
    }
}
