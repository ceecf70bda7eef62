package dev.penstock.cycles.arrangements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.ExhaustJet;
import dev.penstock.errors.LimitReached;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.Map;
import org.junit.jupiter.api.Test;

class GasGeneratorTest {

    private static final GasGenerator CYCLE = new GasGenerator();

    /**
     * Published: A-1 stage engine of Huzel and Huang [nasa-sp-125]. 750 000 lbf at sea level, 1000 psia, area ratio 14,
     * turbine at 1400 °F and pressure ratio 23.7 with efficiency 0.582; pumps at 7000 rpm, oxygen pump efficiency 0.707 and
     * head 2930 ft. The book's turbine gives 27 140 bhp on 92 lb/s, of which 500 hp drive accessories and 14 850 hp the
     * oxygen pump. Losses of the lines are set so that the oxygen pump's rise is the book's 1448 psi and the fuel pump, at an
     * efficiency of 0.74 (from memory), takes the power that the book leaves for it. Mixture ratio 1969/892 lb/s.
     */
    @Test
    void theA1EngineNeedsTheGasFlowOfTheBook() {
        String text =
                """
                name = "A-1"
                cycle = "gas-generator"
                [propellants]
                oxidizer = "oxygen"
                fuel = "rp-1"
                mixture_ratio = 2.207
                [engine]
                thrust_sea_level = "750 klbf"
                chamber_pressure = "1000 psi"
                [nozzle]
                area_ratio = 14
                [efficiencies]
                energy_release = 0.975
                [injector]
                oxidizer_loss = 0.25
                fuel_loss = 0.25
                [lines]
                oxidizer_discharge_loss = 0.10
                oxidizer_valve_loss = 0.10
                fuel_discharge_loss = 0.30
                fuel_valve_loss = 0.34
                [pumps.oxidizer]
                efficiency = 0.707
                speed = "7000 rpm"
                [pumps.fuel]
                efficiency = 0.74
                speed = "7000 rpm"
                [gas_generator]
                temperature = "1033.15 K"
                [turbines.main]
                pressure_ratio = 23.7
                efficiency = 0.582
                [shafts]
                arrangement = "single"
                mechanical_efficiency = 1
                accessory_power = "500 hp"
                """;
        EngineBalance balance = Concepts.STUDY.balance(Concepts.READER.parse("A-1", text, Map.of()));
        TurbineSizing turbine = balance.turbines().get(0);
        assertThat(turbine.power()).isCloseTo(27140 * 745.7, within(0.05 * 27140 * 745.7));
        assertThat(balance.exhausts().get(0).massFlow()).isCloseTo(92 * 0.45359237, within(0.05 * 41.7));
        PumpSizing oxygen = balance.pumps().stream()
                .filter(p -> p.name().startsWith("oxidizer"))
                .findFirst()
                .orElseThrow();
        assertThat(oxygen.head() / 9.80665).isCloseTo(2930 * 0.3048, within(0.02 * 893));
    }

    /** Identity: gas flow times specific work is the pump power over the mechanical efficiency (W11 of the worked examples). */
    @Test
    void gasFlowIsPumpPowerOverSpecificWork() {
        EngineBalance balance = Concepts.STUDY.balance(
                Concepts.example(CYCLE, "turbines.main.efficiency", "0.6", "shafts.mechanical_efficiency", "0.98"));
        TurbineSizing turbine = balance.turbines().get(0);
        double pumps = balance.pumps().stream().mapToDouble(PumpSizing::power).sum();
        double specificWork = 0.6 * turbine.isentropicDrop();
        assertThat(turbine.duty().massFlow())
                .isCloseTo(
                        pumps / 0.98 / specificWork,
                        within(1e-8 * turbine.duty().massFlow()));
    }

    /** Identity: engine impulse is the flow-weighted mean of chamber and exhaust, Σ(ṁ I)/Σṁ. */
    @Test
    void engineImpulseIsTheMeanOfChamberAndExhaust() {
        EngineBalance balance = Concepts.STUDY.balance(Concepts.example(CYCLE));
        ExhaustJet jet = balance.exhausts().get(0);
        double mean = (balance.chamber().massFlow() * balance.chamber().vacuumImpulse() + jet.vacuumThrust())
                / (balance.chamber().massFlow() + jet.massFlow());
        assertThat(balance.engine().vacuumIsp() * 9.80665).isCloseTo(mean, within(1e-8 * mean));
    }

    @Test
    void hotterGasNeedsLessFlow() {
        EngineBalance cool = Concepts.STUDY.balance(Concepts.example(CYCLE, "gas_generator.temperature", "880 K"));
        EngineBalance hot = Concepts.STUDY.balance(Concepts.example(CYCLE, "gas_generator.temperature", "1100 K"));
        assertThat(hot.exhausts().get(0).massFlow())
                .isLessThan(cool.exhausts().get(0).massFlow());
        assertThat(hot.engine().vacuumIsp()).isGreaterThan(cool.engine().vacuumIsp());
    }

    @Test
    void twoShaftsAndAGearboxClose() {
        for (String[] changes : new String[][] {
            {"shafts.arrangement", "dual"},
            {"shafts.arrangement", "dual", "shafts.gas_path", "series"},
            {"shafts.arrangement", "geared", "shafts.gear_ratio", "2"}
        }) {
            EngineBalance balance = Concepts.STUDY.balance(Concepts.example(CYCLE, changes));
            assertThat(balance.residualWorst()).as(String.join(" ", changes)).isLessThan(1e-8);
            int shafts = changes[1].equals("dual") ? 2 : 1;
            assertThat(balance.shafts()).hasSize(shafts);
        }
    }

    @Test
    void theThrustAskedForIsThatOfTheWholeEngine() {
        Concept seaLevel = Concepts.READER.parse(
                "x",
                CYCLE.example()
                        .shortest(CYCLE.id(), "x")
                        .replace("thrust_vacuum", "thrust_sea_level")
                        .replace("[cooling]\ncoolant = \"fuel\"\n", ""),
                Map.of());
        EngineBalance balance = Concepts.STUDY.balance(seaLevel);
        assertThat(balance.thrustAt(101325)).isCloseTo(600e3, within(600e3 * 1e-8));
        assertThat(balance.engine().seaLevelThrust()).isCloseTo(600e3, within(600e3 * 1e-8));
    }

    @Test
    void aChamberBelowTankPressureIsToldThatItNeedsNoPump() {
        Concept low = Concepts.example(CYCLE, "engine.chamber_pressure", "1 bar");
        assertThatThrownBy(() -> Concepts.STUDY.balance(low))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("no pump is needed")
                .hasMessageContaining("engine.chamber_pressure");
    }
}
