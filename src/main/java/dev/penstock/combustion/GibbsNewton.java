package dev.penstock.combustion;

import dev.penstock.quantities.Constants;
import java.util.Arrays;

/**
 * Newton's method for the least Gibbs energy of a mixture of ideal gases and a given set of pure condensed species, per
 * kilogram of mixture. Unknowns are the element potentials, the logarithms of the moles of each gas species and of all
 * gas, the moles of each condensed species, and the logarithm of the temperature.
 * <pre>
 * for each gas species      ln n_j = ln n + Σ a_kj π_k - (g°_j/RT + ln(p/p°))
 * for each condensed one    Σ a_kc π_k = g°_c/RT
 * for each element          Σ a_kj n_j + Σ a_kc n_c = b_k
 * gas                       Σ n_j = n
 * and one of                T given;  h(T, n) given;  s(T, p, n) given
 * </pre>
 * Gas species are eliminated by hand, so a linear system of elements + condensed + 2 unknowns remains; it is symmetric,
 * and the same matrix serves the derivatives at the solution. Source: [nasa-rp-1311], part I, chapters 2 and 3, whose
 * control of step size is used; here the element potentials are carried along, so that a near-singular system (an
 * element ratio that one species fixes) can be regularised without moving the solution. Not thread-safe.
 */
final class GibbsNewton {

    /** What is assigned besides pressure. */
    enum Assigned {
        TEMPERATURE,
        ENTHALPY,
        ENTROPY
    }

    private static final double R = Constants.MOLAR_GAS_CONSTANT;
    /** ln of the mole fraction that divides main from trace species in the control of step size [nasa-rp-1311]. */
    private static final double LOG_TRACE = -18.420681;
    /** ln of the mole fraction to which a trace species may grow in one step [nasa-rp-1311]. */
    private static final double LOG_TRACE_GROWTH = -9.2103404;
    /** Added to the diagonal, relative: far below what moves a step, far above round-off. */
    private static final double REGULARISATION = 1e-13;

    private static final double LOWEST_TEMPERATURE = 20;
    private static final double HIGHEST_TEMPERATURE = 20000;
    /** ln of the smallest mole fraction carried. */
    private static final double LOG_FLOOR = -650;

    private final ActiveSpecies species;
    private final int elements;
    private final int gas;
    private final double[] b;
    private final double[] potentials;
    private final double[] logMoles;
    private final double[] moles;
    private final double[] condensedMoles;
    private final boolean[] condensedActive;
    private final double[] supersaturation;
    private final int[] activeIndex;
    private final double[] elementMissing;
    private final double[] residuals;
    private final double[] logStep;

    private final double[][] matrix;
    private final double[] rightSide;
    private final double[] solution;
    private final DenseSystem system;
    private boolean factored;
    private boolean broken;

    private int activeCondensed;
    private double logGas;
    private double gasMoles;
    private double temperature;
    private double pressure;
    private double lastStep;
    private double worst;
    private int iterations;

    GibbsNewton(ActiveSpecies species) {
        this.species = species;
        elements = species.elementCount;
        gas = species.gasCount;
        int condensed = species.condensedCount;
        b = new double[elements];
        potentials = new double[elements];
        logMoles = new double[gas];
        moles = new double[gas];
        condensedMoles = new double[condensed];
        condensedActive = new boolean[condensed];
        supersaturation = new double[condensed];
        activeIndex = new int[condensed];
        elementMissing = new double[elements];
        residuals = new double[gas];
        logStep = new double[gas];
        int capacity = elements + condensed + 2;
        matrix = new double[capacity][capacity];
        rightSide = new double[capacity];
        solution = new double[capacity];
        system = new DenseSystem(capacity);
    }

    // ---- state

    ActiveSpecies species() {
        return species;
    }

    double[] composition() {
        return b;
    }

    double temperature() {
        return temperature;
    }

    double pressure() {
        return pressure;
    }

    /** @return moles of all gas per kilogram (mol/kg) */
    double gasMoles() {
        return gasMoles;
    }

    /** @return moles of each gas species per kilogram (mol/kg); read only */
    double[] moles() {
        return moles;
    }

    /** @return moles of each condensed species per kilogram (mol/kg); read only */
    double[] condensedMoles() {
        return condensedMoles;
    }

    double[] potentials() {
        return potentials;
    }

    boolean condensedActive(int c) {
        return condensedActive[c];
    }

    int iterations() {
        return iterations;
    }

    double worstResidual() {
        return worst;
    }

