package dev.penstock.vehicle;

import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.numerics.RootFinder;
import dev.penstock.quantities.Constants;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.plan.BoosterPlan;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.BodyFit;
import dev.penstock.vehicle.stage.BoosterSizing;
import dev.penstock.vehicle.stage.SplitOptimum;
import dev.penstock.vehicle.stage.StageModel;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.StageSolver;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Sizes a vehicle by the rocket equation: start mass from payload, top stage first, or payload from start mass, lowest
 * stage first, or the specific impulse needed from both. Without given shares the delta-v is split so that the start mass is least, or the payload most.
 */
public final class VehicleSizer {

    /** Name of the limit at which no vehicle closes. */
    public static final String CLOSURE = StageSolver.CLOSURE;

    /** Below this thrust-to-weight ratio a stage hardly leaves the ground: common practice, no source. */
    private static final double LEAST_LIFTOFF = 1.15;

    /** Range in which a factor on the specific impulse is searched. */
    private static final double LEAST_FACTOR = 0.2;

    private static final double MOST_FACTOR = 5;

    /**
     * @param plan what is asked for
     * @param source gives the engines that the plan names
     * @return the vehicle
     * @throws LimitReached if no vehicle closes; the message says which stage fails and the number that would close it
     */
    public VehicleSizing size(VehiclePlan plan, EngineSource source) {
        List<EnginePerformance> engines = new ArrayList<>();
        plan.stages().forEach(stage -> engines.add(source.of(stage)));
        return size(plan, engines, plan.boosters().map(source::of));
    }

    /**
     * @param plan what is asked for
     * @param engines the engine of each stage, lowest first; boosters take that of the first stage
     * @return the vehicle
     * @throws InvalidInput if the boosters name an engine of their own, which only an {@link EngineSource} can give
     * @throws LimitReached if no vehicle closes; the message says which stage fails and the number that would close it
     */
    public VehicleSizing size(VehiclePlan plan, List<EnginePerformance> engines) {
        plan.boosters().flatMap(BoosterPlan::engineFile).ifPresent(file -> {
            throw new InvalidInput(plan.name(), "boosters.engine", file.toString(), "no engine was given for it");
        });
        return size(plan, engines, plan.boosters().map(b -> BoosterSizing.of(b, () -> engines.get(0))));
    }

    /**
     * One stage by itself at a given start mass, whether it closes or not.
     *
     * @param plan what is asked of the stage
     * @param engine its engine
     * @param startMass start mass (kg)
     * @param deltaV ideal delta-v (m/s)
     * @return the stage; what it carries is negative where it does not close
     * @throws LimitReached if the start-up of its engines takes all of the start mass
     */
    public static StageSizing singleStage(StagePlan plan, EnginePerformance engine, double startMass, double deltaV) {
        StageModel model = new StageModel(plan, engine, Optional.empty());
        int engines = Math.min(EngineCount.MOST, model.enginesNeeded(startMass));
        if (startMass <= model.leastStartMass(engines)) {
            throw new LimitReached(CLOSURE, tooSmall(model, startMass, engines));
        }
        return model.at(startMass, deltaV, engines);
    }

    /**
     * What a search over vehicles wants small: the logarithm of the start mass, the payload with its sign changed over the
     * start mass, or the logarithm of the impulse needed. A vehicle that does not close gets a value far above all that do,
     * the larger the farther it is from closing.
     *
     * @param plan what is asked for
     * @param source gives the engines that the plan names
     * @return that value (-)
     */
    public double badness(VehiclePlan plan, EngineSource source) {
        List<EnginePerformance> engines = new ArrayList<>();
        plan.stages().forEach(stage -> engines.add(source.of(stage)));
        Optional<BoosterSizing> boosters = plan.boosters().map(source::of);
        if (plan.payload().isPresent() && plan.startMass().isPresent()) {
            return Math.log(ispFactor(plan, engines, boosters));
        }
        SplitOptimum optimum = new SplitOptimum(plan, models(plan, engines, boosters));
        return optimum.badness(optimum.shares());
    }

    private VehicleSizing size(VehiclePlan plan, List<EnginePerformance> engines, Optional<BoosterSizing> boosters) {
        int stages = plan.stages().size();
        Require.within(plan.name(), "engines given for its stages", engines.size(), stages, stages);
        if (plan.payload().isPresent() && plan.startMass().isPresent()) {
            double factor = ispFactor(plan, engines, boosters);
            List<EnginePerformance> needed = engines.stream()
                    .<EnginePerformance>map(e -> new ScaledEngine(e, factor))
                    .toList();
            return close(plan.withMasses(OptionalDouble.empty(), plan.startMass()), models(plan, needed, boosters))
                    .withIspFactor(factor, plan.payload().getAsDouble());
        }
        return close(plan, models(plan, engines, boosters));
    }

    private static List<StageModel> models(
            VehiclePlan plan, List<EnginePerformance> engines, Optional<BoosterSizing> boosters) {
        List<StageModel> models = new ArrayList<>();
        for (int i = 0; i < engines.size(); i++) {
            models.add(new StageModel(plan.stages().get(i), engines.get(i), i == 0 ? boosters : Optional.empty()));
        }
        return models;
    }

    private static VehicleSizing close(VehiclePlan plan, List<StageModel> models) {
        double total = plan.mission().total();
        double[] shares = new SplitOptimum(plan, models).shares();
        List<StageSizing> stages = plan.startMass().isPresent()
                ? upwards(models, shares, total, plan.startMass().getAsDouble())
                : downwards(models, shares, total, plan.payload().orElseThrow());
        double payload =
                plan.payload().orElseGet(() -> stages.get(stages.size() - 1).above());
        return new VehicleSizing(
                plan, stages.get(0).startMass(), payload, OptionalDouble.empty(), stages, warnings(plan, stages));
    }

