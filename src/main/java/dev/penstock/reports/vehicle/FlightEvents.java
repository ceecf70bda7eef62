package dev.penstock.reports.vehicle;

import dev.penstock.vehicle.ascent.AscentPoint;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.ascent.FairingDrop;
import dev.penstock.vehicle.ascent.SteeringLaw;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What happens on a flight, in the order of time. */
final class FlightEvents {

    private final AscentResult flight;

    FlightEvents(AscentResult flight) {
        this.flight = flight;
    }

    private record Event(double time, String name, String about) {}

    /** @return each with its time, what it is about, and the vehicle then */
    List<Map<String, Object>> json() {
        List<Event> events = new ArrayList<>();
        SteeringLaw steering = flight.steering();
        events.add(new Event(0, "release", flight.vehicle().name()));
        events.add(new Event(steering.tiltTime(), "tilt", ""));
        events.add(new Event(steering.pathTime(), "thrust along the path", ""));
        events.add(new Event(steering.tangentTime(), "linear-tangent law", ""));
        flight.points().stream()
                .max(Comparator.comparingDouble(AscentPoint::dynamicPressure))
                .ifPresent(p -> events.add(new Event(p.time(), "max q", "")));
        throttling(events);
        parts(events);
        events.add(new Event(flight.insertionTime(), "insertion", ""));
        fairing(events);
        return events.stream()
                .sorted(Comparator.comparingDouble(Event::time))
                .map(this::entry)
                .toList();
    }

    private void throttling(List<Event> events) {
        boolean throttled = false;
        for (AscentPoint point : flight.points()) {
            boolean now = point.throttle() > 0 && point.throttle() < 1;
            if (now != throttled) {
                events.add(new Event(point.time(), now ? "throttling begins" : "throttling ends", point.segment()));
                throttled = now;
            }
        }
    }

    private void parts(List<Event> events) {
        int last = flight.segments().size() - 1;
        for (int i = 0; i <= last; i++) {
            AscentResult.SegmentFlight part = flight.segments().get(i);
            events.add(new Event(part.ignition(), "ignition", part.name()));
            boolean parks = flight.secondBurn().isPresent() && part.cutOff() == flight.insertionTime();
            if (i < last) {
                events.add(new Event(part.cutOff(), parks ? "cut-off" : "burnout", part.name()));
                if (part.dropped() > 0) {
                    events.add(new Event(part.cutOff(), "staging", part.name()));
                }
            }
        }
        flight.secondBurn().ifPresent(burn -> events.add(new Event(burn.cutOff(), "target reached", "")));
    }

    private void fairing(List<Event> events) {
        flight.fairingDrop()
                .ifPresent(drop -> events.add(new Event(drop.time(), "fairing overboard", aboutFairing(drop))));
    }

    private String aboutFairing(FairingDrop drop) {
        return flight.vehicle().segments().get(drop.segment()).name();
    }

    private Map<String, Object> entry(Event event) {
        AscentPoint point = flight.points().stream()
                .min(Comparator.comparingDouble(p -> Math.abs(p.time() - event.time())))
                .orElseThrow();
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("event", event.name());
        map.put("about", event.about());
        map.put("time_s", event.time());
        map.put("altitude_m", point.altitude());
        map.put("air_speed_m_s", point.airSpeed());
        map.put("inertial_speed_m_s", point.inertialSpeed());
        map.put("mass_kg", point.mass());
        map.put("dynamic_pressure_Pa", point.dynamicPressure());
        return map;
    }
}
