package dev.penstock.combustion.equilibrium;

import dev.penstock.combustion.species.DenseSystem;
import dev.penstock.combustion.species.ThermoTable;
import dev.penstock.quantities.Constants;

/**
 * Slopes of an equilibrium from the matrix M of {@link GibbsNewton} at the solution: how potentials, condensed amounts, ln n
 * (and ln T) answer to a change of ln T or ln p. Source: [nasa-rp-1311], part I, chapter 2; the isentropic exponent
 * directly from the system with entropy held, which stays regular where cp is without bound (a boiling pure substance).
 * <pre>
 * cp/R           = M_TT + Σ_i M_Ti x_i      with x = -M⁻¹ (column of T), row and column of T left out
 * (∂ln v/∂ln T)_p = 1 + x_n
 * (∂ln v/∂ln p)_T = y_n - 1                  with y = M⁻¹ (Σ a_kj n_j, 0, n)
 * 1/γ_s          = 1 - z_n - z_T             with z = M⁻¹ (Σ a_kj n_j, 0, n, Σ n_j h_j/RT + n), whole matrix
 * </pre>
 * Where gases take up room, φ_j = p B_j/RT and ψ_j = p (B_j − T dB_j/dT)/RT, every n_j of a pressure side is n_j (1 + φ_j) and the last
 * loses Σ n_j ψ_j. Not thread-safe.
 */
final class GibbsSlopes {

    private final GibbsState state;
    private final GibbsNewton newton;
    private final DenseSystem system;
    private final double[] answer;
    /** φ_j and ψ_j of the gases, where they take up room (-). */
    private final double[] phi;

    private final double[] psi;

    GibbsSlopes(GibbsState state, GibbsNewton newton) {
        this.state = state;
        this.newton = newton;
        int capacity = state.elements + state.condensed + 2;
        system = new DenseSystem(capacity);
        answer = new double[capacity];
        phi = new double[state.gas];
        psi = new double[state.gas];
    }

    /** @return −(∂ln p/∂ln v)_s with shifting composition (-) */
    double isentropicExponent() {
        int rowN = state.elements + state.activeCount();
        system.factor(newton.matrix(), rowN + 2);
        pressureSide(rowN);
        answer[rowN + 1] = newton.matrix()[rowN][rowN + 1] + state.gasMoles + crowdedHeat();
        system.solve(answer);
        return 1 / (1 - answer[rowN + 1] - volumeSlope(rowN, answer[rowN + 1], 1));
    }

    /** @return (∂ln v/∂ln p)_T (-) */
    double volumePressureSlope() {
        int rowN = state.elements + state.activeCount();
        system.factor(newton.matrix(), rowN + 1);
        pressureSide(rowN);
        system.solve(answer);
        return volumeSlope(rowN, 0, 1) - 1;
    }

    /** @return (∂ln v/∂ln T)_p (-) */
    double volumeTemperatureSlope() {
        int rowN = state.elements + state.activeCount();
        temperatureAnswer(rowN + 1);
        return 1 + volumeSlope(rowN, 1, 0);
    }

    /** @return cp with shifting composition (J/(kg·K)) */
    double heatCapacity() {
        int rowT = state.elements + state.activeCount() + 1;
        temperatureAnswer(rowT);
        double[] row = newton.matrix()[rowT];
        double sum = row[rowT];
        for (int i = 0; i < rowT; i++) {
            sum += row[i] * answer[i];
        }
        return sum * Constants.MOLAR_GAS_CONSTANT;
    }

    private void temperatureAnswer(int rowT) {
        double[][] matrix = newton.matrix();
        system.factor(matrix, rowT);
        for (int i = 0; i < rowT; i++) {
            answer[i] = -matrix[i][rowT];
        }
        system.solve(answer);
    }

    private void pressureSide(int rowN) {
        double[][] matrix = newton.matrix();
        for (int k = 0; k < state.elements; k++) {
            answer[k] = matrix[k][rowN];
        }
        for (int i = state.elements; i < rowN; i++) {
            answer[i] = 0;
        }
        answer[rowN] = state.gasMoles;
        ThermoTable thermo = state.species.thermo;
        if (thermo.dense()) {
            thermo.crowding(phi, psi, state.gas);
            double[] moles = state.moles;
            for (int k = 0; k < state.elements; k++) {
                double[] ak = state.species.atoms[k];
                double sum = answer[k];
                for (int j : state.species.holders[k]) {
                    sum += ak[j] * (moles[j] * phi[j]);
                }
                answer[k] = sum;
            }
            double sum = answer[rowN];
            for (int j = 0; j < state.gas; j++) {
                sum += moles[j] * phi[j];
            }
            answer[rowN] = sum;
        }
    }

    /** Σ n_j (h_j φ_j/RT + φ_j − ψ_j), what the side of the energy has more of where gases take up room. */
    private double crowdedHeat() {
        ThermoTable thermo = state.species.thermo;
        double sum = 0;
        if (thermo.dense()) {
            thermo.crowding(phi, psi, state.gas);
            double[] moles = state.moles;
            double[] h = thermo.h;
            for (int j = 0; j < state.gas; j++) {
                sum += moles[j] * ((h[j] + 1) * phi[j] - psi[j]);
            }
        }
        return sum;
    }

    /**
     * Change of ln(p v/RT) along the answer, of which ln T and ln p take these parts: that of ln n for ideal gases, else
     * Σ n_j [(1 + φ_j) dln n_j + dφ_j]/Σ n_j (1 + φ_j) with dφ_j = φ_j dln p − ψ_j dln T.
     */
    private double volumeSlope(int rowN, double dlnT, double dlnP) {
        ThermoTable thermo = state.species.thermo;
        if (!thermo.dense()) {
            return answer[rowN];
        }
        thermo.crowding(phi, psi, state.gas);
        double[] moles = state.moles;
        double[] h = thermo.h;
        double dlnGas = answer[rowN];
        double sum = 0;
        for (int j = 0; j < state.gas; j++) {
            double room = 1 + phi[j];
            double dlnN = dlnGas + h[j] * dlnT - room * dlnP;
            sum += moles[j] * (room * dlnN + phi[j] * dlnP - psi[j] * dlnT);
        }
        for (int k = 0; k < state.elements; k++) {
            double[] ak = state.species.atoms[k];
            double held = 0;
            for (int j : state.species.holders[k]) {
                held += moles[j] * (1 + phi[j]) * ak[j];
            }
            sum += held * answer[k];
        }
        return sum / state.volume();
    }
}
