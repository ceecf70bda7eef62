package dev.penstock.combustion.equilibrium;

import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.combustion.species.SpeciesSet;
import dev.penstock.errors.Require;
import dev.penstock.fluids.property.ElementalComposition;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Set;

/**
 * Gas of decomposed hydrazine with a stated part of the ammonia dissociated.
 * <pre>
 * 3 N2H4 → 4 (1 - x) NH3 + (1 + 2 x) N2 + 6 x H2
 * </pre>
 * Ammonia dissociates slowly: catalyst beds and gas generators reach x of 0.3 to 0.8 by their length, equilibrium would
 * be near 1. Source of the reaction and the range: [schmidt-1984], from memory. The dissociation is an input.
 */
public final class HydrazineDecomposition {

    /** What this model is. */
    public static final ModelCard CARD = new ModelCard(
            "combustion.hydrazine-decomposition",
            "Hydrazine with partly dissociated ammonia",
            "3 N2H4 -> 4(1-x) NH3 + (1+2x) N2 + 6x H2",
            "0 <= x <= 1; pure hydrazine",
            "as good as the dissociation assumed: about 78 K per 0.1",
            List.of("schmidt-1984"));

    /** Dissociation assumed when none is stated (-): common practice, no source. */
    public static final double USUAL_DISSOCIATION = 0.5;

    private static final double SAME_RATIO = 1e-6;

    private HydrazineDecomposition() {}

    /**
     * @param reactants what is burnt
     * @return whether that is one propellant alone which releases ammonia and has the atoms of hydrazine
     */
    public static boolean describes(Reactants reactants) {
        ElementalComposition atoms = reactants.composition();
        return reactants.parts().size() == 1
                && reactants.parts().get(0).propellant().combustion().releasesAmmonia()
                && atoms.molesPerKilogram().keySet().equals(Set.of("N", "H"))
                && Math.abs(atoms.of("H") - 2 * atoms.of("N")) <= SAME_RATIO * atoms.of("H");
    }

    /**
     * @param library species data
     * @param dissociation dissociated part of the ammonia (-)
     * @param enthalpy enthalpy of the hydrazine (J/kg)
     * @param pressure pressure (Pa)
     * @return the gas at its adiabatic temperature
     */
    public static FrozenGas decompose(SpeciesLibrary library, double dissociation, double enthalpy, double pressure) {
        Require.within(CARD.title(), "ammonia dissociation (-)", dissociation, 0, 1);
        SpeciesSet set = library.speciesFor(Set.of("N", "H"));
        double perKilogram = 1 / (3 * library.named("N2H4").molarMass());
        double[] moles = new double[set.size()];
        moles[set.indexOf("NH3")] = 4 * (1 - dissociation) * perKilogram;
        moles[set.indexOf("N2")] = (1 + 2 * dissociation) * perKilogram;
        moles[set.indexOf("H2")] = 6 * dissociation * perKilogram;
        FrozenGas gas = new FrozenGas(set, moles);
        gas.setPressureEnthalpy(pressure, enthalpy);
        return gas;
    }
}
