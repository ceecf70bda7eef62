package dev.penstock.combustion.gas;

import dev.penstock.combustion.species.Critical;
import dev.penstock.combustion.species.Species;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;

/**
 * Departure of a dense gas of fixed composition from the ideal gas, by Soave's form of the cubic equation of Redlich and Kwong.
 * <pre>
 * p = RT/(v − b) − a/(v(v + b));   b = Σ x_i b_i;   a = (Σ x_i √a_ci α_i)²,   α_i = 1 + m_i (1 − √(T/T_ci))
 * a_ci = 0.42748 R² T_ci²/p_ci;    b_i = 0.08664 R T_ci/p_ci;    m_i = 0.480 + 1.574 ω_i − 0.176 ω_i²
 * h − h° = RT(Z − 1) + (T a' − a)/b ln(1 + b/v);   s − s° = R ln(Z − pb/RT) + a'/b ln(1 + b/v);   cv − cv° = T a''/b ln(1 + b/v)
 * </pre>
 * The root of the gas is taken. No interaction parameters. A species without critical point takes up no room and attracts
 * nothing. Immutable, safe to share. Range: 300 K to 1500 K, to 60 MPa, with no more than a quarter of steam or ammonia;
 * pure steam near its critical point is 10 % and more wrong.
 */
public final class SoaveGas {

    /** What this model is. */
    public static final ModelCard CARD = new ModelCard(
            "combustion.dense-gas",
            "Dense burner gas by a cubic equation of state",
            "p = RT/(v − b) − a(T)/(v(v + b)), b = Σ x b_i, √a = Σ x √a_i; h, s, cv by its departure functions",
            "gas of fixed composition, 300 K to 1500 K, to 60 MPa, up to a quarter of steam or ammonia",
            "1 % in density and isentropic drop, 2 K in the temperature behind it",
            List.of("soave-1972", "poling-2001"));

    private static final double R = Constants.MOLAR_GAS_CONSTANT;
    private static final double A = 0.42748;
    private static final double B = 0.08664;
    private static final int MOST_STEPS = 100;

    /** √a = c0 − c1 √T, by the form of α. */
    private final double c0;

    private final double c1;
    private final double covolume;
    private final double unknown;

    /**
     * @param species gas species
     * @param moles their amounts, in any unit
     */
    public SoaveGas(List<Species> species, double[] moles) {
        double total = 0;
        double constant = 0;
        double slope = 0;
        double room = 0;
        double without = 0;
        for (int i = 0; i < species.size(); i++) {
            total += Require.notNegative(
                    CARD.title(), "moles of " + species.get(i).name(), moles[i]);
            if (species.get(i).critical().isEmpty()) {
                without += moles[i];
                continue;
            }
            Critical point = species.get(i).critical().get();
            double omega = point.acentricFactor();
            double m = 0.480 + omega * (1.574 - 0.176 * omega);
            double root = R * point.temperature() * Math.sqrt(A / point.pressure());
            constant += moles[i] * root * (1 + m);
            slope += moles[i] * root * m / Math.sqrt(point.temperature());
            room += moles[i] * B * R * point.temperature() / point.pressure();
        }
        Require.positive(CARD.title(), "moles of gas", total);
        c0 = constant / total;
        c1 = slope / total;
        covolume = room / total;
        unknown = without / total;
    }

    /** @return mole fraction of species whose critical point is not known (-) */
    public double unknownShare() {
        return unknown;
    }

    /**
     * @param pressure pressure (Pa)
     * @param temperature temperature (K)
     * @return departure from the ideal gas there
     * @throws NotConverged if the cubic has no root that is found
     */
    public Departure at(double pressure, double temperature) {
        double rt = R * temperature;
        double rootT = Math.sqrt(temperature);
        double root = c0 - c1 * rootT;
        double slope = -c1 / (2 * rootT);
        double a = root * root;
        double a1 = 2 * root * slope;
        double a2 = 2 * slope * slope + root * c1 / (2 * temperature * rootT);
        double volume = rt / pressure * largestRoot(a * pressure / (rt * rt), covolume * pressure / rt);
        // ln(1 + b/v)/b, which stays where b vanishes
        double log = covolume > 0 ? Math.log1p(covolume / volume) / covolume : 1 / volume;
        double z = pressure * volume / rt;
        double free = volume - covolume;
        double wide = volume * (volume + covolume);
        return new Departure(
                z,
                rt * (z - 1) + (temperature * a1 - a) * log,
                R * Math.log(pressure * free / rt) + a1 * log,
                temperature * a2 * log,
                R / free - a1 / wide,
                rt / (free * free) - a * (2 * volume + covolume) / (wide * wide));
    }

    /** Newton's method from above: no root lies over 1 + B, and the cubic is convex down to the largest one. */
    private static double largestRoot(double a, double b) {
        double z = 1 + b;
        for (int i = 0; i < MOST_STEPS; i++) {
            double f = ((z - 1) * z + a - b - b * b) * z - a * b;
            double step = f / ((3 * z - 2) * z + a - b - b * b);
            z -= step;
            if (Math.abs(step) < 1e-15 * z) {
                return z;
            }
            if (!(z > b)) {
                break;
            }
        }
        if (z > b && Double.isFinite(z)) {
            return z;
        }
        throw new NotConverged("volume of dense gas", MOST_STEPS, Double.NaN, "last at Z = " + z);
    }
}