    /** Factor on the specific impulse of every stage at which the start mass carries the payload. */
    private static double ispFactor(
            VehiclePlan plan, List<EnginePerformance> engines, Optional<BoosterSizing> boosters) {
        VehiclePlan lifting = plan.withMasses(OptionalDouble.empty(), plan.startMass());
        double wanted = plan.payload().orElseThrow() / plan.startMass().orElseThrow();
        DoubleUnaryOperator excess = factor -> {
            List<EnginePerformance> scaled = engines.stream()
                    .<EnginePerformance>map(e -> new ScaledEngine(e, factor))
                    .toList();
            SplitOptimum optimum = new SplitOptimum(lifting, models(plan, scaled, boosters));
            return -optimum.badness(optimum.shares()) - wanted;
        };
        if (!(excess.applyAsDouble(MOST_FACTOR) > 0)) {
            throw new LimitReached(
                    CLOSURE,
                    String.format(
                            Locale.ROOT,
                            "no specific impulse up to %.0f times that of the engine lets a start mass of %.6g kg carry"
                                    + " %.6g kg: dry mass, residuals and payload together are too heavy",
                            MOST_FACTOR,
                            plan.startMass().getAsDouble(),
                            plan.payload().getAsDouble()));
        }
        return RootFinder.between("specific impulse needed", excess, LEAST_FACTOR, MOST_FACTOR, 1e-10)
                .value();
    }

    private static List<StageSizing> downwards(List<StageModel> models, double[] shares, double total, double payload) {
        Deque<StageSizing> stages = new ArrayDeque<>();
        double carried = payload;
        for (int i = models.size() - 1; i >= 0; i--) {
            StageSizing stage = new StageSolver(models.get(i)).carrying(carried, shares[i] * total);
            stages.addFirst(stage);
            carried = stage.startMass();
        }
        return List.copyOf(stages);
    }

    private static List<StageSizing> upwards(List<StageModel> models, double[] shares, double total, double startMass) {
        List<StageSizing> stages = new ArrayList<>();
        double mass = startMass;
        for (int i = 0; i < models.size(); i++) {
            StageModel model = models.get(i);
            int engines = model.enginesNeeded(mass);
            if (engines > EngineCount.MOST || mass <= model.leastStartMass(engines)) {
                throw new LimitReached(CLOSURE, tooSmall(model, mass, engines));
            }
            StageSizing stage = model.at(mass, shares[i] * total, engines);
            if (stage.above() <= 0) {
                throw new LimitReached(CLOSURE, nothingCarried(stage, startMass));
            }
            stages.add(stage);
            mass = stage.above();
        }
        return stages;
    }

    private static String tooSmall(StageModel model, double mass, int engines) {
        if (engines > EngineCount.MOST) {
            return String.format(
                    Locale.ROOT,
                    "%s starts at %.6g kg, for which %d engines of %.4g kN would be needed; the most taken seriously is %d:"
                            + " take a larger engine or a smaller start mass",
                    model.plan().name(),
                    mass,
                    engines,
                    model.engine().vacuumThrust() / 1e3,
                    EngineCount.MOST);
        }
        return String.format(
                Locale.ROOT,
                "%s starts at %.6g kg, but start-up (and the burn beside boosters, if any) takes %.6g kg: take a smaller"
                        + " engine, a larger start mass or a shorter allowances.startup_time",
                model.plan().name(),
                mass,
                model.leastStartMass(engines));
    }

    private static String nothingCarried(StageSizing stage, double startMass) {
        double most = stage.dryMass().total() + stage.above();
        String ceiling = most > 0
                ? String.format(Locale.ROOT, "it stops closing at a dry mass of %.4g kg", most)
                : "not even a stage without dry mass closes";
        return String.format(
                Locale.ROOT,
                "no payload is left at a start mass of %.6g kg: %s starts at %.6g kg, burns all but %.6g kg, and its dry"
                        + " mass is %.6g kg; %s",
                startMass,
                stage.name(),
                stage.startMass(),
                stage.finalMass(),
                stage.dryMass().total(),
                ceiling);
    }

    private static Warning tooSmall(StageSizing stage, BodyFit fit) {
        return new Warning(
                "vehicle",
                String.format(
                        Locale.ROOT,
                        "the tanks of %s (%.4g m³) do not fit into its body by %.4g m³; a height of %.4g m instead of %.4g m"
                                + " would hold them",
                        stage.name(),
                        fit.tanks(),
                        fit.body().missing(fit.tanks()),
                        fit.body().heightFor(fit.tanks()),
                        fit.body().height()));
    }

    private static List<Warning> warnings(VehiclePlan plan, List<StageSizing> stages) {
        List<Warning> warnings = new ArrayList<>();
        plan.notes().forEach(note -> warnings.add(new Warning("vehicle", note)));
        for (StageSizing stage : stages) {
            stage.body().filter(fit -> !fit.fits()).ifPresent(fit -> warnings.add(tooSmall(stage, fit)));
        }
        StageSizing first = stages.get(0);
        if (first.thrustToWeight() < LEAST_LIFTOFF) {
            warnings.add(new Warning(
                    "vehicle",
                    String.format(
                            Locale.ROOT,
                            "%s lifts off at %.2f of its weight; below %.2f the gravity loss grows fast, below 1 it stays"
                                    + " on the ground (start mass %.4g t, thrust there %.4g kN)",
                            first.name(),
                            first.thrustToWeight(),
                            LEAST_LIFTOFF,
                            first.startMass() / 1e3,
                            first.thrustToWeight() * first.startMass() * Constants.STANDARD_GRAVITY / 1e3)));
        }
        return warnings;
    }
}
