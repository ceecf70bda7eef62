package dev.penstock.chamber.flow;

import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.species.SpeciesSet;
import dev.penstock.quantities.Constants;

/**
 * How fast three-body collisions recombine atoms and radicals in an equilibrium gas: the forward rate, in moles of
 * molecules made fewer per kilogram and second.
 * <pre>
 * H + H + M → H₂ + M      1.0e18 T^−1   (and own terms for M = H₂, H₂O, CO₂)
 * H + OH + M → H₂O + M    2.2e22 T^−2
 * O + H + M → OH + M      5.0e17 T^−1
 * O + O + M → O₂ + M      1.2e17 T^−1
 * CO + O + M → CO₂ + M    6.02e14 exp(−3000 cal/(R T)), falling off to 1.8e10 exp(−2385 cal/(R T)) cm³/(mol·s)
 * </pre>
 * in cm⁶/(mol²·s), with the third-body efficiencies of the mechanism [gri-mech-3.0]. Recombination by way of HO₂ is left
 * out: it runs back as fast at these temperatures. Not thread-safe.
 */
public final class Recombination {

    private static final double CALORIE = 4.184; // J

    private final double[] moles;
    private final int h;
    private final int h2;
    private final int o;
    private final int o2;
    private final int oh;
    private final int h2o;
    private final int co;
    private final int co2;
    private final int ch4;
    private final int gasCount;

    Recombination(SpeciesSet set) {
        moles = new double[set.size()];
        gasCount = set.gasCount();
        h = set.indexOf("H");
        h2 = set.indexOf("H2");
        o = set.indexOf("O");
        o2 = set.indexOf("O2");
        oh = set.indexOf("OH");
        h2o = set.indexOf("H2O");
        co = set.indexOf("CO");
        co2 = set.indexOf("CO2");
        ch4 = set.indexOf("CH4");
    }

    /**
     * @param gas equilibrium gas
     * @return forward recombination rate (mol/(kg·s))
     */
    double rate(EquilibriumSolver gas) {
        gas.copyMoles(moles);
        double t = gas.temperature();
        double scale = gas.density() * 1e-6; // mol/kg to mol/cm³
        double total = 0;
        for (int j = 0; j < gasCount; j++) {
            total += moles[j];
        }
        double all = total * scale;
        double cH = concentration(h, scale);
        double cH2 = concentration(h2, scale);
        double cO = concentration(o, scale);
        double cO2 = concentration(o2, scale);
        double cOh = concentration(oh, scale);
        double cH2o = concentration(h2o, scale);
        double cCo = concentration(co, scale);
        double cCo2 = concentration(co2, scale);
        double cCh4 = concentration(ch4, scale);

        double hh = cH
                * cH
                * (1.0e18 / t * (all - cH2 - cH2o - cCo2 + cCh4)
                        + 9.0e16 * Math.pow(t, -0.6) * cH2
                        + 6.0e19 * Math.pow(t, -1.25) * cH2o
                        + 5.5e20 / (t * t) * cCo2);
        double hoh = 2.2e22 / (t * t) * cH * cOh * (all - 0.27 * cH2 + 2.65 * cH2o + cCh4);
        double oxh = 5.0e17 / t * cO * cH * (all + cH2 + 5 * cH2o + cCh4 + 0.5 * cCo + cCo2);
        double oxo = 1.2e17 / t * cO * cO * (all + 1.4 * cH2 + 14.4 * cH2o + cCh4 + 0.75 * cCo + 2.6 * cCo2);
        double bodies = all + cH2 + 5 * cO2 + 5 * cH2o + cCh4 + 0.5 * cCo + 2.5 * cCo2;
        double rt = Constants.MOLAR_GAS_CONSTANT * t / CALORIE;
        double low = 6.02e14 * Math.exp(-3000 / rt) * bodies;
        double high = 1.8e10 * Math.exp(-2385 / rt);
        double coo = low * high / (low + high) * cCo * cO;
        return (hh + hoh + oxh + oxo + coo) / scale;
    }

    private double concentration(int species, double scale) {
        return species < 0 ? 0 : moles[species] * scale;
    }
}
