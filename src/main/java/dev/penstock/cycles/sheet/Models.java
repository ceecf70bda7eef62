package dev.penstock.cycles.sheet;

import dev.penstock.chamber.ThrustChamber;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.combustion.GasGeneratorGas;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.turbomachinery.pump.PumpModel;
import dev.penstock.turbomachinery.shaft.ShaftModel;
import dev.penstock.turbomachinery.turbine.TurbineModel;

/**
 * What a study has opened: data, and models that keep nothing but what follows from them. Solvers that start from their last
 * solution are made anew for each balance ({@link BalanceModels}), so that no balance knows of another. Safe to share between
 * threads.
 */
public final class Models {

    private final SpeciesLibrary species;
    private final JacketSolver jackets;
    private final TurbineModel turbines = new TurbineModel();
    private final ShaftModel shafts = new ShaftModel();

    public Models(SpeciesLibrary species, JacketSolver jackets) {
        this.species = species;
        this.jackets = jackets;
    }

    TurbineModel turbines() {
        return turbines;
    }

    public ShaftModel shafts() {
        return shafts;
    }

    public JacketSolver jackets() {
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
