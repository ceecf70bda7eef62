package dev.penstock.vehicle.ascent;

import dev.penstock.errors.Require;
import java.util.List;

/**
 * A vehicle as the flight sees it.
 *
 * @param name name for messages
 * @param startMass mass on the pad at ignition (kg)
 * @param segments parts of the flight, in order
 * @param referenceArea largest cross section (m²)
 * @param dragTable drag coefficient on that area
 */
public record AscentVehicle(
        String name, double startMass, List<FlightSegment> segments, double referenceArea, DragTable dragTable) {

    public AscentVehicle {
        Require.positive(name, "start mass (kg)", startMass);
        Require.positive(name, "reference area (m²)", referenceArea);
        Require.within(name, "parts of the flight", segments.size(), 1, 20);
        segments = List.copyOf(segments);
        double left = startMass;
        for (FlightSegment segment : segments) {
            left -= segment.spentBefore() + segment.burn() + segment.droppedAfter();
        }
        Require.positive(name, "mass left after the last part (kg)", left);
    }
}
