package dev.penstock.vehicle;

import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.errors.NotConverged;
import dev.penstock.provenance.ModelCard;
import dev.penstock.vehicle.ascent.AscentOptimizer;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.ascent.AscentVehicle;
import dev.penstock.vehicle.ascent.FlightSegment;
import dev.penstock.vehicle.ascent.Steering;
import dev.penstock.vehicle.ascent.Thrusters;
import dev.penstock.vehicle.stage.BoosterSizing;
import dev.penstock.vehicle.stage.StageSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the payload of a vehicle gains by a little more impulse, dry mass or thrust of a stage, propellant and everything else as they
 * are:
 *
 * <pre>∂P/∂x = − (∂m/∂x) / (∂m/∂P)</pre>
 *
 * m is the speed left in the stages after flying to the same orbit. Central differences (one-sided where one side misses the orbit) of flights with the steering
 * that leaves most speed, limits on the way apart: about it the speed left does not change with the steering, so that the derivative
 * is that of best flights. What
 * boosters burn together with the first stage lasts as long as the boosters do.
 *
 * @param stages one for each stage, lowest first
 */
public record PayloadPartials(List<Stage> stages) {

    /** Card of the differences. */
    public static final ModelCard CARD = ModelCard.definition(
            "vehicle.payload-partials",
            "Partial derivatives of the payload",
            "∂P/∂x = − (∂m/∂x)/(∂m/∂P), m the speed left in the same orbit",
            "same propellant, same orbit; small changes",
            "that of the flight; differences of half a per cent");

    private static final double SHARE = 0.005;

    /**
     * Of one stage.
     *
     * @param name its name
     * @param impulse by the specific impulse of its engines at the same thrust (kg/s)
     * @param dryMass by its dry mass (kg/kg)
     * @param thrust by the thrust of all its engines at the same impulse (kg/N)
     */
    public record Stage(String name, double impulse, double dryMass, double thrust) {}

    public PayloadPartials {
        stages = List.copyOf(stages);
    }

    /**
     * @param flown a vehicle and its flight
     * @param atmosphere the air
     * @return its derivatives
     * @throws dev.penstock.errors.NotConverged if a changed vehicle misses the orbit
     */
    public static PayloadPartials of(FlownSizing flown, Atmosphere atmosphere) {
        return new Differences(flown, atmosphere).partials();
    }

    private static final class Differences {

        /** Between which changes a slope is tried, in steps: to both sides first. */
        private static final double[][] ENDS = {
            {-1, 1},
            {-0.7, 0.7},
            {-1.4, 1.4},
            {-0.4, 0.4},
            {0, 1},
            {-1, 0},
            {0, 0.7},
            {-0.7, 0},
            {0, 1.4},
            {-1.4, 0},
            {0, 0.4},
            {-0.4, 0}
        };

        private final FlownSizing flown;
        private final AscentResult flight;
        private final AscentOptimizer optimizer;
        private final Steering best;

        Differences(FlownSizing flown, Atmosphere atmosphere) {
            this.flown = flown;
            this.flight = flown.ascent();
            this.optimizer = new AscentOptimizer(atmosphere);
            this.best = optimizer.steeredFrom(flight.vehicle(), flight.mission(), flight.choice());
        }

        PayloadPartials partials() {
            double byPayload = slope(SHARE * flown.sizing().payload(), d -> heavier(-1, d));
            List<Stage> stages = new ArrayList<>();
            int last = flown.sizing().stages().size() - 1;
            for (int i = 0; i <= last; i++) {
                StageSizing stage = flown.sizing().stages().get(i);
                int index = i;
                double impulse = slope(SHARE, d -> changed(stage, 1 + d, 1))
                        / stage.engine().vacuumIsp();
                double thrust = slope(SHARE, d -> changed(stage, 1, 1 + d))
                        / (stage.engines() * stage.engine().vacuumThrust());
                double dry =
                        i == last ? byPayload : slope(SHARE * stage.dryMass().total(), d -> heavier(index, d));
                stages.add(new Stage(stage.name(), -impulse / byPayload, -dry / byPayload, -thrust / byPayload));
            }
            return new PayloadPartials(stages);
        }

        private interface Change {
            AscentVehicle by(double difference);
        }

        /**
         * A changed vehicle may miss its orbit by a hair where another step does not; beside where no steering of this kind reaches it,
         * only one side flies.
         */
        private double slope(double step, Change change) {
            NotConverged first = null;
            for (double[] ends : ENDS) {
                try {
                    return slopeBetween(ends[0] * step, ends[1] * step, change);
                } catch (NotConverged missed) {
                    first = first == null ? missed : first;
                }
            }
            throw first;
        }

        private double slopeBetween(double from, double to, Change change) {
            return (left(change.by(to)) - left(change.by(from))) / (to - from);
        }

        private double left(AscentVehicle vehicle) {
            return optimizer.flyWith(vehicle, flight.mission(), best).margin();
        }

        /** More mass (kg) that goes with a stage; with the payload for an index below zero. */
        private AscentVehicle heavier(int stage, double mass) {
            AscentVehicle own = flight.vehicle();
            List<FlightSegment> segments = new ArrayList<>(own.segments());
            if (stage >= 0) {
                String name = flown.sizing().stages().get(stage).name();
                segments.replaceAll(s -> s.name().equals(name) ? s.withDropped(s.droppedAfter() + mass) : s);
            }
            return own.withSegments(segments).withStartMass(own.startMass() + mass);
        }

        /** Other engines in a stage, which are the first group wherever they burn. */
        private AscentVehicle changed(StageSizing stage, double impulse, double thrust) {
            AscentVehicle own = flight.vehicle();
            Optional<BoosterSizing> boosters = stage.boosters();
            double flow = stage.engines() * stage.engine().massFlow();
            double moved = boosters.map(b -> (thrust / impulse - 1) * flow * b.burnTime())
                    .orElse(0.0);
            List<FlightSegment> segments = new ArrayList<>();
            for (FlightSegment segment : own.segments()) {
                boolean alone = segment.name().equals(stage.name());
                boolean together =
                        boosters.isPresent() && segment == own.segments().get(0);
                if (!alone && !together) {
                    segments.add(segment);
                    continue;
                }
                List<Thrusters.Group> groups =
                        new ArrayList<>(segment.thrusters().groups());
                Thrusters.Group first = groups.get(0);
                groups.set(0, new Thrusters.Group(new ScaledEngine(first.engine(), impulse, thrust), first.count()));
                segments.add(segment.burning(
                        segment.thrusters().withGroups(groups), segment.burn() + (together ? moved : -moved)));
            }
            return own.withSegments(segments);
        }
    }
}
