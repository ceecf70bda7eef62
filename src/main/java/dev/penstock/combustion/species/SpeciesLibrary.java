package dev.penstock.combustion.species;

import dev.penstock.errors.InvalidInput;
import dev.penstock.input.DataFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Every species described in {@code fluids/gas}. A species is added by adding an entry, or a file, there. Safe to share
 * between threads.
 */
public final class SpeciesLibrary {

    private final List<Species> species;
    private final Map<Set<String>, SpeciesSet> sets = new ConcurrentHashMap<>();

    /** @param species the species, each name once */
    public SpeciesLibrary(List<Species> species) {
        this.species = List.copyOf(species);
    }

    /**
     * @param home home folder, see {@link DataFolder}
     * @return the library
     * @throws InvalidInput with every problem of the first file that has any, or if a species is described twice
     */
    public static SpeciesLibrary open(Path home) {
        Path folder = DataFolder.gas(home);
        List<Path> files;
        try (Stream<Path> entries = Files.list(folder)) {
            files = entries.filter(p -> p.toString().endsWith(".toml")).sorted().toList();
        } catch (IOException e) {
            throw new InvalidInput("", "folder", folder.toString(), "it must hold the gas species, one or more .toml");
        }
        Map<String, Species> byName = new LinkedHashMap<>();
        for (Path file : files) {
            for (Species entry : SpeciesFile.read(file)) {
                if (byName.put(entry.name(), entry) != null) {
                    throw new InvalidInput(
                            file.toString(), "species.name", '"' + entry.name() + '"', "it is described already");
                }
            }
        }
        return new SpeciesLibrary(new ArrayList<>(byName.values()));
    }

    /** @return all species */
    public List<Species> species() {
        return species;
    }

    /**
     * @param name name of a species
     * @return the species
     * @throws InvalidInput if there is none of that name
     */
    public Species named(String name) {
        return species.stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new InvalidInput("", "species", '"' + name + '"', "known are " + names(species)));
    }

    /**
     * All species that a mixture of these elements can form.
     *
     * @param elements element symbols
     * @return the species made of them and of nothing else
     * @throws InvalidInput if no gas species contains one of the elements
     */
    public SpeciesSet speciesFor(Set<String> elements) {
        return sets.computeIfAbsent(new TreeSet<>(elements), this::select);
    }

    private SpeciesSet select(Set<String> elements) {
        List<Species> chosen = species.stream()
                .filter(s -> elements.containsAll(s.atoms().keySet()))
                .toList();
        for (String element : elements) {
            if (chosen.stream().noneMatch(s -> !s.condensed() && s.atoms().containsKey(element))) {
                throw new InvalidInput(
                        "fluids/gas", "element", '"' + element + '"', "add a gas species that contains it");
            }
        }
        return new SpeciesSet(List.copyOf(elements), chosen);
    }

    private static String names(List<Species> list) {
        return list.stream().map(Species::name).collect(Collectors.joining(", "));
    }
}
