package dev.penstock.combustion.gas;

import dev.penstock.combustion.species.Collision;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;

/**
 * Viscosity, diffusion and conductivity of single gases by the kinetic theory of Chapman and Enskog with a Lennard-Jones
 * potential, dipoles by a Stockmayer correction.
 * <pre>
 * μ   = 5/16 √(π m k T) / (π σ² Ω22)
 * D   = 3/16 √(2 π k³ T³ / m_12) / (p π σ_12² Ω11)
 * λ   = (μ/M) (f_tr cv_tr + f_rot cv_rot + f_vib cv_vib)
 * Ω22 = 1.16145 T*^-0.14874 + 0.52487 e^(-0.77320 T*) + 2.16178 e^(-2.43787 T*) + 0.2 δ²/T*
 * Ω11 = 1.06036 T*^-0.15610 + 0.19300 e^(-0.47635 T*) + 1.03587 e^(-1.52996 T*) + 1.76474 e^(-3.89411 T*) + 0.19 δ²/T*
 * </pre>
 * Collision integrals: [neufeld-1972], dipole term [brokaw-1969]; conductivity factors [sand86-8246] after Warnatz with
 * the rotational relaxation of [parker-1959]. Holds for 0.3 ≤ T* ≤ 100 (T* = kT/ε) and low density; at the ends of the
 * range T* is held.
 */
final class KineticTheory {

    /** What this model is. */
    static final ModelCard CARD = new ModelCard(
            "combustion.kinetic-theory",
            "Transport of a single gas by Chapman-Enskog theory",
            "μ = 5/16 √(π m k T)/(π σ² Ω22); D = 3/16 √(2π k³T³/m)/(p π σ² Ω11)",
            "0.3 ≤ kT/ε ≤ 100, low density",
            "a few percent for stable molecules, 10 to 20 percent for radicals (common practice, no source)",
            List.of("neufeld-1972", "brokaw-1969", "sand86-8246", "parker-1959"));

    private static final double R = Constants.MOLAR_GAS_CONSTANT;
    /** Avogadro constant (1/mol), exact since the 2019 SI. */
    private static final double AVOGADRO = 6.02214076e23;

    private static final double BOLTZMANN = R / AVOGADRO;
    /** Vacuum permittivity (F/m), CODATA 2018. */
    private static final double PERMITTIVITY = 8.8541878128e-12;

    private static final double LOWEST = 0.3;
    private static final double HIGHEST = 100;
    private static final double ROTATION_REFERENCE = 298;

    private KineticTheory() {}

    /**
     * @param a a molecule
     * @param b another, or the same
     * @return reduced dipole moment squared, δ² (-); zero unless both are polar
     */
    static double reducedDipoleSquared(Collision a, Collision b) {
        double sigma = 0.5 * (a.diameter() + b.diameter());
        double epsilon = BOLTZMANN * Math.sqrt(a.wellDepth() * b.wellDepth());
        double delta = a.dipole() * b.dipole() / (8 * Math.PI * PERMITTIVITY * epsilon * sigma * sigma * sigma);
        return delta * delta;
    }

    /** Ω22 for viscosity (-) at reduced temperature t and δ² d. */
    static double viscosityIntegral(double reduced, double d) {
        double t = Math.min(HIGHEST, Math.max(LOWEST, reduced));
        return 1.16145 * Math.pow(t, -0.14874)
                + 0.52487 * Math.exp(-0.77320 * t)
                + 2.16178 * Math.exp(-2.43787 * t)
                + 0.2 * d / t;
    }

    /** Ω11 for diffusion (-) at reduced temperature t and δ² d. */
    static double diffusionIntegral(double reduced, double d) {
        double t = Math.min(HIGHEST, Math.max(LOWEST, reduced));
        return 1.06036 * Math.pow(t, -0.15610)
                + 0.19300 * Math.exp(-0.47635 * t)
                + 1.03587 * Math.exp(-1.52996 * t)
                + 1.76474 * Math.exp(-3.89411 * t)
                + 0.19 * d / t;
    }

    /**
     * @param m molar mass (kg/mol)
     * @param c collision figures
     * @param t temperature (K)
     * @return viscosity (Pa·s)
     */
    static double viscosity(double m, Collision c, double t) {
        double mass = m / AVOGADRO;
        double omega = viscosityIntegral(t / c.wellDepth(), reducedDipoleSquared(c, c));
        return 5.0 / 16.0 * Math.sqrt(Math.PI * mass * BOLTZMANN * t) / (Math.PI * c.diameter() * c.diameter() * omega);
    }

    /**
     * @param reducedMass m1 m2/(m1 + m2) (kg/mol)
     * @param diameter mean collision diameter (m)
     * @param wellDepth geometric mean of the well depths (K)
     * @param dipole δ² of the pair (-)
     * @param t temperature (K)
     * @return binary diffusion coefficient times pressure (N/s = m²/s · Pa)
     */
    static double diffusionTimesPressure(
            double reducedMass, double diameter, double wellDepth, double dipole, double t) {
        double kt = BOLTZMANN * t;
        return 3.0
                / 16.0
                * Math.sqrt(2 * Math.PI * kt * kt * kt * AVOGADRO / reducedMass)
                / (Math.PI * diameter * diameter * diffusionIntegral(t / wellDepth, dipole));
    }

    /**
     * @param m molar mass (kg/mol)
     * @param c collision figures
     * @param t temperature (K)
     * @param viscosity viscosity (Pa·s)
     * @param cp cp/R (-)
     * @return thermal conductivity (W/(m·K))
     */
    static double conductivity(double m, Collision c, double t, double viscosity, double cp) {
        double rotation = c.shape().rotationalHeat();
        double perMass = viscosity * R / m;
        if (rotation == 0) {
            return perMass * 2.5 * 1.5;
        }
        double vibration = Math.max(0, cp - 2.5 - rotation);
        double selfDiffusion =
                diffusionTimesPressure(m / 2, c.diameter(), c.wellDepth(), reducedDipoleSquared(c, c), t);
        double schmidt = selfDiffusion * m / (R * t) / viscosity;
        double number =
                c.rotationalNumber() * relaxation(c.wellDepth() / ROTATION_REFERENCE) / relaxation(c.wellDepth() / t);
        double a = 2.5 - schmidt;
        double b = number + 2 / Math.PI * (5.0 / 3.0 * rotation + schmidt);
        double share = 2 / Math.PI * a / b;
        double translationFactor = 2.5 * (1 - share * rotation / 1.5);
        double rotationFactor = schmidt * (1 + share);
        return perMass * (translationFactor * 1.5 + rotationFactor * rotation + schmidt * vibration);
    }

    private static double relaxation(double x) {
        double root = Math.sqrt(x);
        double half = Math.pow(Math.PI, 1.5);
        return 1 + 0.5 * half * root + (Math.PI * Math.PI / 4 + 2) * x + half * x * root;
    }
}
