package dev.penstock.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.LimitReached;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.AscentVehicle;
import dev.penstock.vehicle.ascent.DragTable;
import dev.penstock.vehicle.ascent.FlightSegment;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.mass.BuiltUpDryMass;
import dev.penstock.vehicle.mass.DryMassDesign;
import dev.penstock.vehicle.mass.DryMassModel;
import dev.penstock.vehicle.mass.StructuralCoefficient;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.AscentPlan;
import dev.penstock.vehicle.plan.BoosterPlan;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Boosters, recovery, and the specific impulse needed. */
class VehicleFeaturesTest {

    private static final EnginePerformance ENGINE = SampleEngines.kerosene(3200);
    private static final EnginePerformance UPPER = SampleEngines.hydrogen(4300);
    private static final DryMassModel PLAIN = new BuiltUpDryMass(DryMassDesign.PLAIN);

    private static StagePlan stage(String name, Recovery recovery) {
        return new StagePlan(
                name,
                Optional.empty(),
                EngineCount.of(2),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                new Allowances(0.01, 1, 0.002, 0.03),
                PLAIN,
                false,
                recovery,
                0);
    }

    private static VehiclePlan plan(OptionalDouble payload, OptionalDouble startMass, Recovery recovery) {
        return new VehiclePlan(
                "sample",
                "",
                payload,
                startMass,
                DeltaVBudget.of(9300),
                List.of(stage("first", recovery), stage("second", Recovery.NONE)),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                List.of());
    }

    private static VehiclePlan withBoosters(double propellant) {
        VehiclePlan plan = plan(OptionalDouble.of(9000), OptionalDouble.empty(), Recovery.NONE);
        BoosterPlan boosters = new BoosterPlan(
                2,
                Optional.empty(),
                1,
                propellant,
                OptionalDouble.empty(),
                Allowances.USUAL,
                new StructuralCoefficient(0.1, 0));
        return new VehiclePlan(
                plan.name(),
                "",
                plan.payload(),
                plan.startMass(),
                plan.mission(),
                plan.stages(),
                Optional.of(boosters),
                Optional.empty(),
                Map.of(),
                List.of());
    }

    @Test
    void massesAddUpWithBoosters() {
        VehicleSizing sized = new VehicleSizer().size(withBoosters(40e3), List.of(ENGINE, UPPER));
        assertThat(sized.payload() + sized.dryMass() + sized.propellantMass())
                .isCloseTo(sized.startMass(), within(1e-9 * sized.startMass()));
    }

    @Test
    void boostersAndStageTogetherGainWhatTheRocketEquationSays() {
        // identity: the parts of the flight, burnt one after the other, gain the ideal speed of the budget
        VehicleSizing sized = new VehicleSizer().size(withBoosters(40e3), List.of(ENGINE, UPPER));
        AscentPlan ascent = new AscentPlan(
                new AscentMission(Planet.EARTH, 0, 200e3, 200e3, 1e5, 1e3, 1e5, 0.5), 0, DragTable.USUAL);
        AscentVehicle vehicle = VehicleInFlight.of(sized, ascent);
        assertThat(vehicle.segments())
                .extracting(FlightSegment::name)
                .containsExactly("first and boosters", "first", "second");
        double mass = vehicle.startMass();
        double gained = 0;
        for (FlightSegment segment : vehicle.segments()) {
            mass -= segment.spentBefore();
            double exhaust =
                    segment.thrusters().vacuumThrust() / segment.thrusters().massFlow();
            gained += exhaust * Math.log(mass / (mass - segment.burn()));
            mass -= segment.burn() + segment.droppedAfter();
        }
        assertThat(gained).isCloseTo(9300, within(1e-3));
    }

    @Test
    void boostersOfTheSameKindLightenTheVehicleTheyBuyStagingFor() {
        double without = new VehicleSizer()
                .size(plan(OptionalDouble.of(9000), OptionalDouble.empty(), Recovery.NONE), List.of(ENGINE, UPPER))
                .stages()
                .get(0)
                .propellant()
                .loaded();
        double with = new VehicleSizer()
                .size(withBoosters(40e3), List.of(ENGINE, UPPER))
                .stages()
                .get(0)
                .propellant()
                .loaded();
        assertThat(with).isLessThan(without);
    }

