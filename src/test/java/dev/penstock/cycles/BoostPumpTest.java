package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.arrangements.StagedCombustion;
import dev.penstock.cycles.questions.OperatingCommand;
import dev.penstock.cycles.questions.OperatingOutcome;
import dev.penstock.cycles.questions.OperatingPoint;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BoostPumpTest {

    static Stream<Cycle> pumped() {
        return Cycle.all().stream().filter(c -> c.traits().pumped());
    }

    private static EngineBalance boosted(Cycle cycle, String... more) {
        return Concepts.STUDY.balance(Concepts.example(
                cycle,
                Stream.concat(
                                Stream.of(
                                        "boost_pumps.oxidizer.drive_efficiency",
                                        "0.7",
                                        "boost_pumps.fuel.drive_efficiency",
                                        "0.7"),
                                Stream.of(more))
                        .toArray(String[]::new)));
    }

    /** Identity: mass and energy at every component and for the engine, with liquid going round; the audit is to 1e-8. */
    @ParameterizedTest
    @MethodSource("pumped")
    void everyPumpedCycleMayHaveBoostPumps(Cycle cycle) {
        EngineBalance plain = Concepts.STUDY.balance(Concepts.example(cycle));
        EngineBalance boosted = boosted(cycle);
        assertThat(boosted.residualWorst()).isLessThan(1e-8);
        for (String side : List.of("oxidizer", "fuel")) {
            PumpSizing main = pump(boosted, side + " pump");
            PumpSizing boost = pump(boosted, side + " boost pump");
            assertThat(main.speed())
                    .isGreaterThan(0.98 * pump(plain, side + " pump").speed());
            assertThat(boost.speed()).isLessThan(main.speed());
            // the liquid that drives it passes the main pump twice
            assertThat(main.duty().massFlow() / boost.duty().massFlow()).isBetween(1.001, 1.3);
            assertThat(boosted.limits())
                    .filteredOn(l -> l.name().startsWith(side) && l.name().endsWith("pump.suction_margin"))
                    .allMatch(LimitCheck::met);
        }
    }

    @Test
    void theHydraulicTurbineGivesWhatTheBoostPumpTakes() {
        EngineBalance balance = boosted(StagedCombustion.OXYGEN_RICH);
        ShaftBalance shaft = balance.shafts().stream()
                .filter(s -> s.name().equals("oxidizer boost shaft"))
                .findFirst()
                .orElseThrow();
        assertThat(shaft.imbalance()).isCloseTo(0, within(1e-9));
        assertThat(shaft.drivers()).singleElement().asString().startsWith("hydraulic turbine on");
        PumpSizing main = pump(balance, "oxidizer pump");
        PumpSizing boost = pump(balance, "oxidizer boost pump");
        double drive = main.duty().massFlow() - boost.duty().massFlow();
        double drop = (main.duty().dischargePressure() - boost.duty().dischargePressure())
                / main.outlet().density();
        // limit: a stiff liquid loses pressure over density; warm liquid expands a little further
        assertThat(shaft.powerDelivered() / (0.7 * drive * drop)).isCloseTo(1, within(0.04));
    }

    @Test
    void aStatedRiseIsKeptAndAGearTakesItsPowerFromTheMainShaft() {
        EngineBalance balance = boosted(
                StagedCombustion.OXYGEN_RICH,
                "boost_pumps.oxidizer.pressure_rise",
                "2 MPa",
                "boost_pumps.oxidizer.drive",
                "gear");
        PumpSizing boost = pump(balance, "oxidizer boost pump");
        assertThat(boost.duty().dischargePressure() - boost.duty().inlet().pressure())
                .isCloseTo(2e6, withinPercentage(1e-6));
        assertThat(pump(balance, "oxidizer pump").duty().massFlow())
                .isCloseTo(boost.duty().massFlow(), withinPercentage(1e-9));
        assertThat(balance.residualWorst()).isLessThan(1e-8);
    }

    @Test
    void aBuiltEngineWithBoostPumpsRunsAtItsDesignPointAndThrottles() {
        EngineBalance design = boosted(StagedCombustion.OXYGEN_RICH);
        List<OperatingOutcome> outcomes =
                Concepts.STUDY.offDesign(design, List.of(OperatingCommand.throttle(1), OperatingCommand.throttle(0.8)));
        assertThat(outcomes).allSatisfy(o -> assertThat(o.reason()).isEmpty());
        OperatingPoint full = outcomes.get(0).point().orElseThrow();
        double speed = pump(design, "oxidizer pump").speed();
        assertThat(full.pumps().get("oxidizer pump").speed()).isCloseTo(speed, withinPercentage(1));
        assertThat(outcomes.get(1).point().orElseThrow().residualWorst()).isLessThan(1e-8);
    }

    private static PumpSizing pump(EngineBalance balance, String name) {
        return balance.pumps().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
