package dev.penstock.vehicle.plan;

import dev.penstock.errors.Require;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.DragTable;

/**
 * How a vehicle flies to its orbit.
 *
 * @param mission where to, and what it must not exceed
 * @param stageCoast time between dropping a stage and ignition of the next (s)
 * @param dragTable drag coefficient on the largest cross section
 * @param insertionFree whether the height at which the ascent ends is chosen by the flight
 */
public record AscentPlan(AscentMission mission, double stageCoast, DragTable dragTable, boolean insertionFree) {

    /** A flight that ends where its mission says. */
    public AscentPlan(AscentMission mission, double stageCoast, DragTable dragTable) {
        this(mission, stageCoast, dragTable, false);
    }

    public AscentPlan {
        Require.within("ascent", "coast between stages (s)", stageCoast, 0, 1000);
    }
}
