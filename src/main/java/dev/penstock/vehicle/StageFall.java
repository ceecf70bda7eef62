package dev.penstock.vehicle;

import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.cooling.protection.ProtectionStudy;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.AscentPoint;
import dev.penstock.vehicle.ascent.Entry;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.ascent.Target;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.stage.StageSizing;
import java.util.List;

/**
 * How a stage comes down, flown through the air, and what the heat, the way down and the landing take.
 *
 * <pre>
 * first stage that is recovered   as {@link StageReturn} flies it, entry burn included
 * other lower stages              from where they part, on their own arc, without burns
 * last stage                      out of its orbit: perigee lowered to 50 km at the apogee, Δv = v_a − √(2μ r_p/(r_a (r_a + r_p))), then from 120 km
 * landing by engines              Δv = 2 v at the ground; propellant m (e^(Δv/c) − 1)
 * landing by parachute            a twentieth of the landed mass
 * adiabatic wall                  T + 0.85 v²/(2 c_p) at the highest flux, at most 6000 K
 * </pre>
 *
 * The load on the wall is a square pulse of the highest stagnation flux that carries the whole heat load. Parachute share, recovery
 * factor and the bound by dissociation: common practice, no source.
 *
 * @param stage name of the stage
 * @param how how it comes down
 * @param diameter diameter of its base (m)
 * @param entry its way through the air
 * @param deorbitDeltaV speed change that takes it out of the orbit (m/s)
 * @param entryDeltaV speed change before the air (m/s)
 * @param landingDeltaV speed change of a landing by engines (m/s)
 * @param exhaustVelocity exhaust velocity of its engines (m/s)
 * @param landedMass mass at the ground without what lands it (kg)
 * @param airTemperature temperature of the air where the flux is highest (K)
 */
