package dev.penstock.cycles;

import dev.penstock.chamber.NozzleFlow;
import dev.penstock.chamber.ThrustChamber;
import dev.penstock.combustion.GasGeneratorGas;
import dev.penstock.combustion.Reactants;
import dev.penstock.combustion.SpeciesLibrary;
import dev.penstock.cooling.JacketSolver;
import dev.penstock.turbomachinery.PumpModel;
import dev.penstock.turbomachinery.ShaftModel;
import dev.penstock.turbomachinery.TurbineModel;

/**
 * What a study has opened: data, and models that keep nothing but what follows from them. Solvers that start from their last
 * solution are made anew for each balance ({@link Plant}), so that no balance knows of another. Safe to share between
 * threads.
 */
final class Models {

    private final SpeciesLibrary species;
    private final JacketSolver jackets;
    private final TurbineModel turbines = new TurbineModel();
    private final ShaftModel shafts = new ShaftModel();

    Models(SpeciesLibrary species, JacketSolver jackets) {
        this.species = species;
        this.jackets = jackets;
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

    /** A pump model that has seen no inlet yet. */
    PumpModel newPumpModel() {
        return new PumpModel();
    }

    /** A thrust chamber whose solver has solved nothing yet. */
    ThrustChamber newChamber(Reactants reactants) {
        return new ThrustChamber(NozzleFlow.of(species, reactants));
    }

    /** A maker of a burner's gas whose solver has solved nothing yet. */
    GasGeneratorGas newGasMaker(Concept concept, Burner burner) {
        return new GasGeneratorGas(species, concept.burners().get(burner).gasModel());
    }
}
