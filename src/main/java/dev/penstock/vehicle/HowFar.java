package dev.penstock.vehicle;

import dev.penstock.errors.LimitReached;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.provenance.ModelCard;
import dev.penstock.vehicle.mass.DryMassModel;
import dev.penstock.vehicle.mass.MassLine;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.UnaryOperator;

/**
 * How far a vehicle gets that does not close, and what would close it: each taken alone, everything else as asked for.
 *
 * <pre>
 * speed       largest ideal gain that the same payload, or start mass, and stages reach
 * impulse     least common factor on the vacuum impulse of all stages
 * dry mass    largest common factor on the dry mass of all stages
 * </pre>
 *
 * Each by halving an interval whose one end closes and whose other does not, to 1e-4 of its width.
 *
 * @param reason why it does not close
 * @param asked ideal delta-v asked for (m/s)
 * @param reached largest ideal delta-v that closes (m/s); empty if none above a tenth of what is asked for does
 * @param impulseFactor specific impulse that closes over that there is (-); empty if five times as much does not
 * @param dryMassFactor dry mass that closes over that of its model (-); empty if not even weightless stages close
 * @param near the vehicle with an impulse somewhat above the one that just closes
 * @param nearFactor its specific impulse over that there is (-)
 * @param flown the same with its flight, where one was asked for and succeeds
 * @param notFlown why none flew, where a flight was asked for and no impulse that was tried brings it to its orbit
 */
public record HowFar(
        String reason,
        double asked,
        OptionalDouble reached,
        OptionalDouble impulseFactor,
        OptionalDouble dryMassFactor,
        Optional<VehicleSizing> near,
        OptionalDouble nearFactor,
        Optional<FlownSizing> flown,
        Optional<String> notFlown) {

    public static final ModelCard CARD = ModelCard.definition(
            "vehicle.how-far",
            "How far a vehicle gets that does not close",
            "largest Δv, least factor on Isp, largest factor on the dry mass at which the same vehicle closes",
            "one thing changed at a time",
            "that of the sizing");

    private static final double MOST_IMPULSE = 5;
    private static final double SMALLEST_SHARE = 0.1;
    private static final int HALVINGS = 14;
    /** Impulse over the one that just closes, at which the vehicle is shown, smallest first. */
    private static final double[] ABOVE = {1.02, 1.05, 1.1, 1.2, 1.4, 1.7};

    /** Sizes a plan on its own flight. */
    @FunctionalInterface
    public interface Flyer {

        /**
         * @param plan what is asked for
         * @param source its engines
         * @return the vehicle and its flight
         */
        FlownSizing fly(VehiclePlan plan, EngineSource source);
    }

    /**
     * @param reason why the vehicle does not close
     * @param plan what was asked for
     * @param source its engines
     * @param flyer flies it; empty where no flight was asked for
     * @return how far it gets
     */
    public static HowFar of(String reason, VehiclePlan plan, EngineSource source, Optional<Flyer> flyer) {
        double asked = plan.mission().total();
        OptionalDouble reached =
                edge(1, SMALLEST_SHARE, share -> closes(plan.withMission(DeltaVBudget.of(share * asked)), source));
        OptionalDouble impulse =
                edge(1, MOST_IMPULSE, factor -> closes(stronger(plan, factor), scaled(source, factor)));
        OptionalDouble dry = edge(1, 0, factor -> closes(plan.withStages(lighter(plan.stages(), factor)), source));
        HowFar found = new HowFar(
                reason,
                asked,
                reached.isPresent() ? OptionalDouble.of(reached.getAsDouble() * asked) : reached,
                impulse,
                dry,
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                flyer.map(f -> "no impulse up to " + (int) MOST_IMPULSE + " times that there is lets it close"));
        return impulse.isPresent() ? found.shown(plan, source, flyer) : found;
    }

    /** The vehicle with an impulse somewhat above the one that just closes, flown if asked. */
    private HowFar shown(VehiclePlan plan, EngineSource source, Optional<Flyer> flyer) {
        String failed = "";
        for (double above : ABOVE) {
            double factor = above * impulseFactor.getAsDouble();
            try {
                VehicleSizing sizing = new VehicleSizer().size(stronger(plan, factor), scaled(source, factor));
                Optional<FlownSizing> flight = flyer.map(f -> f.fly(stronger(plan, factor), scaled(source, factor)));
                return new HowFar(
                        reason,
                        asked,
                        reached,
                        impulseFactor,
                        dryMassFactor,
                        Optional.of(sizing),
                        OptionalDouble.of(factor),
                        flight,
                        flight.isPresent() ? Optional.empty() : notFlown);
            } catch (LimitReached | NotConverged | OutsideValidity next) {
                failed = next.getMessage(); // the flight takes more than was assumed: more impulse
            }
        }
        return flyer.isPresent() ? because(failed).shown(plan, source, Optional.empty()) : this;
    }

    /** The same, not flown for a reason. */
    private HowFar because(String refusal) {
        return new HowFar(
                reason,
                asked,
                reached,
                impulseFactor,
                dryMassFactor,
                near,
                nearFactor,
                flown,
                Optional.of(String.format(
                        Locale.ROOT,
                        "not even with %.2f times the impulse that just closes: %s",
                        ABOVE[ABOVE.length - 1],
                        refusal)));
    }

    /** Nearest place to the failing end at which it holds, between an end that fails and one that should hold. */
    private static OptionalDouble edge(double fails, double holds, DoublePredicate closes) {
        if (!closes.test(holds)) {
            return OptionalDouble.empty();
        }
        double bad = fails;
        double good = holds;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (bad + good) / 2;
            if (closes.test(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return OptionalDouble.of(good);
    }

    private static boolean closes(VehiclePlan plan, EngineSource source) {
        try {
            new VehicleSizer().size(plan, source);
            return true;
        } catch (LimitReached | NotConverged | OutsideValidity none) {
            return false;
        }
    }

    private static EngineSource scaled(EngineSource source, double factor) {
        return file -> new ScaledEngine(source.engine(file), factor);
    }

    /** The plan with the impulse of its stated engines scaled. */
    private static VehiclePlan stronger(VehiclePlan plan, double factor) {
        return plan.withStages(plan.stages().stream()
                .map(stage -> stage.stated()
                        .map(engine -> stage.withStated(new ScaledEngine(engine, factor)))
                        .orElse(stage))
                .toList());
    }

    private static List<StagePlan> lighter(List<StagePlan> stages, double factor) {
        List<StagePlan> lighter = new ArrayList<>();
        UnaryOperator<MassLine> scale =
                line -> new MassLine(line.name(), factor * line.mass(), line.scatter(), line.source(), line.made());
        for (StagePlan stage : stages) {
            DryMassModel model = contents -> {
                MassTable table = stage.dryMass().estimate(contents);
                return new MassTable(table.lines().stream().map(scale).toList(), table.growthMargin());
            };
            lighter.add(stage.withRecovery(model, stage.recovery()));
        }
        return lighter;
    }
}