public record StageFall(
        String stage,
        String how,
        double diameter,
        Entry.Result entry,
        double deorbitDeltaV,
        double entryDeltaV,
        double landingDeltaV,
        double exhaustVelocity,
        double landedMass,
        double airTemperature) {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "vehicle.stage-fall",
            "Way down of a stage",
            "de-orbit Δv = v_a − √(2μ r_p/(r_a (r_a + r_p))); ballistic entry; landing Δv = 2 v, or a parachute of 5 %;"
                    + " T_aw = T + 0.85 v²/(2 c_p) ≤ 6000 K",
            "stages that fall tail first; no lift, sudden burns",
            "±30 %; heat load ±50 %",
            List.of("curtis-2014", "sutton-graves-1971", "common practice, no source"));

    private static final double PERIGEE = 50e3;
    private static final double INTERFACE = 120e3;
    private static final double LANDING_FACTOR = 2;
    private static final double PARACHUTE = 0.05;
    private static final double RECOVERY_FACTOR = 0.85;
    private static final double HEAT_CAPACITY = 1005;
    private static final double DISSOCIATED = 6000;
    private static final double WALL_START = 300;

    /**
     * @param flown a flown vehicle
     * @param index which stage, the lowest is 0
     * @param atmosphere the air
     * @return its way down
     * @throws LimitReached if the stage leaves the planet for good
     * @throws dev.penstock.errors.NotConverged if the motion cannot be followed
     */
    public static StageFall of(FlownSizing flown, int index, Atmosphere atmosphere) {
        int stages = flown.sizing().stages().size();
        Require.within("way down", "stage", index, 0, stages - 1);
        StageSizing stage = flown.sizing().stages().get(index);
        if (index == 0 && flown.back().isPresent()) {
            return recovered(flown, stage, flown.back().get(), atmosphere);
        }
        return index == stages - 1 ? fromOrbit(flown, stage, atmosphere) : fromParting(flown, stage, atmosphere);
    }

    private static StageFall recovered(FlownSizing flown, StageSizing stage, StageReturn back, Atmosphere atmosphere) {
        Recovery recovery = flown.sizing().plan().stages().get(0).recovery();
        return made(stage, "recovered: entry burn, then tail first", back.entry(), 0, recovery.entry(), atmosphere);
    }

    private static StageFall fromParting(FlownSizing flown, StageSizing stage, Atmosphere atmosphere) {
        AscentPoint parting = StageReturn.staging(flown.ascent(), stage.name());
        Entry.Result entry = new Entry(flown.ascent().mission().planet(), atmosphere)
                .fall(StageReturn.tailFirst(stage, 0), parting.altitude(), parting.airSpeed(), parting.pathAngle());
        return made(stage, "falls from where it parts, without burns", entry, 0, 0, atmosphere);
    }

    private static StageFall fromOrbit(FlownSizing flown, StageSizing stage, Atmosphere atmosphere) {
        AscentMission mission = flown.ascent().mission();
        Planet planet = mission.planet();
        if (!(mission.target() instanceof Target.Orbit orbit)) {
            throw new LimitReached(
                    "vehicle.stage-fall",
                    stage.name() + " leaves the planet for good and does not come down: ask for a lower stage");
        }
        double high = planet.radius() + orbit.apogee();
        double low = planet.radius() + PERIGEE;
        double mu = planet.gravitationalParameter();
        double atApogee = Math.sqrt(2 * mu * low / (high * (high + low)));
        double deorbit = planet.speed(orbit.apogee(), orbit.perigee(), orbit.apogee()) - atApogee;
        double top = planet.radius() + INTERFACE;
        double speed = Math.sqrt(atApogee * atApogee + 2 * mu * (1 / top - 1 / high));
        double along = high * atApogee / top;
        double down = Math.sqrt(Math.max(0, speed * speed - along * along));
        double across = along - planet.rotationRate() * Math.cos(mission.inclination()) * top;
        Entry.Result entry = new Entry(planet, atmosphere)
                .fall(StageReturn.tailFirst(stage, 0), INTERFACE, Math.hypot(across, down), -Math.atan2(down, across));
        return made(stage, "out of its orbit, then tail first", entry, deorbit, 0, atmosphere);
    }

    private static StageFall made(
            StageSizing stage, String how, Entry.Result entry, double deorbit, double before, Atmosphere atmosphere) {
        return new StageFall(
                stage.name(),
                how,
                stage.contents().diameter(),
                entry,
                deorbit,
                before,
                LANDING_FACTOR * entry.landingSpeed(),
                stage.engine().vacuumThrust() / stage.engine().massFlow(),
                StageReturn.tailFirst(stage, 0).mass(),
                atmosphere.at(hottest(entry).altitude()).temperature());
    }

    private static Entry.Moment hottest(Entry.Result entry) {
        return entry.moments().stream()
                .filter(m -> m.heatFlux() == entry.peakHeatFlux())
                .findFirst()
                .orElseThrow();
    }

    /** @return adiabatic wall temperature at the highest flux (K) */
    public double adiabaticWallTemperature() {
        double speed = hottest(entry).airSpeed();
        return Math.min(DISSOCIATED, airTemperature + RECOVERY_FACTOR * speed * speed / (2 * HEAT_CAPACITY));
    }

    /** @return time for which the highest flux would carry the whole heat load (s) */
    public double pulse() {
        return Math.max(0.01, entry.heatLoad() / entry.peakHeatFlux());
    }

    /** @return what a wall at its base has to stand */
    public ProtectionStudy.Load load() {
        double hot = Math.max(1.5 * WALL_START, adiabaticWallTemperature());
        return ProtectionStudy.Load.ofFlux(Math.max(1, entry.peakHeatFlux()), hot, pulse(), WALL_START)
                .inTheOpen();
    }

    /** @return area of the base (m²) */
    public double baseArea() {
        return Math.PI / 4 * diameter * diameter;
    }

    /** @return propellant that leaving the orbit and landing by engines take (kg) */
    public double propellantLandingByEngines() {
        return landedMass * Math.expm1((deorbitDeltaV + entryDeltaV + landingDeltaV) / exhaustVelocity);
    }

    /** @return parachute that lands it (kg) */
    public double parachute() {
        return PARACHUTE * landedMass;
    }

    /** @return propellant that leaving the orbit takes where a parachute lands it (kg) */
    public double propellantLandingByParachute() {
        return (landedMass + parachute()) * Math.expm1((deorbitDeltaV + entryDeltaV) / exhaustVelocity);
    }
}
