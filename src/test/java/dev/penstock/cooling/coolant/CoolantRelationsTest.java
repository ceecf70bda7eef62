package dev.penstock.cooling.coolant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import org.junit.jupiter.api.Test;

/** Heat transfer of coolants worked by hand from the equations of the cards, with arguments whose powers are round. */
class CoolantRelationsTest {

    /** 0.025 · (10⁵)^0.8 = 250; 4^−0.55 = 0.4665165; 0.25^0.4 = 0.5743492. */
    @Test
    void mcCarthyAndWolf() {
        assertThat(McCarthyWolf.nusselt(1e5, 1, 1)).isCloseTo(250, within(1e-9));
        assertThat(McCarthyWolf.nusselt(1e5, 0.25, 4)).isCloseTo(250 * 0.4665165 * 0.5743492, withinPercentage(1e-5));
    }

    /** 0.0208 · 10⁴ · (1 + 0.1457). */
    @Test
    void hessAndKunz() {
        assertThat(HessKunz.nusselt(1e5, 1, 10)).isCloseTo(238.3056, within(1e-9));
        assertThat(HessKunz.nusselt(1e5, 0.25, 10)).isCloseTo(238.3056 * 0.5743492, withinPercentage(1e-5));
    }

    /** 0.0025 · 10⁵ · √(9/4) · 8^(2/3) · 32^−0.2 · (1 + 2/10) = 900; nearer than two diameters the last factor stays 2. */
    @Test
    void spencerAndRousar() {
        assertThat(SpencerRousar.nusselt(1e5, 1, 4, 9, 8, 32, 10)).isCloseTo(900, within(1e-9));
        assertThat(SpencerRousar.nusselt(1e5, 1, 4, 9, 8, 32, 1)).isCloseTo(1500, within(1e-9));
    }

    /** 0.0183 · (10⁵)^0.82 · √4 = 460.76670; the exponent by the four cases of the card. */
    @Test
    void jacksonAndHall() {
        assertThat(Jackson.nusselt(1e5, 4, 1, 1, 0.4)).isCloseTo(460.7667, within(1e-4));
        assertThat(Jackson.nusselt(1e5, 4, 0.5, 2, 1)).isCloseTo(460.7667 * 0.8122524 * 2, withinPercentage(1e-5));
        assertThat(Jackson.exponent(300, 200, 400)).isEqualTo(0.4);
        assertThat(Jackson.exponent(500, 300, 400)).isCloseTo(0.45, within(1e-12));
        assertThat(Jackson.exponent(600, 440, 400)).isCloseTo(0.45, within(1e-12));
        assertThat(Jackson.exponent(600, 500, 400)).isCloseTo(0.4, within(1e-12));
    }

    /** 1.354·10⁻³ cp/β with β from the volume ratio over a tenth of the step, at methane's peak of heat capacity. */
    @Test
    void deteriorationSetsInByHeatCapacityOverExpansion() {
        Fluid methane = FluidLibrary.open().propellant("methane").fluid();
        double t = 203;
        double expansion = Math.log(methane.atPressureTemperature(6e6, t - 0.02).density()
                        / methane.atPressureTemperature(6e6, t + 0.02).density())
                / 0.04;
        double heat = methane.atPressureTemperature(6e6, t).isobaricHeatCapacity();
        try (FluidCursor cursor = methane.cursor()) {
            assertThat(DeteriorationOnset.fluxOverMassFlux(cursor, 6e6, t))
                    .isCloseTo(1.354e-3 * heat / expansion, withinPercentage(1));
        }
    }
}
