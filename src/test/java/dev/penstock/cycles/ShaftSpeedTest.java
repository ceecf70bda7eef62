package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import org.junit.jupiter.api.Test;

class ShaftSpeedTest {

    private static final Cycle EXPANDER = Cycle.all().stream()
            .filter(c -> c.id().equals("expander"))
            .findFirst()
            .orElseThrow();

    @Test
    void aTurbineOfLightGasHoldsItsShaftBackAndKeepsItsAnnulus() {
        EngineBalance balance = Concepts.balance("tern.toml");
        assertThat(shaft(balance, "fuel shaft").speedSetBy()).isEqualTo("annulus of the fuel turbine");
        LimitCheck annulus = balance.limits().stream()
                .filter(l -> l.name().equals("fuel turbine.annulus_speed"))
                .findFirst()
                .orElseThrow();
        assertThat(annulus.met()).isTrue();
        assertThat(annulus.value()).isGreaterThan(0.95 * annulus.limit());
    }

    @Test
    void aStatedSpeedIsKeptAndNamed() {
        Concept concept = Concepts.example(EXPANDER, "pumps.fuel.speed", "30000 rpm");
        EngineBalance balance = Concepts.STUDY.balance(concept);
        assertThat(shaft(balance, "fuel shaft").speedSetBy()).isEqualTo("the concept");
        assertThat(pump(balance, "fuel pump").speed()).isCloseTo(30_000 * Math.PI / 30, within(1e-6));
    }

    @Test
    void pumpsOnAGearboxKeepItsRatioAndItsTeethTheirSpeed() {
        Concept concept = Concepts.example(EXPANDER, "shafts.arrangement", "geared", "shafts.pump_speed_ratio", "2.5");
        EngineBalance balance = Concepts.STUDY.balance(concept);
        assertThat(pump(balance, "fuel pump").speed()
                        / pump(balance, "oxidizer pump").speed())
                .isCloseTo(2.5, withinPercentage(1e-9));
        assertThat(shaft(balance, "main shaft").speedSetBy()).isEqualTo("teeth of the gearbox");
        assertThat(balance.limits().stream().filter(l -> l.name().equals("main shaft.gear_speed")))
                .hasSize(1)
                .allMatch(LimitCheck::met);
    }

    @Test
    void turbinesInSeriesShareTheDropOfAnExpander() {
        EngineBalance balance = Concepts.STUDY.balance(Concepts.example(EXPANDER, "shafts.gas_path", "series"));
        assertThat(balance.turbines().get(0).duty().exitPressure())
                .isCloseTo(balance.turbines().get(1).duty().inletPressure(), withinPercentage(1e-9));
    }

    private static ShaftBalance shaft(EngineBalance balance, String name) {
        return balance.shafts().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static PumpSizing pump(EngineBalance balance, String name) {
        return balance.pumps().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
