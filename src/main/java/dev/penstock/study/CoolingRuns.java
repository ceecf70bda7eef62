package dev.penstock.study;

import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.FilmSource;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.gas.HotGasProfiles;
import dev.penstock.cooling.jacket.CellCheck;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cooling.search.FeasibilityMap;
import dev.penstock.cooling.search.FeasibilityStudy;
import dev.penstock.cooling.search.JacketSearch;
import dev.penstock.cooling.search.SearchProgress;
import dev.penstock.cooling.wall.WallLibrary;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.CoolingCircuit;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.PartPlace;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Looks for better channels in the jacket of a balanced engine, and maps where a chamber like it can be cooled. */
public final class CoolingRuns {

    private final Path home;
    private final JacketSolver solver;

    /** @param home home folder */
    public CoolingRuns(Path home) {
        this.home = home;
        this.solver = new JacketSolver(WallLibrary.open(home));
    }

    /**
     * @param balance engine with a jacket
     * @param circuit name of the circuit whose jacket is meant
     * @param evaluations jackets to try at most
     * @param progress told after each
     * @return the channels of the smallest pressure drop found
     * @throws InvalidInput if the engine has no jacket, or no circuit of that name
     */
    public JacketSearch.Outcome search(
            EngineBalance balance, String circuit, int evaluations, SearchProgress progress) {
        return new JacketSearch(solver).search(question(balance, circuit), evaluations, progress);
    }

    /**
     * @param outcome what a search found
     * @return its station at the throat with two-dimensional conduction, to check the fin model; empty for tubes
     */
    public Optional<CellCheck> cellCheck(JacketSearch.Outcome outcome) {
        return solver.cellCheck(outcome.best(), outcome.result());
    }

    /** The jacket as the balance left it, with the channels that the concept asks for. */
    private static JacketCase question(EngineBalance balance, String circuit) {
        Concept concept = balance.concept();
        CoolingCircuit cooling = circuit(concept, circuit);
        JacketResult first = balance.cooling().get(0);
        JacketResult jacket = balance.cooling().get(concept.cooling().indexOf(cooling));
        PartPlace place = balance.origins().place(cooling.key().owner()).orElseThrow();
        double flow = balance.station(place.inlets().get(0)).massFlow() / concept.chambers();
        JacketCase question = new JacketCase(
                HotGasProfiles.of(balance.chamber(), concept.fuel()),
                concept.feed(cooling.coolant()).propellant(),
                jacket.inlet().pressure(),
                jacket.inlet().enthalpy(),
                flow,
                cooling.jacket(),
                cooling.heatFluxFactor());
        return jacket == first
                ? question
                : question.withFilmOf(new FilmSource(
                        concept.feed(concept.cooling().get(0).coolant()).propellant(),
                        first.inlet().enthalpy()));
    }

    private static CoolingCircuit circuit(Concept concept, String name) {
        List<String> names = concept.cooling().stream().map(c -> c.key().name()).toList();
        if (names.isEmpty()) {
            throw new InvalidInput(
                    concept.document().file(), "cooling", "missing", "write a table [cooling] with coolant = \"fuel\"");
        }
        if (!names.contains(name)) {
            throw new InvalidInput(
                    concept.document().file(),
                    "circuit",
                    '"' + name + '"',
                    "the cooling circuits of " + concept.name() + " are " + String.join(", ", names));
        }
        return concept.cooling().get(names.indexOf(name));
    }

    /**
     * @param concept concept with a jacket; its propellants, nozzle and wall are kept
     * @param circuit name of the circuit whose jacket is meant
     * @param pressures chamber pressures, rising (Pa)
     * @param thrusts vacuum thrusts, rising (N)
     * @param progress told after each chamber
     * @return which of the chambers can be cooled
     * @throws InvalidInput if the concept has no jacket, or no circuit of that name
     */
    public FeasibilityMap map(
            Concept concept, String circuit, List<Double> pressures, List<Double> thrusts, SearchProgress progress) {
        CoolingCircuit cooling = circuit(concept, circuit);
        JacketDesign jacket = cooling.jacket()
                .withChannels(new ChannelLayout(
                        cooling.jacket().channels().kind(),
                        OptionalDouble.empty(),
                        List.of(),
                        cooling.jacket().channels().roughness()));
        FeasibilityStudy.Subject subject = new FeasibilityStudy.Subject(
                concept.oxidizer(),
                concept.fuel(),
                concept.mixtureRatio(),
                cooling.coolant() == Side.FUEL,
                concept.chamber(),
                jacket);
        Reactants reactants = Reactants.ofTanks(concept.oxidizer(), concept.fuel(), concept.mixtureRatio());
        NozzleFlow nozzle = NozzleFlow.of(SpeciesLibrary.open(home), reactants);
        return new FeasibilityStudy(solver, nozzle).map(subject, pressures, thrusts, progress);
    }
}
