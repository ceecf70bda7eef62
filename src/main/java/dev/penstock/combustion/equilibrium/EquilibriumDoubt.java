package dev.penstock.combustion.equilibrium;

import dev.penstock.errors.Warning;
import dev.penstock.fluids.property.ElementalComposition;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where chemical equilibrium is known to be a wrong picture of the gas. Below which mixture ratio a fuel
 * is known to fail, and which propellants release ammonia, stands in their files. Other thresholds: common practice, no
 * source.
 */
public final class EquilibriumDoubt {

    private static final String SOURCE = "equilibrium assumption";
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
        Optional<Reactants.Part> failing =
                reactants.parts().stream().filter(EquilibriumDoubt::fails).findFirst();
        if (failing.isPresent()) {
            list.add(warning(
                    "fuel-rich " + failing.get().propellant().name()
                            + " at mixture ratio %.3f does not reach equilibrium"
                            + " (%.0f K by equilibrium): heavy fuel survives and cracks; take measured gas where there is"
                            + " some (gas model empirical)",
                    ratio(failing.get()),
                    temperature));
        } else if (atoms.of("C") > atoms.of("O") && temperature < SLOW_BELOW) {
            list.add(warning(
                    "fewer oxygen than carbon atoms at %.0f K: fuel cracks slowly, and equilibrium (%.1f %% of the mass"
                            + " as carbon) overstates it; expect unburnt fuel in the gas",
                    temperature, 100 * condensedCarbon));
        }
        boolean ammonia = reactants.parts().stream()
                .anyMatch(p -> p.propellant().combustion().releasesAmmonia());
        if (ammonia && atoms.of("O") * 2 < atoms.of("H") && temperature < AMMONIA_SURVIVES_BELOW) {
            list.add(warning(
                    "at %.0f K ammonia dissociates slowly; equilibrium, nearly free of ammonia, is too"
                            + " cold and too light (hydrazine alone: state its dissociation, %.1f is usual)",
                    temperature, HydrazineDecomposition.USUAL_DISSOCIATION));
        }
        return list;
    }

    /** Whether a fuel's file tells that its gas does not reach equilibrium at this mixture ratio. */
    private static boolean fails(Reactants.Part part) {
        OptionalDouble below = part.propellant().combustion().equilibriumFails();
        return below.isPresent() && ratio(part) < below.getAsDouble();
    }

    /** Everything else over this part by mass. */
    private static double ratio(Reactants.Part part) {
        return 1 / part.massFraction() - 1;
    }

    private static Warning warning(String text, double a, double b) {
        return new Warning(SOURCE, String.format(Locale.ROOT, text, a, b));
    }
}
