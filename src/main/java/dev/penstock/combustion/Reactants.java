package dev.penstock.combustion;

import dev.penstock.errors.Require;
import dev.penstock.fluids.ElementalComposition;
import dev.penstock.fluids.Propellant;
import java.util.Map;
import java.util.TreeMap;

/**
 * What goes into a combustion, per kilogram of mixture.
 *
 * @param composition atoms per kilogram of mixture
 * @param enthalpy enthalpy relative to the elements at 298.15 K (J/kg)
 * @param propellants mass fraction by propellant id, for messages and for assumptions known to be wrong for a pair
 */
public record Reactants(ElementalComposition composition, double enthalpy, Map<String, Double> propellants) {

    public Reactants {
        Require.finite("reactants", "enthalpy (J/kg)", enthalpy);
        propellants = Map.copyOf(propellants);
    }

    /**
     * Oxidizer and fuel at given enthalpies.
     *
     * @param oxidizer oxidizer
     * @param oxidizerEnthalpy absolute enthalpy of the oxidizer as injected (J/kg)
     * @param fuel fuel
     * @param fuelEnthalpy absolute enthalpy of the fuel as injected (J/kg)
     * @param mixtureRatio oxidizer over fuel by mass (-)
     * @return the mixture
     */
    public static Reactants of(
            Propellant oxidizer, double oxidizerEnthalpy, Propellant fuel, double fuelEnthalpy, double mixtureRatio) {
        Require.positive("reactants", "mixture ratio (-)", mixtureRatio);
        double fuelFraction = 1 / (1 + mixtureRatio);
        return single(oxidizer, oxidizerEnthalpy).mixedWith(single(fuel, fuelEnthalpy), fuelFraction);
    }

    /**
     * One propellant by itself.
     *
     * @param propellant propellant
     * @param enthalpy absolute enthalpy (J/kg)
     * @return one kilogram of it
     */
    public static Reactants single(Propellant propellant, double enthalpy) {
        return new Reactants(propellant.composition(), enthalpy, Map.of(propellant.id(), 1.0));
    }

    /**
     * @param other what is mixed in
     * @param otherFraction its mass fraction in the result (-)
     * @return the adiabatic mixture
     */
    public Reactants mixedWith(Reactants other, double otherFraction) {
        Require.within("reactants", "mass fraction (-)", otherFraction, 0, 1);
        double own = 1 - otherFraction;
        return new Reactants(
                new ElementalComposition(blend(
                        composition.molesPerKilogram(), own, other.composition.molesPerKilogram(), otherFraction)),
                own * enthalpy + otherFraction * other.enthalpy,
                blend(propellants, own, other.propellants, otherFraction));
    }

    /**
     * @param newEnthalpy absolute enthalpy (J/kg)
     * @return the same mixture with that enthalpy
     */
    public Reactants withEnthalpy(double newEnthalpy) {
        return new Reactants(composition, newEnthalpy, propellants);
    }

    private static Map<String, Double> blend(
            Map<String, Double> a, double fractionA, Map<String, Double> b, double fractionB) {
        Map<String, Double> map = new TreeMap<>();
        a.forEach((key, value) -> map.merge(key, fractionA * value, Double::sum));
        b.forEach((key, value) -> map.merge(key, fractionB * value, Double::sum));
        return map;
    }
}
