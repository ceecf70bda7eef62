package dev.penstock.combustion;

import dev.penstock.errors.Warning;
import dev.penstock.fluids.ElementalComposition;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Where chemical equilibrium is known to be a wrong picture of the gas. Thresholds: common practice, no source, except
 * that fuel-rich kerosene gas is tabulated from measurement because equilibrium fails there [nasa-sp-125].
 */
public final class EquilibriumDoubt {

    private static final String SOURCE = "equilibrium assumption";
    private static final double KEROSENE_RATIO = 1.0;
    private static final double AMMONIA_SURVIVES_BELOW = 1600;
    private static final double SLOW_BELOW = 1300;

    private EquilibriumDoubt() {}

    /**
     * @param reactants what is burnt
     * @param temperature equilibrium temperature (K)
     * @param condensedCarbon mass fraction of condensed carbon at equilibrium (-)
     * @return warnings; empty where equilibrium is a fair picture
     */
    public static List<Warning> of(Reactants reactants, double temperature, double condensedCarbon) {
        List<Warning> list = new ArrayList<>();
        ElementalComposition atoms = reactants.composition();
        double kerosene = reactants.propellants().getOrDefault("rp-1", 0.0);
        double ratio = kerosene > 0 ? 1 / kerosene - 1 : Double.POSITIVE_INFINITY;
        if (ratio < KEROSENE_RATIO) {
            list.add(warning(
                    "fuel-rich kerosene at mixture ratio %.3f does not reach equilibrium (%.0f K by equilibrium): heavy"
                            + " fuel survives and cracks; take the measured gas (gas model empirical)",
                    ratio, temperature));
        } else if (atoms.of("C") > atoms.of("O") && temperature < SLOW_BELOW) {
            list.add(warning(
                    "fewer oxygen than carbon atoms at %.0f K: fuel cracks slowly, and equilibrium (%.1f %% of the mass"
                            + " as carbon) overstates it; expect unburnt fuel in the gas",
                    temperature, 100 * condensedCarbon));
        }
        if (hydrazines(reactants) && atoms.of("O") * 2 < atoms.of("H") && temperature < AMMONIA_SURVIVES_BELOW) {
            list.add(warning(
                    "at %.0f K ammonia from hydrazines dissociates slowly; equilibrium, nearly free of ammonia, is too"
                            + " cold and too light (hydrazine alone: state its dissociation, %.1f is usual)",
                    temperature, HydrazineDecomposition.USUAL_DISSOCIATION));
        }
        return list;
    }

    private static boolean hydrazines(Reactants reactants) {
        return reactants.propellants().keySet().stream()
                .anyMatch(id ->
                        id.startsWith("hydrazine") || id.startsWith("uh-") || id.equals("mmh") || id.equals("udmh"));
    }

    private static Warning warning(String text, double a, double b) {
        return new Warning(SOURCE, String.format(Locale.ROOT, text, a, b));
    }
}
