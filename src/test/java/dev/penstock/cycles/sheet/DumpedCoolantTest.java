package dev.penstock.cycles.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.CoolingCircuit;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.cycles.questions.OperatingCommand;
import dev.penstock.cycles.questions.OperatingOutcome;
import dev.penstock.cycles.questions.OperatingPoint;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** An extension of the nozzle that a part of the fuel cools before it is dumped at its end. */
class DumpedCoolantTest {

    private static final Path EXAMPLE = Path.of("docs/examples/dump-cooled-nozzle.toml");
    private static final String DUMP = "cooling.circuits[0].dump.pressure_share";
    private static final EngineBalance BALANCE = Concepts.STUDY.balance(Concepts.READER.read(EXAMPLE, Map.of()));

    private static CoolingCircuit circuit(EngineBalance balance) {
        return balance.concept().dumping(Side.FUEL).orElseThrow();
    }

    private static Station behind(EngineBalance balance, PartKey part) {
        return balance.components().stream()
                .filter(c -> c.key().equals(part))
                .map(c -> balance.station(c.outlets().get(0)))
                .findFirst()
                .orElseThrow();
    }

    /** Conservation: the share of the tank's flow goes through the pump, takes up the heat of its jacket, and leaves. */
    @Test
    void whatIsDumpedIsPumpedHeatedAndCounted() {
        CoolingCircuit circuit = circuit(BALANCE);
        Station tank = BALANCE.tankOutlet(Side.FUEL);
        Station before = behind(BALANCE, PartKey.dumpOrifice(circuit.key()));
        Station after = behind(BALANCE, PartKey.jacket(circuit.key()));
        JacketResult jacket = BALANCE.cooling().get(1);
        assertThat(before.massFlow()).isCloseTo(0.04 * tank.massFlow(), within(1e-12 * tank.massFlow()));
        assertThat(before.pressure()).isCloseTo(0.3 * BALANCE.concept().chamberPressure(), within(1e-6));
        assertThat(after.massFlow() * (after.enthalpy() - before.enthalpy()))
                .isCloseTo(jacket.heatLoad(), within(1e-7 * jacket.heatLoad()));
        assertThat(BALANCE.machines()
                        .pumps()
                        .get(PumpKey.main(Side.FUEL))
                        .duty()
                        .massFlow())
                .isCloseTo(tank.massFlow(), within(1e-9));
        assertThat(BALANCE.residualWorst()).isLessThan(1e-8);
        double oxidizer = BALANCE.tankOutlet(Side.OXIDIZER).massFlow();
        assertThat(oxidizer / tank.massFlow()).isCloseTo(5.3, within(1e-9));
        double into = BALANCE.engine().massFlow()
                - BALANCE.exhausts().stream().mapToDouble(ExhaustJet::massFlow).sum();
        assertThat(BALANCE.chamber().massFlow()).isCloseTo(into, within(1e-6 * into));
        assertThat(BALANCE.withinLimits()).isTrue();
    }

    /**
     * By hand, warm hydrogen as a perfect gas, R 4124.2 J/(kg·K), γ 1.4: area ratio 6 is Mach 3.3679, T_e = T_0/3.2685 and
     * v_e + R T_e/v_e = √T_0 (3.3679 √(1.4 R/3.2685) + √(R/(1.4·3.2685))/3.3679) = 150.46 √T_0 m/s. Its γ is 1.39 to 1.40 there.
     */
    @Test
    void itLeavesAtTheImpulseOfWarmHydrogen() {
        ExhaustJet jet = BALANCE.exhausts().get(1);
        Station after = behind(BALANCE, PartKey.jacket(circuit(BALANCE).key()));
        assertThat(jet.name()).isEqualTo("nozzle coolant dump");
        assertThat(jet.vacuumThrust() / jet.massFlow() / Math.sqrt(after.temperature()))
                .isCloseTo(0.93 * 150.46, within(0.015 * 150.46));
        double thrust = BALANCE.chamber().vacuumThrust()
                + BALANCE.exhausts().stream()
                        .mapToDouble(ExhaustJet::vacuumThrust)
                        .sum();
        assertThat(thrust).isCloseTo(1000e3, within(1e-2));
        assertThat(BALANCE.engineLosses()).hasSize(2).last().satisfies(loss -> {
            assertThat(loss.name()).isEqualTo("nozzle coolant dump");
            assertThat(loss.factor()).isBetween(0.99, 1.0);
        });
    }

    /** Throttled, the share stays and everything still closes. */
    @Test
    void aBuiltEngineThrottlesWithIt() {
        OperatingOutcome outcome = Concepts.STUDY
                .built(BALANCE)
                .offDesign(List.of(OperatingCommand.throttle(0.8)))
                .get(0);
        assertThat(outcome.reason()).isEmpty();
        OperatingPoint point = outcome.point().orElseThrow();
        assertThat(point.residualWorst()).isLessThan(1e-8);
        assertThat(point.vacuumThrust()).isBetween(0.75e6, 0.85e6);
    }

    @Test
    void tooLittleCoolantIsRefusedWithWhatHelps() {
        assertThatThrownBy(() -> Concepts.STUDY.balance(Concepts.READER.read(
                        EXAMPLE, Map.of("cooling.end_area_ratio", "4", "cooling.circuits[0].flow_fraction", "0.01"))))
                .isInstanceOf(PenstockException.class)
                .hasMessageContaining("raise the flow_fraction that is dumped");
    }

    @Test
    void whatCannotBeDumpedIsRefused() {
        assertThatThrownBy(() -> Concepts.READER.read(EXAMPLE, Map.of(DUMP, "2")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining(DUMP)
                .hasMessageContaining("allowed is 0.01 to 1");
        assertThatThrownBy(
                        () -> Concepts.READER.read(
                                EXAMPLE,
                                Map.of(
                                        "cooling.circuits",
                                        "[{name = \"a\", coolant = \"fuel\", end_area_ratio = 20, dump = {}}, {name = \"b\", coolant = \"fuel\"}]")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("only the last circuit may dump its coolant");
    }

    /** By hand: 96 kg/s at 4000 m/s, 3 kg/s of turbine gas at half of that and 1 kg/s of coolant at a quarter: 2.25 %, 0.75 % of it coolant. */
    @Test
    void theLimitOfTurbineGasDoesNotCountIt() {
        ExhaustJet gas = new ExhaustJet(PartKey.EXHAUST, 3, 6000, 0.1, 0.02, 5e5, 1.2, 0);
        ExhaustJet coolant = new ExhaustJet(BALANCE.exhausts().get(1).part(), 1, 1000, 0.1, 0.02, 5e5, 1.2, 0);
        assertThat(ExhaustJet.costOfTurbines(3910, 4000, 100, List.of(gas, coolant)))
                .isCloseTo(0.015, within(1e-12));
    }
}
