package dev.penstock.claims.likelihood;

import dev.penstock.claims.figure.Body;
import dev.penstock.claims.figure.Candidate;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.study.VehicleRuns;
import dev.penstock.vehicle.reading.VehicleReader;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** What makes candidates from values: reader, balance, vehicle. Safe to share between threads. */
public final class Workshop {

    private final FluidLibrary fluids;
    private final ConceptReader reader;
    private final EngineStudy study;
    private final SpeciesLibrary species;

    /**
     * @param home home folder
     * @param fluids fluids of that folder
     * @param study balances engines
     */
    public Workshop(Path home, FluidLibrary fluids, EngineStudy study) {
        this.fluids = fluids;
        this.reader = new ConceptReader(fluids);
        this.study = study;
        this.species = SpeciesLibrary.open(home);
    }

    /** @return where propellants are looked up */
    public FluidLibrary fluids() {
        return fluids;
    }

    /** What the thrust chamber of a concept does by itself. */
    ChamberAlone chamber(Concept concept) {
        return new ChamberAlone(concept, species);
    }

    Concept concept(String name, String text, Map<String, String> values) {
        return reader.parse(name, text, values);
    }

    Candidate candidate(Concept concept, boolean withVehicle, Optional<Body> body) {
        EngineBalance balance = study.balanceBriefly(concept);
        return new Candidate(
                balance,
                withVehicle
                        ? new VehicleReader(fluids).of(concept).map(plan -> VehicleRuns.size(plan, balance))
                        : Optional.empty(),
                body);
    }
}
