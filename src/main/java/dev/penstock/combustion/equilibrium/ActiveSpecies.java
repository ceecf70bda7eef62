package dev.penstock.combustion.equilibrium;

import dev.penstock.combustion.species.Species;
import dev.penstock.combustion.species.SpeciesSet;
import dev.penstock.combustion.species.ThermoTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Those elements of a set that a mixture really contains, and the species that can form of them, as packed arrays. Gas
 * species come first. Not thread-safe (it carries the thermodynamic table of one temperature).
 */
final class ActiveSpecies {

    final int elementCount;
    final int gasCount;
    final int condensedCount;
    /** Index in the species set by index here. */
    final int[] globalIndex;
    /** Index in the set's elements by index here. */
    final int[] elementIndex;
    /** Atoms of element k in a molecule of species j: atoms[k][j]. */
    final double[][] atoms;
    /** Gas species that hold element k, rising: sums over them skip what is zero by structure, and give the same bits. */
    final int[][] holders;
    /** Gas species that hold both elements k and l, l up to k. */
    final int[][][] holdersOfBoth;

    /** Temperature above which a condensed species is not taken to exist: the end of its data (K). */
    final double[] condensedMaximum;
    /** Names of the condensed species. */
    final List<String> condensedNames;

    final ThermoTable thermo;

    final StartingMixture start;

    /**
     * @param set species to choose from
     * @param present whether each element of the set is present
     */
    ActiveSpecies(SpeciesSet set, boolean[] present) {
        List<Integer> elements = new ArrayList<>();
        for (int k = 0; k < present.length; k++) {
            if (present[k]) {
                elements.add(k);
            }
        }
        List<Integer> chosen = new ArrayList<>();
        List<Species> species = new ArrayList<>();
        int gas = 0;
        for (int j = 0; j < set.size(); j++) {
            Species s = set.species().get(j);
            if (s.atoms().keySet().stream().allMatch(e -> present[set.elements().indexOf(e)])) {
                chosen.add(j);
                species.add(s);
                gas += j < set.gasCount() ? 1 : 0;
            }
        }
        elementCount = elements.size();
        gasCount = gas;
        condensedCount = species.size() - gas;
        globalIndex = chosen.stream().mapToInt(Integer::intValue).toArray();
        elementIndex = elements.stream().mapToInt(Integer::intValue).toArray();
        atoms = new double[elementCount][species.size()];
        for (int k = 0; k < elementCount; k++) {
            String element = set.elements().get(elementIndex[k]);
            for (int j = 0; j < species.size(); j++) {
                atoms[k][j] = species.get(j).atoms().getOrDefault(element, 0);
            }
        }
        holders = new int[elementCount][];
        holdersOfBoth = new int[elementCount][elementCount][];
        for (int k = 0; k < elementCount; k++) {
            double[] ak = atoms[k];
            holders[k] = IntStream.range(0, gasCount).filter(j -> ak[j] != 0).toArray();
            for (int l = 0; l <= k; l++) {
                double[] al = atoms[l];
                holdersOfBoth[k][l] =
                        Arrays.stream(holders[k]).filter(j -> al[j] != 0).toArray();
            }
        }
        condensedMaximum = species.stream()
                .filter(Species::condensed)
                .mapToDouble(Species::maximumTemperature)
                .toArray();
        condensedNames =
                species.stream().filter(Species::condensed).map(Species::name).toList();
        thermo = new ThermoTable(species, set.isDense());
        start = new StartingMixture(
                this,
                species.subList(0, gas).stream().map(Species::name).toList(),
                elements.stream().map(k -> set.elements().get(k)).toList());
    }

    /**
     * @param b moles of each element (mol/kg)
     * @return the condensed species that could take up the whole mixture, if there is one
     */
    Optional<String> condensedAlone(double[] b) {
        for (int c = 0; c < condensedCount; c++) {
            double most = Double.POSITIVE_INFINITY;
            double least = 0;
            for (int k = 0; k < elementCount; k++) {
                double needed = atoms[k][gasCount + c];
                double ratio = needed / b[k];
                least = Math.max(least, ratio);
                most = Math.min(most, ratio);
            }
            if (least - most < 1e-9 * least) {
                return Optional.of(condensedNames.get(c));
            }
        }
        return Optional.empty();
    }
}
