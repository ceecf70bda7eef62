package dev.penstock.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.errors.PenstockException;
import dev.penstock.vehicle.ascent.Arrival;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.AscentOptimizer;
import dev.penstock.vehicle.ascent.FlightProgress;
import dev.penstock.vehicle.ascent.Steering;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.OrbitEntry;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.apache.commons.math3.random.MersenneTwister;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Vehicles of the fleet against a direct optimisation: an evolution strategy with adapted covariance (Hansen and Ostermeier 2001, as in
 * Commons Math) looks for less start mass over split, numbers of engines, tilt, height of free steering and insertion height, each
 * vehicle sized and flown in turns until what is left is what its mission keeps. What it finds is to be worth no more than one per
 * cent of payload. Three vehicles with few evaluations, or all twenty with many by {@code -Dpenstock.fleet.long=true}.
 */
class DirectOptimumTest {

    private static final boolean LONG = Boolean.getBoolean("penstock.fleet.long");
    private static final int EVALUATIONS = LONG ? 1500 : 300;
    private static final double MOST_GAIN = 0.01;

    /**
     * Spread with which the strategy begins, over the reach of each choice: a tilt some per cent too large misses the orbit, so that of
     * wider ones hardly any vehicle flies and nothing is compared.
     */
    private static final double FIRST_SPREAD = 0.03;

    /** Start mass of what does not fly or close, over that of the vehicle found (-). */
    private static final double OPEN = 10;

    static List<FlownFleetTest.Craft> sampled() {
        List<FlownFleetTest.Craft> fleet = FlownFleetTest.fleet();
        return LONG ? fleet : List.of(fleet.get(0), fleet.get(3), fleet.get(17));
    }

    @ParameterizedTest
    @MethodSource("sampled")
    void aDirectOptimisationFindsLittleMorePayload(FlownFleetTest.Craft craft) {
        FlownSizing found = new FlownSizer(new StandardAtmosphere1976())
                .size(craft.plan(), FlownFleetTest::engine, FlightProgress.NONE);
        Direct direct = new Direct(craft.plan(), found);
        double mass = found.sizing().startMass();
        assertThat(direct.mass(direct.start()))
                .as("the vehicle that was found, judged by the direct optimisation")
                .isCloseTo(mass, withinPercentage(0.5));
        double forOnePercent = direct.massCarrying(1 + MOST_GAIN) - mass;
        assertThat(forOnePercent).isPositive();
        assertThat((mass - direct.best()) / forOnePercent)
                .as("per cent of payload by the direct optimisation")
                .isLessThan(1);
        assertThat(direct.flown)
                .as("vehicles that flew, of %d tried", direct.tried)
                .isGreaterThan(direct.tried / 10);
    }

    /** Start mass over everything that a flight chooses, penalties for limits besides. */
    private static final class Direct {

        private final VehiclePlan asked;
        private final FlownSizing found;
        private final AscentOptimizer flights = new AscentOptimizer(new StandardAtmosphere1976());
        private final int stages;
        private Optional<Arrival.Aim> aim = Optional.empty();
        private int tried;
        private int flown;

        Direct(VehiclePlan asked, FlownSizing found) {
            this.asked = asked;
            this.found = found;
            this.stages = asked.stages().size();
        }

        /** Start mass with more payload and all choices as they were found (kg). */
        double massCarrying(double factor) {
            VehiclePlan more = found.sizing()
                    .plan()
                    .withMasses(OptionalDouble.of(factor * found.sizing().payload()), OptionalDouble.empty());
            return new VehicleSizer().size(more, FlownFleetTest::engine).startMass();
        }

        /** ln tilt, height of free steering (km), insertion height (km), ln engines of each stage, shares but the last. */
        double[] start() {
            double[] x = new double[3 + stages + stages - 1];
            x[0] = Math.log(found.ascent().tilt());
            x[1] = found.ascent().freeAbove() / 1e3;
            x[2] = found.ascent().mission().insertionAltitude() / 1e3;
            for (int i = 0; i < stages; i++) {
                StageSizing stage = found.sizing().stages().get(i);
                x[3 + i] = Math.log(stage.engines());
                if (i < stages - 1) {
                    x[3 + stages + i] = stage.deltaV() / found.sizing().deltaV();
                }
            }
            return x;
        }

