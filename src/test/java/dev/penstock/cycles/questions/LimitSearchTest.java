package dev.penstock.cycles.questions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.arrangements.FullFlow;
import dev.penstock.cycles.arrangements.GasGenerator;
import dev.penstock.cycles.arrangements.PressureFed;
import dev.penstock.cycles.arrangements.StagedCombustion;
import dev.penstock.cycles.arrangements.TapOff;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ThrustTarget;
import dev.penstock.cycles.origin.ExhaustLimit;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.errors.LimitReached;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.turbomachinery.turbine.TurbineLimit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LimitSearchTest {

    /** Methane generator engine of 800 kN at sea level, cooled by its fuel. */
    private static final String KNOT =
            """
            cycle = "gas-generator"
            name = "Knot"
            [propellants]
            oxidizer = "oxygen"
            fuel = "methane"
            mixture_ratio = 3.3
            [engine]
            thrust_sea_level = "800 kN"
            chamber_pressure = "10 MPa"
            [nozzle]
            exit_pressure = "50 kPa"
            [cooling]
            coolant = "fuel"
            material = "grcop-42"
            wall_thickness = "0.7 mm"
            """;

    /** Results that several tests look at, each searched for once. */
    private static final Map<String, LimitResult> SEARCHED = new HashMap<>();

    private static LimitResult knot(String pressure) {
        return SEARCHED.computeIfAbsent(
                "knot " + pressure,
                key -> Concepts.STUDY.limit(
                        Concepts.READER.parse("knot", KNOT, Map.of("engine.chamber_pressure", pressure))));
    }

    private static LimitResult oxygenRich(String temperature) {
        return SEARCHED.computeIfAbsent(
                "oxygen-rich " + temperature,
                key -> Concepts.STUDY.limit(
                        Concepts.example(StagedCombustion.OXYGEN_RICH, "limits.turbine_temperature", temperature)));
    }

    /** Identity: tank pressure = chamber pressure × (face ratio + losses) + suction loss, so the limit is known in closed form. */
    @Test
    void aPressureFedEngineEndsWhereTheTankEnds() {
        Concept concept = Concepts.example(new PressureFed(), "limits.tank_pressure", "2.5 MPa");
        LimitResult result = Concepts.STUDY.limit(concept);
        Station tank = result.balance().station(1);
        double factor = (tank.pressure() - 40e3) / result.chamberPressure();
        assertThat(result.chamberPressure()).isCloseTo((2.5e6 - 40e3) / factor, within(1000.0));
        assertThat(result.bindingLimit()).endsWith("tank.pressure");
    }

    @Test
    void aLowDischargeLimitBindsAGasGeneratorEngine() {
        Concept concept = Concepts.example(new GasGenerator(), "limits.discharge_pressure", "9 MPa");
        LimitResult result = Concepts.STUDY.limit(concept);
        assertThat(result.bindingLimit()).endsWith("discharge_pressure");
        double highest = result.balance().pumps().stream()
                .mapToDouble(p -> p.duty().dischargePressure())
                .max()
                .orElseThrow();
        assertThat(highest).isCloseTo(9e6, within(9e6 * 5e-4)).isLessThanOrEqualTo(9e6);
        assertThat(result.sensitivities().get(0).elasticity()).isCloseTo(1, within(0.1));
        assertThat(result.points()).hasSizeLessThanOrEqualTo(25);
    }

    /** Identity: the pressure that is written in the file is only where somebody began; more of them in {@link LimitFromAnywhereTest}. */
    @Test
    void theAnswerForgetsThePressureInTheFile() {
        LimitResult from5 = knot("5 MPa");
        LimitResult from20 = knot("20 MPa");
        assertThat(from5.chamberPressure()).isEqualTo(from20.chamberPressure());
        assertThat(from5.best().orElseThrow().chamberPressure())
                .isEqualTo(from20.best().orElseThrow().chamberPressure());
    }

    @Test
    void everyLimitOfTheBalanceCountsOrIsNamed() {
        LimitResult result = knot("5 MPa");
        EngineBalance engine = result.balance();
        assertThat(engine.limits())
                .filteredOn(
                        l -> result.leftOut().stream().noneMatch(o -> o.name().equals(l.name())))
                .isNotEmpty()
                .isEqualTo(result.held())
                .allSatisfy(l -> assertThat(l.met()).as(l.name()).isTrue());
        assertThat(result.leftOut()).allSatisfy(l -> {
            assertThat(l.reason()).isNotEmpty();
            assertThat(result.explanation())
                    .contains(l.name().replace(".", ": ").replace('_', ' '));
        });
    }

    /** Identity of the best pressure: at the highest one, at half of it, and 3 % beside it impulse is no better. */
    @Test
    void theBestPressureIsNoWorseThanOthersWithinTheLimits() {
        Concept concept = Concepts.example(new TapOff());
        LimitResult result = Concepts.STUDY.limit(concept);
        LimitResult.Best best = result.best().orElseThrow();
        boolean seaLevel = concept.thrust().kind() == ThrustTarget.Kind.SEA_LEVEL_THRUST;
        double at = best.chamberPressure();
        List<EngineBalance> others = new ArrayList<>(List.of(result.balance()));
        for (double factor : new double[] {0.5, 0.97, Math.min(1.03, result.chamberPressure() / at)}) {
            others.add(Concepts.STUDY.balance(concept.withChamberPressure(factor * at)));
        }
        for (EngineBalance other : others) {
            double impulse =
                    seaLevel ? other.engine().seaLevelIsp() : other.engine().vacuumIsp();
            assertThat(best.value()).isGreaterThanOrEqualTo(impulse * (1 - 1e-4));
        }
        assertThat(best.chamberPressure()).isLessThanOrEqualTo(result.chamberPressure());
        assertThat(best.why()).isNotEmpty();
    }

    /** Identity: the loss is one less the engine's impulse over that of an engine that dumps nothing; its bound is the input's. */
    @Test
    void dumpedGasMayCostNoMoreThanIsAllowed() {
        Concept concept = Concepts.example(new TapOff(), "limits.exhaust_loss", "0.02");
        LimitResult result = Concepts.STUDY.limit(concept);
        assertThat(result.bindingLimit()).isEqualTo("turbine exhaust.impulse_loss");
        EngineBalance engine = result.balance();
        assertThat(1 - engine.engine().vacuumIsp() / withoutExhaust(engine))
                .isCloseTo(0.02, within(5e-5))
                .isLessThanOrEqualTo(0.02);
    }

    /** The better of the chamber's impulse and that of such a chamber at the mixture ratio of the tanks (s). */
    private static double withoutExhaust(EngineBalance engine) {
        Concept concept = engine.concept();
        Reactants tanks = Reactants.ofTanks(concept.oxidizer(), concept.fuel(), concept.mixtureRatio());
        double ideal = NozzleFlow.of(SpeciesLibrary.open(Path.of("").toAbsolutePath()), tanks)
                .expand(tanks, concept.chamberPressure(), concept.chamber().expansion())
                .toAreaRatio(engine.engine().areaRatio())
                .vacuumImpulse();
        ChamberPerformance chamber = engine.chamber();
        return chamber.vacuumSpecificImpulse()
                * Math.max(1, ideal / chamber.ideal().vacuumImpulse());
    }

    /**
     * Identity: an engine that dumps most of its fuel loses by it. At 55 MPa a tap-off engine whose chamber is left with hardly any fuel
     * has 0.4 times the impulse of a useful one, which its own chamber, as poor as that, does not show.
     */
    @Test
    void anEngineThatDumpsMostOfItsFuelIsNotWithinLimits() {
        Concept kittiwake = Concepts.read("kittiwake.toml");
        EngineBalance poor = Concepts.STUDY.balance(kittiwake.withChamberPressure(55e6));
        assertThat(poor.engine().vacuumIsp()).isLessThan(200);
        assertThat(poor.limits())
                .filteredOn(l -> l.kind() == ExhaustLimit.IMPULSE_LOSS)
                .hasSize(1)
                .allSatisfy(l -> assertThat(l.value()).isGreaterThan(0.3));
        LimitResult result = Concepts.STUDY.limit(kittiwake);
        assertThat(result.balance().engine().seaLevelIsp())
                .isGreaterThan(0.95 * result.best().orElseThrow().value());
    }

    /** Common practice, no source: hotter gas drives the same pumps to a higher pressure. */
    @Test
    void aStagedEngineReachesFurtherWithHotterGas() {
        LimitResult low = oxygenRich("550 K");
        LimitResult high = oxygenRich("700 K");
        assertThat(high.chamberPressure()).isGreaterThan(1.1 * low.chamberPressure());
        assertThat(low.bindingLimit()).isEqualTo("turbine inlet temperature");
        assertThat(low.explanation()).contains("MPa").contains("turbine");
    }

    /** The gas before the turbine, behind the duct that a real gas warms or cools in, is as hot as the turbine stands. */
    @Test
    void gasAsHotAsItsTurbineStandsIsWithinTheLimits() {
        LimitResult result = oxygenRich("700 K");
        assertThat(result.balance().limits())
                .filteredOn(l -> l.kind() == TurbineLimit.INLET_TEMPERATURE)
                .isNotEmpty()
                .allSatisfy(l -> assertThat(l.value()).isCloseTo(700, within(1e-4)))
                .allSatisfy(l -> assertThat(l.verdict()).isEqualTo("sets the gas temperature"));
    }

    /** What the search takes for granted is said, and a balance asked for with that is the engine that it found. */
    @Test
    void aBalanceWithItsSettingsIsTheEngineFound() {
        LimitResult result = oxygenRich("700 K");
        Map<String, String> settings = new HashMap<>();
        result.settings().forEach(s -> settings.put(s.key(), s.value() + " " + s.unit()));
        assertThat(settings).containsOnlyKeys("engine.chamber_pressure", "preburner.oxidizer_rich.temperature");
        EngineBalance again = Concepts.STUDY.balance(Concepts.READER.reread(
                Concepts.example(StagedCombustion.OXYGEN_RICH, "limits.turbine_temperature", "700 K"), settings));
        Concepts.assertSame(again, result.balance());
        assertThat(again.withinLimits()).isEqualTo(result.balance().withinLimits());
    }

    @Test
    void aBalanceBeyondReachNamesThePressuresTried() {
        Concept concept = Concepts.example(
                StagedCombustion.OXYGEN_RICH,
                "engine.chamber_pressure",
                "40 MPa",
                "preburner.oxidizer_rich.temperature",
                "500 K");
        assertThatThrownBy(() -> Concepts.STUDY.balance(concept))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("closes at a chamber pressure of")
                .hasMessageContaining("the 40 MPa asked for no balance was found");
    }

    @Test
    void aTankThatIsTooWeakIsNamed() {
        Concept concept = Concepts.example(new PressureFed(), "tanks.fuel.pressure", "1.1 MPa");
        assertThatThrownBy(() -> Concepts.STUDY.balance(concept))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("in the fuel tank, which holds 1.100 MPa")
                .hasMessageContaining("tanks.fuel.pressure");
    }

    /** A sample beside a known reach ends where the whole ladder does, with fewer balances. */
    @Test
    void aSearchBesideAKnownReachFindsTheSameEnd() {
        Concept other = Concepts.example(new GasGenerator(), "turbines.main.pressure_ratio", "15");
        LimitResult near = Concepts.STUDY.reach(Concepts.example(new GasGenerator()));
        LimitResult alone = Concepts.STUDY.reach(other);
        LimitResult beside = Concepts.STUDY.reach(other, near);
        assertThat(beside.chamberPressure()).isCloseTo(alone.chamberPressure(), within(1e-3 * alone.chamberPressure()));
        assertThat(beside.bindingLimit()).isEqualTo(alone.bindingLimit());
        assertThat(beside.points().size()).isLessThan(alone.points().size());
    }

    /** The bound of the limit that says where a cooled engine ends is met there to the tolerance of the search. */
    @Test
    void aCooledEngineEndsAtItsLimit() {
        LimitResult result = knot("5 MPa");
        LimitCheck binding = result.held().stream()
                .filter(l -> l.name().equals(result.bindingLimit()))
                .findFirst()
                .orElseThrow();
        assertThat(binding.margin()).isBetween(-1e-9, 5e-3);
        assertThat(result.points()).hasSizeLessThanOrEqualTo(35);
    }

    /** Identity: a wall of 0.5 mm conducts better than one of 0.8 mm; its floor bears less, which costs drop, not the limit. */
    @Test
    void aThinnerWallTakesNoLimitFromAHydrogenEngine() {
        for (String thickness : List.of("0.5 mm", "0.8 mm")) {
            EngineBalance engine = Concepts.STUDY.balance(
                    Concepts.READER.parse("tern", tern(), Map.of("cooling.wall_thickness", thickness)));
            assertThat(engine.limits())
                    .as(thickness)
                    .allSatisfy(l -> assertThat(l.met()).as(l.name()).isTrue());
        }
    }

    private static String tern() {
        try {
            return Files.readString(Path.of("cycles", "tern.toml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The engine with the heat of a methane booster keeps its wall up to where dumped gas costs too much. */
    @Test
    void sizedChannelsHoldTheWallOfAMethaneBooster() {
        assertThat(knot("5 MPa").bindingLimit()).isEqualTo("turbine exhaust.impulse_loss");
    }

    /** No chamber pressure keeps the wall of this example cool with channels that do not boil, and the search says so. */
    @Test
    void whatNoPressureKeepsIsRefusedWithTheNearest() {
        String text = new FullFlow().example().shortest("full-flow", "Limit");
        Concept concept = Concepts.READER.parse("limit", text, Map.of("cooling.limits.wall_temperature", "500 K"));
        assertThatThrownBy(() -> Concepts.STUDY.reach(concept))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("no chamber pressure tried from")
                .hasMessageContaining("the nearest to it");
    }
}
