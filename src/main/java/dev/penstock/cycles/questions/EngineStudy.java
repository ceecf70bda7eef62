package dev.penstock.cycles.questions;

import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cooling.wall.WallLibrary;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Models;
import dev.penstock.cycles.solving.BalanceReport;
import dev.penstock.cycles.solving.Balancer;
import dev.penstock.cycles.solving.PressureContinuation;
import dev.penstock.input.HomeFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Puts questions to a concept: what closes it, how far it reaches. Holds the data that it was opened with and what follows
 * from them alone, tables of coolants above all; no answer depends, in any bit, on what was asked before or on the thread.
 * Safe to share between threads.
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
        return new EngineStudy(SpeciesLibrary.open(home), new JacketSolver(WallLibrary.open(home)));
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
        return BalanceReport.of(new PressureContinuation(balancer).solve(concept));
    }

    /**
     * The same with less effort, where many engines are asked for: some that close only by way of other chamber pressures are not found.
     *
     * @param concept what is asked for
     * @return the balanced engine
     * @throws dev.penstock.errors.PenstockException as {@link #balance}
     */
    public EngineBalance balanceBriefly(Concept concept) {
        return BalanceReport.of(new PressureContinuation(balancer).solveBriefly(concept));
    }

    /**
     * Finds the highest chamber pressure at which a concept closes within all limits of its balance, and the one at or below it
     * that is best for the delivered specific impulse.
     *
     * @param concept what is asked for; its own chamber pressure has no part in the answer
     * @return both pressures, the engines there, and what ends each
     * @throws dev.penstock.errors.LimitReached if no chamber pressure keeps the limits, or none is ever reached
     * @throws dev.penstock.errors.SearchFailed if nothing could be computed where the search ends
     */
    public LimitResult limit(Concept concept) {
        return limit(concept, Merit.impulse(concept));
    }

    /**
     * The same with a best pressure for something else.
     *
     * @param concept what is asked for; its own chamber pressure has no part in the answer
     * @param merit what the best pressure is best for
     * @return both pressures, the engines there, and what ends each
     * @throws dev.penstock.errors.LimitReached if no chamber pressure keeps the limits, or none is ever reached
     * @throws dev.penstock.errors.SearchFailed if nothing could be computed where the search ends
     */
    public LimitResult limit(Concept concept, Merit merit) {
        return new LimitSearch(balancer, concept).search(Optional.of(merit));
    }

    /**
     * The highest chamber pressure alone, which takes half the time.
     *
     * @param concept what is asked for
     * @return the highest chamber pressure and the engine there
     * @throws dev.penstock.errors.LimitReached if no chamber pressure keeps the limits, or none is ever reached
     * @throws dev.penstock.errors.SearchFailed if nothing could be computed where the search ends
     */
    public LimitResult reach(Concept concept) {
        return new LimitSearch(balancer, concept).search(Optional.empty());
    }

    /**
     * The same, begun at the answer for a concept that differs little, which takes a few balances.
     *
     * @param concept what is asked for
     * @param near reach of the other concept
     * @return the highest chamber pressure and the engine there
     * @throws dev.penstock.errors.LimitReached if no chamber pressure keeps the limits, or none is ever reached
     * @throws dev.penstock.errors.SearchFailed if nothing could be computed where the search ends
     */
    public LimitResult reach(Concept concept, LimitResult near) {
        return new LimitSearch(balancer, concept).search(near, near.solutions());
    }

    /**
     * The same search without what each limit is worth, at a turbine temperature: each turbine's limit is lowered to it,
     * and its gas is that hot where the cycle can choose.
     *
     * @param concept what is asked for
     * @param turbineTemperature highest temperature before any turbine (K)
     * @return the highest chamber pressure, the engine there, and the limit that binds
     * @throws dev.penstock.errors.LimitReached if no chamber pressure keeps the limits, or none is ever reached
     */
    public LimitResult limit(Concept concept, double turbineTemperature) {
        return reach(concept.withTurbineTemperature(turbineTemperature));
    }

    /**
     * Sizes what keeps the tanks of an engine without pumps under pressure, and follows the engine over its life.
     *
     * @param balance the engine as balanced: the start of its life
     * @return tanks, pressurant and engine over the life; empty for a cycle with pumps
     * @throws dev.penstock.errors.LimitReached if the gas cannot do it
     */
    public Optional<PressureFeed> pressureFeed(EngineBalance balance) {
        return balance.concept().pressurization().map(design -> new PressureFeeding(balancer, balance, design).make());
    }

    /**
     * Runs a built engine away from its design point: throttled, at another mixture ratio or with other tank pressures.
     * Each command starts from the nearest that was solved before it, so neighbours should stand side by side.
     *
     * @param design the engine as balanced
     * @param commands what it is asked to do
     * @return a point for each command; where the engine cannot follow, why
     */
    public List<OperatingOutcome> offDesign(EngineBalance design, List<OperatingCommand> commands) {
        return built(design).offDesign(commands);
    }

    /**
     * @param design the engine as balanced
     * @return its hardware, for several series of commands side by side
     */
    public BuiltEngine built(EngineBalance design) {
        return new BuiltEngine(balancer, design);
    }
}