        double best() {
            double[] start = start();
            double[] low = start.clone();
            double[] high = start.clone();
            double[] wide = new double[start.length];
            for (int i = 0; i < start.length; i++) {
                double reach = reach(i, stages);
                low[i] -= reach;
                high[i] += reach;
                wide[i] = FIRST_SPREAD * reach;
            }
            low[1] = Math.max(low[1], Steering.LEAST_FREE_ABOVE / 1e3);
            high[1] = Math.min(high[1], Steering.MOST_FREE_ABOVE / 1e3);
            low[2] = Math.max(low[2], 120);
            high[2] = Math.min(
                    high[2], asked.ascent().orElseThrow().mission().target().highestLevel() / 1e3);
            for (int i = 0; i < start.length; i++) {
                start[i] = Math.min(high[i], Math.max(low[i], start[i]));
            }
            double[] best = {mass(start)};
            try {
                new CMAESOptimizer(100_000, 0, true, 0, 1, new MersenneTwister(7), false, null)
                        .optimize(
                                new MaxEval(EVALUATIONS),
                                new ObjectiveFunction(x -> {
                                    double mass = mass(x);
                                    best[0] = Math.min(best[0], mass);
                                    return Math.log(mass);
                                }),
                                GoalType.MINIMIZE,
                                new InitialGuess(start),
                                new SimpleBounds(low, high),
                                new CMAESOptimizer.Sigma(wide),
                                new CMAESOptimizer.PopulationSize(12));
            } catch (TooManyEvaluationsException enough) {
                return best[0];
            }
            return best[0];
        }

        private static double reach(int i, int stages) {
            return i == 0 ? 0.7 : i == 1 ? 25 : i == 2 ? 40 : i < 3 + stages ? 0.5 : 0.12;
        }

        /** Value of what does not fly (kg): the worse the farther from the vehicle found, so that the strategy finds its way back. */
        private double open(double[] x) {
            double[] start = start();
            double far = 0;
            for (int i = 0; i < x.length; i++) {
                far += Math.pow((x[i] - start[i]) / reach(i, stages), 2);
            }
            return OPEN * found.sizing().startMass() * (1 + far);
        }

        double mass(double[] x) {
            List<StagePlan> plans = new ArrayList<>();
            double left = 1;
            for (int i = 0; i < stages; i++) {
                double share = i < stages - 1 ? x[3 + stages + i] : left;
                left -= share;
                int engines = (int) Math.max(1, Math.round(Math.exp(x[3 + i])));
                plans.add(asked.stages().get(i).withShare(share).withEngines(EngineCount.of(engines)));
            }
            double open = open(x);
            if (plans.stream().anyMatch(p -> !(p.deltaVShare().orElse(0) > 0.02))) {
                return open;
            }
            AscentMission mission = asked.ascent().orElseThrow().mission().insertingAt(1e3 * x[2]);
            Steering steering = new Steering(Math.exp(x[0]), 1e3 * x[1]);
            double needed = asked.mission().entering(OrbitEntry.of(mission)).afterAscent();
            double deltaV = found.sizing().deltaV();
            tried++;
            // one that misses its orbit must not decide where the next begins to look for its angles
            aim.ifPresent(flights::aimFrom);
            try {
                for (int round = 0; round < 12; round++) {
                    VehicleSizing sizing = new VehicleSizer()
                            .size(asked.withMission(DeltaVBudget.of(deltaV)).withStages(plans), FlownFleetTest::engine);
                    Optional<Arrival> arrival = flights.arrival(
                            VehicleInFlight.of(sizing, asked.ascent().orElseThrow()), mission, steering);
                    if (arrival.isEmpty()) {
                        return open;
                    }
                    double missing = needed - arrival.get().margin();
                    if (Math.abs(missing) < 0.5) {
                        aim = aim.or(() -> Optional.of(arrival.get().aim()));
                        flown++;
                        return sizing.startMass() * (1 + 5 * beyond(sizing, arrival.get(), mission));
                    }
                    deltaV += missing;
                }
                return open;
            } catch (PenstockException none) {
                return open;
            }
        }

        /** By how much limits and rules are missed, in shares of them. */
        private double beyond(VehicleSizing sizing, Arrival arrival, AscentMission mission) {
            double sum = Math.max(0, arrival.stagingPressure() / mission.stagingPressureLimit() - 1)
                    + arrival.overload()
                    + Math.max(0, arrival.heating() / mission.heatingLimit() - 1);
            for (int i = 0; i < stages; i++) {
                StagePlan rule = asked.stages().get(i);
                StageSizing stage = sizing.stages().get(i);
                double pressure = rule.ignitionPressure();
                double beside = stage.boosters().map(b -> b.thrustAt(pressure)).orElse(0.0);
                sum += Math.max(
                        0,
                        rule.engines()
                                .missing(
                                        stage.startMass(),
                                        stage.engine().thrustAt(pressure),
                                        beside,
                                        stage.engines(),
                                        i == 0 ? 1.2 : 0));
            }
            return sum;
        }
    }
}
