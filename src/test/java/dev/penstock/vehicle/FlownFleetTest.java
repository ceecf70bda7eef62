package dev.penstock.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.errors.LimitReached;
import dev.penstock.vehicle.ascent.AscentLimit;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.DragTable;
import dev.penstock.vehicle.ascent.FlightProgress;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.engine.GivenEngine;
import dev.penstock.vehicle.mass.BuiltUpDryMass;
import dev.penstock.vehicle.mass.DryMassDesign;
import dev.penstock.vehicle.mass.StructuralCoefficient;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.AscentPlan;
import dev.penstock.vehicle.plan.BoosterPlan;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Twenty invented vehicles of one to three stages, with and without boosters, from 50 kg to 50 t, to several orbits; every sixth
 * of them, or all with {@code -Dpenstock.fleet.long=true}.
 */
class FlownFleetTest {

    /** What a vehicle of the fleet is made of. */
    record Craft(
            String name,
            double payload,
            double inclination,
            double orbit,
            double boosterPropellant,
            List<Path> engines,
            List<Double> coefficients) {

        @Override
        public String toString() {
            return name;
        }

        VehiclePlan plan() {
            return plan(payload);
        }

        VehiclePlan plan(double mass) {
            List<StagePlan> stages = new ArrayList<>();
            for (int i = 0; i < engines.size(); i++) {
                stages.add(new StagePlan(
                        "stage " + (i + 1),
                        Optional.of(engines.get(i)),
                        new EngineCount(OptionalInt.empty(), i == 0 ? 1.3 : 0.8, 1, 0, 0, true),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Allowances.USUAL,
                        new BuiltUpDryMass(DryMassDesign.PLAIN),
                        false,
                        Recovery.NONE,
                        i == 0 ? 101325 : 0));
            }
            Optional<BoosterPlan> boosters = boosterPropellant == 0
                    ? Optional.empty()
                    : Optional.of(new BoosterPlan(
                            2,
                            Optional.of(engine(2.5 * boosterPropellant * 9.8, 300, 2.6, 0.5)),
                            1,
                            boosterPropellant,
                            OptionalDouble.empty(),
                            Allowances.USUAL,
                            new StructuralCoefficient(0.09, 0)));
            AscentMission mission = new AscentMission(
                    Planet.EARTH, Math.toRadians(inclination), Math.min(orbit, 200e3), orbit, 35e3, 50, 3e3, 0.5);
            return new VehiclePlan(
                    name,
                    "",
                    OptionalDouble.of(mass),
                    OptionalDouble.empty(),
                    DeltaVBudget.of(9300),
                    stages,
                    boosters,
                    Optional.of(new AscentPlan(mission, 5, DragTable.USUAL, true)),
                    Map.of(),
                    List.of());
        }
    }

    /** An engine by its figures, kept in a path: thrust (N), impulse (s), mixture ratio, exit pressure loss (-). */
    private static Path engine(double thrust, double isp, double mixture, double backPressure) {
        return Path.of(thrust + "_" + isp + "_" + mixture + "_" + backPressure);
    }

    static EnginePerformance engine(Optional<Path> file) {
        String[] part = file.orElseThrow().toString().split("_");
        double thrust = Double.parseDouble(part[0]);
        boolean hydrogen = Double.parseDouble(part[2]) > 5;
        return GivenEngine.ofIsp(
                file.get().toString(),
                thrust,
                Double.parseDouble(part[1]),
                Double.parseDouble(part[3]) * thrust / 1e6,
                Double.parseDouble(part[2]),
                hydrogen ? SampleEngines.OXYGEN : SampleEngines.COLD_OXYGEN,
                hydrogen ? SampleEngines.HYDROGEN : SampleEngines.COLD_KEROSENE,
                thrust / 600);
    }

    private static Craft two(
            String name,
            double payload,
            double inclination,
            double orbit,
            double first,
            double second,
            boolean hydrogen) {
        return new Craft(
                name,
                payload,
                inclination,
                orbit,
                0,
                List.of(
                        engine(first, 305, 2.6, 1.0),
                        hydrogen ? engine(second, 450, 6, 4) : engine(second, 345, 2.6, 3)),
                List.of(0.07, hydrogen ? 0.11 : 0.08));
    }

    private static Craft three(String name, double payload, double inclination, double orbit, double first) {
        return new Craft(
                name,
                payload,
                inclination,
                orbit,
                0,
                List.of(engine(first, 290, 2.6, 1.0), engine(first / 4, 320, 2.6, 2), engine(first / 20, 330, 2.6, 3)),
                List.of(0.09, 0.1, 0.13));
    }

