package dev.penstock.combustion.species;

import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.property.AtomicWeights;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A species that may appear in the burnt mixture.
 *
 * @param name name in the field's notation; condensed ones end in (gr), (L) or the like
 * @param condensed whether it is a pure condensed phase and not part of the gas
 * @param atoms atoms per molecule by element symbol
 * @param intervals thermodynamic fit, ascending in temperature and adjoining
 * @param collision figures for transport properties, if known
 * @param critical critical point, if known; without it the species counts as an ideal gas
 * @param virial room that the hot gas takes, if its collision figures do not tell
 * @param source key into docs/sources
 * @param file name of the file in {@code fluids/gas} that describes it
 */
public record Species(
        String name,
        boolean condensed,
        Map<String, Integer> atoms,
        List<ThermoInterval> intervals,
        Optional<Collision> collision,
        Optional<Critical> critical,
        Optional<SecondVirial> virial,
        String source,
        String file) {

    public Species {
        for (String element : atoms.keySet()) {
            if (AtomicWeights.of(element).isEmpty()) {
                throw new InvalidInput("", name + ".atoms", element, "its atomic weight is not known here");
            }
        }
        atoms = Map.copyOf(atoms);
        intervals = List.copyOf(intervals);
    }

    /** @return second virial coefficient of the hot gas; none if nothing tells, and of condensed species */
    public Optional<SecondVirial> secondVirial() {
        return condensed ? Optional.empty() : virial.or(() -> collision.map(SecondVirial::of));
    }

    /** @return molar mass (kg/mol) */
    public double molarMass() {
        return atoms.entrySet().stream()
                .mapToDouble(e -> e.getValue() * AtomicWeights.of(e.getKey()).orElseThrow())
                .sum();
    }

    /** @return lowest temperature of the fit (K) */
    public double minimumTemperature() {
        return intervals.get(0).low();
    }

    /** @return highest temperature of the fit (K) */
    public double maximumTemperature() {
        return intervals.get(intervals.size() - 1).high();
    }
}
