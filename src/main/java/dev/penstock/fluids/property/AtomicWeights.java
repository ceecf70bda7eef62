package dev.penstock.fluids.property;

import java.util.Map;
import java.util.Optional;

/**
 * Standard atomic weights, abridged to the digits that are certain in all terrestrial material [iupac-2021]. One table
 * for propellants and combustion gas, so that element balances close to round-off.
 */
public final class AtomicWeights {

    private static final Map<String, Double> GRAMS_PER_MOLE = Map.ofEntries(
            Map.entry("H", 1.008),
            Map.entry("He", 4.002602),
            Map.entry("C", 12.011),
            Map.entry("N", 14.007),
            Map.entry("O", 15.999),
            Map.entry("F", 18.998403162),
            Map.entry("Ne", 20.1797),
            Map.entry("Al", 26.9815384),
            Map.entry("Si", 28.085),
            Map.entry("P", 30.973761998),
            Map.entry("S", 32.06),
            Map.entry("Cl", 35.45),
            Map.entry("Ar", 39.95));

    private AtomicWeights() {}

    /**
     * @param element element symbol
     * @return molar mass (kg/mol); empty for an element that is not in the table
     */
    public static Optional<Double> of(String element) {
        return Optional.ofNullable(GRAMS_PER_MOLE.get(element)).map(grams -> grams * 1e-3);
    }

    /**
     * @param formula atoms per molecule by element symbol
     * @return molar mass (kg/mol); empty if an element is not in the table
     */
    public static Optional<Double> ofFormula(Map<String, Double> formula) {
        double sum = 0;
        for (Map.Entry<String, Double> part : formula.entrySet()) {
            Optional<Double> weight = of(part.getKey());
            if (weight.isEmpty()) {
                return Optional.empty();
            }
            sum += weight.get() * part.getValue();
        }
        return Optional.of(sum);
    }
}