    /** To be called before each problem. */
    void reset() {
        iterations = 0;
        Arrays.fill(supersaturation, 0);
    }

    void setTemperature(double t) {
        temperature = t;
    }

    /** Lets the gas stay above saturation with a condensed species by this much (of RT per mole). */
    void setSupersaturation(int c, double value) {
        supersaturation[c] = value;
    }

    boolean anySupersaturation() {
        for (double each : supersaturation) {
            if (each != 0) {
                return true;
            }
        }
        return false;
    }

    void setCondensed(int c, boolean active) {
        if (condensedActive[c] != active) {
            condensedActive[c] = active;
            condensedMoles[c] = 0;
            activeCondensed = 0;
            for (int i = 0; i < condensedActive.length; i++) {
                if (condensedActive[i]) {
                    activeIndex[activeCondensed++] = i;
                }
            }
        }
    }

    /**
     * Forgets the last solution.
     *
     * @param startTemperature temperature to start from (K)
     */
    void start(double startTemperature) {
        double[] amounts = species.start.amounts(b);
        double sum = 0;
        for (int j = 0; j < gas; j++) {
            logMoles[j] = Math.log(amounts[j]);
            sum += amounts[j];
        }
        gasMoles = sum;
        logGas = Math.log(sum);
        Arrays.fill(potentials, 0);
        for (int c = 0; c < condensedActive.length; c++) {
            setCondensed(c, false);
            supersaturation[c] = 0;
        }
        temperature = startTemperature;
    }

    /**
     * Forgets the last solution, starting from the temperature at which likely products have an enthalpy.
     *
     * @param enthalpy enthalpy (J/kg)
     */
    void startFromEnthalpy(double enthalpy) {
        start(0);
        temperature = species.start.temperature(enthalpy / R);
    }

    // ---- Newton

    /**
     * Iterates with the condensed species that are active now.
     *
     * @param assigned what is given
     * @param target enthalpy (J/kg) or entropy (J/(kg·K)); unused for a given temperature
     * @param p pressure (Pa)
     * @param limit most iterations
     * @return whether it converged
     */
    boolean iterate(Assigned assigned, double target, double p, int limit) {
        pressure = p;
        broken = false;
        lastStep = Double.POSITIVE_INFINITY;
        for (int i = 0; i < limit; i++) {
            assemble(assigned, target);
            if (!(worst < Double.POSITIVE_INFINITY)) {
                broken = true;
                return false;
            }
            if (worst < 1e-11 || worst < 1e-9 && lastStep < 1e-9) {
                return true;
            }
            iterations++;
            if (!step(assigned)) {
                broken = true;
                return false;
            }
        }
        return false;
    }

    /** @return whether the last iteration ended on a number that is not finite or a singular system */
    boolean broken() {
        return broken;
    }

