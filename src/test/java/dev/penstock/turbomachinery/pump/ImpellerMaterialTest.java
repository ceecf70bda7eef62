package dev.penstock.turbomachinery.pump;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import org.junit.jupiter.api.Test;

class ImpellerMaterialTest {

    private final Propellant oxygen = FluidLibrary.open().propellant("oxygen");
    private final Propellant hydrogen = FluidLibrary.open().propellant("hydrogen");

    @Test
    void titaniumIsBarredInOxygenOnly() {
        assertThat(ImpellerMaterial.TITANIUM.barred(oxygen)).isTrue();
        assertThat(ImpellerMaterial.TITANIUM.barred(hydrogen)).isFalse();
        assertThat(ImpellerMaterial.NICKEL.objection(oxygen)).isEmpty();
    }

    @Test
    void lightStrongAlloysRunFastestInHydrogen() {
        // [nasa-sp-8109] from memory: titanium in hydrogen 600 to 700 m/s, nickel alloys in oxygen 370 to 450 m/s
        assertThat(ImpellerMaterial.TITANIUM.tipSpeed(hydrogen).high()).isBetween(600.0, 700.0);
        assertThat(ImpellerMaterial.NICKEL.tipSpeed(oxygen).mode()).isBetween(370.0, 450.0);
        for (ImpellerMaterial material : ImpellerMaterial.values()) {
            assertThat(material.tipSpeed(hydrogen).mode())
                    .isGreaterThan(material.tipSpeed(oxygen).mode());
        }
    }

    @Test
    void theUsualLimitsAreThoseOfTitaniumInHydrogenAndNickelInOxygen() {
        assertThat(PumpDefaults.of(hydrogen).tipSpeedLimit())
                .isEqualTo(ImpellerMaterial.TITANIUM.tipSpeed(hydrogen).mode());
        assertThat(PumpDefaults.of(oxygen).tipSpeedLimit())
                .isEqualTo(ImpellerMaterial.NICKEL.tipSpeed(oxygen).mode());
    }
}
