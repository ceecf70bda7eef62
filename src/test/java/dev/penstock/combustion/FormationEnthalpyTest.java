package dev.penstock.combustion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.combustion.species.Species;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.quantities.Constants;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Heats of formation of stored liquids two ways: the published value of the liquid against that of the gas at 298.15 K
 * [nasa-tm-4513] plus the real-fluid enthalpy difference from the dilute gas to the liquid by the equation of state.
 */
class FormationEnthalpyTest {

    private static final Path HOME = Path.of("").toAbsolutePath();
    private static final FluidLibrary FLUIDS = FluidLibrary.open(HOME);
    private static final SpeciesLibrary SPECIES = SpeciesLibrary.open(HOME);
    private static final double DILUTE = 100; // Pa: ideal gas within 1e-5 in enthalpy

    /**
     * Tolerances in kJ/mol, below 0.5 % but for hydrogen: its published value is 0.085 kJ/mol below the way over para gas
     * at 298.15 K, older data of vaporisation and the ortho-para difference together (1 K in flame temperature).
     */
    @ParameterizedTest
    @CsvSource({
        "oxygen, O2, 0.05",
        "hydrogen, H2, 0.10",
        "methane, CH4, 0.05",
        "propane, C3H8, 0.10",
        "ammonia, NH3, 0.05",
        "ethanol, C2H5OH, 0.20",
        "water, H2O, 0.02"
    })
    void liquidAndGasValuesAgreeThroughTheEquationOfState(String id, String species, double tolerance) {
        Propellant propellant = FLUIDS.propellant(id);
        Species gas = SPECIES.named(species);
        double t = 298.15;
        double ofGas = gas.intervals().get(0).enthalpy(t) * Constants.MOLAR_GAS_CONSTANT * t;
        double difference = propellant.referenceFluidEnthalpy()
                - propellant.fluid().atPressureTemperature(DILUTE, t).enthalpy();
        double fromGas = ofGas + difference * gas.molarMass();
        double stated = propellant.formationEnthalpy() * gas.molarMass();
        assertThat(fromGas / 1e3)
                .as("%s: %.3f kJ/mol from the gas, %.3f stated", id, fromGas / 1e3, stated / 1e3)
                .isCloseTo(stated / 1e3, within(tolerance));
    }
}
