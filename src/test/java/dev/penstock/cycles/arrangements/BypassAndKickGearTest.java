package dev.penstock.cycles.arrangements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.errors.InvalidInput;
import dev.penstock.turbomachinery.pump.PumpSizing;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Gas past a turbine, in cycles that are no expanders, and a kick pump on a gear of its own. */
class BypassAndKickGearTest {

    private static EngineBalance balance(String demo, Map<String, String> changes) {
        return Concepts.STUDY.balance(Concepts.READER.read(Path.of("cycles", demo), changes));
    }

    private static Component part(EngineBalance balance, PartKey key) {
        return balance.components().stream()
                .filter(c -> c.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** Conservation: the wheel has nine tenths of the gas and does all the work, and what comes together has the mean enthalpy. */
    @Test
    void gasPastATurbineDoesNoWork() {
        EngineBalance all = balance("heron.toml", Map.of());
        EngineBalance part = balance("heron.toml", Map.of("turbines.main.bypass", "0.1"));
        double gas = all.exhausts().get(0).massFlow();
        double more = part.exhausts().get(0).massFlow();
        assertThat(part.machines().turbines().get(TurbinePlace.MAIN).duty().massFlow())
                .isCloseTo(0.9 * more, within(1e-9 * more));
        // the wheel needs as much as before, and what the pumps give more of for the generator
        assertThat(0.9 * more / gas).isBetween(1.0, 1.01);
        Station wheel = part.station(
                part(part, PartKey.turbine(TurbinePlace.MAIN)).outlets().get(0));
        Station past = part.station(
                part(part, PartKey.turbineBypass(TurbinePlace.MAIN)).outlets().get(0));
        Station both = part.station(
                part(part, PartKey.turbineMerge(TurbinePlace.MAIN)).outlets().get(0));
        assertThat(both.enthalpy())
                .isCloseTo(0.9 * wheel.enthalpy() + 0.1 * past.enthalpy(), within(1e-9 * Math.abs(both.enthalpy())));
        assertThat(both.temperature()).isBetween(wheel.temperature(), past.temperature());
        assertThat(part.residualWorst()).isLessThan(1e-8);
        assertThat(part.engine().vacuumIsp()).isLessThan(all.engine().vacuumIsp());
    }

    @Test
    void inAStagedCycleItLowersWhatTheTurbineHas() {
        EngineBalance part = balance("tern.toml", Map.of("turbines.fuel.bypass", "0.03"));
        assertThat(part.residualWorst()).isLessThan(1e-8);
        Station before = part.station(
                part(part, PartKey.turbineBranch(TurbinePlace.FUEL)).inlets().get(0));
        assertThat(part.machines().turbines().get(TurbinePlace.FUEL).duty().massFlow())
                .isCloseTo(0.97 * before.massFlow(), within(1e-9 * before.massFlow()));
    }

    /** By definition of the gear: twice the speed; what its teeth take the turbine gives besides. */
    @Test
    void aKickPumpMayHaveAGearOfItsOwn() {
        EngineBalance geared = balance("razorbill.toml", Map.of("shafts.kick_gear_ratio", "2"));
        PumpSizing main = geared.machines().pumps().get(PumpKey.main(Side.FUEL));
        PumpSizing kick = geared.machines().pumps().get(new PumpKey(Side.FUEL, PumpKey.Role.KICK));
        assertThat(kick.speed()).isCloseTo(2 * main.speed(), within(1e-9 * main.speed()));
        // bearings leave 0.985, the teeth of the gear 0.98 of what the kick pump has
        assertThat(0.985 * geared.shafts().get(0).powerDelivered()
                        - geared.shafts().get(0).powerAbsorbed())
                .isCloseTo(kick.power() * (1 / 0.98 - 1), within(1e-6 * kick.power()));
        assertThat(geared.residualWorst()).isLessThan(1e-8);
    }

    @Test
    void whatCannotBeIsRefusedInOneSentence() {
        assertThatThrownBy(() -> balance("heron.toml", Map.of("turbines.main.bypass", "0.9")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("turbines.main.bypass")
                .hasMessageContaining("allowed is 0 to 0.6");
        assertThatThrownBy(() -> balance("heron.toml", Map.of("shafts.kick_gear_ratio", "2")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("kick_gear_ratio");
    }
}
