package dev.penstock.vehicle;

import dev.penstock.vehicle.ascent.Arrival;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.Steering;
import dev.penstock.vehicle.plan.AscentPlan;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.OrbitEntry;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is chosen of a vehicle on its flight.
 *
 * @param shares share of each stage in the ideal delta-v, lowest first; they add up to one
 * @param engines engines of each stage
 * @param insertion height at which the ascent ends (m)
 * @param steering how it is steered
 * @param deltaV ideal delta-v of all stages (m/s)
 * @param turnBack what the first stage keeps to turn back to its site (m/s); empty where the plan says, or it does not
 * @param aim angles that ended its flight, or a similar one, in the orbit; empty before the first
 */
record FlownDesign(
        List<Double> shares,
        List<Integer> engines,
        double insertion,
        Steering steering,
        double deltaV,
        OptionalDouble turnBack,
        Optional<Arrival.Aim> aim) {

    FlownDesign {
        shares = List.copyOf(shares);
        engines = List.copyOf(engines);
    }

    FlownDesign flown(double speedGain, OptionalDouble back, Arrival.Aim angles) {
        return new FlownDesign(shares, engines, insertion, steering, speedGain, back, Optional.of(angles));
    }

    FlownDesign sizedFor(double speedGain) {
        return new FlownDesign(shares, engines, insertion, steering, speedGain, turnBack, aim);
    }

    FlownDesign turningBack(OptionalDouble kept) {
        return new FlownDesign(shares, engines, insertion, steering, deltaV, kept, aim);
    }

    FlownDesign steered(Steering other) {
        return new FlownDesign(shares, engines, insertion, other, deltaV, turnBack, Optional.empty());
    }

    FlownDesign choosing(List<Double> split, double height, Steering other) {
        return new FlownDesign(split, engines, height, other, deltaV, turnBack, aim);
    }

    FlownDesign withEngines(int stage, int number) {
        List<Integer> changed = new ArrayList<>(engines);
        changed.set(stage, number);
        return new FlownDesign(shares, changed, insertion, steering, deltaV, turnBack, aim);
    }

    /** Where the flight goes. */
    AscentMission mission(AscentPlan ascent) {
        return ascent.mission().insertingAt(insertion);
    }

    /** How the orbit is entered. */
    OrbitEntry entry(AscentPlan ascent) {
        return OrbitEntry.of(mission(ascent));
    }

    /** The vehicle asked for with what is chosen, its delta-v in one sum. */
    VehiclePlan plan(VehiclePlan asked) {
        return asked.withMission(DeltaVBudget.of(deltaV)).withStages(stages(asked));
    }

    private List<StagePlan> stages(VehiclePlan asked) {
        List<StagePlan> stages = new ArrayList<>();
        for (int i = 0; i < asked.stages().size(); i++) {
            stages.add(asked.stages().get(i).withShare(shares.get(i)).withEngines(EngineCount.of(engines.get(i))));
        }
        if (turnBack.isPresent()) {
            StagePlan first = stages.get(0);
            Recovery kept = first.recovery();
            stages.set(0, first.withRecovery(first.dryMass(), kept.flown(turnBack.getAsDouble(), kept.landing())));
        }
        return stages;
    }
}
