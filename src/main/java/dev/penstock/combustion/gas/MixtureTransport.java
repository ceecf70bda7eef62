package dev.penstock.combustion.gas;

import dev.penstock.combustion.species.Collision;
import dev.penstock.combustion.species.DenseSystem;
import dev.penstock.combustion.species.Species;
import dev.penstock.combustion.species.SpeciesSet;
import dev.penstock.provenance.ModelCard;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Transport of a gas mixture from {@link KineticTheory}: viscosity by Wilke's rule, frozen conductivity by the mean of
 * the two bounds, conductivity by reaction from diffusion in local equilibrium.
 * <pre>
 * μ     = Σ x_i μ_i / Σ_j x_j φ_ij,  φ_ij = (1 + √(μ_i/μ_j) (M_j/M_i)^¼)² / √(8 (1 + M_i/M_j))
 * λ_fr  = ½ (Σ x_i λ_i + 1/Σ (x_i/λ_i))
 * λ_re  = -(p/T) Σ x_k u_k H_k,  H = h/RT, where for every species
 *         x_k (Σ_i a_ik φ_i + H_k) = Σ_l x_k x_l (u_l - u_k)/D_kl   and for every element  Σ_k a_ik x_k u_k = 0
 * </pre>
 * The last two lines are the diffusion equations of Stefan and Maxwell for a gas whose composition follows equilibrium
 * along the temperature gradient while no element moves; eliminating φ and u gives the formula of Butler and Brokaw.
 * Sources: [wilke-1950], [mathur-1967], [butler-brokaw-1957], [brokaw-1960]. Species below a mole fraction of 1e-6 and
 * those without collision figures are left out. Not thread-safe.
 */
public final class MixtureTransport {

    /** What this model is. */
    public static final ModelCard CARD = new ModelCard(
            "combustion.mixture-transport",
            "Viscosity and conductivity of a gas mixture",
            "Wilke's rule; λ = ½(Σxλ + 1/Σ(x/λ)); reaction: Stefan-Maxwell diffusion in local equilibrium",
            "ideal gas; condensed species left out",
            "5 to 10 percent in viscosity, 10 to 15 percent in conductivity (common practice, no source)",
            List.of("wilke-1950", "mathur-1967", "butler-brokaw-1957", "brokaw-1960"));

    private static final double SMALLEST = 1e-6;

    private final int known;
    private final int elements;
    private final int[] index;
    private final double[] molarMass;
    private final Collision[] collision;
    private final double[][] atoms;
    private final int[] chosen;
    private final double[] x;
    private final double[] viscosities;
    private final double[] conductivities;
    private final double[][] matrix;
    private final double[] unknowns;
    private final DenseSystem system;

    private int count;
    private double viscosity;
    private double frozenConductivity;
    private double leftOut;

    public MixtureTransport(SpeciesSet set) {
        int gas = set.gasCount();
        index = IntStream.range(0, gas)
                .filter(j -> set.species().get(j).collision().isPresent())
                .toArray();
        known = index.length;
        elements = set.elements().size();
        molarMass = new double[known];
        collision = new Collision[known];
        atoms = new double[elements][known];
        for (int i = 0; i < known; i++) {
            Species s = set.species().get(index[i]);
            molarMass[i] = s.molarMass();
            collision[i] = s.collision().orElseThrow();
            for (int k = 0; k < elements; k++) {
                atoms[k][i] = s.atoms().getOrDefault(set.elements().get(k), 0);
            }
        }
        chosen = new int[known];
        x = new double[known];
        viscosities = new double[known];
        conductivities = new double[known];
        int capacity = known + elements;
        matrix = new double[capacity][capacity];
        unknowns = new double[capacity];
        system = new DenseSystem(capacity);
    }

