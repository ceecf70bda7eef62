package dev.penstock.cycles.arrangements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.hardware.HardwareCount;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.errors.InvalidInput;
import dev.penstock.reports.diagram.DrawnEngine;
import dev.penstock.reports.diagram.FlowDiagram;
import dev.penstock.vehicle.engine.BalancedEngine;
import dev.penstock.vehicle.stage.PropellantLoad;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Water injected into a gas generator: a third flow from a tank and a pump of its own. */
class GeneratorDiluentTest {

    private static final double SHARE = 0.25;
    private static final EngineBalance DILUTED = Concepts.STUDY.balance(read("heron.toml", Map.of()));

    private static dev.penstock.cycles.concept.Concept read(String demo, Map<String, String> more) {
        Map<String, String> changes = new HashMap<>(
                Map.of("gas_generator.diluent.fluid", "water", "gas_generator.diluent.flow_fraction", "0.25"));
        changes.putAll(more);
        return Concepts.READER.read(Path.of("cycles", demo), changes);
    }

    private static Component generator() {
        PartKey key = PartKey.burner(Burner.GENERATOR);
        return DILUTED.components().stream()
                .filter(c -> c.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** By hand: liquid water has -285.83 kJ/mol over 18.0153 g/mol, -15.866 MJ/kg; three parts of propellants take one of water. */
    @Test
    void aQuarterOfTheGasIsWaterThatEntersAsALiquid() {
        Station tank = DILUTED.outlet(PartKey.diluentTank());
        Station gas = DILUTED.station(generator().outlets().get(0));
        assertThat(tank.enthalpy()).isCloseTo(-15.866e6, within(0.002e6));
        assertThat(tank.massFlow()).isCloseTo(SHARE * gas.massFlow(), within(1e-9 * gas.massFlow()));
        double entering = generator().inlets().stream()
                .map(DILUTED::station)
                .mapToDouble(s -> s.massFlow() * s.enthalpy())
                .sum();
        assertThat(gas.massFlow() * gas.enthalpy()).isCloseTo(entering, within(1e-8 * Math.abs(entering)));
        assertThat(gas.temperature()).isCloseTo(930, within(0.01));
        assertThat(DILUTED.residualWorst()).isLessThan(1e-8);
    }

    /** Definition of the impulse: thrust over all that leaves the three tanks. */
    @Test
    void itsFlowCountsInTheImpulseAndNotInTheMixtureRatio() {
        var engine = DILUTED.engine();
        assertThat(engine.diluentFlow())
                .isEqualTo(DILUTED.outlet(PartKey.diluentTank()).massFlow());
        assertThat(engine.massFlow())
                .isCloseTo(engine.oxidizerFlow() + engine.fuelFlow() + engine.diluentFlow(), within(1e-9));
        assertThat(engine.vacuumIsp()).isCloseTo(engine.vacuumThrust() / engine.massFlow() / 9.80665, within(1e-9));
        assertThat(engine.mixtureRatio()).isCloseTo(2.35, within(1e-9));
        assertThat(DILUTED.exhausts().get(0).massFlow() + DILUTED.chamber().massFlow())
                .isCloseTo(engine.massFlow(), within(1e-7 * engine.massFlow()));
    }

    @Test
    void itsPumpIsCountedWeighedAndDrawn() {
        assertThat(DILUTED.machines()
                        .pump(new PumpKey(Side.FUEL, PumpKey.Role.DILUENT))
                        .orElseThrow()
                        .power())
                .isPositive();
        HardwareCount count = HardwareCount.of(DILUTED);
        HardwareCount plain = HardwareCount.of(Concepts.balance("heron.toml"));
        assertThat(count.pumps()).isEqualTo(plain.pumps() + 1);
        assertThat(count.valves()).isEqualTo(plain.valves() + 1);
        assertThat(DILUTED.mass().items().toString()).contains("diluent pump line");
        assertThat(FlowDiagram.svg("t", "t", DrawnEngine.of(DILUTED), Optional.empty()))
                .contains("diluent tank")
                .contains("diluent pump")
                .contains("diluent valve");
    }

    /** By hand: of 100 t with 2 % water at a mixture ratio of 2, 2 t are water, 65.333 t oxidizer and 32.667 t fuel. */
    @Test
    void theVehicleCarriesIt() {
        BalancedEngine engine = new BalancedEngine(DILUTED);
        assertThat(engine.diluentShare())
                .isCloseTo(DILUTED.engine().diluentFlow() / DILUTED.engine().massFlow(), within(1e-12));
        assertThat(engine.diluent().orElseThrow().density()).isCloseTo(997, within(1.0));
        PropellantLoad load = new PropellantLoad(100e3, 0, 0, 0, 0, 2, 0.02, 0);
        assertThat(load.diluent()).isCloseTo(2e3, within(1e-9));
        assertThat(load.oxidizer()).isCloseTo(65_333.333, within(1e-3));
        assertThat(load.fuel()).isCloseTo(32_666.667, within(1e-3));
    }

    @Test
    void whatCannotBeIsRefusedInOneSentence() {
        refused("heron.toml", "gas_generator.diluent.flow_fraction", "0.9", "allowed is 0.001 to 0.6");
        refused("heron.toml", "gas_generator.diluent.fluid", "watr", "did you mean water?");
        refused("heron.toml", "gas_generator.gas_model", "empirical", "allowed is automatic, equilibrium or frozen");
        refused("tern.toml", "chamber.contraction_ratio", "3", "gas_generator");
    }

    private static void refused(String demo, String key, String value, String why) {
        assertThatThrownBy(() -> read(demo, Map.of(key, value)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining(why);
    }
}
