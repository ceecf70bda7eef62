package dev.penstock.chamber.loss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.chamber.design.ContractionRatio;
import dev.penstock.chamber.design.InjectorDesign;
import dev.penstock.fluids.FluidLibrary;
import org.junit.jupiter.api.Test;

class VaporisationTest {

    private static final InjectorDesign LIQUID = InjectorDesign.of(false, false);
    private static final double USUAL = 0.9;

    private static Vaporisation.Pair pair(String oxidizer, String fuel, double mixtureRatio) {
        FluidLibrary fluids = FluidLibrary.open();
        return new Vaporisation.Pair(fluids.propellant(oxidizer), fluids.propellant(fuel), mixtureRatio);
    }

    private static double length(double thrust, double pressure, Vaporisation.Pair pair) {
        double throat = Math.sqrt(4 * thrust / (1.75 * pressure) / Math.PI);
        return Vaporisation.lengthFor(USUAL, ContractionRatio.usual(throat), LIQUID, pressure, pair);
    }

    /**
     * By hand, a contraction ratio of 6 at 1 MPa: both sprays of 25 µm drops at 0.2 MPa of injector drop, written out with the equation's
     * powers, leave 0.3 % at the length found.
     */
    @Test
    void aWideChamberIsAsLongAsTheFinestDropsNeed() {
        Vaporisation.Pair pair = pair("oxygen", "ethanol", 1.5);
        double length = Vaporisation.lengthFor(USUAL, 4.5, LIQUID, 1e6, pair);
        assertThat(length).isBetween(USUAL * 1.05, 1.7);
        double left = 0;
        for (Spray spray :
                new Spray[] {Spray.of(pair.oxidizer(), 0.6, 0.2e6, 1), Spray.of(pair.fuel(), 0.4, 0.2e6, 1)}) {
            double generalised = length
                    / Math.pow(4.5, 1.44)
                    * Math.pow(1 / 2.0684, 0.66)
                    / (Math.pow(1 - spray.reducedTemperature(), 0.4)
                            * Math.pow(25 / 76.2, 1.45)
                            * Math.pow(spray.velocity() / 30.48, 0.75)
                            * Math.pow(spray.latentHeat() / 325.6e3, 0.8)
                            * Math.pow(spray.molarMass() / 0.1, 0.35));
            left += spray.share() * Math.exp(-generalised / 0.11);
        }
        assertThat(left).isCloseTo(0.003, withinPercentage(0.01));
    }

    /** What vaporises anyway keeps the usual length; what never does gets 70 inches; gases have no drops. */
    @Test
    void theLengthIsBounded() {
        Vaporisation.Pair pair = pair("nitrogen-tetroxide", "mmh", 1.65);
        assertThat(Vaporisation.lengthFor(USUAL, 2, LIQUID, 5e6, pair)).isEqualTo(USUAL);
        assertThat(Vaporisation.lengthFor(USUAL, 10, LIQUID, 0.5e6, pair)).isEqualTo(1.78);
        assertThat(Vaporisation.lengthFor(2.5, 10, LIQUID, 0.5e6, pair)).isEqualTo(2.5);
        assertThat(Vaporisation.lengthFor(USUAL, 10, InjectorDesign.of(true, true), 0.5e6, pair))
                .isEqualTo(USUAL);
    }

    /** A limit: no step in thrust or pressure from 100 N to 10 MN and from 1 to 400 bar; steps of a per cent move it by less than two. */
    @Test
    void theLengthHasNoSteps() {
        Vaporisation.Pair pair = pair("nitrogen-tetroxide", "mmh", 1.65);
        for (double pressure = 1e5; pressure < 4e7; pressure *= 1.9) {
            double before = length(100, pressure, pair);
            for (double thrust = 100; thrust < 1e7; thrust *= 1.01) {
                double now = length(thrust, pressure, pair);
                assertThat(now).isBetween(USUAL, 1.78).isBetween(0.98 * before, 1.02 * before);
                before = now;
            }
        }
        for (double thrust : new double[] {100, 500, 3000}) {
            double before = length(thrust, 1e5, pair);
            for (double pressure = 1e5; pressure < 4e7; pressure *= 1.01) {
                double now = length(thrust, pressure, pair);
                assertThat(now).isBetween(0.98 * before, 1.02 * before);
                before = now;
            }
        }
    }

    /** Film theory: ln(1 + B) with the heat of decomposition over ln(1 + B) without, at 2500 K above the drop, is the lower end stated. */
    @Test
    void decompositionInTheFilmIsTheLowestOfTheStatedSpread() {
        // hydrazine: 156 kJ/mol to ammonia and nitrogen from its vapour, 44.8 kJ/mol to evaporate, cp 2.5 kJ/(kg K)
        double sensible = 2.5 * 2500;
        double latent = 44.8 / 0.03205;
        double slow = Math.log(1 + sensible / latent);
        double fast = Math.log(1 + (sensible + 156 / 0.03205) / latent);
        assertThat(fast / slow).isBetween(1.2, 1.3);
        for (String id : new String[] {"hydrazine", "hydrazine-50", "mmh", "udmh", "uh-25"}) {
            assertThat(FluidLibrary.open().propellant(id).combustion().dropBurning())
                    .isBetween(fast / slow, 4.0);
        }
    }
}
