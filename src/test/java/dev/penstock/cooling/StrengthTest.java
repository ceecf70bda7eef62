package dev.penstock.cooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.jacket.RadiationSkirt;
import dev.penstock.cooling.wall.FatigueLife;
import dev.penstock.cooling.wall.LinerBuckling;
import dev.penstock.cooling.wall.WallMaterial;
import dev.penstock.cooling.wall.WallStress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stress, life and buckling of the hot wall. */
class StrengthTest {

    /** Worked by hand from [nasa-sp-125] eq. 4-27: 50 MW/m², 0.7 mm, 320 W/(m K), 100 GPa, 17e-6 1/K, 0.3: 132.8 MPa. */
    @Test
    void thermalStressAgreesWithTheWorkedNumber() {
        assertThat(WallStress.thermal(100e9, 17e-6, 50e6, 0.7e-3, 0.3, 320)).isCloseTo(132.8e6, within(0.1e6));
    }

    /** Worked by hand from universal slopes [manson-1965] with σ_u/E 0.002 and RA 0.8. */
    @ParameterizedTest
    @CsvSource({"100, 0.0880", "400, 0.0400", "1000, 0.0241"})
    void strainRangeAgreesWithTheWorkedNumbers(double cycles, double strain) {
        assertThat(FatigueLife.strainRange(0.002, 0.8, cycles)).isCloseTo(strain, within(6e-5));
        assertThat(FatigueLife.cycles(0.002, 0.8, FatigueLife.strainRange(0.002, 0.8, cycles)))
                .isCloseTo(cycles, within(1e-6 * cycles));
    }

    /** Limit: a plate under its own thermal strain needs a slender floor to buckle. */
    @Test
    void aThickFloorDoesNotBuckleAndAThinOneDoes() {
        WallMaterial copper = Cases.WALLS.material("copper-silver-zirconium");
        double strain = copper.expansion().at(800) * 600;
        assertThat(LinerBuckling.channelStrain(copper, 800, 0.8e-3, 1e-3)).isGreaterThan(strain);
        assertThat(LinerBuckling.channelStrain(copper, 800, 0.3e-3, 10e-3)).isLessThan(strain);
    }

    /**
     * Worked by hand at 811 K: yield 160, ultimate 425 MPa, modulus 155 GPa give E_t/E = 0.1289, a reduced modulus of 0.2791 E, and with t/r =
     * 0.275 and ν = 0.3 a strain of 0.0465.
     */
    @Test
    void aTubesCrownAgreesWithTheWorkedNumber() {
        WallMaterial steel = Cases.WALLS.material("stainless-347");
        assertThat(LinerBuckling.tubeStrain(steel, 811, 0.33e-3, 2.4e-3)).isCloseTo(0.0465, within(1e-4));
    }

    /** Identity: the bending stress of a clamped plate grows with the square of its span. */
    @Test
    void floorStressGrowsWithTheSquareOfTheSpan() {
        assertThat(WallStress.channelFloor(10e6, 2e-3, 1e-3))
                .isCloseTo(4 * WallStress.channelFloor(10e6, 1e-3, 1e-3), within(1e-3));
        assertThat(WallStress.tube(10e6, 3e-3, 0.3e-3)).isCloseTo(50e6, within(1e-3));
    }

    /** Radiating skirt at 1 MW/m² with emissivity 0.8, from the Stefan-Boltzmann law by hand: 2167 K. */
    @Test
    void radiatingWallAgreesWithTheWorkedNumber() {
        assertThat(RadiationSkirt.equilibrium(1e6, 0.8)).isCloseTo(2167, within(1.0));
    }
}
