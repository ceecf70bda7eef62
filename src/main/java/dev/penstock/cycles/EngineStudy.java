package dev.penstock.cycles;

import dev.penstock.combustion.SpeciesLibrary;
import dev.penstock.cooling.JacketSolver;
import dev.penstock.cooling.WallLibrary;
import dev.penstock.input.HomeFolder;
import java.nio.file.Path;

/**
 * Puts questions to a concept: what closes it, how far it reaches. Keeps its models warm between questions. Not
 * thread-safe: one study per thread.
 */
public final class EngineStudy {

    private final Balancer balancer;

    /**
     * @param species gas species
     * @param jackets jacket solver
     */
    public EngineStudy(SpeciesLibrary species, JacketSolver jackets) {
        this.balancer = new Balancer(new Models(species, jackets));
    }

    /**
     * @param home folder that holds {@code fluids/}
     * @return a study with the data of that folder
     */
    public static EngineStudy open(Path home) {
        return new EngineStudy(
                SpeciesLibrary.open(home),
                new JacketSolver(WallLibrary.load(home.resolve("fluids").resolve("walls"))));
    }

    /** @return a study with the data of the home folder, see {@link HomeFolder} */
    public static EngineStudy open() {
        return open(HomeFolder.find());
    }

    /**
     * Closes a concept at its chamber pressure.
     *
     * @param concept what is asked for
     * @return the balanced engine
     * @throws dev.penstock.errors.LimitReached if no balance exists, with the chamber pressure up to which one does
     * @throws dev.penstock.errors.NotConverged if none is found
     * @throws dev.penstock.errors.OutsideValidity if a model has no meaning at the concept's numbers
     * @throws dev.penstock.errors.ConservationViolated if the result does not conserve mass and energy
     */
    public EngineBalance balance(Concept concept) {
        return BalanceReport.of(new Approach(balancer).solve(concept));
    }

    /**
     * Finds the highest chamber pressure at which a concept closes within its hardware limits: turbine gas temperature,
     * pump discharge pressure and tip speed, wall temperature, tank pressure.
     *
     * @param concept what is asked for; its own chamber pressure is where the search starts
     * @return the highest chamber pressure, the engine there, and the limit that binds
     * @throws dev.penstock.errors.LimitReached if no chamber pressure keeps the limits, or none is ever reached
     */
    public LimitResult limit(Concept concept) {
        return new LimitSearch(balancer, concept).search();
    }
}