    private void assemble(Assigned assigned, double target) {
        factored = false;
        ThermoTable thermo = species.thermo;
        thermo.evaluate(temperature);
        double[] h = thermo.h;
        double[] s = thermo.s;
        double[] cp = thermo.cp;
        double logPressure = Math.log(pressure / Constants.STANDARD_STATE_PRESSURE);
        gasMoles = Math.exp(logGas);
        int size = elements + activeCondensed + 2;
        int rowN = elements + activeCondensed;
        int rowT = rowN + 1;
        for (int i = 0; i < size; i++) {
            rightSide[i] = 0;
            Arrays.fill(matrix[i], 0, size, 0);
        }
        double offset = logPressure - logGas;
        for (int j = 0; j < gas; j++) {
            residuals[j] = h[j] - s[j] + logMoles[j] + offset;
            moles[j] = Math.exp(logMoles[j]);
        }
        for (int k = 0; k < elements; k++) {
            double[] ak = species.atoms[k];
            double pi = potentials[k];
            for (int j = 0; j < gas; j++) {
                residuals[j] -= ak[j] * pi;
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
            double r = residuals[j];
            sum += n;
            sumH += nh;
            sumHH += nh * h[j];
            sumCp += n * cp[j];
            sumS += n * (s[j] - logMoles[j] - offset);
            sumR += n * r;
            sumHR += nh * r;
            sumAbsR += n * Math.abs(r);
        }
        worst = sumAbsR / sum;
        for (int k = 0; k < elements; k++) {
            double[] ak = species.atoms[k];
            double balance = 0;
            double withH = 0;
            double withR = 0;
            for (int j = 0; j < gas; j++) {
                double an = ak[j] * moles[j];
                balance += an;
                withH += an * h[j];
                withR += an * residuals[j];
            }
            matrix[k][rowN] = balance;
            matrix[rowN][k] = balance;
            matrix[k][rowT] = withH;
            matrix[rowT][k] = withH;
            for (int l = 0; l <= k; l++) {
                double[] al = species.atoms[l];
                double both = 0;
                for (int j = 0; j < gas; j++) {
                    both += ak[j] * al[j] * moles[j];
                }
                matrix[k][l] = both;
                matrix[l][k] = both;
            }
            matrix[k][k] += REGULARISATION * (matrix[k][k] + b[k]);
            for (int i = 0; i < activeCondensed; i++) {
                int c = activeIndex[i];
                double ac = ak[gas + c];
                balance += ac * condensedMoles[c];
                matrix[k][elements + i] = ac;
                matrix[elements + i][k] = ac;
            }
            double missing = b[k] - balance;
            worst = Math.max(worst, Math.abs(missing) / b[k]);
            elementMissing[k] = missing;
            rightSide[k] = missing + withR;
        }
        double heldH = sumH;
        double heldS = sumS;
        for (int i = 0; i < activeCondensed; i++) {
            int c = activeIndex[i];
            int j = gas + c;
            double affinity = s[j] - h[j] - supersaturation[c];
            for (int k = 0; k < elements; k++) {
                affinity += species.atoms[k][j] * potentials[k];
            }
            rightSide[elements + i] = -affinity;
            worst = Math.max(worst, Math.abs(affinity));
            matrix[elements + i][rowT] = h[j];
            matrix[rowT][elements + i] = h[j];
            heldH += condensedMoles[c] * h[j];
            heldS += condensedMoles[c] * s[j];
            sumCp += condensedMoles[c] * cp[j];
        }
        matrix[rowN][rowN] = sum - gasMoles;
        matrix[rowN][rowT] = sumH;
        matrix[rowT][rowN] = sumH;
        matrix[rowT][rowT] = sumHH + sumCp;
        rightSide[rowN] = gasMoles - sum + sumR;
        worst = Math.max(worst, Math.abs(gasMoles - sum) / gasMoles);
        double missing = 0;
        if (assigned == Assigned.ENTHALPY) {
            missing = target / (R * temperature) - heldH;
        } else if (assigned == Assigned.ENTROPY) {
            missing = target / R - heldS + gasMoles - sum;
            for (int k = 0; k < elements; k++) {
                missing += potentials[k] * elementMissing[k];
            }
        }
        rightSide[rowT] = missing + sumHR;
        worst = Math.max(worst, Math.abs(missing) / (sumHH + sumCp));
    }

    private boolean step(Assigned assigned) {
        boolean heated = assigned != Assigned.TEMPERATURE;
        int size = elements + activeCondensed + (heated ? 2 : 1);
        int rowN = elements + activeCondensed;
        System.arraycopy(rightSide, 0, solution, 0, size);
        if (!system.factor(matrix, size)) {
            return false;
        }
        system.solve(solution);
        double stepN = solution[rowN];
        double stepT = heated ? solution[rowN + 1] : 0;
        double[] h = species.thermo.h;
        for (int j = 0; j < gas; j++) {
            logStep[j] = stepN + h[j] * stepT - residuals[j];
        }
        for (int k = 0; k < elements; k++) {
            double[] ak = species.atoms[k];
            double step = solution[k];
            for (int j = 0; j < gas; j++) {
                logStep[j] += ak[j] * step;
            }
        }
        double lambda = damping(stepN, stepT);
        if (!(lambda > 0)) {
            return false;
        }
        double weighted = 0;
        double floor = logGas + LOG_FLOOR;
        for (int j = 0; j < gas; j++) {
            weighted += moles[j] * Math.abs(logStep[j]);
            logMoles[j] = Math.max(floor, logMoles[j] + lambda * logStep[j]);
        }
        for (int k = 0; k < elements; k++) {
            potentials[k] += lambda * solution[k];
        }
        for (int i = 0; i < activeCondensed; i++) {
            double change = solution[elements + i];
            condensedMoles[activeIndex[i]] += lambda * change;
            weighted += Math.abs(change);
        }
        logGas += lambda * stepN;
        temperature *= Math.exp(lambda * stepT);
        temperature = Math.min(HIGHEST_TEMPERATURE, Math.max(LOWEST_TEMPERATURE, temperature));
        lastStep = lambda < 1 ? 1 : weighted / gasMoles + Math.abs(stepN) + Math.abs(stepT);
        return true;
    }

    private double damping(double stepN, double stepT) {
        double largest = Math.max(5 * Math.abs(stepT), 5 * Math.abs(stepN));
        double traceLimit = 1;
        for (int j = 0; j < gas; j++) {
            double step = logStep[j];
            if (step > 0) {
                double fraction = logMoles[j] - logGas;
                if (fraction > LOG_TRACE) {
                    largest = Math.max(largest, step);
                } else if (step > stepN) {
                    traceLimit = Math.min(traceLimit, Math.abs((LOG_TRACE_GROWTH - fraction) / (step - stepN)));
                }
            }
        }
        return Math.min(traceLimit, largest > 2 ? 2 / largest : largest >= 0 ? 1 : Double.NaN);
    }

    // ---- after convergence

    /**
     * @param c a condensed species
     * @return by how much of RT per mole the gas is above saturation with it; below zero it does not form
     */
    double affinity(int c) {
        int j = gas + c;
        double affinity = species.thermo.s[j] - species.thermo.h[j];
        for (int k = 0; k < elements; k++) {
            affinity += species.atoms[k][j] * potentials[k];
        }
        return affinity;
    }

    /** @return enthalpy (J/kg) */
    double enthalpy() {
        double sum = 0;
        for (int j = 0; j < gas; j++) {
            sum += moles[j] * species.thermo.h[j];
        }
        for (int c = 0; c < condensedMoles.length; c++) {
            sum += condensedMoles[c] * species.thermo.h[gas + c];
        }
        return sum * R * temperature;
    }

    /** @return entropy (J/(kg·K)) */
    double entropy() {
        double offset = Math.log(pressure / Constants.STANDARD_STATE_PRESSURE) - logGas;
        double sum = 0;
        for (int j = 0; j < gas; j++) {
            sum += moles[j] * (species.thermo.s[j] - logMoles[j] - offset);
        }
        for (int c = 0; c < condensedMoles.length; c++) {
            sum += condensedMoles[c] * species.thermo.s[gas + c];
        }
        return sum * R;
    }

    /** @return cp with frozen composition (J/(kg·K)) */
    double frozenHeatCapacity() {
        double sum = 0;
        for (int j = 0; j < gas; j++) {
            sum += moles[j] * species.thermo.cp[j];
        }
        for (int c = 0; c < condensedMoles.length; c++) {
            sum += condensedMoles[c] * species.thermo.cp[gas + c];
        }
        return sum * R;
    }

    /**
     * −(∂ln p/∂ln v)_s: the Newton system with the entropy held and ln p moved by one.
     *
     * @return isentropic exponent with shifting composition (-)
     */
    double isentropicExponent() {
        int rowN = elements + activeCondensed;
        if (!factored) {
            factored = system.factor(matrix, rowN + 2);
        }
        pressureSide();
        solution[rowN + 1] = matrix[rowN][rowN + 1] + gasMoles;
        system.solve(solution);
        return 1 / (1 - solution[rowN] - solution[rowN + 1]);
    }

    /**
     * Response to ln p at constant temperature.
     *
     * @return (∂ln v/∂ln p)_T (-)
     */
    double volumePressureSlope() {
        int rowN = elements + activeCondensed;
        factored = false;
        system.factor(matrix, rowN + 1);
        pressureSide();
        system.solve(solution);
        return solution[rowN] - 1;
    }

    /**
     * Response to ln T at constant pressure.
     *
     * @return (∂ln v/∂ln T)_p (-)
     */
    double volumeTemperatureSlope() {
        temperatureResponse();
        return 1 + solution[elements + activeCondensed];
    }

    /** @return cp with shifting composition (J/(kg·K)) */
    double equilibriumHeatCapacity() {
        int rowT = elements + activeCondensed + 1;
        temperatureResponse();
        double sum = matrix[rowT][rowT];
        for (int i = 0; i < rowT; i++) {
            sum += matrix[rowT][i] * solution[i];
        }
        return sum * R;
    }

    private void temperatureResponse() {
        int rowT = elements + activeCondensed + 1;
        factored = false;
        system.factor(matrix, rowT);
        for (int i = 0; i < rowT; i++) {
            solution[i] = -matrix[i][rowT];
        }
        system.solve(solution);
    }

    private void pressureSide() {
        int rowN = elements + activeCondensed;
        for (int k = 0; k < elements; k++) {
            solution[k] = matrix[k][rowN];
        }
        for (int i = 0; i < activeCondensed; i++) {
            solution[elements + i] = 0;
        }
        solution[rowN] = gasMoles;
    }
}
