package dev.penstock.combustion.species;

import dev.penstock.errors.InvalidInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The elements of a mixture and the species that may form of them, gas first. Immutable. */
public final class SpeciesSet {

    private final List<String> elements;
    private final List<Species> species;
    private final int gasCount;
    private final ThermoTable thermo;
    private final boolean dense;
    private volatile SpeciesSet crowded;

    /**
     * @param elements element symbols
     * @param species species made of these elements, in any order
     * @throws InvalidInput if a species contains another element, or there is no gas
     */
    public SpeciesSet(List<String> elements, List<Species> species) {
        this(elements, species, false);
    }

    private SpeciesSet(List<String> elements, List<Species> species, boolean dense) {
        this.dense = dense;
        this.elements = List.copyOf(elements);
        List<Species> ordered =
                new ArrayList<>(species.stream().filter(s -> !s.condensed()).toList());
        this.gasCount = ordered.size();
        ordered.addAll(species.stream().filter(Species::condensed).toList());
        this.species = List.copyOf(ordered);
        for (Species s : ordered) {
            if (!this.elements.containsAll(s.atoms().keySet())) {
                throw new InvalidInput("", "species", s.name(), "it must be made of " + String.join(", ", elements));
            }
        }
        if (gasCount == 0) {
            throw new InvalidInput("", "species", "none", "a mixture needs at least one gas species");
        }
        thermo = new ThermoTable(this.species, dense);
    }

    /**
     * The set without some condensed species, for a process too fast for them to form.
     *
     * @param names names of condensed species to leave out; others are ignored
     * @return the smaller set
     */
    public SpeciesSet without(Set<String> names) {
        return new SpeciesSet(
                elements,
                species.stream()
                        .filter(s -> !(s.condensed() && names.contains(s.name())))
                        .toList(),
                dense);
    }

    /** @return the same species, whose gases take up room by their {@link SecondVirial} */
    public SpeciesSet dense() {
        if (dense) {
            return this;
        }
        SpeciesSet known = crowded;
        if (known == null) {
            known = new SpeciesSet(elements, species, true);
            crowded = known;
        }
        return known;
    }

    /** @return whether its gases take up room, instead of being ideal */
    public boolean isDense() {
        return dense;
    }

    /** @return a thermodynamic table of all species, with its own state */
    public ThermoTable thermo() {
        return new ThermoTable(thermo);
    }

    /** @return element symbols */
    public List<String> elements() {
        return elements;
    }

    /** @return gas species, then condensed ones */
    public List<Species> species() {
        return species;
    }

    /** @return number of gas species; condensed ones follow from this index */
    public int gasCount() {
        return gasCount;
    }

    /** @return number of species */
    public int size() {
        return species.size();
    }

    /**
     * @param name name of a species
     * @return its index, or -1 if it is not in the set
     */
    public int indexOf(String name) {
        for (int i = 0; i < species.size(); i++) {
            if (species.get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }
}
