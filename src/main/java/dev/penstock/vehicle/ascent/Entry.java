package dev.penstock.vehicle.ascent;

import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.errors.Require;
import dev.penstock.numerics.OdeIntegrator;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.ArrayList;
import java.util.List;

/**
 * Ballistic return of a spent stage: drag alone, no lift, no burns. What the air does to it: highest heat flux, heat
 * load, dynamic pressure, deceleration, and the speed at which it would arrive. An entry burn is a lower speed at the start.
 */
public final class Entry {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.entry",
            "Ballistic entry",
            "v' = D/m − μ r/r³, D = −½ ρ |v| v C_D A; heat flux at the stagnation point integrated over time",
            "no lift, no burns; speeds to 12 km/s",
            "that of the drag coefficient, and of the heating, see its card",
            List.of("allen-eggers-1958", "sutton-graves-1971"));

    private static final double[] TOLERANCE = {1e-2, 1e-2, 1e-5, 1e-5, 1, 1, 1, 1, 1, 1, 1, 1e6};
    private static final double LONGEST = 20_000;

    private final Planet planet;
    private final Atmosphere atmosphere;

    /**
     * @param planet the planet
     * @param atmosphere its air
     */
    public Entry(Planet planet, Atmosphere atmosphere) {
        this.planet = planet;
        this.atmosphere = atmosphere;
    }

    /**
     * A body on its way down.
     *
     * @param mass mass (kg)
     * @param area area that its drag coefficient refers to (m²)
     * @param drag drag coefficient by Mach number
     * @param noseRadius radius of the blunt end (m)
     */
    public record Body(double mass, double area, DragTable drag, double noseRadius) {

        public Body {
            Require.positive("entry", "mass (kg)", mass);
            Require.positive("entry", "area (m²)", area);
            Require.positive("entry", "nose radius (m)", noseRadius);
        }

        /**
         * @param mach Mach number (-)
         * @return ballistic coefficient m/(C_D A) (kg/m²)
         */
        public double ballisticCoefficient(double mach) {
            return mass / (drag.coefficient(mach) * area);
        }
    }

    /**
     * One moment of the entry.
     *
     * @param time time since the start (s)
     * @param altitude height (m)
     * @param airSpeed speed through the air (m/s)
     * @param heatFlux stagnation heat flux (W/m²)
     * @param heatLoad heat taken so far (J/m²)
     * @param dynamicPressure dynamic pressure (Pa)
     * @param deceleration deceleration by drag (m/s²)
     */
    public record Moment(
            double time,
            double altitude,
            double airSpeed,
            double heatFlux,
            double heatLoad,
            double dynamicPressure,
            double deceleration) {}

    /**
     * An entry.
     *
     * @param body what came down
     * @param peakHeatFlux highest stagnation heat flux (W/m²)
     * @param heatLoad heat taken at the stagnation point, cold wall (J/m²)
     * @param peakDynamicPressure highest dynamic pressure (Pa)
     * @param peakDeceleration highest deceleration by drag (m/s²)
     * @param landingSpeed speed on reaching the ground (m/s)
     * @param terminalSpeed speed at which drag carries the weight at the ground (m/s)
     * @param moments the entry, moment by moment
     */
    public record Result(
            Body body,
            double peakHeatFlux,
            double heatLoad,
            double peakDynamicPressure,
            double peakDeceleration,
            double landingSpeed,
            double terminalSpeed,
            List<Moment> moments) {

        public Result {
            moments = List.copyOf(moments);
        }
    }

    /**
     * @param body what comes down
     * @param altitude height at the start (m)
     * @param airSpeed speed through the air at the start (m/s)
     * @param pathAngle angle of its path above the horizon at the start (rad)
     * @return the entry, to the ground
     * @throws dev.penstock.errors.NotConverged if the motion cannot be followed
     */
    public Result fall(Body body, double altitude, double airSpeed, double pathAngle) {
        Require.within("entry", "altitude (m)", altitude, 1, 1e6);
        Require.within("entry", "speed (m/s)", airSpeed, 0, 12e3);
        AscentMission nothing = new AscentMission(planet, Math.PI / 2, 200e3, 200e3, 1e12, 1e12, 1e12, 1);
        AscentDynamics dynamics = new AscentDynamics(nothing, atmosphere, body.drag(), body.area());
        dynamics.coast();
        double[] y = new double[AscentDynamics.SIZE];
        y[AscentDynamics.X] = planet.radius() + altitude;
        y[AscentDynamics.VX] = airSpeed * Math.sin(pathAngle);
        y[AscentDynamics.VY] = airSpeed * Math.cos(pathAngle);
        y[AscentDynamics.MASS] = body.mass();
        List<Moment> moments = new ArrayList<>();
        moments.add(moment(dynamics, body, 0, y, moments));
        new OdeIntegrator("entry", TOLERANCE, 1e-9, 0.5)
                .integrate(
                        dynamics,
                        0,
                        y,
                        LONGEST,
                        List.of((t, s) -> Math.hypot(s[0], s[1]) - planet.radius()),
                        (t, s) -> moments.add(moment(dynamics, body, t, s, moments)));
        Moment end = moments.get(moments.size() - 1);
        return new Result(
                body,
                moments.stream().mapToDouble(Moment::heatFlux).max().orElse(0),
                end.heatLoad(),
                moments.stream().mapToDouble(Moment::dynamicPressure).max().orElse(0),
                moments.stream().mapToDouble(Moment::deceleration).max().orElse(0),
                end.airSpeed(),
                terminalSpeed(body),
                moments);
    }

    /**
     * <pre>v = √(2 m g/(ρ C_D A))</pre>
     *
     * @param body what comes down
     * @return speed at which drag carries its weight at the ground (m/s), drag coefficient at that speed
     */
    public double terminalSpeed(Body body) {
        Atmosphere.State ground = atmosphere.at(0);
        Require.positive("entry", "air density at the ground (kg/m³)", ground.density());
        double speed = 0;
        for (int i = 0; i < 50; i++) {
            double coefficient = body.drag().coefficient(speed / ground.soundSpeed());
            speed = Math.sqrt(
                    2 * body.mass() * Constants.STANDARD_GRAVITY / (ground.density() * coefficient * body.area()));
        }
        return speed;
    }

    private Moment moment(AscentDynamics dynamics, Body body, double t, double[] y, List<Moment> before) {
        dynamics.look(t, y);
        double density = atmosphere.at(Math.max(0, dynamics.altitude)).density();
        double flux = StagnationHeating.flux(density, body.noseRadius(), dynamics.airSpeed);
        double load = 0;
        if (!before.isEmpty()) {
            Moment last = before.get(before.size() - 1);
            load = last.heatLoad() + (t - last.time()) * (flux + last.heatFlux()) / 2;
        }
        return new Moment(
                t,
                dynamics.altitude,
                dynamics.airSpeed,
                flux,
                load,
                dynamics.dynamicPressure,
                dynamics.drag / body.mass());
    }
}
