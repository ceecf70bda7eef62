package dev.penstock.cycles.solving;

import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.arrangements.FirstGuess;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.MachineChoices;
import dev.penstock.cycles.concept.StageSet;
import dev.penstock.cycles.sheet.BalanceModels;
import dev.penstock.cycles.sheet.BuiltMachines;
import dev.penstock.cycles.sheet.CarriedValues;
import dev.penstock.cycles.sheet.Effort;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Models;
import dev.penstock.cycles.sheet.Values;
import dev.penstock.errors.FailureSubject;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.PenstockException;
import dev.penstock.numerics.BoundedSystemSolver;
import dev.penstock.numerics.BoundedSystemSolver.Solution;
import dev.penstock.numerics.BoundedSystemSolver.Unknown;
import dev.penstock.numerics.FixedPoint;
import dev.penstock.provenance.Traced;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Solves the arrangement of a concept. Rounds of two steps: the cycle's equations are closed with chamber and jacket held
 * ({@link BoundedSystemSolver}), then chamber and jacket are computed again from the flows ({@link Surroundings}), until
 * nothing moves. What machines are held to be ({@link MachineChoices}) is renewed between the rounds: their stages in the first
 * ones, then wherever nothing else moves, so that the answer has the stages that it asks for itself.
 */
public final class Balancer {

    private static final int MOST_ROUNDS = 30;
    private static final int MOST_STEPS = 60;

    /** Steps in which a search near a solution has halved its residuals many times. */
    private static final int PATIENCE = 20;

    /** Rounds behind which stages are chosen anew whatever still moves. */
    private static final int CHOOSING_ROUNDS = 2;

    /** Later they are chosen anew where chamber, jackets and annuli move by less than this (-). */
    private static final double CHOOSING_DISTANCE = 1e-4;

    /** Rounds between which an annulus moves its shaft by more do not continue each other (-). */
    private static final double LARGEST_SHIFT = 1e-4;

    private static final double SOLVER_TOLERANCE = 1e-11;
    private static final double SOLVER_ACCEPTABLE = 8e-9;

    /** While chamber and jacket move, the cycle need not be closed to the last digit. */
    private static final double SHARE_OF_DISTANCE = 1e-4;

    /** How far rounds are taken to move them, at most. */
    private static final double LARGEST_DISTANCE = 0.1;

    /** The last round closes the cycle at least so far. */
    private static final double CLOSED = 1e-10;

    private static final double ROUND_TOLERANCE = 4e-9;

    private final Models models;

    public Balancer(Models models) {
        this.models = models;
    }

    /** A closed arrangement: the balanceModels, what it was solved with, and what that led to. */
    public record Solved(
            BalanceModels balanceModels,
            List<String> names,
            List<Double> values,
            CarriedValues assumed,
            Surroundings.Update update,
            List<JacketResult> jackets,
            Flowsheet sheet,
            Effort effort) {}

    /** Solves a concept, starting from a neighbouring solution if there is one. */
    public Solved solve(Concept concept, Optional<Solved> near) {
        return solve(concept, near, SolvingWork.unbounded());
    }

    /** The same; what it takes is added to the work, also where it fails. */
    Solved solve(Concept concept, Optional<Solved> near, SolvingWork work) {
        return solve(concept, near, near.flatMap(n -> n.balanceModels().built()), work);
    }

    /**
     * The same, with machines that are built already. Where stages that move between the rounds close no balance, each set of
     * them that was seen is kept in turn, beside a neighbour also the one asked for where the search ended: the choice is one of
     * a few hundredths in efficiency.
     */
    public Solved solve(Concept concept, Optional<Solved> near, Optional<BuiltMachines> built) {
        return solve(concept, near, built, SolvingWork.unbounded());
    }

    private Solved solve(Concept concept, Optional<Solved> near, Optional<BuiltMachines> built, SolvingWork work) {
        BalanceModels balanceModels = new BalanceModels(concept, models, built);
        near.ifPresent(n -> balanceModels.choices().adopt(n.balanceModels().choices()));
        try {
            return counted(balanceModels, near, work);
        } catch (NotConverged e) {
            if (near.isPresent()) {
                // beside a solution the end is near one; from a first guess it says nothing
                balanceModels.choices().seeWhereEnded();
            }
            List<StageSet> sets = new ArrayList<>();
            near.ifPresent(n -> sets.add(n.balanceModels().choices().stages()));
            balanceModels.choices().seen().stream()
                    .filter(s -> sets.stream().noneMatch(s::sameAs))
                    .forEach(sets::add);
            // a set that was alone has failed just now; that of the neighbour may not have been tried
            if (sets.stream().allMatch(balanceModels.choices().stages()::sameAs)) {
                throw e;
            }
            return withStages(concept, near, built, sets, work).orElseThrow(() -> e);
        }
    }

    private Optional<Solved> withStages(
            Concept concept,
            Optional<Solved> near,
            Optional<BuiltMachines> built,
            List<StageSet> sets,
            SolvingWork work) {
        for (StageSet set : sets) {
            BalanceModels kept = new BalanceModels(concept, models, built);
            near.ifPresent(n -> kept.choices().adopt(n.balanceModels().choices()));
            kept.choices().keepStages(set);
            try {
                return Optional.of(counted(kept, near, work));
            } catch (NotConverged e) {
                // another set may close; if none does, the first failure is told
            }
        }
        return Optional.empty();
    }

    /** What is taken for granted of chamber and jackets before anything is solved. */
    CarriedValues firstGuess(Concept concept) {
        return new Surroundings(new BalanceModels(concept, models, Optional.empty()))
                .first()
                .assumptions();
    }

