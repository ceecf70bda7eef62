package dev.penstock.combustion;

import dev.penstock.combustion.equilibrium.FrozenGas;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesSet;
import dev.penstock.fluids.property.ElementalComposition;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A state of equilibrium computed by Cantera; see src/test/python/cantera_reference.py for the columns.
 *
 * @param name what is burnt
 * @param reactants atoms and enthalpy
 * @param pressure pressure (Pa)
 * @param temperature temperature (K)
 * @param gasMoles moles of gas (mol/kg)
 * @param enthalpy enthalpy of the state found, equal to that of the reactants to the reference's convergence (J/kg)
 * @param entropy entropy (J/(kg·K))
 * @param frozenCp frozen cp (J/(kg·K))
 * @param equilibriumCp cp with shifting composition, by differences (J/(kg·K))
 * @param gammaS isentropic exponent, by differences (-)
 * @param fractions mole fractions of all phases together
 */
record ReferenceCase(
        String name,
        Reactants reactants,
        double pressure,
        double temperature,
        double gasMoles,
        double enthalpy,
        double entropy,
        double frozenCp,
        double equilibriumCp,
        double gammaS,
        Map<String, Double> fractions) {

    static List<ReferenceCase> read(String resource) {
        try {
            return parse(Files.readAllLines(Path.of("src/test/resources/combustion", resource)));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    static List<ReferenceCase> parse(List<String> lines) {
        List<ReferenceCase> cases = new ArrayList<>();
        for (String line : lines) {
            if (!line.startsWith("#") && !line.startsWith("case,") && !line.isBlank()) {
                cases.add(of(line.split(",")));
            }
        }
        return cases;
    }

    private static ReferenceCase of(String[] cells) {
        double[] x = new double[14];
        for (int i = 1; i < 14; i++) {
            x[i] = Double.parseDouble(cells[i]);
        }
        Map<String, Double> atoms = new TreeMap<>();
        String[] elements = {"C", "H", "N", "O"};
        for (int i = 0; i < 4; i++) {
            if (x[i + 1] > 0) {
                atoms.put(elements[i], x[i + 1]);
            }
        }
        Map<String, Double> fractions = new LinkedHashMap<>();
        for (String part : cells[14].split(";")) {
            int colon = part.lastIndexOf(':');
            fractions.put(part.substring(0, colon), Double.parseDouble(part.substring(colon + 1)));
        }
        Reactants reactants = new Reactants(new ElementalComposition(atoms), x[5], List.of());
        return new ReferenceCase(cells[0], reactants, x[6], x[7], x[8], x[9], x[10], x[11], x[12], x[13], fractions);
    }

    /**
     * @param set species
     * @return gas of the reference's composition at its pressure and temperature, with our own thermodynamic functions
     */
    FrozenGas frozen(SpeciesSet set) {
        double[] moles = new double[set.size()];
        double gas = 0;
        for (int j = 0; j < set.gasCount(); j++) {
            gas += fractions.getOrDefault(set.species().get(j).name(), 0.0);
        }
        for (int j = 0; j < moles.length; j++) {
            moles[j] = gasMoles * fractions.getOrDefault(set.species().get(j).name(), 0.0) / gas;
        }
        FrozenGas frozen = new FrozenGas(set, moles);
        frozen.setPressureTemperature(pressure, temperature);
        return frozen;
    }

    @Override
    public String toString() {
        return name + " at " + pressure + " Pa";
    }
}
