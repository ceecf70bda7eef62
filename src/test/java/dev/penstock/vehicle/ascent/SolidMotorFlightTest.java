package dev.penstock.vehicle.ascent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.quantities.Constants;
import dev.penstock.vehicle.SampleEngines;
import dev.penstock.vehicle.engine.GivenEngine;
import dev.penstock.vehicle.engine.SolidMotor;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Identities and conservation; no published flight is used. */
class SolidMotorFlightTest {

    private static final GivenEngine CORE =
            GivenEngine.ofIsp("core", 1000e3, 430, 3.0, 6, SampleEngines.OXYGEN, SampleEngines.HYDROGEN, 2000);
    private static final double BURN = 100;
    private static final double THRUST = 1000e3;
    private static final double ISP = 276;
    private static final double AREA = 0.7;
    private static final int MOTORS = 4;
    private static final double PROPELLANT = THRUST * BURN / (ISP * Constants.STANDARD_GRAVITY);

    private static AscentVehicle vehicle(Thrusters together, double accelerating) {
        double coreFlow = CORE.massFlow();
        double core = 80e3;
        double start = MOTORS * (PROPELLANT + 4500) + core + 10e3 + 8e3;
        return new AscentVehicle(
                "boosted",
                start,
                List.of(
                        new FlightSegment(
                                "together", together, 0, 0, MOTORS * PROPELLANT + coreFlow * BURN, MOTORS * 4500.0),
                        new FlightSegment(
                                "core", Thrusters.of(CORE, 1), 0, 0, accelerating * core - coreFlow * BURN, 0)),
                20,
                DragTable.USUAL);
    }

    private static Thrusters solid(List<Double> times, List<Double> thrusts) {
        return new Thrusters(
                Thrusters.of(CORE, 1).groups(),
                Optional.of(new Thrusters.Solids(new SolidMotor(times, thrusts, PROPELLANT, AREA), MOTORS)));
    }

    private static AscentResult fly(Thrusters together, double accelerationLimit) {
        AscentMission mission =
                new AscentMission(Planet.EARTH, Math.toRadians(12), 200e3, 200e3, 1e6, accelerationLimit, 1e6, 0.4);
        return new AscentOptimizer(new StandardAtmosphere1976())
                .fly(vehicle(together, 1), mission, FlightProgress.NONE);
    }

    /** The last moment before the motors are dropped. */
    private static AscentPoint parting(AscentResult flight) {
        return flight.points().stream()
                .filter(p -> p.segment().equals("together"))
                .reduce((a, b) -> b)
                .orElseThrow();
    }

    @Test
    void motorsOfSteadyThrustFlyAsEnginesOfThatThrust() {
        GivenEngine engine = GivenEngine.ofIsp(
                "motor", THRUST, ISP, AREA, 2.5, SampleEngines.COLD_OXYGEN, SampleEngines.COLD_KEROSENE, 0);
        Thrusters liquid = new Thrusters(List.of(new Thrusters.Group(CORE, 1), new Thrusters.Group(engine, MOTORS)));
        AscentResult as = fly(liquid, 200);
        AscentResult solid = fly(solid(List.of(0.0, BURN), List.of(THRUST, THRUST)), 200);
        assertThat(solid.finalMass()).isCloseTo(as.finalMass(), within(1.0));
        assertThat(solid.segments().get(0).cutOff()).isCloseTo(BURN, within(1e-6));
    }

    @Test
    void whatTheCoreSparesBesideThemItBurnsLater() {
        // conservation: throttled by the acceleration limit or not, all stages have burnt what they hold when they part
        double highest = 28;
        AscentResult flight = fly(solid(List.of(0.0, BURN), List.of(THRUST, THRUST)), highest);
        AscentPoint parting = parting(flight);
        double least =
                vehicle(solid(List.of(0.0, BURN), List.of(THRUST, THRUST)), 1).startMass()
                        - MOTORS * PROPELLANT
                        - CORE.massFlow() * BURN;
        assertThat(parting.mass()).isGreaterThan(least + 1000);
        assertThat(flight.margin())
                .isCloseTo(430 * Constants.STANDARD_GRAVITY * Math.log(flight.finalMass() / 18e3), within(0.01));
    }

    @Test
    void aSaggingThrustHasTheSameImpulse() {
        // trapezoids worked by hand: 1100, then 900 at the middle, then 1100 kN, the mean is 1000 kN
        SolidMotor motor = new SolidMotor(List.of(0.0, 50.0, 100.0), List.of(1100e3, 900e3, 1100e3), PROPELLANT, AREA);
        assertThat(motor.vacuumIsp()).isCloseTo(ISP, within(1e-9));
        assertThat(motor.vacuumThrust(25)).isCloseTo(1000e3, within(1e-6));
        assertThat(motor.vacuumThrust(100.001)).isZero();
        AscentResult flight = fly(solid(motor.times(), motor.thrusts()), 200);
        AscentPoint parting = parting(flight);
        assertThat(parting.time()).isCloseTo(100, within(1e-6));
        // conservation of mass, to the tolerance of the integration and the sum below
        double spent = vehicle(solid(motor.times(), motor.thrusts()), 1).startMass() - parting.mass();
        double grain = 0;
        for (int i = 0; i < 1000; i++) {
            double step = parting.time() / 1000;
            grain += step * MOTORS * motor.vacuumThrust((i + 0.5) * step) / motor.exhaustVelocity();
        }
        assertThat(spent).isCloseTo(grain + CORE.massFlow() * parting.time(), within(5.0));
    }
}
