package dev.penstock.vehicle;

import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.PenstockException;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.AscentOptimizer;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.ascent.AscentVehicle;
import dev.penstock.vehicle.ascent.Steering;
import dev.penstock.vehicle.plan.AscentPlan;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.OrbitEntry;
import java.util.OptionalDouble;

/**
 * What a vehicle that is built carries to another orbit: the payload at which the best flight leaves what the manoeuvres and the
 * reserve of that mission take, propellant and stages as they are.
 *
 * @param altitude height of the orbit (m)
 * @param inclination its inclination (rad)
 * @param payload payload (kg); empty where it cannot go there
 * @param reason why it cannot; empty if it can
 */
public record PayloadToOrbit(double altitude, double inclination, OptionalDouble payload, String reason) {

    private static final double MISS = 1;
    private static final int MOST_FLIGHTS = 8;
    /** Exhaust velocity over what is carried, for a first guess of the slope: speed lost for each share of mass. */
    private static final double USUAL_SLOPE = -3000;

    /**
     * @param flown a vehicle and its flight, for its own orbit
     * @param ascent a flight to another orbit; where it leaves the insertion height open, that of the vehicle's own flight serves
     * @param budget what that orbit asks, of which manoeuvres and reserve are kept
     * @param inclination inclination to show (rad)
     * @param atmosphere the air
     * @return the payload there
     */
    public static PayloadToOrbit of(
            FlownSizing flown, AscentPlan ascent, DeltaVBudget budget, double inclination, Atmosphere atmosphere) {
        AscentMission mission = ascent.mission();
        double altitude = mission.target().highest().orElse(mission.insertionAltitude());
        double afterAscent = budget.afterAscent();
        if (ascent.insertionFree()) {
            double own = flown.ascent().mission().insertionAltitude();
            mission = mission.insertingAt(Math.min(own, mission.target().highestLevel()));
            afterAscent = budget.afterAscent(OrbitEntry.of(mission));
        }
        try {
            double payload = search(flown, mission, afterAscent, new AscentOptimizer(atmosphere));
            return new PayloadToOrbit(altitude, inclination, OptionalDouble.of(payload), "");
        } catch (LimitReached | NotConverged | OutsideValidity e) {
            return without(altitude, inclination, e);
        }
    }

    /**
     * @param altitude height of the orbit (m)
     * @param inclination its inclination (rad)
     * @param why why the vehicle cannot go there
     * @return that it cannot
     */
    public static PayloadToOrbit without(double altitude, double inclination, PenstockException why) {
        return new PayloadToOrbit(altitude, inclination, OptionalDouble.empty(), why.getMessage());
    }

    /** A secant on the payload; each flight begins with the steering of the last. */
    private static double search(
            FlownSizing flown, AscentMission mission, double afterAscent, AscentOptimizer optimizer) {
        AscentVehicle own = flown.ascent().vehicle();
        double designed = flown.sizing().payload();
        double smallest = 0.02 * designed;
        double payload = designed;
        double slope = USUAL_SLOPE
                / (designed
                        + flown.sizing()
                                .stages()
                                .get(flown.sizing().stages().size() - 1)
                                .dryMass()
                                .total());
        double before = Double.NaN;
        double missBefore = Double.NaN;
        Steering steering = flown.ascent().choice();
        for (int i = 0; i < MOST_FLIGHTS; i++) {
            AscentVehicle vehicle = own.withStartMass(own.startMass() + payload - designed);
            steering = optimizer.steeredFrom(vehicle, mission, steering);
            AscentResult flight = optimizer.estimate(vehicle, mission, steering);
            double miss = flight.margin() - afterAscent;
            if (Math.abs(miss) < MISS) {
                return payload;
            }
            if (payload <= smallest && miss < 0) {
                throw new LimitReached(
                        "ascent.payload", "the vehicle does not get there with a fiftieth of its payload");
            }
            if (payload != before && !Double.isNaN(missBefore)) {
                double found = (miss - missBefore) / (payload - before);
                slope = found < 0 ? found : slope;
            }
            before = payload;
            missBefore = miss;
            payload = Math.max(smallest, payload - miss / slope);
        }
        throw new NotConverged("payload to another orbit", MOST_FLIGHTS, Math.abs(missBefore), "speed left, in m/s");
    }
}
