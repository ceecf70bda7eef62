package dev.penstock.chamber;

import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.property.ElementalComposition;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Mixtures for tests: liquids with assigned enthalpies of formation, independent of those in the fluid files. */
public final class Mixtures {

    static final SpeciesLibrary SPECIES = SpeciesLibrary.open(Path.of("").toAbsolutePath());

    private static final FluidLibrary FLUIDS = FluidLibrary.open(Path.of("").toAbsolutePath());

    private Mixtures() {}

    /** Assigned enthalpies at the storage state (J/mol) and molar masses (kg/mol): NASA RP-1311 and TP-2002-211556, from memory. */
    public static final Reactants OXYGEN = liquid("oxygen", Map.of("O", 2.0), 0.0319988, -12_979);

    public static final Reactants HYDROGEN = liquid("hydrogen", Map.of("H", 2.0), 0.00201588, -9_012);
    static final Reactants METHANE = liquid("methane", Map.of("C", 1.0, "H", 4.0), 0.0160425, -89_233);
    static final Reactants KEROSENE = liquid("rp-1", Map.of("C", 1.0, "H", 1.95), 0.013976, -24_717);
    public static final Reactants TETROXIDE =
            liquid("nitrogen-tetroxide", Map.of("N", 2.0, "O", 4.0), 0.092011, -19_564);
    static final Reactants HYDRAZINE = liquid("hydrazine", Map.of("N", 2.0, "H", 4.0), 0.0320452, 50_380);
    static final Reactants UDMH = liquid("udmh", Map.of("C", 2.0, "H", 8.0, "N", 2.0), 0.0600983, 48_300);
    public static final Reactants MMH = liquid("mmh", Map.of("C", 1.0, "H", 6.0, "N", 2.0), 0.0460717, 54_200);
    static final Reactants HYDRAZINE_50 = HYDRAZINE.mixedWith(UDMH, 0.5);

    static Reactants liquid(String id, Map<String, Double> formula, double molarMass, double enthalpy) {
        return new Reactants(
                ElementalComposition.ofFormula(formula, molarMass),
                enthalpy / molarMass,
                List.of(new Reactants.Part(FLUIDS.propellant(id), 1.0)));
    }

    public static Reactants named(String name) {
        return switch (name) {
            case "O2" -> OXYGEN;
            case "H2" -> HYDROGEN;
            case "CH4" -> METHANE;
            case "RP-1" -> KEROSENE;
            case "N2O4" -> TETROXIDE;
            case "N2H4" -> HYDRAZINE;
            case "UDMH" -> UDMH;
            case "MMH" -> MMH;
            case "A-50" -> HYDRAZINE_50;
            default -> throw new IllegalArgumentException(name);
        };
    }

    public static Reactants mix(Reactants oxidizer, Reactants fuel, double mixtureRatio) {
        return oxidizer.mixedWith(fuel, 1 / (1 + mixtureRatio));
    }

    /** Flow of ideal gases, which published tables hold. */
    public static NozzleFlow nozzle(Reactants reactants) {
        return new NozzleFlow(EquilibriumSolver.of(SPECIES, reactants));
    }
}