    /**
     * Viscosity and frozen conductivity.
     *
     * @param t temperature (K)
     * @param moles amounts in the order of the species set, in any unit
     * @param cp cp/R in the order of the species set (-)
     * @return whether collision figures are known for any of the gas
     */
    public boolean update(double t, double[] moles, double[] cp, int gasCount) {
        double total = 0;
        for (int j = 0; j < gasCount; j++) {
            total += moles[j];
        }
        count = 0;
        double sum = 0;
        for (int i = 0; i < known; i++) {
            double fraction = moles[index[i]] / total;
            if (fraction > SMALLEST) {
                chosen[count] = i;
                x[count++] = fraction;
                sum += fraction;
            }
        }
        leftOut = 1 - sum;
        if (!(sum > 0)) {
            return false;
        }
        for (int a = 0; a < count; a++) {
            int i = chosen[a];
            x[a] /= sum;
            viscosities[a] = KineticTheory.viscosity(molarMass[i], collision[i], t);
            conductivities[a] = KineticTheory.conductivity(molarMass[i], collision[i], t, viscosities[a], cp[index[i]]);
        }
        mix();
        return true;
    }

    private void mix() {
        double arithmetic = 0;
        double harmonic = 0;
        viscosity = 0;
        for (int a = 0; a < count; a++) {
            double ma = molarMass[chosen[a]];
            double below = 0;
            for (int b = 0; b < count; b++) {
                double ratio = molarMass[chosen[b]] / ma;
                double root = 1 + Math.sqrt(viscosities[a] / viscosities[b] * Math.sqrt(ratio));
                below += x[b] * root * root / Math.sqrt(8 * (1 + 1 / ratio));
            }
            viscosity += x[a] * viscosities[a] / below;
            arithmetic += x[a] * conductivities[a];
            harmonic += x[a] / conductivities[a];
        }
        frozenConductivity = 0.5 * (arithmetic + 1 / harmonic);
    }

    /**
     * Conductivity by reaction, at the state of the last update.
     *
     * @param t temperature (K)
     * @param h h/(R T) in the order of the species set (-)
     * @return (W/(m·K))
     */
    public double reactingConductivity(double t, double[] h) {
        int size = count + elements;
        for (int i = 0; i < size; i++) {
            Arrays.fill(matrix[i], 0, size, 0);
        }
        double reference = 0;
        for (int a = 0; a < count; a++) {
            int i = chosen[a];
            for (int b = 0; b < a; b++) {
                double drag = x[a] * x[b] / diffusionTimesPressure(i, chosen[b], t);
                matrix[a][b] += drag;
                matrix[b][a] += drag;
                matrix[a][a] -= drag;
                matrix[b][b] -= drag;
            }
            for (int k = 0; k < elements; k++) {
                matrix[a][count + k] = -atoms[k][i] * x[a];
                matrix[count + k][a] = -atoms[k][i] * x[a];
            }
            unknowns[a] = x[a] * h[index[i]];
            reference = Math.max(reference, conductivities[a]);
        }
        for (int k = 0; k < elements; k++) {
            matrix[count + k][count + k] = 1e-12;
            unknowns[count + k] = 0;
        }
        if (count < 2 || !system.factor(matrix, size)) {
            return 0;
        }
        system.solve(unknowns);
        double sum = 0;
        for (int a = 0; a < count; a++) {
            sum -= x[a] * unknowns[a] * h[index[chosen[a]]];
        }
        return Math.max(0, sum / t);
    }

    private double diffusionTimesPressure(int i, int j, double t) {
        Collision a = collision[i];
        Collision b = collision[j];
        return KineticTheory.diffusionTimesPressure(
                molarMass[i] * molarMass[j] / (molarMass[i] + molarMass[j]),
                0.5 * (a.diameter() + b.diameter()),
                Math.sqrt(a.wellDepth() * b.wellDepth()),
                KineticTheory.reducedDipoleSquared(a, b),
                t);
    }

    /** @return viscosity at the last update (Pa·s) */
    public double viscosity() {
        return viscosity;
    }

    /** @return conductivity without reaction at the last update (W/(m·K)) */
    public double frozenConductivity() {
        return frozenConductivity;
    }

    /** @return mole fraction of the gas for which no collision figures are known, or too small to count (-) */
    public double leftOut() {
        return leftOut;
    }
}