    static List<Craft> fleet() {
        List<Craft> fleet = new ArrayList<>();
        fleet.add(two("tiny", 50, 97.6, 500e3, 25e3, 12e3, false));
        fleet.add(two("small", 300, 45, 500e3, 25e3, 25e3, false));
        fleet.add(two("small polar", 1000, 98, 700e3, 100e3, 80e3, false));
        fleet.add(two("medium", 5000, 28.5, 200e3, 800e3, 300e3, false));
        fleet.add(two("medium high", 4000, 51.6, 800e3, 800e3, 300e3, false));
        fleet.add(two("medium one engine above", 12e3, 28.5, 250e3, 850e3, 900e3, false));
        fleet.add(two("large", 25e3, 51.6, 400e3, 2e6, 1e6, false));
        fleet.add(two("very large", 50e3, 28.5, 200e3, 2e6, 2e6, false));
        fleet.add(two("hydrogen above", 10e3, 5, 300e3, 1e6, 180e3, true));
        fleet.add(two("hydrogen above, large", 40e3, 28.5, 200e3, 2e6, 500e3, true));
        fleet.add(two("hydrogen above, weak", 6e3, 28.5, 200e3, 1e6, 100e3, true));
        fleet.add(three("three small", 200, 90, 500e3, 150e3));
        fleet.add(three("three medium", 2000, 28.5, 300e3, 600e3));
        fleet.add(three("three large", 20e3, 28.5, 200e3, 4e6));
        fleet.add(three("three low", 1500, 28.5, 185e3, 500e3));
        fleet.add(new Craft("single hydrogen", 2000, 5, 200e3, 0, List.of(engine(600e3, 450, 6, 1)), List.of(0.06)));
        fleet.add(new Craft(
                "single hydrogen, large", 5000, 5, 200e3, 0, List.of(engine(1500e3, 455, 6, 0.9)), List.of(0.035)));
        fleet.add(new Craft(
                "boosted core",
                8000,
                5,
                250e3,
                100e3,
                List.of(engine(1.2e6, 430, 6, 1.5), engine(100e3, 450, 6, 4)),
                List.of(0.1, 0.12)));
        fleet.add(new Craft(
                "boosted kerosene",
                12e3,
                51.6,
                400e3,
                60e3,
                List.of(engine(1e6, 310, 2.6, 1.2), engine(200e3, 350, 2.6, 3)),
                List.of(0.07, 0.08)));
        fleet.add(
                new Craft("boosted single", 6000, 5, 250e3, 150e3, List.of(engine(1.2e6, 435, 6, 1.5)), List.of(0.09)));
        return fleet;
    }

    /** Vehicles that several tests look at, each flown once. */
    private static final Map<Craft, FlownSizing> FLOWN = new HashMap<>();

    private static FlownSizing flightOf(Craft craft) {
        return FLOWN.computeIfAbsent(craft, c -> fly(c.plan()));
    }

    private static FlownSizing fly(VehiclePlan plan) {
        return new FlownSizer(new StandardAtmosphere1976()).size(plan, FlownFleetTest::engine, FlightProgress.NONE);
    }

    static List<Craft> flown() {
        List<Craft> fleet = fleet();
        return Boolean.getBoolean("penstock.fleet.long")
                ? fleet
                : IntStream.range(0, fleet.size())
                        .filter(i -> i % 6 == 3)
                        .mapToObj(fleet::get)
                        .toList();
    }

    @ParameterizedTest
    @MethodSource("flown")
    void fliesAndKeepsWhatItCan(Craft craft) {
        FlownSizing flown = flightOf(craft);
        assertThat(flown.ascent().margin())
                .isCloseTo(flown.sizing().plan().mission().afterAscent(), within(1.0));
        assertThat(flown.sizing().deltaV())
                .isCloseTo(flown.sizing().plan().mission().total(), within(1e-6));
        // acceleration of a stage with few engines cannot be kept by throttling; the others are chosen to be kept
        assertThat(flown.ascent().limits())
                .filteredOn(limit -> limit.kind() != AscentLimit.ACCELERATION)
                .allSatisfy(limit -> assertThat(limit.margin()).isGreaterThan(-0.06));
        assertThat(flown.ascent().evaluations()).isLessThan(4_000_000);
    }

    /** With the number of engines between two that would do, where it was once the other way round; more steps in the long run. */
    @Test
    void startMassRisesWithPayload() {
        Craft craft = fleet().get(3);
        double last = 0;
        double[] factors = Boolean.getBoolean("penstock.fleet.long")
                ? new double[] {0.9, 1, 1.03, 1.06, 1.1, 1.15, 1.2, 1.35}
                : new double[] {1, 1.06};
        for (double factor : factors) {
            FlownSizing flown = factor == 1 ? flightOf(craft) : fly(craft.plan(factor * craft.payload()));
            double startMass = flown.sizing().startMass();
            assertThat(startMass).as("payload times " + factor).isGreaterThan(last);
            last = startMass;
        }
    }

    @Test
    @EnabledIfSystemProperty(named = "penstock.fleet.long", matches = "true")
    void whatIsLeftOpenIsChosenBetterThanStated() {
        VehiclePlan free = fleet().get(3).plan();
        FlownSizing chosen = fly(free);
        List<StagePlan> stated = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            stated.add(free.stages().get(i).withShare(i == 0 ? 0.45 : 0.55));
        }
        assertThat(chosen.sizing().startMass())
                .isLessThan(fly(free.withStages(stated)).sizing().startMass());
        AscentPlan high = free.ascent().orElseThrow();
        assertThat(chosen.ascent().mission().insertionAltitude())
                .isLessThan(high.mission().insertionAltitude());
    }

    @Test
    void aVehicleThatCannotFlySaysWhatToChange() {
        VehiclePlan free = fleet().get(3).plan();
        List<StagePlan> weak = List.of(
                free.stages().get(0).withShare(0.3).withEngines(EngineCount.of(4)),
                new StagePlan(
                        "weak stage",
                        Optional.of(engine(20e3, 345, 2.6, 0.1)),
                        EngineCount.of(1),
                        OptionalDouble.of(0.7),
                        OptionalDouble.empty(),
                        Allowances.USUAL,
                        new StructuralCoefficient(0.08, 0),
                        false,
                        Recovery.NONE,
                        0));
        assertThatThrownBy(() -> fly(free.withStages(weak)))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("weak stage starts at 0.0")
                .hasMessageContaining("give it more engines")
                .hasMessageContaining("leave delta_v_share out");
    }
}
