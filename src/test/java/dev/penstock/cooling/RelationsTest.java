package dev.penstock.cooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.coolant.ChannelFriction;
import dev.penstock.cooling.coolant.CurvedChannel;
import dev.penstock.cooling.coolant.DittusBoelter;
import dev.penstock.cooling.coolant.Gnielinski;
import dev.penstock.cooling.coolant.SiederTate;
import dev.penstock.cooling.gas.Bartz;
import dev.penstock.cooling.gas.RecoveryTemperature;
import dev.penstock.cooling.gas.SootLayer;
import dev.penstock.cooling.wall.FinEfficiency;
import dev.penstock.validation.Evidence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Single relations against numbers worked out by hand from the published equations. */
class RelationsTest {

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/cooling/relations.csv", numLinesToSkip = 1)
    void agreesWithTheWorkedNumber(
            String name,
            String relation,
            Double a,
            Double b,
            Double c,
            Double d,
            double expected,
            String unit,
            double tolerance,
            String kind,
            String source) {
        assertThat(Evidence.of(kind, source)).isEqualTo(Evidence.WORKED);
        double got =
                switch (relation) {
                    case "gnielinski-friction" -> Gnielinski.smoothFriction(a);
                    case "gnielinski" -> Gnielinski.nusselt(a, b, Gnielinski.smoothFriction(a));
                    case "dittus-boelter" -> DittusBoelter.nusselt(a, b);
                    case "sieder-tate" -> SiederTate.nusselt(a, b, c);
                    case "friction" -> ChannelFriction.factor(a, b);
                    case "curvature" -> CurvedChannel.factor(a, b);
                    case "fin" -> FinEfficiency.of(a, b, c, d);
                    case "sigma" -> Bartz.sigma(a, b, c, d);
                    default -> throw new IllegalArgumentException(relation);
                };
        assertThat(got).as("%s, %s", name, source).isCloseTo(expected, within(tolerance * expected));
    }

    /** Handbook W12, worked from the closed form of [bartz-1957] in SI; ±0.1 %. */
    @Test
    void bartzInSiAgreesWithTheWorkedThroat() {
        double sigma = Bartz.sigma(700, 3550, 1.2, 1);
        double h = sigma * Bartz.throatCoefficient(0.100, 0.060, 1e-4, 2000, 0.5, 7e6, 1790);
        double adiabatic = RecoveryTemperature.of(3550, 1.2, 1, 0.5);
        assertThat(sigma).isCloseTo(1.3860, within(1e-3 * 1.3860));
        assertThat(h).isCloseTo(21_595, within(1e-3 * 21_595));
        assertThat(adiabatic).isCloseTo(3483.4, within(1e-3 * 3483.4));
        assertThat(h * (adiabatic - 700)).isCloseTo(60.11e6, within(1e-3 * 60.11e6));
    }

    /**
     * Sample calculation 4-3 of [nasa-sp-125], p. 102-103: 1000 psia, 6140 °R, M 22.5, γ 1.222, c* 5660 ft/s, throat
     * 24.9 in, radius of curvature 11.71 in; cp 0.485, Pr 0.815 and the estimate of viscosity as the book makes them. The
     * throat coefficient is printed as 0.0027 Btu/(in² s °F), that is 2.944e6 W/(m² K) times it, to two digits.
     */
    @Test
    void bartzAgreesWithTheKeroseneSampleChamber() {
        double viscosity = 46.6e-10 * Math.sqrt(22.5) * Math.pow(6140, 0.6) * 17.858; // lb/(in s) to Pa s
        double h = Bartz.throatCoefficient(
                24.9 * 0.0254, 11.71 * 0.0254, viscosity, 0.485 * 4186.8, 0.815, 1000 * 6894.757, 5660 * 0.3048);
        assertThat(h / 2.9437e6).isCloseTo(0.0027, within(0.02 * 0.0027));
    }

    /**
     * Sample calculation 4-4 of [nasa-sp-125], p. 109-113: with the carbon deposit the throat conducts 0.00067
     * Btu/(in² s °F); flux from a wall at 1188 °R with an adiabatic wall temperature of 5667 °R is 3.00 Btu/(in² s).
     */
    @Test
    void carbonDepositTakesTheSampleChamberToItsPrintedFlux() {
        double gas = 0.0027 * 2.9437e6;
        double combined = 1 / (1 / gas + SootLayer.TEXTBOOK_OVER_MEASURED * SootLayer.resistance(0, 1000 * 6894.757));
        assertThat(combined / 2.9437e6).isCloseTo(0.00067, within(0.01 * 0.00067));
        double flux = combined * (5667 - 1188) / 1.8;
        assertThat(flux / 1.635e6).isCloseTo(3.00, within(0.03 * 3.00));
    }
}
