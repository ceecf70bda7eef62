package dev.penstock.vehicle.ascent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.errors.LimitReached;
import dev.penstock.quantities.Constants;
import dev.penstock.vehicle.SampleEngines;
import dev.penstock.vehicle.engine.GivenEngine;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** An invented vehicle of two kerosene stages, flown once; every test looks at that flight. */
class AscentOptimizerTest {

    private static final AscentMission MISSION =
            new AscentMission(Planet.EARTH, Math.toRadians(28.5), 200e3, 200e3, 35e3, 50, 3e3, 0.4);

    private static AscentResult flight;

    static AscentVehicle vehicle(double payload) {
        GivenEngine lower = GivenEngine.ofIsp(
                "lower", 850e3, 312, 1.0, 2.5, SampleEngines.COLD_OXYGEN, SampleEngines.COLD_KEROSENE, 900);
        GivenEngine upper = GivenEngine.ofIsp(
                "upper", 900e3, 345, 4.0, 2.5, SampleEngines.COLD_OXYGEN, SampleEngines.COLD_KEROSENE, 1000);
        double second = 100e3 + 6e3 + payload;
        double first = 370e3 + 25e3;
        return new AscentVehicle(
                "sample",
                first + second,
                List.of(
                        new FlightSegment("first stage", Thrusters.of(lower, 9), 0, 2000, 366e3, 27e3),
                        new FlightSegment("second stage", Thrusters.of(upper, 1), 4, 300, 99e3, 0)),
                10.5,
                DragTable.USUAL);
    }

    @BeforeAll
    static void fly() {
        flight = new AscentOptimizer(new StandardAtmosphere1976()).fly(vehicle(12e3), MISSION, FlightProgress.NONE);
    }

    @Test
    void reachesTheOrbitAskedFor() {
        AscentPoint end = flight.points().get(flight.points().size() - 1);
        assertThat(end.altitude()).isCloseTo(200e3, within(5.0));
        assertThat(end.pathAngle()).isCloseTo(0, within(1e-5));
        // circular speed at 200 km
        assertThat(flight.inertialSpeed()).isCloseTo(Planet.EARTH.circularSpeed(200e3), within(0.01));
    }

    @Test
    void lossesAddUpToTheIdealSpeedGain() {
        // identity of the frame that turns with the air; tolerance from the step errors of some hundred steps
        assertThat(flight.idealDeltaV() - flight.losses()).isCloseTo(flight.airSpeed(), within(0.01));
        // the path ends level, where the air turns as fast as it carries: angular speed times radius
        double radius = Planet.EARTH.radius()
                + flight.points().get(flight.points().size() - 1).altitude();
        assertThat(flight.rotationCredit()).isCloseTo(flight.mission().airRotation() * radius, within(0.01));
    }

    @Test
    void idealSpeedGainIsThatOfTheRocketEquation() {
        // 9 engines at 312 s from 511 t down to 145 t, then one at 345 s from 117.7 t
        double first = 312 * Constants.STANDARD_GRAVITY * Math.log(511.0 / 145.0);
        double second = 345 * Constants.STANDARD_GRAVITY * Math.log(117.7e3 / flight.finalMass());
        assertThat(flight.segments().get(0).idealDeltaV()).isCloseTo(first, within(0.01));
        assertThat(flight.idealDeltaV()).isCloseTo(first + second, within(0.01));
        double toSpare = 345 * Constants.STANDARD_GRAVITY * Math.log(flight.finalMass() / (117.7e3 - 99e3));
        assertThat(flight.margin()).isCloseTo(toSpare, within(0.01));
    }

    @Test
    void lossesAreOfTheUsualSize() {
        // common practice, no source: gravity 1.0 to 1.6 km/s, drag 20 to 200, steering to 250, back-pressure 50 to 150
        assertThat(flight.gravityLoss()).isBetween(1000.0, 1600.0);
        assertThat(flight.dragLoss()).isBetween(20.0, 200.0);
        assertThat(flight.steeringLoss()).isBetween(0.0, 250.0);
        assertThat(flight.backPressureLoss()).isBetween(50.0, 150.0);
    }

