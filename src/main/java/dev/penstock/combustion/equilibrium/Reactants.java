package dev.penstock.combustion.equilibrium;

import dev.penstock.errors.Require;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.property.ElementalComposition;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What goes into a combustion, per kilogram of mixture.
 *
 * @param composition atoms per kilogram of mixture
 * @param enthalpy enthalpy relative to the elements at 298.15 K (J/kg)
 * @param parts propellants with their shares, for what is known of them besides their atoms; may be empty
 */
public record Reactants(ElementalComposition composition, double enthalpy, List<Part> parts) {

    /**
     * One propellant of a mixture.
     *
     * @param propellant propellant
     * @param massFraction its mass over that of the mixture (-)
     */
    public record Part(Propellant propellant, double massFraction) {}

    public Reactants {
        Require.finite("reactants", "enthalpy (J/kg)", enthalpy);
        parts = List.copyOf(parts);
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
     * Oxidizer and fuel as they are in their tanks at normal loading.
     *
     * @param oxidizer oxidizer
     * @param fuel fuel
     * @param mixtureRatio oxidizer over fuel by mass (-)
     * @return the mixture
     */
    public static Reactants ofTanks(Propellant oxidizer, Propellant fuel, double mixtureRatio) {
        return of(oxidizer, oxidizer.storedEnthalpy(), fuel, fuel.storedEnthalpy(), mixtureRatio);
    }

    /**
     * One propellant by itself.
     *
     * @param propellant propellant
     * @param enthalpy absolute enthalpy (J/kg)
     * @return one kilogram of it
     */
    public static Reactants single(Propellant propellant, double enthalpy) {
        return new Reactants(propellant.composition(), enthalpy, List.of(new Part(propellant, 1.0)));
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
                partsWith(own, other.parts, otherFraction));
    }

    /**
     * @param newEnthalpy absolute enthalpy (J/kg)
     * @return the same mixture with that enthalpy
     */
    public Reactants withEnthalpy(double newEnthalpy) {
        return new Reactants(composition, newEnthalpy, parts);
    }

    /**
     * @param propellant a propellant
     * @return its mass over that of the mixture (-); zero if it is not there
     */
    public double fractionOf(Propellant propellant) {
        return parts.stream()
                .filter(part -> part.propellant().id().equals(propellant.id()))
                .mapToDouble(Part::massFraction)
                .sum();
    }

    /**
     * What sets the manner of burning: the fuel that weighs most or, where nothing is a fuel, the propellant that weighs
     * most.
     *
     * @return that propellant; empty if no propellant is named
     */
    public Optional<Part> leading() {
        Comparator<Part> byRole =
                Comparator.comparing(part -> part.propellant().roles().contains(Propellant.Role.FUEL));
        return parts.stream().max(byRole.thenComparingDouble(Part::massFraction));
    }

    /**
     * @param between what to write between two names
     * @return names of the propellants for people
     */
    public String names(String between) {
        return parts.stream().map(part -> part.propellant().name()).collect(Collectors.joining(between));
    }

    private List<Part> partsWith(double own, List<Part> others, double otherFraction) {
        Map<String, Part> map = new LinkedHashMap<>();
        parts.forEach(part -> add(map, part, own));
        others.forEach(part -> add(map, part, otherFraction));
        return List.copyOf(map.values());
    }

    private static void add(Map<String, Part> map, Part part, double fraction) {
        map.merge(
                part.propellant().id(),
                new Part(part.propellant(), fraction * part.massFraction()),
                (a, b) -> new Part(a.propellant(), a.massFraction() + b.massFraction()));
    }

    private static Map<String, Double> blend(
            Map<String, Double> a, double fractionA, Map<String, Double> b, double fractionB) {
        Map<String, Double> map = new TreeMap<>();
        a.forEach((key, value) -> map.merge(key, fractionA * value, Double::sum));
        b.forEach((key, value) -> map.merge(key, fractionB * value, Double::sum));
        return map;
    }
}
