package dev.penstock.chamber.loss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import org.junit.jupiter.api.Test;

class SprayTest {

    /** At the reference state of the correlation the generalised length is the length itself; each factor by its power. */
    @Test
    void theGeneralisedLengthIsScaledByItsReferences() {
        Spray usual = new Spray(0.5, 30.48, 1, 0, 325.6e3, 0.1, 1);
        assertThat(usual.generalisedLength(76.2e-6, 0.2, 2.0684e6)).isCloseTo(0.2, withinPercentage(1e-9));
        Spray warm = new Spray(0.5, 2 * 30.48, 1, 0.6, 3 * 325.6e3, 0.05, 1.5);
        double factor = 1.5
                * Math.pow(4, 0.66)
                / (Math.pow(0.4, 0.4)
                        * Math.pow(0.5, 1.45)
                        * Math.pow(2, 0.75)
                        * Math.pow(3, 0.8)
                        * Math.pow(0.5, 0.35));
        assertThat(warm.generalisedLength(38.1e-6, 0.2, 4 * 2.0684e6)).isCloseTo(0.2 * factor, withinPercentage(1e-9));
        // throttled to a quarter: drops twice as large, a quarter as fast
        Spray slow = new Spray(0.5, 30.48, 0.25, 0, 325.6e3, 0.1, 1);
        assertThat(slow.generalisedLength(76.2e-6, 0.2, 2.0684e6))
                .isCloseTo(0.2 / (Math.pow(2, 1.45) * Math.pow(0.25, 0.75)), withinPercentage(1e-9));
        assertThat(slow.atDesign()).isEqualTo(usual);
    }

    /** From memory: methane at its normal boiling point takes 511 kJ/kg, oxygen 213 kJ/kg; v = 0.8 √(2Δp/ρ). */
    @Test
    void aSprayIsThatOfTheStoredPropellant() {
        for (String[] row : new String[][] {{"methane", "511e3"}, {"oxygen", "213e3"}}) {
            Propellant propellant = FluidLibrary.open().propellant(row[0]);
            Spray spray = Spray.of(propellant, 0.3, 2e6, 0.8);
            assertThat(spray.latentHeat()).as(row[0]).isCloseTo(Double.parseDouble(row[1]), withinPercentage(4));
            assertThat(spray.velocity())
                    .isCloseTo(0.8 * Math.sqrt(4e6 / propellant.storageState().density()), withinPercentage(1e-9));
            assertThat(spray.reducedTemperature())
                    .isCloseTo(
                            propellant.storageState().temperature()
                                    / propellant.fluid().criticalTemperature().orElseThrow(),
                            withinPercentage(1e-9));
            assertThat(spray.share()).isEqualTo(0.3);
            assertThat(spray.flowShare()).isEqualTo(0.8);
        }
    }
}
