package dev.penstock.fluids.property;

import java.util.Map;
import java.util.TreeMap;

/**
 * Atoms in one kilogram of a substance.
 *
 * @param molesPerKilogram moles of atoms per kilogram (mol/kg) by element symbol
 */
public record ElementalComposition(Map<String, Double> molesPerKilogram) {

    public ElementalComposition {
        molesPerKilogram = Map.copyOf(new TreeMap<>(molesPerKilogram));
    }

    /**
     * @param formula atoms per molecule by element symbol
     * @param molarMass molar mass (kg/mol)
     * @return the composition of one kilogram
     */
    public static ElementalComposition ofFormula(Map<String, Double> formula, double molarMass) {
        Map<String, Double> map = new TreeMap<>();
        formula.forEach((element, atoms) -> map.put(element, atoms / molarMass));
        return new ElementalComposition(map);
    }

    /**
     * @param element element symbol
     * @return moles of its atoms per kilogram (mol/kg), zero if absent
     */
    public double of(String element) {
        return molesPerKilogram.getOrDefault(element, 0.0);
    }
}
