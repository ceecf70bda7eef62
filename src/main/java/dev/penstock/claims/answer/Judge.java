package dev.penstock.claims.answer;

import dev.penstock.claims.figure.ClaimFigure;
import dev.penstock.claims.figure.ClaimPaths;
import dev.penstock.claims.file.Claim;
import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.claims.likelihood.EngineModel;
import dev.penstock.claims.likelihood.Hypothesis;
import dev.penstock.claims.likelihood.Sighting;
import dev.penstock.claims.likelihood.Workshop;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.errors.FailureTally;
import dev.penstock.errors.InvalidInput;
import dev.penstock.numerics.sampling.SampledPosterior;
import dev.penstock.numerics.sampling.Workers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Judges claims. One object judges once; not thread-safe, but its work is done by as many threads as the workers have. */
public final class Judge {

    /** What a listener is told when a claim is held against the others begins so. */
    public static final String WITHOUT = "without ";

    private final Workshop workshop;
    private final ClaimsFile file;
    private final JudgeEffort effort;
    private final Workers workers;
    private final BooleanSupplier stopped;
    private final Consumer<Judgement> rough;
    private final Sampling sampling;
    private final List<Cloud> clouds = new ArrayList<>();
    private boolean complete = true;

    /** Told of the work as it goes on. */
    @FunctionalInterface
    public interface Listener {

        /**
         * @param balances balances made so far
         * @param of balances expected in all, roughly
         * @param what what is being done
         */
        void told(int balances, int of, String what);
    }

    /**
     * @param workshop makes candidates
     * @param file claims
     * @param effort how much is spent
     * @param workers does the evaluations
     * @param stopped asked before each evaluation; once it says yes, what is done is the answer
     * @param listener told of the work
     * @param rough told of a first answer, where the effort is large enough to have one
     */
    public Judge(
            Workshop workshop,
            ClaimsFile file,
            JudgeEffort effort,
            Workers workers,
            BooleanSupplier stopped,
            Listener listener,
            Consumer<Judgement> rough) {
        this.workshop = workshop;
        this.file = file;
        this.effort = effort;
        this.stopped = stopped;
        this.rough = rough;
        this.workers = (count, work) -> workers.forEach(count, i -> {
            if (stopped.getAsBoolean()) {
                throw new CancellationException("the work was stopped");
            }
            work.accept(i);
        });
        int[] doing = new int[1];
        this.sampling = new Sampling(workshop, file, effort, this.workers, stopped, balances -> {
            doing[0] = Math.max(doing[0], balances);
            listener.told(doing[0], Math.max(expected(), doing[0] + 1), what);
        });
    }

    private String what = "";

    /** From runs: a kind takes some six balances for each of its points, a claim left out four, and the prior some more. */
    private int expected() {
        int kinds =
                file.cycles().size() * file.oxidizers().size() * file.fuels().size();
        int leftOut =
                file.claims().size() > 1 ? Math.min(kinds, 2) * file.claims().size() : 0;
        return kinds * (effort.prior() + 6 * effort.samples()) + 4 * effort.leftOut(1) * leftOut;
    }

    /**
     * @return the judgement
     * @throws InvalidInput if no kind of engine can be made from what is given
     */
    public Judgement judge() {
        List<Hypothesis> kinds = new ArrayList<>();
        for (String oxidizer : file.oxidizers()) {
            for (String fuel : file.fuels()) {
                for (Cycle cycle : file.cycles()) {
                    kinds.add(new Hypothesis(
                            cycle,
                            workshop.fluids().propellant(oxidizer),
                            workshop.fluids().propellant(fuel)));
                }
            }
        }
        List<InvalidInput.Problem> problems = new ArrayList<>();
        try {
            begin(kinds, problems);
            if (effort.rough() > 0) {
                sample((cloud, hope) -> sampling.rough(cloud, effort.rough()));
                rough.accept(assembled(List.of()));
            }
            sample((cloud, hope) -> sampling.sampled(cloud, effort.points(hope)));
            return assembled(held());
        } catch (CancellationException e) {
            complete = false;
            return assembled(List.of());
        }
    }

    /** A kind that cannot be made from what is given is no kind; if none can, the input is wrong. */
    private void begin(List<Hypothesis> kinds, List<InvalidInput.Problem> problems) {
        for (Hypothesis kind : kinds) {
            what = "prior of " + kind.cycle().id();
            try {
                clouds.add(sampling.begun(kind));
            } catch (InvalidInput e) {
                problems.addAll(e.problems());
                FailureTally failures = new FailureTally();
                failures.count(e.problems().get(0).sentence());
                clouds.add(Cloud.none(kind, failures));
            }
        }
        if (problems.size() >= kinds.size()
                && clouds.stream().allMatch(c -> c.model().isEmpty())) {
            throw new InvalidInput(problems.stream().distinct().toList());
        }
    }

    /** Kinds that a first answer rules out are left at it; of the others the probable ones are followed best. */
    private void sample(BiFunction<Cloud, Double, SampledPosterior<Sighting>> sampler) {
        List<Double> hopes = new Mixture(clouds).hopes();
        for (int i = 0; i < clouds.size(); i++) {
            Cloud cloud = clouds.get(i);
            if (cloud.model().isPresent() && hopes.get(i) > 0) {
                what = cloud.hypothesis().cycle().id();
                SampledPosterior<Sighting> posterior = sampler.apply(cloud, hopes.get(i));
                if (posterior.complete()) {
                    clouds.set(i, cloud.with(posterior));
                }
            }
        }
    }

    /** Each claim against the others. */
    private List<LeftOutClaim> held() {
        Mixture mixture = new Mixture(clouds);
        List<LeftOutClaim> held = new ArrayList<>();
        List<Cloud> counted = LeftOut.counted(mixture);
        for (int i = 0; i < file.claims().size() && !mixture.empty(); i++) {
            Claim claim = file.claims().get(i);
            what = WITHOUT + claim.path();
            try {
                Mixture others =
                        LeftOut.without(sampling, counted, i, file.claims().size());
                held.add(new LeftOutClaim(claim, others, LeftOut.predicted(others, claim)));
            } catch (CancellationException e) {
                complete = false;
                return held;
            }
        }
        return held;
    }

    /** A claim with what the others predict for it. */
    record LeftOutClaim(Claim claim, Mixture others, Optional<Band> predicted) {}

    private Judgement assembled(List<LeftOutClaim> held) {
        complete &= !stopped.getAsBoolean();
        return new Assembly(file, effort, clouds, held, workers, complete)
                .judgement(sampling.balances(), sampling.impossible());
    }

    /** @return path of the figure that further facts should narrow */
    static String about(ClaimsFile file) {
        return file.about()
                .map(path -> ClaimPaths.figure(path).map(ClaimFigure::path).orElse(path))
                .orElseGet(() -> file.given().containsKey("engine.chamber_pressure")
                        ? "engine.isp_vacuum_s"
                        : "engine.chamber_pressure_Pa");
    }

    /** @return the unknowns of all kinds, each once */
    static List<String> unknowns(List<Cloud> clouds) {
        return clouds.stream()
                .flatMap(c -> c.model().stream())
                .map(EngineModel::unknowns)
                .flatMap(List::stream)
                .map(u -> u.path())
                .distinct()
                .toList();
    }
}
