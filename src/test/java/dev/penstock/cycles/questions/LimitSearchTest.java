package dev.penstock.cycles.questions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.arrangements.FullFlow;
import dev.penstock.cycles.arrangements.GasGenerator;
import dev.penstock.cycles.arrangements.PressureFed;
import dev.penstock.cycles.arrangements.StagedCombustion;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.errors.LimitReached;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LimitSearchTest {

    /** Identity: tank pressure = chamber pressure × (face ratio + losses) + suction loss, so the limit is known in closed form. */
    @Test
    void aPressureFedEngineEndsWhereTheTankEnds() {
        Concept concept = Concepts.example(new PressureFed(), "limits.tank_pressure", "2.5 MPa");
        LimitResult result = Concepts.STUDY.limit(concept);
        Station tank = result.balance().station(1);
        double factor = (tank.pressure() - 40e3) / result.chamberPressure();
        assertThat(result.chamberPressure()).isCloseTo((2.5e6 - 40e3) / factor, within(500.0));
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
        assertThat(result.points()).hasSizeLessThanOrEqualTo(8);
    }

    @Test
    void aStagedEngineReachesFurtherWithHotterGas() {
        Concept cool = Concepts.example(StagedCombustion.OXYGEN_RICH, "limits.turbine_temperature", "550 K");
        Concept hot = Concepts.example(StagedCombustion.OXYGEN_RICH, "limits.turbine_temperature", "700 K");
        LimitResult low = Concepts.STUDY.limit(cool);
        LimitResult high = Concepts.STUDY.limit(hot);
        assertThat(high.chamberPressure()).isGreaterThan(1.1 * low.chamberPressure());
        assertThat(low.bindingLimit()).isEqualTo("turbine inlet temperature");
        assertThat(low.explanation()).contains("MPa").contains("turbine");
    }

    @Test
    void aBalanceBeyondReachNamesThePressureThatCanBeReached() {
        Concept concept = Concepts.example(
                StagedCombustion.OXYGEN_RICH,
                "engine.chamber_pressure",
                "40 MPa",
                "preburner.oxidizer_rich.temperature",
                "500 K");
        assertThatThrownBy(() -> Concepts.STUDY.balance(concept))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("closes only up to a chamber pressure of about")
                .hasMessageContaining("40.00 MPa is asked for");
    }

    @Test
    void aTankThatIsTooWeakIsNamed() {
        Concept concept = Concepts.example(new PressureFed(), "tanks.fuel.pressure", "1.1 MPa");
        assertThatThrownBy(() -> Concepts.STUDY.balance(concept))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("in the fuel tank, which holds 1.100 MPa")
                .hasMessageContaining("tanks.fuel.pressure");
    }

    /** Effort by count: margins are nearly straight lines over pressure, so few pressures are tried. */
    @Test
    void aCooledFullFlowEngineIsFollowedDownToItsWallLimitInFewSteps() {
        String text = new FullFlow().example().shortest("full-flow", "Limit");
        LimitResult result = Concepts.STUDY.limit(Concepts.READER.parse("limit", text, Map.of()));
        assertThat(result.bindingLimit()).isEqualTo("cooling.wall_temperature");
        double wall = result.balance().cooling().get(0).peakWallTemperature();
        double allowed = result.held().stream()
                .filter(l -> l.name().equals("cooling.wall_temperature"))
                .findFirst()
                .orElseThrow()
                .limit();
        assertThat(wall).isLessThanOrEqualTo(allowed).isCloseTo(allowed, within(2e-3 * allowed));
        assertThat(result.points()).hasSizeLessThanOrEqualTo(12);
    }
}
