package dev.penstock.claims.prior;

import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.property.ElementalComposition;

/**
 * The mixture ratio at which oxygen just suffices for carbon dioxide and water.
 * <pre>r = −s(fuel)/s(oxidizer),  s = O − 2 C − H/2 in moles of atoms per kilogram</pre>
 * An identity of the elements.
 */
public final class Stoichiometry {

    private Stoichiometry() {}

    /**
     * @param oxidizer oxidizer
     * @param fuel fuel
     * @return oxidizer over fuel by mass (-)
     * @throws InvalidInput if the one has no oxygen left over, or the other does not lack it
     */
    public static double mixtureRatio(Propellant oxidizer, Propellant fuel) {
        double over = excess(oxidizer.composition());
        double lacking = -excess(fuel.composition());
        if (!(over > 0 && lacking > 0)) {
            throw new InvalidInput(
                    "",
                    "propellants",
                    oxidizer.id() + " and " + fuel.id(),
                    "the oxidizer must have oxygen left over and the fuel must lack it");
        }
        return lacking / over;
    }

    private static double excess(ElementalComposition atoms) {
        return atoms.of("O") - 2 * atoms.of("C") - 0.5 * atoms.of("H");
    }
}
