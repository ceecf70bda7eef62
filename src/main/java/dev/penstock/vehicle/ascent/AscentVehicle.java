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
 * @param fairing what covers the payload
 */
public record AscentVehicle(
        String name,
        double startMass,
        List<FlightSegment> segments,
        double referenceArea,
        DragTable dragTable,
        Fairing fairing) {

    /**
     * What covers the payload and goes overboard on the way.
     *
     * @param mass its mass (kg); zero for none
     * @param from first part of the flight in which it may go
     * @param to part of the flight with whose end it goes at the latest; in the last it stays if the air never is thin enough
     */
    public record Fairing(double mass, int from, int to) {

        /** None. */
        public static final Fairing NONE = new Fairing(0, 0, 0);

        public Fairing {
            Require.notNegative("fairing", "mass (kg)", mass);
        }
    }

    /**
     * @param mass mass on the pad at ignition (kg)
     * @return the same vehicle with that; what it is more or less goes all the way to the orbit
     */
    public AscentVehicle withStartMass(double mass) {
        return new AscentVehicle(name, mass, segments, referenceArea, dragTable, fairing);
    }

    /**
     * @param parts parts of the flight, in order
     * @return the same vehicle with these
     */
    public AscentVehicle withSegments(List<FlightSegment> parts) {
        return new AscentVehicle(name, startMass, parts, referenceArea, dragTable, fairing);
    }

    /** A vehicle that drops no fairing on the way. */
    public AscentVehicle(
            String name, double startMass, List<FlightSegment> segments, double referenceArea, DragTable dragTable) {
        this(name, startMass, segments, referenceArea, dragTable, Fairing.NONE);
    }

    public AscentVehicle {
        Require.positive(name, "start mass (kg)", startMass);
        Require.positive(name, "reference area (m²)", referenceArea);
        Require.within(name, "parts of the flight", segments.size(), 1, 20);
        segments = List.copyOf(segments);
        double left = startMass - fairing.mass();
        for (FlightSegment segment : segments) {
            left -= segment.spentBefore() + segment.burn() + segment.droppedAfter();
        }
        Require.positive(name, "mass left after the last part (kg)", left);
    }
}
