package dev.penstock.cooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.protection.Ablator;
import dev.penstock.cooling.protection.HeatSinkWall;
import dev.penstock.cooling.protection.ProtectionStudy;
import dev.penstock.cooling.protection.Transpiration;
import dev.penstock.cooling.wall.TemperatureTable;
import dev.penstock.cooling.wall.WallMaterial;
import dev.penstock.errors.OutsideValidity;
import java.util.List;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;

/** Walls without a jacket: heat sink, ablator, transpiration. */
class TransientTest {

    private static TemperatureTable constant(String name, double value) {
        return new TemperatureTable(name, List.of(300.0), List.of(value));
    }

    private static WallMaterial constantCopper(double emissivity) {
        return new WallMaterial(
                "constant",
                "constant copper",
                8940,
                900,
                0.34,
                0.8,
                emissivity,
                constant("k", 380),
                constant("c", 390),
                constant("a", 17e-6),
                constant("E", 120e9),
                constant("y", 60e6),
                constant("u", 200e6),
                List.of("test"));
    }

    /** Published: semi-infinite solid with convection at its face, [incropera-2007] eq. 5.60. */
    @Test
    void hotFaceFollowsTheSemiInfiniteSolid() {
        double h = 5000;
        double alpha = 380.0 / (8940 * 390);
        double time = 1.0;
        HeatSinkWall.Outcome outcome =
                HeatSinkWall.fire(constantCopper(0.01), 0.2, 300, new HeatSinkWall.Firing(h, 3000, time, 0, 1));
        double root = h * Math.sqrt(alpha * time) / 380;
        double share = 1 - Math.exp(root * root) * Erf.erfc(root);
        assertThat(outcome.peakTemperature() - 300).isCloseTo(2700 * share, within(0.01 * 2700 * share));
    }

    @Test
    void heatAbsorbedIsStoredOrRadiated() {
        HeatSinkWall.Outcome outcome =
                HeatSinkWall.fire(constantCopper(0.8), 0.005, 300, new HeatSinkWall.Firing(3000, 3000, 0.5, 2.0, 10));
        assertThat(outcome.heatAbsorbed())
                .isCloseTo(outcome.heatStored() + outcome.heatRadiated(), within(1e-9 * outcome.heatAbsorbed()));
        assertThat(outcome.history()).hasSizeGreaterThan(100);
        assertThat(outcome.timeToLimit()).isPresent();
    }

    @Test
    void pausesKeepAPulsedWallCooler() {
        WallMaterial niobium = Cases.WALLS.material("niobium-c103");
        double pulsed = HeatSinkWall.fire(niobium, 0.002, 300, new HeatSinkWall.Firing(800, 2800, 0.5, 20, 8))
                .peakTemperature();
        double steady = HeatSinkWall.fire(niobium, 0.002, 300, new HeatSinkWall.Firing(800, 2800, 4.0, 0, 1))
                .peakTemperature();
        assertThat(pulsed).isLessThan(steady);
    }

    /** Identity: the flow found balances the blown boundary layer. */
    @Test
    void transpirationBalancesTheBlownBoundaryLayer() {
        double flow = Transpiration.massFlux(2000, 3000, 900, 120, 3500);
        double blown = 2000 * Transpiration.reduction(flow * 3500 / 2000);
        assertThat(blown * (3000 - 900)).isCloseTo(flow * 3500 * (900 - 120), within(1e-6 * flow * 3500 * 780));
        assertThatThrownBy(() -> Transpiration.massFlux(2000, 800, 900, 120, 3500))
                .isInstanceOf(OutsideValidity.class)
                .hasMessageContaining("wall temperature");
    }

    @Test
    void ablatorThicknessGrowsWithTimeAndFlux() {
        Ablator silica = Ablator.SILICA_PHENOLIC;
        assertThat(silica.thickness(2e6, 2500, 300, 60)).isGreaterThan(silica.thickness(2e6, 2500, 300, 30));
        assertThat(silica.recession(2e6)).isCloseTo(2e6 / (1730 * 12e6), within(1e-12));
        assertThat(silica.charDepth(800, 300, 60)).isZero();
    }

    @Test
    void protectionOptionsAreSortedByMassAndSayWhatCannotStand() {
        ProtectionStudy study = new ProtectionStudy(ProtectionStudy.Load.ofFlux(0.5e6, 2500, 60, 300));
        List<ProtectionStudy.Option> options = study.compare(
                List.of(Cases.WALLS.material("niobium-c103"), Cases.WALLS.material("copper")),
                List.of(Ablator.SILICA_PHENOLIC, Ablator.CORK));
        assertThat(options).hasSize(4);
        List<Double> masses = options.stream()
                .filter(ProtectionStudy.Option::possible)
                .map(ProtectionStudy.Option::arealMass)
                .toList();
        assertThat(masses).isSorted().isNotEmpty();
        ProtectionStudy.Option film = study.transpired(Cases.FLUIDS.propellant("methane"), 1e6, 600, 10);
        assertThat(film.possible()).isTrue();
        assertThat(film.arealMass()).isGreaterThan(10);
    }
}
