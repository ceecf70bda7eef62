package dev.penstock.cooling.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fin model against two-dimensional conduction. */
class ChannelCellTest {

    private static ChannelCell.Setting setting(double width, double height, double land, double k, double coolant) {
        return new ChannelCell.Setting(width, height, land, 0.8e-3, 2e-3, k, 20e3, 3300, 1e6, coolant, 250);
    }

    private static double finFlux(ChannelCell.Setting s) {
        double efficiency = FinEfficiency.of(s.coolantCoefficient(), s.conductivity(), s.land(), s.height());
        double area = FinEfficiency.areaFactor(efficiency, s.width(), s.height(), s.land());
        double gas = s.adiabaticWallTemperature() + s.radiation() / s.gasCoefficient();
        return (gas - s.coolantTemperature())
                / (1 / s.gasCoefficient() + s.wall() / s.conductivity() + 1 / (s.coolantCoefficient() * area));
    }

    /** Copper and steel, low and tall channels: the fin model gives the flux within 7 %; it leaves out the roof. */
    @ParameterizedTest(name = "{0} x {1} mm, land {2} mm, k {3}, h {4}")
    @CsvSource({
        "1.0, 4.0, 1.0, 320, 50000",
        "0.8, 8.0, 0.8, 300, 50000",
        "2.0, 3.0, 1.0, 320, 20000",
        "1.5, 6.0, 0.7, 300, 80000",
        "1.0, 1.0, 1.0, 320, 30000",
        "1.0, 3.0, 0.6, 25, 10000",
    })
    void finModelGivesTheFluxOfTwoDimensionalConduction(
            double width, double height, double land, double k, double coolant) {
        ChannelCell.Setting s = setting(1e-3 * width, 1e-3 * height, 1e-3 * land, k, coolant);
        ChannelCell.Answer answer = ChannelCell.solve(s);
        assertThat(finFlux(s)).isCloseTo(answer.heatFlux(), within(0.07 * answer.heatFlux()));
        assertThat(Math.abs(answer.imbalance())).isLessThan(1e-11);
        assertThat(answer.hottest()).isGreaterThanOrEqualTo(answer.meanHotFace());
        assertThat(answer.meanHotFace()).isGreaterThanOrEqualTo(answer.coldestHotFace());
    }

    /** Channels as sized for methane and hydrogen, thin and thick walls: the closed form has the hot spot within a third or 10 K. */
    @ParameterizedTest(name = "{0} x {1} mm, land {2} mm, wall {3} mm")
    @CsvSource({
        "1.53, 12.5, 1.53, 0.7, 326, 12850, 25870, 298",
        "1.14, 11.5, 1.23, 0.5, 300, 12607, 25025, 320",
        "0.70, 10.0, 0.70, 0.3, 300, 20684, 44713, 247",
        "0.84, 11.0, 0.56, 0.7, 326, 20500, 40000, 243",
        "1.00, 10.0, 1.00, 0.8, 300, 30000, 100000, 60",
        "2.00, 10.0, 2.00, 0.8, 300, 2000, 10000, 300",
        "1.00, 5.0, 1.00, 0.8, 20, 3000, 10000, 300",
    })
    void theHotSpotIsThatOfTwoDimensionalConduction(
            double width, double height, double land, double wall, double k, double gas, double coolant, double bulk) {
        double w = 1e-3 * width;
        double h = 1e-3 * height;
        double l = 1e-3 * land;
        double t = 1e-3 * wall;
        ChannelCell.Setting s = new ChannelCell.Setting(w, h, l, t, 2 * t, k, gas, 3400, 0, coolant, bulk);
        double area = FinEfficiency.areaFactor(FinEfficiency.of(coolant, k, l, h), w, h, l);
        double flux = (3400 - bulk) / (1 / gas + t / k + 1 / (coolant * area));
        double exact = ChannelCell.solve(s).hottest() - (3400 - flux / gas);
        assertThat(HotSpot.excess(w, h, l, t, k, gas, coolant, 3400 - bulk))
                .isCloseTo(exact, within(Math.max(10, 0.34 * exact)));
    }

    /** Limit: small steps of a dimension are small steps of the answer, all of one size; a grid that changed with it would leap. */
    @Test
    void theHottestPlaceIsAsSmoothAsTheChannel() {
        double[] hottest = new double[24];
        for (int i = 0; i < hottest.length; i++) {
            hottest[i] = ChannelCell.solve(setting(1e-3, 5e-3, 1e-3 + 5e-6 * i, 320, 50e3), 8)
                    .hottest();
        }
        double first = Math.abs(hottest[1] - hottest[0]);
        for (int i = 2; i < hottest.length; i++) {
            double bend = hottest[i] - 2 * hottest[i - 1] + hottest[i - 2];
            assertThat(bend).as("step %d", i).isCloseTo(0, within(0.02 * first));
        }
    }

    @Test
    void aFinerGridMovesTheAnswerLittle() {
        ChannelCell.Setting s = setting(1e-3, 5e-3, 1e-3, 320, 50e3);
        ChannelCell.Answer coarse = ChannelCell.solve(s, 12);
        ChannelCell.Answer fine = ChannelCell.solve(s, 36);
        assertThat(coarse.heatFlux()).isCloseTo(fine.heatFlux(), within(2e-3 * fine.heatFlux()));
    }

    /** Limit: metal that conducts perfectly leaves only the two films. */
    @Test
    void perfectMetalLeavesTheTwoFilms() {
        ChannelCell.Setting s = setting(1e-3, 3e-3, 1e-3, 1e7, 30e3);
        double area = (1e-3 + 2 * 3e-3 + 1e-3) / 2e-3; // floor, two sides and roof over the pitch
        double expected = (3300 + 1e6 / 20e3 - 250) / (1 / 20e3 + 1 / (30e3 * area));
        assertThat(ChannelCell.solve(s).heatFlux()).isCloseTo(expected, within(1e-3 * expected));
    }
}
