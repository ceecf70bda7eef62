package dev.penstock.vehicle.ascent;

import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.numerics.OdeIntegrator;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;

/**
 * Motion of a point mass in the plane of its orbit over a round planet whose air turns with the ground.
 *
 * <pre>
 * v' = F/m + D/m − μ r/r³          F = throttle · F_vac − (F_vac − F(p_a)),  m' = −throttle · flow
 * D  = −½ ρ |w| w C_D A,  w = v − Ω × r,  Ω = ω cos i
 * </pre>
 *
 * Inertial Cartesian coordinates. The losses are integrated along with the motion and add up without a remainder in the
 * frame that turns with the air:
 *
 * <pre>
 * |w| = ∫F_vac/m − ∫(F_vac − F)/m − ∫F/m (1 − cos α) − ∫D/m − ∫(g − Ω² r) sin γ
 *        ideal      back-pressure        steering        drag       gravity
 * </pre>
 *
 * α is the angle between thrust and w, γ that of w above the horizon. Source: [curtis-2014] §11.4, with rotation and
 * back-pressure added. No lift; thrust passes through the centre of mass. Not thread-safe.
 */
public final class AscentDynamics implements OdeIntegrator.Equations {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.ascent",
            "Ascent of a point mass in two dimensions",
            "v' = F/m + D/m − μ r/r³; F = throttle F_vac − (F_vac − F(p_a)); D = ½ρ|w|² C_D A against the turning air",
            "flight in the plane of the orbit, no lift, round planet",
            "losses within about 5 % of a three-degree-of-freedom flight with the same steering, by judgement",
            List.of("curtis-2014", "us-std-atm-1976"));

    static final int X = 0;
    static final int Y = 1;
    static final int VX = 2;
    static final int VY = 3;
    static final int MASS = 4;
    static final int IDEAL = 5;
    /** Time integral of the square of what dynamic pressure exceeds its limit by (s): smooth, for searches. */
    static final int OVERLOAD = 6;

    /** Size of a state without the losses, which do not act on the motion. */
    static final int MOTION = 7;

    static final int BACK_PRESSURE = 7;
    static final int STEERING = 8;
    static final int DRAG = 9;
    static final int GRAVITY = 10;
    static final int IMPULSE = 11;

    static final int SIZE = 12;

    /** Fraction of the dynamic-pressure limit at which throttling begins. */
    public static final double THROTTLE_FROM = 0.9;
    /** Below this speed through the air (m/s) "along the flight path" means upwards. */
    private static final double AT_REST = 0.01;

    /** Dynamic pressure (Pa) below which the angle of attack is not bounded further. */
    private static final double LEAST_PRESSURE = 1;

    /** How the thrust is pointed. */
    enum Pointing {
        UPWARDS,
        TILTED,
        ALONG_PATH,
        TANGENT_LAW,
        ALONG_MOTION
    }

    private final AscentMission mission;
    private final Atmosphere atmosphere;
    private final DragTable dragTable;
    private final double area;

    private Thrusters thrusters;
    private double vacuumThrust;
    private double massFlow;
    private double ignition;
    private double solidExhaust = 1;
    private boolean burning;
    private Pointing pointing = Pointing.UPWARDS;
    private double tilt;
    private double tangentStart;
    private double tangentRate;
    private double tangentEpoch;

    // What the last call of look() saw.
    double altitude;
    double radius;
    double airUp;
    double airEast;
    double airSpeed;
    double dynamicPressure;
    double mach;
    double throttle;
    double thrust;
    double pitch;
    double drag;
    double ambientPressure;
    private double lostThrust;
    private double solidThrust;
    private double upX;
    private double upY;

    AscentDynamics(AscentMission mission, Atmosphere atmosphere, DragTable dragTable, double area) {
        this.mission = mission;
        this.atmosphere = atmosphere;
        this.dragTable = dragTable;
        this.area = area;
    }

    /** Burns from now on, with solid motors lit at a time (s). */
    void burn(Thrusters engines, double lit) {
        thrusters = engines;
        ignition = lit;
        solidExhaust = engines.solids().map(s -> s.motor().exhaustVelocity()).orElse(1.0);
        vacuumThrust = engines.vacuumThrust();
        massFlow = engines.massFlow();
        burning = true;
    }

    void coast() {
        burning = false;
    }

    void point(Pointing how) {
        pointing = how;
    }

    void tilt(double fromVertical) {
        pointing = Pointing.TILTED;
        tilt = fromVertical;
    }

    void tangentLaw(double epoch, double startTangent, double ratePerSecond) {
        pointing = Pointing.TANGENT_LAW;
        tangentEpoch = epoch;
        tangentStart = startTangent;
        tangentRate = ratePerSecond;
    }

    /** @return time from which the tangent law counts (s) */
    double tangentEpoch() {
        return tangentEpoch;
    }

    /** @return tangent of the pitch then (-) */
    double tangentStart() {
        return tangentStart;
    }

    /** @return its rate (1/s) */
    double tangentRate() {
        return tangentRate;
    }

    /** @return rotation rate of the air in the plane of the flight (rad/s) */
    double airRotation() {
        return mission.airRotation();
    }

    /** @return specific impulse at the last look (s), zero when coasting */
    double isp() {
        return burning ? thrust / (flow() * Constants.STANDARD_GRAVITY) : 0;
    }

    /** @return vacuum specific impulse of the engines now in use (s) */
    double vacuumIsp() {
        return thrusters.exhaustVelocity() / Constants.STANDARD_GRAVITY;
    }

    private double flow() {
        return throttle * massFlow + solidThrust / solidExhaust;
    }

    /** Works out everything about the vehicle at a time and state. */
    void look(double t, double[] y) {
        radius = Math.hypot(y[X], y[Y]);
        upX = y[X] / radius;
        upY = y[Y] / radius;
        altitude = radius - mission.planet().radius();
        airUp = y[VX] * upX + y[VY] * upY;
        airEast = -y[VX] * upY + y[VY] * upX - mission.airRotation() * radius;
        airSpeed = Math.hypot(airUp, airEast);
        Atmosphere.State air = atmosphere.at(Math.max(altitude, -1000));
        ambientPressure = air.pressure();
        dynamicPressure = 0.5 * air.density() * airSpeed * airSpeed;
        mach = airSpeed / air.soundSpeed();
        drag = dynamicPressure * dragTable.coefficient(mach) * area;
        if (burning) {
            lostThrust = vacuumThrust - thrusters.thrustAt(ambientPressure);
            solidThrust = 0;
            if (thrusters.solids().isPresent()) {
                lookAtSolids(t, thrusters.solids().get());
            }
            throttle = throttle(y[MASS]);
            thrust = throttle * vacuumThrust + solidThrust - lostThrust;
            pitch = pitch(t);
        } else {
            lostThrust = 0;
            solidThrust = 0;
            throttle = 0;
            thrust = 0;
            pitch = airSpeed > AT_REST ? Math.atan2(airUp, airEast) : Math.PI / 2;
        }
    }

    private void lookAtSolids(double t, Thrusters.Solids solids) {
        solidThrust = solids.vacuumThrust(t - ignition);
        lostThrust += Math.min(
                solidThrust, solids.count() * ambientPressure * solids.motor().exitArea());
    }

    /** Solid motors are not throttled: engines beside them give what is left to give. */
    private double throttle(double mass) {
        double wanted = mission.accelerationLimit() * mass + lostThrust - solidThrust;
        double setting = Math.min(1, wanted / vacuumThrust);
        double from = THROTTLE_FROM * mission.dynamicPressureLimit();
        if (dynamicPressure > from) {
            double over = (dynamicPressure - from) / (mission.dynamicPressureLimit() - from);
            setting = Math.min(setting, 1 - over * (1 - mission.minimumThrottle()));
        }
        return Math.max(mission.minimumThrottle(), setting);
    }

    private double pitch(double t) {
        switch (pointing) {
            case UPWARDS:
                return Math.PI / 2;
            case TILTED:
                return Math.PI / 2 - tilt;
            case TANGENT_LAW:
                return bounded(Math.atan(tangentStart + tangentRate * (t - tangentEpoch)));
            case ALONG_MOTION:
                return Math.atan2(airUp, airEast + mission.airRotation() * radius);
            default:
                return airSpeed > AT_REST ? Math.atan2(airUp, airEast) : Math.PI / 2;
        }
    }

    /** The angle wanted, as near as dynamic pressure times angle of attack allows. */
    private double bounded(double wanted) {
        double path = airSpeed > AT_REST ? Math.atan2(airUp, airEast) : Math.PI / 2;
        double most = mission.angleLoad() / Math.max(LEAST_PRESSURE, dynamicPressure);
        return path + Math.max(-most, Math.min(most, wanted - path));
    }

    /** @return free-molecular heat flux at the last look (W/m²): ½ρw³ */
    double freeMolecularHeating() {
        return dynamicPressure * airSpeed;
    }

    @Override
    public void derivatives(double t, double[] y, double[] d) {
        look(t, y);
        double mass = y[MASS];
        double gravity = mission.planet().gravitationalParameter() / (radius * radius);
        boolean moving = airSpeed > AT_REST;
        double sinPath = moving ? airUp / airSpeed : 1;
        double cosPath = moving ? airEast / airSpeed : 0;
        double push = thrust / mass;
        double brake = drag / mass;
        double up = push * Math.sin(pitch) - brake * sinPath - gravity;
        double east = push * Math.cos(pitch) - brake * cosPath;
        d[X] = y[VX];
        d[Y] = y[VY];
        d[VX] = up * upX - east * upY;
        d[VY] = up * upY + east * upX;
        d[MASS] = -flow();
        d[IDEAL] = (throttle * vacuumThrust + solidThrust) / mass;
        d[OVERLOAD] = Excess.beyond(dynamicPressure, mission.dynamicPressureLimit());
        if (d.length == MOTION) {
            return;
        }
        d[BACK_PRESSURE] = lostThrust / mass;
        d[STEERING] = push * (1 - Math.sin(pitch) * sinPath - Math.cos(pitch) * cosPath);
        d[DRAG] = brake;
        d[GRAVITY] = (gravity - mission.airRotation() * mission.airRotation() * radius) * sinPath;
        d[IMPULSE] = thrust;
    }
}
