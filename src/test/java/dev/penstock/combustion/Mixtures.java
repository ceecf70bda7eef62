package dev.penstock.combustion;

import dev.penstock.combustion.equilibrium.FrozenGas;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.combustion.species.SpeciesSet;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.property.AtomicWeights;
import dev.penstock.fluids.property.ElementalComposition;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * Propellants at their storage state, with formula and molar enthalpy relative to the elements that do not come from the fluid files.
 * Figures: [nasa-tp-2002-211556] and JANAF as listed in the handbook of check numbers, from memory.
 */
public final class Mixtures {

    public static final SpeciesLibrary LIBRARY = SpeciesLibrary.open(Path.of("."));

    private static final FluidLibrary FLUIDS = FluidLibrary.open(Path.of("").toAbsolutePath());

    public static final Reactants OXYGEN = liquid("oxygen", Map.of("O", 2.0), -12.979e3);
    public static final Reactants HYDROGEN = liquid("hydrogen", Map.of("H", 2.0), -9.012e3);
    static final Reactants METHANE = liquid("methane", Map.of("C", 1.0, "H", 4.0), -89.233e3);
    static final Reactants PROPANE = liquid("propane", Map.of("C", 3.0, "H", 8.0), -128.228e3);
    static final Reactants ETHANOL = liquid("ethanol", Map.of("C", 2.0, "H", 6.0, "O", 1.0), -277.5e3);
    static final Reactants KEROSENE = liquid("rp-1", Map.of("C", 1.0, "H", 1.95), -24.717e3);
    static final Reactants AMMONIA = liquid("ammonia", Map.of("N", 1.0, "H", 3.0), -71.555e3);
    static final Reactants HYDRAZINE = liquid("hydrazine", Map.of("N", 2.0, "H", 4.0), 50.38e3);
    public static final Reactants MMH = liquid("mmh", Map.of("C", 1.0, "H", 6.0, "N", 2.0), 54.2e3);
    static final Reactants UDMH = liquid("udmh", Map.of("C", 2.0, "H", 8.0, "N", 2.0), 48.3e3);
    static final Reactants HYDRAZINE_50 = named("hydrazine-50", HYDRAZINE.mixedWith(UDMH, 0.5));
    public static final Reactants TETROXIDE = liquid("nitrogen-tetroxide", Map.of("N", 2.0, "O", 4.0), -19.564e3);
    static final Reactants NITROUS_OXIDE = liquid("nitrous-oxide", Map.of("N", 2.0, "O", 1.0), 65.0e3);
    static final Reactants WATER = liquid("water", Map.of("H", 2.0, "O", 1.0), -285.83e3);
    static final Reactants PEROXIDE = liquid("hydrogen-peroxide-98", Map.of("H", 2.0, "O", 2.0), -187.78e3);
    static final Reactants PEROXIDE_98 = named("hydrogen-peroxide-98", PEROXIDE.mixedWith(WATER, 0.02));
    static final Reactants PEROXIDE_90 = named("hydrogen-peroxide-90", PEROXIDE.mixedWith(WATER, 0.10));

    static final List<Reactants> OXIDIZERS = List.of(OXYGEN, TETROXIDE, NITROUS_OXIDE, PEROXIDE_98, PEROXIDE_90);
    static final List<Reactants> FUELS =
            List.of(HYDROGEN, METHANE, PROPANE, ETHANOL, KEROSENE, AMMONIA, HYDRAZINE, MMH, UDMH, HYDRAZINE_50);

    private Mixtures() {}

    public static Reactants of(Reactants oxidizer, Reactants fuel, double mixtureRatio) {
        return oxidizer.mixedWith(fuel, 1 / (1 + mixtureRatio));
    }

    /** Gas of stated mole fractions, for example "O2 0.9 H2O 0.1", of the species of its elements or what is made of them. */
    static FrozenGas gas(String text, UnaryOperator<SpeciesSet> made) {
        Map<String, Double> fractions = new TreeMap<>();
        String[] words = text.split(" ");
        for (int i = 0; i < words.length; i += 2) {
            fractions.put(words[i], Double.parseDouble(words[i + 1]));
        }
        Set<String> elements = new TreeSet<>();
        fractions.keySet().forEach(s -> elements.addAll(LIBRARY.named(s).atoms().keySet()));
        SpeciesSet set = made.apply(LIBRARY.speciesFor(elements));
        double mass = fractions.entrySet().stream()
                .mapToDouble(e -> e.getValue() * LIBRARY.named(e.getKey()).molarMass())
                .sum();
        double[] moles = new double[set.size()];
        fractions.forEach((s, x) -> moles[set.indexOf(s)] = x / mass);
        return new FrozenGas(set, moles);
    }

    private static Reactants liquid(String id, Map<String, Double> formula, double molarEnthalpy) {
        double molarMass = AtomicWeights.ofFormula(formula).orElseThrow();
        return new Reactants(ElementalComposition.ofFormula(formula, molarMass), molarEnthalpy / molarMass, alone(id));
    }

    private static Reactants named(String id, Reactants mixture) {
        return new Reactants(mixture.composition(), mixture.enthalpy(), alone(id));
    }

    private static List<Reactants.Part> alone(String id) {
        return List.of(new Reactants.Part(FLUIDS.propellant(id), 1.0));
    }
}
