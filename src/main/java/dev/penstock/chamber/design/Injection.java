package dev.penstock.chamber.design;

import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.errors.Require;
import dev.penstock.fluids.property.ElementalComposition;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What enters the injector. The split into oxidizer side and fuel side is known where a film of fuel is to be modelled.
 *
 * @param mixed everything together, with its enthalpy as injected
 * @param oxidizer the oxidizer side by itself, as injected
 * @param fuel the fuel side by itself, as injected
 * @param fuelFraction mass of the fuel side over mass of everything (-)
 */
public record Injection(Reactants mixed, Optional<Reactants> oxidizer, Optional<Reactants> fuel, double fuelFraction) {

    public Injection {
        Require.within("injection", "fuel fraction (-)", fuelFraction, 0, 1);
    }

    /**
     * @param mixed everything together
     * @return an injection whose sides are not known
     */
    public static Injection of(Reactants mixed) {
        return new Injection(mixed, Optional.empty(), Optional.empty(), 0);
    }

    /**
     * @param mixed everything together, with its enthalpy as injected
     * @param fuel the fuel by itself; its share is that of its propellants in the mixture
     * @return the injection, with all that is not fuel as the oxidizer side
     */
    public static Injection of(Reactants mixed, Reactants fuel) {
        double fraction = fuel.parts().stream()
                .mapToDouble(part -> mixed.fractionOf(part.propellant()))
                .sum();
        Require.within("injection", "fuel fraction (-)", fraction, 1e-6, 1 - 1e-6);
        Map<String, Double> rest = new TreeMap<>();
        mixed.composition().molesPerKilogram().forEach((element, moles) -> {
            double left = (moles - fraction * fuel.composition().of(element)) / (1 - fraction);
            rest.put(element, Math.max(0, left));
        });
        List<Reactants.Part> others = mixed.parts().stream()
                .filter(part -> fuel.fractionOf(part.propellant()) == 0)
                .map(part -> new Reactants.Part(part.propellant(), part.massFraction() / (1 - fraction)))
                .toList();
        double enthalpy = (mixed.enthalpy() - fraction * fuel.enthalpy()) / (1 - fraction);
        Reactants oxidizer = new Reactants(new ElementalComposition(rest), enthalpy, others);
        return new Injection(mixed, Optional.of(oxidizer), Optional.of(fuel), fraction);
    }

    /**
     * @param oxidizer oxidizer side as injected, gas from a preburner included
     * @param fuel fuel side as injected
     * @param mixtureRatio mass flow of the oxidizer side over that of the fuel side (-)
     * @return the injection
     */
    public static Injection of(Reactants oxidizer, Reactants fuel, double mixtureRatio) {
        Require.positive("injection", "mixture ratio (-)", mixtureRatio);
        double fraction = 1 / (1 + mixtureRatio);
        return new Injection(oxidizer.mixedWith(fuel, fraction), Optional.of(oxidizer), Optional.of(fuel), fraction);
    }
}
