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
