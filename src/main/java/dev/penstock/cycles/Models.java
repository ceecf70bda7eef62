package dev.penstock.cycles;

import dev.penstock.chamber.NozzleFlow;
import dev.penstock.chamber.ThrustChamber;
import dev.penstock.combustion.GasGeneratorGas;
import dev.penstock.combustion.GasModel;
import dev.penstock.combustion.Reactants;
import dev.penstock.combustion.SpeciesLibrary;
import dev.penstock.cooling.JacketSolver;
import dev.penstock.turbomachinery.PumpModel;
import dev.penstock.turbomachinery.ShaftModel;
import dev.penstock.turbomachinery.TurbineModel;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The models behind all balances of a study, kept so that their solvers stay warm. Not thread-safe. */
final class Models {

    private record GasKey(Burner burner, GasModel model) {}

    private final SpeciesLibrary species;
    private final JacketSolver jackets;
    private final PumpModel pumps = new PumpModel();
    private final TurbineModel turbines = new TurbineModel();
    private final ShaftModel shafts = new ShaftModel();
    private final Map<Set<String>, ThrustChamber> chambers = new HashMap<>();
    private final Map<GasKey, GasGeneratorGas> gasMakers = new HashMap<>();

    Models(SpeciesLibrary species, JacketSolver jackets) {
        this.species = species;
        this.jackets = jackets;
    }

    PumpModel pumps() {
        return pumps;
    }

    TurbineModel turbines() {
        return turbines;
    }

    ShaftModel shafts() {
        return shafts;
    }

    JacketSolver jackets() {
        return jackets;
    }

    ThrustChamber chamber(Concept concept, Reactants reactants) {
        return chambers.computeIfAbsent(elements(concept), e -> new ThrustChamber(NozzleFlow.of(species, reactants)));
    }

    /** Maker of a burner's gas; each burner keeps its own, so that its solver stays near the solution. */
    GasGeneratorGas gasMaker(Concept concept, Burner burner) {
        GasModel model = concept.burners().get(burner).gasModel();
        return gasMakers.computeIfAbsent(new GasKey(burner, model), k -> new GasGeneratorGas(species, model));
    }

    private static Set<String> elements(Concept concept) {
        Set<String> elements = new TreeSet<>(
                concept.oxidizer().composition().molesPerKilogram().keySet());
        elements.addAll(concept.fuel().composition().molesPerKilogram().keySet());
        return elements;
    }
}
