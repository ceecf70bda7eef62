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
 */
public record AscentPlan(AscentMission mission, double stageCoast, DragTable dragTable) {

    public AscentPlan {
        Require.within("ascent", "coast between stages (s)", stageCoast, 0, 1000);
    }
}
