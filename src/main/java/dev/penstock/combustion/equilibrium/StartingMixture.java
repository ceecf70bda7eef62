package dev.penstock.combustion.equilibrium;

import java.util.Arrays;
import java.util.List;

/**
 * Amounts to start Newton's method from when no solution is at hand: for mixtures of C, H, N, O and inert gas the products
 * of burning, carbon to monoxide first, everything else in traces; for other elements equal amounts of all gas species.
 * Not thread-safe.
 */
final class StartingMixture {

    private static final List<String> PRODUCTS = List.of("CO", "CO2", "CH4", "H2O", "H2", "O2", "N2", "He", "Ar");
    private static final List<String> ELEMENTS = List.of("C", "H", "N", "O", "He", "Ar");
    /** Mole fraction of what is not a product. */
    private static final double TRACE = 1e-5;
    /** Least mole fraction of a product. */
    private static final double LEAST = 1e-3;

    private static final double COLDEST = 300;
    private static final double HOTTEST = 3600;
    private static final int TEMPERATURE_STEPS = 8;

    private final ActiveSpecies species;
    private final int[] product = new int[PRODUCTS.size()];
    private final int[] element = new int[ELEMENTS.size()];
    private final double[] amounts;
    private final boolean usable;

    StartingMixture(ActiveSpecies species, List<String> names, List<String> elements) {
        this.species = species;
        amounts = new double[species.gasCount];
        for (int i = 0; i < product.length; i++) {
            product[i] = names.indexOf(PRODUCTS.get(i));
        }
        for (int i = 0; i < element.length; i++) {
            element[i] = elements.indexOf(ELEMENTS.get(i));
        }
        boolean known = ELEMENTS.containsAll(elements);
        for (int i = 0; i < product.length; i++) {
            boolean needed =
                    switch (PRODUCTS.get(i)) {
                        case "CO", "CO2" -> elements.contains("C") && elements.contains("O");
                        case "CH4" -> elements.contains("C") && elements.contains("H");
                        case "H2O" -> elements.contains("H") && elements.contains("O");
                        case "H2" -> elements.contains("H");
                        case "O2" -> elements.contains("O");
                        case "N2" -> elements.contains("N");
                        default -> elements.contains(PRODUCTS.get(i));
                    };
            known &= !needed || product[i] >= 0;
        }
        usable = known;
    }

    /**
     * @param b moles of each element (mol/kg)
     * @return moles of each gas species (mol/kg); overwritten by the next call
     */
    double[] amounts(double[] b) {
        double atomsSum = 0;
        for (double each : b) {
            atomsSum += each;
        }
        if (!usable) {
            Arrays.fill(amounts, 0.5 * atomsSum / amounts.length);
            return amounts;
        }
        Arrays.fill(amounts, 0);
        double c = of(b, 0);
        double h = of(b, 1);
        double o = of(b, 3);
        double share = Math.max(0, Math.min(1, (o - c) / (c + h / 2)));
        double bound = c > 0 || h > 0 ? share : 0;
        double monoxide = Math.min(c, o) * (1 - bound);
        double methane = Math.min(Math.max(0, c - o), h / 4);
        put(0, monoxide);
        put(1, Math.min(c, o) * bound);
        put(2, methane);
        put(3, bound * h / 2);
        put(4, (1 - bound) * h / 2 - 2 * methane);
        put(5, Math.max(0, o - 2 * c - h / 2) / 2);
        put(6, of(b, 2) / 2);
        put(7, of(b, 4));
        put(8, of(b, 5));
        double sum = 0;
        for (double each : amounts) {
            sum += each;
        }
        sum = Math.max(sum, 0.01 * atomsSum);
        for (int i : product) {
            if (i >= 0) {
                amounts[i] = Math.max(amounts[i], LEAST * sum);
            }
        }
        for (int j = 0; j < amounts.length; j++) {
            amounts[j] = Math.max(amounts[j], TRACE * sum);
        }
        return amounts;
    }

    private double of(double[] b, int i) {
        return element[i] < 0 ? 0 : b[element[i]];
    }

    private void put(int i, double moles) {
        if (product[i] >= 0) {
            amounts[product[i]] = moles;
        }
    }

    /**
     * Temperature at which the starting amounts have an enthalpy.
     *
     * @param scaledEnthalpy enthalpy over the gas constant (K·mol/kg)
     * @return temperature (K), between 300 K and 3600 K
     */
    double temperature(double scaledEnthalpy) {
        double t = 2500;
        for (int i = 0; i < TEMPERATURE_STEPS; i++) {
            species.thermo.evaluate(t);
            double held = 0;
            double cp = 0;
            for (int j = 0; j < amounts.length; j++) {
                held += amounts[j] * species.thermo.h[j];
                cp += amounts[j] * species.thermo.cp[j];
            }
            double next = t + (scaledEnthalpy - held * t) / cp;
            next = Math.max(COLDEST, Math.min(HOTTEST, next));
            if (Math.abs(next - t) < 0.01 * t) {
                return next;
            }
            t = next;
        }
        return t;
    }
}
