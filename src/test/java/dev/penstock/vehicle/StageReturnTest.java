package dev.penstock.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.DragTable;
import dev.penstock.vehicle.ascent.FlightProgress;
import dev.penstock.vehicle.ascent.Parting;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.mass.BuiltUpDryMass;
import dev.penstock.vehicle.mass.DryMassDesign;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.AscentPlan;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A recovered first stage of an invented vehicle, flown once with ample and once looked at with scant propellant. */
class StageReturnTest {

    private static final StandardAtmosphere1976 AIR = new StandardAtmosphere1976();
    private static FlownSizing flown;

    private static VehiclePlan plan(Recovery recovery) {
        AscentMission mission = new AscentMission(Planet.EARTH, Math.toRadians(30), 200e3, 200e3, 35e3, 50, 1e4, 0.4);
        return new VehiclePlan(
                "sample",
                "",
                OptionalDouble.of(9000),
                OptionalDouble.empty(),
                DeltaVBudget.of(9300),
                List.of(
                        stage("first", EngineCount.lifting(1.35), 0.36, recovery),
                        stage("second", EngineCount.of(1), 0.64, Recovery.NONE)),
                Optional.empty(),
                Optional.of(new AscentPlan(mission, 5, DragTable.USUAL)),
                Map.of(),
                List.of());
    }

    private static StagePlan stage(String name, EngineCount engines, double share, Recovery recovery) {
        return new StagePlan(
                name,
                Optional.empty(),
                engines,
                OptionalDouble.of(share),
                OptionalDouble.empty(),
                Allowances.USUAL,
                new BuiltUpDryMass(DryMassDesign.PLAIN),
                false,
                recovery,
                0);
    }

    @BeforeAll
    static void fly() {
        flown = new FlownSizer(AIR)
                .size(
                        plan(Recovery.usual(Recovery.Mode.DOWNRANGE)),
                        file -> SampleEngines.kerosene(3300),
                        FlightProgress.NONE);
    }

    @Test
    void theEntryBurnTakesItsSpeed() {
        StageReturn back = flown.back().orElseThrow();
        double after = back.entry().moments().get(0).airSpeed();
        assertThat(back.speedBeforeEntryBurn() - after).isCloseTo(700, org.assertj.core.api.Assertions.within(1.0));
        assertThat(back.entry().landingSpeed())
                .isGreaterThan(0.95 * back.entry().terminalSpeed());
        assertThat(back.landingDeltaV()).isGreaterThan(back.entry().landingSpeed());
    }

    @Test
    void warnsWhenTheLandingNeedsMoreThanIsKept() {
        Recovery scant = new Recovery(Recovery.Mode.DOWNRANGE, 0, 700, 50);
        VehicleSizing sizing = flown.sizing();
        VehicleSizing looked = new VehicleSizing(
                plan(scant), sizing.startMass(), sizing.payload(), sizing.ispFactor(), sizing.stages(), List.of());
        assertThat(StageReturn.of(looked, flown.ascent(), AIR).orElseThrow().warnings())
                .singleElement()
                .satisfies(w -> assertThat(w.message()).contains("50 m/s are kept for it"));
    }

    @Test
    void aLostStageHasNoWayBack() {
        VehicleSizing sizing = flown.sizing();
        VehicleSizing lost = new VehicleSizing(
                plan(Recovery.NONE),
                sizing.startMass(),
                sizing.payload(),
                sizing.ispFactor(),
                sizing.stages(),
                List.of());
        assertThat(StageReturn.of(lost, flown.ascent(), AIR)).isEmpty();
    }

    /** By hand: up 600 m/s from 60 km falls for (600 + √(600² + 2 g 60 km))/g = 188 s; 900 m/s along and 50 km back. */
    @Test
    void turningBackTakesTheSpeedAlongAndTheWayBackInTheTimeOfTheFall() {
        double fall = (600 + Math.sqrt(600 * 600 + 2 * 9.80665 * 60e3)) / 9.80665;
        assertThat(StageReturn.turningBack(new Parting(60e3, 600, 900, 50e3)))
                .isCloseTo(900 + 50e3 / fall, org.assertj.core.api.Assertions.within(1e-9));
    }

    /** Where it once did not settle, or rose by a twentieth for a hundredth of payload. */
    @Test
    void aStageThatTurnsBackKeepsWhatItsOwnFlightAsks() {
        double last = 0;
        for (double payload : new double[] {3000, 3030}) {
            FlownSizing back = new FlownSizer(AIR)
                    .size(
                            plan(Recovery.usual(Recovery.Mode.LAUNCH_SITE))
                                    .withMasses(OptionalDouble.of(payload), OptionalDouble.empty()),
                            file -> SampleEngines.kerosene(3300),
                            FlightProgress.NONE);
            Recovery kept = back.sizing().plan().stages().get(0).recovery();
            assertThat(kept.boostback())
                    .isCloseTo(
                            back.back().orElseThrow().boostbackDeltaV(), org.assertj.core.api.Assertions.within(3.0));
            assertThat(back.sizing().startMass()).isGreaterThan(last);
            last = back.sizing().startMass();
        }
    }
}
