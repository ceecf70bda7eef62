package dev.penstock.reports.vehicle;

import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.vehicle.FlightFigures;
import dev.penstock.vehicle.FlownSizing;
import dev.penstock.vehicle.ascent.AscentDynamics;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.AscentPoint;
import dev.penstock.vehicle.ascent.AscentVehicle;
import dev.penstock.vehicle.ascent.DragTable;
import dev.penstock.vehicle.ascent.FlightSegment;
import dev.penstock.vehicle.ascent.OrbitPlane;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.ascent.SteeringLaw;
import dev.penstock.vehicle.ascent.Thrusters;
import dev.penstock.vehicle.engine.BalancedEngine;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.stage.BoosterSizing;
import dev.penstock.vehicle.stage.LiquidBoosters;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Everything that another program needs to fly a flight again: planet, orbit, limits, throttling and steering as the flight had them,
 * drag, engines by ambient pressure, the parts with what they burn and drop, and the ground below.
 */
final class FlightDocument {

    private static final String NAME = "name";
    private static final String ENGINE = "engine";

    /** The planet. */
    private static final FigureTable<Planet> PLANET = FigureTable.<Planet>ofOne()
            .number(
                    "gravitational_parameter_m3_s2",
                    "gravitational parameter",
                    si("m³/s²"),
                    Planet::gravitationalParameter)
            .number("radius_m", "radius", si("m"), Planet::radius)
            .number("rotation_rate_rad_s", "rotation rate", si("rad/s"), Planet::rotationRate)
            .table();

    /** What must not be exceeded. */
    private static final FigureTable<AscentMission> LIMITS = FigureTable.<AscentMission>ofOne()
            .number("dynamic_pressure_Pa", "dynamic pressure", si("Pa"), AscentMission::dynamicPressureLimit)
            .number("acceleration_m_s2", "acceleration", si("m/s²"), AscentMission::accelerationLimit)
            .number(
                    "staging_dynamic_pressure_Pa",
                    "dynamic pressure at staging, reported and not enforced",
                    si("Pa"),
                    AscentMission::stagingPressureLimit)
            .number("minimum_throttle", "lowest throttle setting", si(""), AscentMission::minimumThrottle)
            .table();

    /** The steering. */
    private static final FigureTable<SteeringLaw> STEERING = FigureTable.<SteeringLaw>ofOne()
            .word(
                    "law",
                    "law",
                    s -> "upwards until tilt_at_air_speed_m_s; thrust tilted by tilt_rad from the vertical until the"
                            + " path through the air has turned as far; along that path until tangent_from_s, when the"
                            + " height is path_until_altitude_m; then tan(pitch) = tangent_start + tangent_rate_1_s (t -"
                            + " tangent_from_s), pitch above the horizon of the place, but no farther from the path than"
                            + " angle_load_Pa/max(1 Pa, dynamic pressure) in radians")
            .number("tilt_at_air_speed_m_s", "speed at which the tilt begins", si("m/s"), SteeringLaw::tiltSpeed)
            .number("tilt_from_s", "time at which it begins", si("s"), SteeringLaw::tiltTime)
            .number("tilt_rad", "tilt from the vertical", si("rad"), SteeringLaw::tilt)
            .number("path_from_s", "time from which thrust is along the path", si("s"), SteeringLaw::pathTime)
            .number("path_until_altitude_m", "height of free steering", si("m"), SteeringLaw::freeAbove)
            .number("angle_load_Pa", "dynamic pressure times angle of attack", si("Pa"), SteeringLaw::angleLoad)
            .number("tangent_from_s", "time at which the linear-tangent law begins", si("s"), SteeringLaw::tangentTime)
            .number("tangent_start", "tangent of the pitch then", si(""), SteeringLaw::tangentStart)
            .number("tangent_rate_1_s", "its rate", si("1/s"), SteeringLaw::tangentRate)
            .table();

    private final FlownSizing flown;
    private final OrbitPlane plane;

    FlightDocument(FlownSizing flown) {
        this.flown = flown;
        this.plane = Trajectory.plane(flown);
    }

    private static Notation si(String unit) {
        return Notation.significant(unit, 6);
    }

    /** @return what the figures of the flight leave open */
    Map<String, Object> json() {
        AscentMission mission = flown.ascent().mission();
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("planet", FigureJson.of(PLANET, mission.planet()));
        map.put("inclination_rad", mission.inclination());
        map.put("launch_latitude_rad", plane.latitude());
        map.put("limits_asked", FigureJson.of(LIMITS, mission));
        map.put("throttle_rule", throttleRule(mission));
        map.put("steering", FigureJson.of(STEERING, flown.ascent().steering()));
        mission.parkingCoast().ifPresent(coast -> map.put("second_burn", secondBurn(mission, coast)));
        map.put("drag", drag());
        map.put("engines", engines().stream().map(FlightDocument::engine).toList());
        map.put("start_mass_kg", flown.ascent().vehicle().startMass());
        map.put(
                "parts",
                flown.ascent().vehicle().segments().stream()
                        .map(FlightDocument::part)
                        .toList());
        if (flown.ascent().vehicle().fairing().mass() > 0) {
            map.put("fairing", fairing());
        }
        flown.sizing().stages().get(0).boosters().ifPresent(b -> map.put("boosters", boosters(b)));
        map.put("events", new FlightEvents(flown.ascent()).json());
        map.put("ground_track", groundTrack());
        return map;
    }

