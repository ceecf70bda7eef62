package dev.penstock.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.combustion.WorkingState;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.ExhaustJet;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import dev.penstock.turbomachinery.start.TankHeadRun;
import dev.penstock.turbomachinery.turbine.TurbineMap;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TankHeadRunsTest {

    private static final EngineRuns RUNS = new EngineRuns(HomeFolder.find(), FluidLibrary.open());
    private static final EngineBalance HERON = balance("heron", Map.of());
    private static final EngineBalance AVOCET = balance("avocet", Map.of());

    private static EngineBalance balance(String name, Map<String, String> changes) {
        return RUNS.study().balance(RUNS.read(Path.of("cycles", name + ".toml"), changes));
    }

    /** Identity: the first gas passes the choked nozzles of the built turbine as a perfect gas does. */
    @Test
    void gasAtRestPassesTheChokedNozzles() {
        TankHeadRun run = TankHeadRuns.of(HERON, 0.3, 290);
        TankHeadRun.Point rest = run.points().get(0);
        TurbineSizing turbine = HERON.turbines().get(0);
        WorkingState state = turbine.duty().gas().atPressureTemperature(rest.pressure(), rest.temperature());
        double g = state.gamma();
        double perArea =
                Math.sqrt(g * state.pressure() * state.density()) * Math.pow(2 / (g + 1), (g + 1) / (2 * (g - 1)));
        assertThat(rest.flow()).isCloseTo(new TurbineMap(turbine).nozzleArea() * perArea, withinPercentage(3));
        assertThat(rest.temperature()).isCloseTo(930, withinPercentage(0.5));
    }

    @Test
    void speedRisesToWhatIsAskedFor() {
        TankHeadRun run = TankHeadRuns.of(HERON, 0.3, 290);
        assertThat(run.reached()).isTrue();
        assertThat(run.breakaway()).isGreaterThan(1);
        assertThat(run.speedFraction()).isBetween(0.3, 0.32);
        for (int i = 1; i < run.points().size(); i++) {
            assertThat(run.points().get(i).speedFraction())
                    .isGreaterThan(run.points().get(i - 1).speedFraction());
        }
    }

    @Test
    void aWarmJacketStartsAnExpanderFasterThanAColdOne() {
        TankHeadRun warm = TankHeadRuns.of(AVOCET, 0.4, 290);
        TankHeadRun cold = TankHeadRuns.of(AVOCET, 0.4, 120);
        assertThat(warm.reached()).isTrue();
        assertThat(cold.time()).isGreaterThan(warm.time());
        assertThat(warm.metalTemperature()).isLessThan(290);
    }

    /** A coolant that is dumped is no way out for the gas of the turbines, which still goes into the chamber. */
    @Test
    void aDumpedCoolantIsNoWayOut() {
        EngineBalance dumping = balance(
                "avocet",
                Map.of(
                        "cooling.circuits",
                        "[{name = \"nozzle\", coolant = \"fuel\", flow_fraction = 0.03, dump = {}}]"));
        assertThat(dumping.exhausts()).hasSize(1).noneMatch(ExhaustJet::ofTurbines);
        assertThat(TankHeadRuns.of(dumping, 0.4, 290).time())
                .isCloseTo(TankHeadRuns.of(AVOCET, 0.4, 290).time(), withinPercentage(5));
    }

    /** Conservation: the heat that the gas takes is what the metal gives; the lump cools by the flow's share of it. */
    @Test
    void theMetalOnlyCools() {
        TankHeadRun run = TankHeadRuns.of(AVOCET, 0.4, 290);
        for (int i = 1; i < run.points().size(); i++) {
            assertThat(run.points().get(i).metalTemperature())
                    .isLessThan(run.points().get(i - 1).metalTemperature());
            assertThat(run.points().get(i).temperature())
                    .isLessThanOrEqualTo(run.points().get(i).metalTemperature());
        }
    }

    @Test
    void tanksBarelyAboveTheAtmosphereCannotStartAGroundEngine() {
        EngineBalance weak =
                balance("heron", Map.of("tanks.fuel.pressure", "1.2 bar", "tanks.oxidizer.pressure", "3 bar"));
        TankHeadRun run = TankHeadRuns.of(weak, 0.4, 290);
        assertThat(run.reached()).isFalse();
        assertThat(run.why()).isNotBlank();
    }

    @Test
    void otherCyclesAreRefused() {
        EngineBalance dunlin = balance("dunlin", Map.of());
        assertThatThrownBy(() -> TankHeadRuns.of(dunlin, 0.4, 290))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("expanders and gas generators");
    }
}