    private Solved counted(BalanceModels balanceModels, Optional<Solved> near, SolvingWork work) {
        return work.count(balanceModels, () -> solve(balanceModels, near));
    }

    private Solved solve(BalanceModels balanceModels, Optional<Solved> near) {
        Concept concept = balanceModels.concept();
        Surroundings surroundings = new Surroundings(balanceModels);
        Surroundings.Start start =
                near.map(n -> surroundings.startingFrom(n.assumed())).orElseGet(surroundings::first);
        CarriedValues assumed = start.assumptions();
        Surroundings.Known known = start.known();
        List<Unknown> unknowns =
                Cycle.of(concept.cycle()).unknowns(new FirstGuess(balanceModels, assumed.chamberFlow()));
        List<Double> values = starts(unknowns, near);
        List<String> unknownNames = unknowns.stream().map(Unknown::name).toList();
        BoundedSystemSolver solver = new BoundedSystemSolver(
                FailureSubject.BALANCE, concept.cycle().title() + " balance", MOST_STEPS, PATIENCE);
        FixedPoint mixer = new FixedPoint(3, surroundings.scales(assumed));
        double distance = Double.POSITIVE_INFINITY;
        choose(balanceModels, assumed, unknowns, values);
        for (int round = 1; round <= MOST_ROUNDS; round++) {
            CycleEquations equations = new CycleEquations(balanceModels, assumed, unknowns.size());
            double tolerance = tolerance(distance);
            Solution solution =
                    solver.solve(started(unknowns, values), equations.names(), equations, tolerance, SOLVER_ACCEPTABLE);
            values = solution.values();
            Optional<Flowsheet> laid = equations.sheetAt(values);
            Flowsheet sheet = laid.isPresent() ? laid.get() : passed(balanceModels, assumed, unknowns, values);
            Surroundings.Update update = surroundings.update(sheet, assumed, known);
            known = update.known();
            double shifted = balanceModels.choices().renewAnnuli();
            distance = Math.max(shifted, surroundings.distance(assumed, update.assumptions()));
            boolean solved = round > CHOOSING_ROUNDS && distance <= CHOOSING_DISTANCE;
            boolean moved = (round <= CHOOSING_ROUNDS || solved)
                    && balanceModels.choices().renewStages(solved);
            if (distance <= ROUND_TOLERANCE && tolerance <= CLOSED && !moved) {
                List<JacketResult> jackets = surroundings.jacketsInFull(known);
                CarriedValues closed = assumed.around(update.assumptions().chamber());
                Flowsheet recorded = Flowsheet.recording(balanceModels, closed, sheet.order());
                layOut(recorded, balanceModels, unknowns, values);
                Effort effort = new Effort(
                        round,
                        balanceModels.evaluations(),
                        balanceModels.jackets().marches(),
                        balanceModels.equilibria());
                return new Solved(balanceModels, unknownNames, values, assumed, update, jackets, recorded, effort);
            }
            assumed = surroundings.mixed(mixer, assumed, update, moved || shifted > LARGEST_SHIFT);
        }
        throw new NotConverged(
                concept.cycle().title() + " with chamber and jacket",
                MOST_ROUNDS,
                distance,
                "chamber flow, heat load and jacket pressure drop keep moving");
    }

    /** Values of the neighbour where it has the same unknown. */
    private static List<Double> starts(List<Unknown> unknowns, Optional<Solved> near) {
        List<Double> values = new ArrayList<>();
        for (Unknown unknown : unknowns) {
            int index = near.map(n -> n.names().indexOf(unknown.name())).orElse(-1);
            values.add(index < 0 ? unknown.start() : near.get().values().get(index));
        }
        return values;
    }

    private static double tolerance(double distance) {
        return Math.max(SOLVER_TOLERANCE, SHARE_OF_DISTANCE * Math.min(distance, LARGEST_DISTANCE));
    }

    private static List<Unknown> started(List<Unknown> unknowns, List<Double> values) {
        List<Unknown> started = new ArrayList<>();
        for (int i = 0; i < unknowns.size(); i++) {
            started.add(unknowns.get(i).startingAt(values.get(i)));
        }
        return started;
    }

    private static void choose(
            BalanceModels balanceModels, CarriedValues assumed, List<Unknown> unknowns, List<Double> values) {
        try {
            passed(balanceModels, assumed, unknowns, values);
        } catch (PenstockException e) {
            // The first guess may lie where a machine has no meaning; the solver finds its way from there.
        }
    }

    private static Flowsheet passed(
            BalanceModels balanceModels, CarriedValues assumed, List<Unknown> unknowns, List<Double> values) {
        Flowsheet sheet = Flowsheet.passing(balanceModels, assumed);
        layOut(sheet, balanceModels, unknowns, values);
        return sheet;
    }

    private static void layOut(
            Flowsheet sheet, BalanceModels balanceModels, List<Unknown> unknowns, List<Double> values) {
        balanceModels.countEvaluation();
        List<Traced> numbers = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            Unknown unknown = unknowns.get(i);
            double value = values.get(i);
            numbers.add(sheet.recorder()
                    .map(r -> r.unknown(unknown.name(), value, unknown.unit()))
                    .orElse(Traced.of(value)));
        }
        Values x = Values.of(numbers);
        Cycle.of(balanceModels.concept().cycle()).layOut(sheet, x);
        if (!x.exhausted()) {
            throw new IllegalStateException(
                    balanceModels.concept().cycle().id() + " lists more unknowns than it takes");
        }
    }
}