    private static Map<String, Object> throttleRule(AscentMission mission) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(
                "rule",
                "thrust = throttle · vacuum thrust − (vacuum thrust − thrust at the ambient pressure), flow = throttle · full"
                        + " flow; throttle = the least of 1, (acceleration limit · mass + lost thrust)/vacuum thrust, and,"
                        + " above from_dynamic_pressure_Pa, a straight line down to minimum_throttle at the limit; never"
                        + " below minimum_throttle");
        map.put("from_dynamic_pressure_Pa", AscentDynamics.THROTTLE_FROM * mission.dynamicPressureLimit());
        return map;
    }

    private static Map<String, Object> secondBurn(AscentMission mission, double coast) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(
                "rule",
                "the ascent ends with the energy of the circular orbit at insertion_altitude_m; then coast_s without thrust, then"
                        + " thrust along the motion against the stars, parts going on as before, until"
                        + " final_energy_J_kg");
        map.put("coast_s", coast);
        map.put("final_energy_J_kg", mission.finalEnergy());
        return map;
    }

    private Map<String, Object> fairing() {
        AscentVehicle.Fairing fairing = flown.ascent().vehicle().fairing();
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(
                "rule",
                "overboard when, from tangent_from_s on and in its parts of the flight, half the density times the cube of the"
                        + " air speed has fallen to heating_limit_W_m2; at the latest with the end of its last part, unless"
                        + " that ends in the orbit");
        map.put("mass_kg", fairing.mass());
        map.put("heating_limit_W_m2", flown.ascent().mission().heatingLimit());
        map.put("parts", parts(fairing));
        return map;
    }

    private List<String> parts(AscentVehicle.Fairing fairing) {
        return flown.ascent().vehicle().segments().subList(fairing.from(), fairing.to() + 1).stream()
                .map(FlightSegment::name)
                .toList();
    }

    private Map<String, Object> drag() {
        List<DragTable.Point> points = flown.ascent().vehicle().dragTable().points();
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("reference_area_m2", flown.ascent().vehicle().referenceArea());
        map.put("mach", points.stream().map(DragTable.Point::mach).toList());
        map.put(
                "drag_coefficient",
                points.stream().map(DragTable.Point::coefficient).toList());
        return map;
    }

    private Set<EnginePerformance> engines() {
        Set<EnginePerformance> engines = new LinkedHashSet<>();
        flown.ascent().vehicle().segments().forEach(s -> s.thrusters().groups().forEach(g -> engines.add(g.engine())));
        return engines;
    }

    private static Map<String, Object> engine(EnginePerformance engine) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(NAME, engine.name());
        map.put("thrust_vacuum_N", engine.vacuumThrust());
        map.put("isp_vacuum_s", engine.vacuumIsp());
        map.put("mass_flow_kg_s", engine.massFlow());
        map.put("mixture_ratio", engine.mixtureRatio());
        map.put("exit_area_m2", engine.exitArea());
        map.put("mass_kg", engine.mass());
        map.put("ambient_pressure_Pa", BalancedEngine.PRESSURES);
        map.put(
                "thrust_N",
                BalancedEngine.PRESSURES.stream().map(engine::thrustAt).toList());
        return map;
    }

    private static Map<String, Object> part(FlightSegment segment) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(NAME, segment.name());
        map.put(
                "engines",
                segment.thrusters().groups().stream().map(FlightDocument::group).toList());
        segment.thrusters().solids().ifPresent(s -> map.put("solid_motors", solids(s)));
        map.put("coast_before_s", segment.coast());
        map.put("spent_before_kg", segment.spentBefore());
        map.put("burned_kg", segment.burn());
        map.put("dropped_after_kg", segment.droppedAfter());
        return map;
    }

    private static Map<String, Object> group(Thrusters.Group group) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(ENGINE, group.engine().name());
        map.put("count", group.count());
        return map;
    }

    private static Map<String, Object> solids(Thrusters.Solids solids) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(
                "rule",
                "lit with the engines and never throttled: thrust in vacuum a straight line between the points, flow that"
                        + " thrust over exhaust_velocity_m_s, ambient pressure times exit area taken off; the part ends with the"
                        + " last point, what engines have not burnt by then they burn in the next");
        map.put("count", solids.count());
        map.put("time_s", solids.motor().times());
        map.put("thrust_vacuum_N", solids.motor().thrusts());
        map.put("propellant_each_kg", solids.motor().propellant());
        map.put("exhaust_velocity_m_s", solids.motor().exhaustVelocity());
        map.put("exit_area_m2", solids.motor().exitArea());
        return map;
    }

    private static Map<String, Object> boosters(BoosterSizing boosters) {
        int count = boosters.count();
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("count", count);
        map.put(ENGINE, boosters.engineName());
        map.put("engines_each", boosters.plan().engines());
        map.put("propellant_each_kg", boosters.loadedEach());
        map.put("burned_each_kg", boosters.burnedEach());
        boosters.liquid().map(LiquidBoosters::propellant).ifPresent(load -> {
            map.put("startup_each_kg", load.startup());
            map.put("boil_off_each_kg", load.boilOff());
            map.put("residual_each_kg", load.residual());
        });
        map.put("dry_mass_each_kg", boosters.dryMass().total());
        return map;
    }

    private List<Map<String, Object>> groundTrack() {
        return FlightFigures.thinned(flown.ascent().points()).stream()
                .map(this::below)
                .toList();
    }

    private Map<String, Object> below(AscentPoint point) {
        OrbitPlane.Ground ground = plane.ground(point);
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("time_s", point.time());
        map.put("latitude_rad", ground.latitude());
        map.put("longitude_from_site_rad", ground.longitude());
        map.put("altitude_m", point.altitude());
        return map;
    }
}
