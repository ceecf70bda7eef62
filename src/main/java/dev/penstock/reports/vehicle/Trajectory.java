package dev.penstock.reports.vehicle;

import dev.penstock.reports.text.CsvLine;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.vehicle.FlightFigures;
import dev.penstock.vehicle.FlownSizing;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.AscentPoint;
import dev.penstock.vehicle.ascent.OrbitPlane;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A flight, moment by moment, as comma-separated lines and as an ephemeris for other programs. */
public final class Trajectory {

    private final FlownSizing flown;
    private final OrbitPlane plane;

    /** @param flown vehicle and flight */
    public Trajectory(FlownSizing flown) {
        this.flown = flown;
        this.plane = plane(flown);
    }

    /** The plane of a flight; from the equator where the mission names no latitude. */
    static OrbitPlane plane(FlownSizing flown) {
        AscentMission mission = flown.ascent().mission();
        return new OrbitPlane(mission.planet(), mission.inclination(), mission.latitude());
    }

    /** @return a heading line and a line for each moment: the figures of the flight, then place and motion, then the ground below */
    public String csv() {
        StringBuilder text = new StringBuilder();
        for (AscentPoint point : flown.ascent().points()) {
            Map<String, Object> row = new LinkedHashMap<>(FigureJson.of(FlightFigures.POINTS, point));
            OrbitPlane.Place place = plane.place(point);
            row.put("x_m", place.x());
            row.put("y_m", place.y());
            row.put("z_m", place.z());
            row.put("vx_m_s", place.vx());
            row.put("vy_m_s", place.vy());
            row.put("vz_m_s", place.vz());
            OrbitPlane.Ground ground = plane.ground(point);
            row.put("latitude_rad", ground.latitude());
            row.put("longitude_from_site_rad", ground.longitude());
            if (text.isEmpty()) {
                CsvLine.add(text, List.copyOf(row.keySet()));
            }
            CsvLine.add(text, row.values().stream().map(Object::toString).toList());
        }
        return text.toString();
    }

    /**
     * @param release when the flight begins
     * @param created when the message is written
     * @return the flight as an ephemeris; of moments at one time, where parts change, the first
     */
    public EphemerisMessage ephemeris(Instant release, Instant created) {
        List<EphemerisMessage.Moment> moments = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (AscentPoint point : flown.ascent().points()) {
            if (point.time() - last > EphemerisMessage.SHORTEST) {
                moments.add(new EphemerisMessage.Moment(point.time(), plane.place(point)));
                last = point.time();
            }
        }
        return new EphemerisMessage(flown.sizing().plan().name(), release, created, moments);
    }
}
