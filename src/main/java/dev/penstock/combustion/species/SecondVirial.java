package dev.penstock.combustion.species;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * The room that a mole of a gas takes beyond an ideal one, in the form that burning gas at 1500 K to 4500 K allows.
 * <pre>
 * v = Σ x_j (RT/p + B_j),   B_j = b_j − a_j/T
 * h_j − h°_j = p (b_j − 2 a_j/T),   s_j − s°_j = −p a_j/T²,   cp_j − cp°_j = 2 p a_j/T²,   μ_j − μ°_j = p B_j
 * Lennard-Jones   B/b₀ = −Σ_k 2^(k+½)/(4 k!) Γ((2k−1)/4) (T/ε)^−(2k+1)/4,   b₀ = ⅔π N σ³;   met at 2000 K and 3500 K
 * </pre>
 * The series is that of [hirschfelder-1954]; ε and σ are the collision figures of the species. Water, whose molecules are polar, has its
 * own figures. Unlike molecules count as the mean of both. Against reference equations of state the coefficients of hydrogen, nitrogen,
 * oxygen, carbon monoxide and water are within 3 cm³/mol at 2000 K and 3500 K, that of carbon dioxide within 7: a fifth of the
 * departure, which is 1 to 2 % of the volume at 20 MPa.
 *
 * @param covolume b (m³/mol)
 * @param attraction a (m³·K/mol); below zero for light gases, whose coefficient falls with temperature
 */
public record SecondVirial(double covolume, double attraction) {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "combustion.second-virial",
            "Dense chamber gas by second virial coefficients",
            "v = Σ x (RT/p + b − a/T) in Gibbs energy, enthalpy, entropy, density and speed of sound; b, a by Lennard-Jones",
            "1500 K to 4500 K, to 60 MPa; colder gas only where it is thin",
            "a fifth of the departure: 0.3 % of density and c* at 20 MPa",
            List.of("hirschfelder-1954", "harvey-lemmon-2004", "sand86-8246"));

    private static final double COLD = 2000;
    private static final double HOT = 3500;
    private static final double AVOGADRO = 6.02214076e23;
    private static final int TERMS = 40;

    public SecondVirial {
        Require.finite(CARD.title(), "covolume (m³/mol)", covolume);
        Require.finite(CARD.title(), "attraction (m³·K/mol)", attraction);
    }

    /**
     * @param collision collision figures of the molecule
     * @return its coefficient, dipole left out
     */
    public static SecondVirial of(Collision collision) {
        double cold = lennardJones(collision, COLD);
        double hot = lennardJones(collision, HOT);
        double attraction = (hot - cold) / (1 / COLD - 1 / HOT);
        return new SecondVirial(hot + attraction / HOT, attraction);
    }

    /**
     * @param temperature temperature (K)
     * @return B (m³/mol)
     */
    public double at(double temperature) {
        return covolume - attraction / temperature;
    }

    /**
     * @param collision collision figures
     * @param temperature temperature (K), above half the well's depth
     * @return second virial coefficient of molecules with that potential (m³/mol)
     */
    public static double lennardJones(Collision collision, double temperature) {
        double reduced = temperature / collision.wellDepth();
        double sum = 0;
        double factor = Math.sqrt(2) / 4 / Math.sqrt(Math.sqrt(reduced));
        // Γ((2k−1)/4) for k = 0 and 1; Γ(x + 1) = x Γ(x) gives the others
        double[] gamma = {-4.901666809860711, 3.625609908221908};
        for (int k = 0; k < TERMS; k++) {
            sum -= factor * gamma[k % 2];
            gamma[k % 2] *= (2 * k - 1) / 4.0;
            factor *= 2 / ((k + 1) * Math.sqrt(reduced));
        }
        double diameter = collision.diameter();
        return 2.0 / 3 * Math.PI * AVOGADRO * diameter * diameter * diameter * sum;
    }
}