    @Test
    void boostersWithoutPropellantToBurnSayHowMuchTheyNeed() {
        // two engines' flow for one second each is 312.5 kg, and 1 % stays behind
        assertThatThrownBy(() -> new VehicleSizer().size(withBoosters(300), List.of(ENGINE, UPPER)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("write more than 315.657 kg");
    }

    @Test
    void aReturningStageKeepsPropellantByTheRocketEquation() {
        Recovery back = Recovery.usual(Recovery.Mode.LAUNCH_SITE);
        StageSizing first = new VehicleSizer()
                .size(plan(OptionalDouble.of(9000), OptionalDouble.empty(), back), List.of(ENGINE, UPPER))
                .stages()
                .get(0);
        double empty = first.dryMass().total() + first.propellant().residual();
        double change = 3200 * Math.log((empty + first.propellant().recovery()) / empty);
        assertThat(change).isCloseTo(back.boostback() + back.entry() + back.landing(), within(1e-6));
    }

    @Test
    void theImpulseNeededIsThatOfTheEngineWhichWouldDo() {
        VehicleSizing good = new VehicleSizer()
                .size(plan(OptionalDouble.of(9000), OptionalDouble.empty(), Recovery.NONE), List.of(ENGINE, UPPER));
        VehicleSizing asked = new VehicleSizer()
                .size(
                        plan(OptionalDouble.of(9000), OptionalDouble.of(good.startMass()), Recovery.NONE),
                        List.of(SampleEngines.kerosene(0.9 * 3200), SampleEngines.hydrogen(0.9 * 4300)));
        assertThat(asked.ispFactor().orElseThrow()).isCloseTo(1 / 0.9, within(1e-6));
        assertThat(asked.stages().get(0).isp()).isCloseTo(ENGINE.vacuumIsp(), within(1e-3));
    }

    @Test
    void anImpossiblePairOfMassesIsSaidSo() {
        assertThatThrownBy(() -> new VehicleSizer()
                        .size(
                                plan(OptionalDouble.of(9000), OptionalDouble.of(9100), Recovery.NONE),
                                List.of(ENGINE, UPPER)))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("no specific impulse up to 5 times");
    }

    /** One stage with as many engines as lift it. */
    private static StagePlan lifting() {
        return new StagePlan(
                "only",
                Optional.empty(),
                EngineCount.lifting(1.3),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Allowances.USUAL,
                PLAIN,
                false,
                Recovery.NONE,
                0);
    }

    @Test
    void aStageThatClosesAtNoSizeWithTheEnginesItNeedsSaysSo() {
        // with a fixed number of engines a stage could always grow until they weigh nothing; with engines that grow
        // with
        // it, 11 000 m/s at 3200 m/s needs a mass ratio of 31.11 that a built-up dry mass does not leave
        VehiclePlan plan = plan(OptionalDouble.of(5000), OptionalDouble.empty(), Recovery.NONE)
                .withStages(List.of(lifting()))
                .withMission(DeltaVBudget.of(11_000));
        assertThatThrownBy(() -> new VehicleSizer().size(plan, List.of(ENGINE)))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("only does not close at any size")
                .hasMessageContaining("mass ratio of 31.11")
                .hasMessageContaining("it would close above");
    }

    @Test
    void aPayloadTooLargeForTheEngineSaysWhichThrustItWouldTake() {
        VehiclePlan plan = plan(OptionalDouble.of(5e6), OptionalDouble.empty(), Recovery.NONE)
                .withStages(List.of(lifting()))
                .withMission(DeltaVBudget.of(4000));
        assertThatThrownBy(() -> new VehicleSizer().size(plan, List.of(ENGINE)))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining(
                        "take an engine of about 2670 kN or more in place of 1000 kN, or a smaller payload");
    }
}
