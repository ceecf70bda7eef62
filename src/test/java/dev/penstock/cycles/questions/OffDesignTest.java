package dev.penstock.cycles.questions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.arrangements.StagedCombustion;
import dev.penstock.cycles.sheet.EngineBalance;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OffDesignTest {

    static Stream<Cycle> cycles() {
        return Cycle.all().stream();
    }

    /** Limit: at full throttle the built engine is the designed one; throttled it turns slower and keeps its margins. */
    @ParameterizedTest
    @MethodSource("cycles")
    void aBuiltEngineRunsAtItsDesignPointAndThrottles(Cycle cycle) {
        EngineBalance design = Concepts.STUDY.balance(Concepts.example(cycle));
        List<OperatingOutcome> outcomes = Concepts.STUDY.offDesign(
                design,
                List.of(OperatingCommand.throttle(1), OperatingCommand.throttle(0.85), OperatingCommand.throttle(0.7)));
        assertThat(outcomes).allSatisfy(o -> assertThat(o.reason()).isEmpty());
        OperatingPoint full = outcomes.get(0).point().orElseThrow();
        OperatingPoint low = outcomes.get(2).point().orElseThrow();
        double thrust = design.engine().vacuumThrust();
        assertThat(full.vacuumThrust()).isCloseTo(thrust, within(1e-3 * thrust));
        assertThat(low.vacuumThrust()).isBetween(0.66 * thrust, 0.72 * thrust);
        full.pumps().forEach((name, point) -> {
            double speed = design.pumps().stream()
                    .filter(p -> p.name().equals(name))
                    .findFirst()
                    .orElseThrow()
                    .speed();
            assertThat(point.speed()).as(name).isCloseTo(speed, within(0.01 * speed));
            assertThat(low.pumps().get(name).speed()).as(name).isLessThan(point.speed());
            assertThat(low.pumps().get(name).cavitationMargin()).isGreaterThan(point.cavitationMargin());
        });
        assertThat(low.residualWorst()).isLessThan(1e-8);
    }

    /** A staged engine's gas cools as it throttles; less suction pressure eats the cavitation margin. */
    @Test
    void tankPressureAndGasTemperatureMoveAsExpected() {
        EngineBalance design = Concepts.STUDY.balance(Concepts.example(StagedCombustion.OXYGEN_RICH));
        List<OperatingOutcome> outcomes = Concepts.STUDY.offDesign(
                design,
                List.of(
                        OperatingCommand.throttle(1),
                        OperatingCommand.throttle(1).withTankPressures(0.27e6, 0.27e6),
                        OperatingCommand.throttle(0.8)));
        OperatingPoint full = outcomes.get(0).point().orElseThrow();
        OperatingPoint starved = outcomes.get(1).point().orElseThrow();
        OperatingPoint throttled = outcomes.get(2).point().orElseThrow();
        assertThat(starved.pumps().get("oxidizer pump").cavitationMargin())
                .isLessThan(full.pumps().get("oxidizer pump").cavitationMargin());
        assertThat(throttled.gasTemperatures().get("main turbine"))
                .isLessThan(full.gasTemperatures().get("main turbine"));
    }
}
