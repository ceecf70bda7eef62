package dev.penstock.vehicle;

import dev.penstock.errors.LimitReached;
import dev.penstock.vehicle.ascent.Steering;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds a first vehicle that flies, or says what to change so that one does. Not thread-safe. */
final class FlownStart {

    private static final int MOST_STARTS = 4;
    /** Change of the delta-v (m/s) at which a first vehicle is near the one that its flight asks for. */
    private static final double NEAR = 150;

    private FlownStart() {}

    /** A choice that flies: the best of a few splits, with more engines where those asked for do not lift it. */
    static FlownSearch.Found find(FlownSearch search, VehiclePlan plan, EngineSource source) {
        double deltaV = plan.mission().total();
        VehicleSizing sized = new VehicleSizer().size(plan, source);
        List<Double> optimum =
                sized.stages().stream().map(stage -> stage.deltaV() / deltaV).toList();
        List<List<Double>> splits = new ArrayList<>();
        int stages = plan.stages().size();
        if (search.sharesFree()) {
            for (double first : new double[] {0.3, 0.4, 0.22}) {
                splits.add(split(first, stages));
            }
        }
        splits.add(optimum);
        FlownSearch.Found best = new FlownSearch.Found(null, Double.POSITIVE_INFINITY, false);
        for (double more : new double[] {1, 1.35, 2}) {
            for (List<Double> shares : splits) {
                FlownSearch.Found found = started(search, plan, source, shares, more);
                if (found.flies() && found.cost() < best.cost()) {
                    best = found;
                }
            }
            if (best.flies()) {
                return best;
            }
        }
        throw new LimitReached("ascent.orbit", whatToChange(plan, sized, search));
    }

    /** A split with engines by the rule, sized for what its flight takes. */
    private static FlownSearch.Found started(
            FlownSearch search, VehiclePlan plan, EngineSource source, List<Double> shares, double more) {
        double deltaV = plan.mission().total();
        FlownSearch.Found found = null;
        for (int i = 0; i < MOST_STARTS; i++) {
            FlownDesign design = new FlownDesign(
                    shares,
                    engines(plan, source, shares, deltaV, more),
                    search.insertion(),
                    new Steering(Math.toRadians(2), Steering.USUAL_FREE_ABOVE),
                    deltaV,
                    OptionalDouble.empty(),
                    Optional.empty());
            FlownSearch.Found next = search.scanned(design);
            if (!next.flies()) {
                return found == null ? next : search.grown(found);
            }
            found = next;
            if (Math.abs(found.design().deltaV() - deltaV) < NEAR) {
                break;
            }
            deltaV = found.design().deltaV();
        }
        return search.grown(found);
    }

    private static List<Double> split(double first, int stages) {
        List<Double> shares = new ArrayList<>(List.of(first));
        for (int i = 1; i < stages; i++) {
            shares.add((1 - first) / (stages - 1));
        }
        return shares;
    }

    /** Engines by the rule of the plan at a split, times a factor where it leaves their number open. */
    private static List<Integer> engines(
            VehiclePlan plan, EngineSource source, List<Double> shares, double deltaV, double more) {
        List<StagePlan> stages = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            stages.add(plan.stages().get(i).withShare(shares.get(i)));
        }
        List<Integer> counts = new ArrayList<>();
        try {
            VehicleSizing sized =
                    new VehicleSizer().size(plan.withStages(stages).withMission(DeltaVBudget.of(deltaV)), source);
            for (int i = 0; i < shares.size(); i++) {
                int count = sized.stages().get(i).engines();
                boolean fixed = plan.stages().get(i).engines().given().isPresent();
                counts.add(fixed ? count : Math.min(EngineCount.MOST, (int) Math.ceil(more * count)));
            }
        } catch (LimitReached none) {
            plan.stages().forEach(stage -> counts.add(stage.engines().given().orElse(1)));
        }
        return counts;
    }

    static String whatToChange(VehiclePlan plan, VehicleSizing sized, FlownSearch search) {
        List<String> help = new ArrayList<>();
        for (int i = 0; i < sized.stages().size(); i++) {
            StageSizing stage = sized.stages().get(i);
            double wanted = i == 0 ? 1.2 : 0.6;
            if (stage.thrustToWeight() < wanted) {
                help.add(String.format(
                        Locale.ROOT,
                        "%s starts at %.2f of its weight: give it more engines or thrust%s",
                        stage.name(),
                        stage.thrustToWeight(),
                        i > 0 && !search.sharesFree() ? ", or a smaller delta_v_share" : ""));
            }
        }
        if (!search.sharesFree() && plan.stages().size() > 1) {
            help.add("leave delta_v_share out so that the flight chooses the split");
        }
        if (!search.ascent().insertionFree()) {
            help.add("leave insertion_altitude out so that the flight chooses it");
        }
        if (help.isEmpty()) {
            help.add("give it a smaller payload, a lower orbit or another stage");
        }
        return String.format(
                Locale.ROOT,
                "no steering takes %s to %.0f km; %s",
                plan.name(),
                search.insertion() / 1e3,
                String.join("; ", help));
    }
}
