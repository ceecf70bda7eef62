package dev.penstock.fluids.property;

import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a fluid consists of, as read from the table {@code [composition]} of its file: a formula, or parts by mass each
 * with a formula.
 *
 * @param elements atoms per kilogram
 * @param formulaMass molar mass of the formula as written, to which a molar heat of formation refers (kg/mol)
 * @param molarMass mean molar mass of the molecules (kg/mol)
 */
public record Composition(ElementalComposition elements, double formulaMass, double molarMass) {

    private static final double SUM_TOLERANCE = 1e-6;

    public static Composition read(InputTable table) {
        List<InputTable> parts = table.tables("part");
        if (parts.isEmpty()) {
            Map<String, Double> formula = formula(table);
            double mass = molarMass(table, formula);
            double mean = table.quantity("molar_mass", Dimension.MOLAR_MASS, Range.of(1e-3, 1), mass);
            return new Composition(ElementalComposition.ofFormula(formula, mass), mass, mean);
        }
        Map<String, Double> elements = new TreeMap<>();
        double sum = 0;
        double molesPerKilogram = 0;
        for (InputTable part : parts) {
            part.text("name");
            double fraction = part.quantity("mass_fraction", Dimension.RATIO, Range.FRACTION);
            Map<String, Double> formula = formula(part);
            double molarMass = molarMass(part, formula);
            formula.forEach((element, atoms) -> elements.merge(element, fraction * atoms / molarMass, Double::sum));
            sum += fraction;
            molesPerKilogram += fraction / molarMass;
        }
        if (Math.abs(sum - 1) > SUM_TOLERANCE) {
            table.problem("part", "mass fractions with the sum " + sum, "they must add up to 1");
        }
        double mean = 1 / molesPerKilogram;
        return new Composition(new ElementalComposition(elements), mean, mean);
    }

    private static Map<String, Double> formula(InputTable table) {
        InputTable atoms = table.table("formula");
        Map<String, Double> formula = new HashMap<>();
        for (String element : atoms.keys()) {
            formula.put(element, atoms.quantity(element, Dimension.RATIO, Range.of(0, 1000)));
        }
        if (formula.isEmpty()) {
            table.problem("formula", "missing", "write the atoms of one molecule, for example { C = 1, H = 4 }");
        }
        return formula;
    }

    private static double molarMass(InputTable table, Map<String, Double> formula) {
        Optional<Double> mass = AtomicWeights.ofFormula(formula).filter(m -> m > 0);
        if (mass.isEmpty() && !formula.isEmpty()) {
            table.problem("formula", formula.toString(), "an element in it has no known atomic weight");
        }
        return mass.orElse(Double.NaN);
    }
}