    @Test
    void meanIspLiesBetweenSeaLevelAndVacuum() {
        AscentResult.SegmentFlight first = flight.segments().get(0);
        double seaLevel = 312 * (1 - 101325 * 1.0 / 850e3);
        assertThat(first.meanIsp()).isBetween(seaLevel, 312.0);
        assertThat(flight.segments().get(1).meanIsp()).isCloseTo(345, within(0.01));
        assertThat(flight.meanIsp()).isBetween(first.meanIsp(), 345.0);
    }

    @Test
    void aFairingThatGoesOverboardIsNotBurnt() {
        AscentVehicle bare = vehicle(12e3);
        AscentVehicle covered = new AscentVehicle(
                "covered",
                bare.startMass(),
                bare.segments(),
                bare.referenceArea(),
                bare.dragTable(),
                new AscentVehicle.Fairing(1000, 1, 1));
        AscentResult lighter =
                new AscentOptimizer(new StandardAtmosphere1976()).flyWith(covered, MISSION, flight.choice());
        assertThat(lighter.fairingDrop()).isPresent();
        assertThat(lighter.segments().get(1).meanIsp()).isCloseTo(345, within(0.01));
    }

    @Test
    void throttlesToKeepItsLimits() {
        assertThat(flight.limits()).hasSize(4).allMatch(limit -> limit.value() <= 1.0001 * limit.limit());
        assertThat(flight.maxAcceleration()).isGreaterThan(49); // the first stage would reach 53 m/s2
        assertThat(flight.maxDynamicPressure()).isGreaterThan(30e3);
    }

    @Test
    void noOtherTiltLeavesMoreMass() {
        AscentOptimizer optimizer = new AscentOptimizer(new StandardAtmosphere1976());
        double best = optimizer
                .arrival(vehicle(12e3), MISSION, flight.choice())
                .orElseThrow()
                .margin();
        for (double factor : new double[] {0.7, 0.95, 1.05, 1.15}) {
            // a steeper one falls back to the ground, which leaves nothing
            assertThat(optimizer
                            .arrival(vehicle(12e3), MISSION, new Steering(factor * flight.tilt(), flight.freeAbove()))
                            .map(Arrival::margin)
                            .orElse(Double.NEGATIVE_INFINITY))
                    .isLessThan(best);
        }
    }

    @Test
    void aHeavierPayloadFallsShortAndSaysByHowMuch() {
        AscentResult heavy =
                new AscentOptimizer(new StandardAtmosphere1976()).fly(vehicle(22e3), MISSION, FlightProgress.NONE);
        assertThat(heavy.margin()).isLessThan(0);
        assertThat(heavy.warnings()).singleElement().satisfies(w -> assertThat(w.message())
                .contains(String.format("%.0f m/s short", -heavy.margin())));
    }

    @Test
    void aMissedLimitIsAWarning() {
        AscentMission strict = new AscentMission(Planet.EARTH, Math.toRadians(28.5), 200e3, 200e3, 35e3, 50, 1, 0.4);
        AscentResult parted =
                new AscentOptimizer(new StandardAtmosphere1976()).flyWith(vehicle(12e3), strict, flight.choice());
        assertThat(flight.warnings()).isEmpty();
        assertThat(parted.warnings()).singleElement().satisfies(w -> assertThat(w.message())
                .contains("staging dynamic pressure")
                .contains("at most 1.000 Pa allowed"));
    }

    @Test
    void theSearchIsAffordable() {
        assertThat(flight.evaluations()).isLessThan(600_000);
    }

    @Test
    void saysWhichMassWouldLiftOff() {
        assertThatThrownBy(() -> new AscentOptimizer(new StandardAtmosphere1976())
                        .fly(vehicle(300e3), MISSION, FlightProgress.NONE))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("does not lift off")
                .hasMessageContaining("a start mass below 674.20 t"); // 9 (850 kN - 101.325 kN) / 9.7983 m/s2 / 1.02
    }
}
