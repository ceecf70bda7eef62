package dev.penstock.combustion.species;

import dev.penstock.errors.Require;

/**
 * Critical point and acentric factor of a substance, which a cubic equation of state asks for.
 *
 * @param temperature critical temperature (K)
 * @param pressure critical pressure (Pa)
 * @param acentricFactor ω = −log10(p_v(0.7 T_c)/p_c) − 1 (-)
 */
public record Critical(double temperature, double pressure, double acentricFactor) {

    public Critical {
        Require.positive("critical point", "temperature (K)", temperature);
        Require.positive("critical point", "pressure (Pa)", pressure);
        Require.within("critical point", "acentric factor (-)", acentricFactor, -0.5, 2);
    }
}
