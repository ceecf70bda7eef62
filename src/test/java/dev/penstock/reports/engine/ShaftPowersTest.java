package dev.penstock.reports.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShaftPowersTest {

    /** Conservation: what drives a shaft is what it takes; over all main shafts, turbines give what pumps and losses take. */
    @ParameterizedTest
    @ValueSource(strings = {"heron.toml", "gannet.toml", "razorbill.toml", "avocet.toml", "dotterel.toml"})
    void powersAddUp(String file) {
        EngineBalance balance = Concepts.balance(file);
        List<ShaftPowers> all = ShaftPowers.of(balance);
        all.forEach(p -> assertThat(ShaftPowers.sum(p.takes()))
                .as(p.shaft().name())
                .isCloseTo(ShaftPowers.sum(p.gives()), withinPercentage(1e-6)));
        double turbines =
                balance.turbines().stream().mapToDouble(TurbineSizing::power).sum();
        if (turbines > 0) {
            double given = all.stream()
                    .filter(ShaftPowers::main)
                    .mapToDouble(p -> ShaftPowers.sum(p.gives()))
                    .sum();
            assertThat(given).isCloseTo(turbines, withinPercentage(1e-9));
        }
        double pumps = balance.pumps().stream().mapToDouble(PumpSizing::power).sum();
        double shown = all.stream()
                .flatMap(p -> p.shaft().pumps().stream())
                .mapToDouble(PumpSizing::power)
                .sum();
        assertThat(shown).isCloseTo(pumps, withinPercentage(1e-9));
    }
}
