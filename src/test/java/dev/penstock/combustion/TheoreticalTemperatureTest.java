package dev.penstock.combustion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.gas.GasState;
import dev.penstock.validation.Evidence;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Flame temperature, molar mass and mixture enthalpy against remembered tables and cases of an independent calculation. */
class TheoreticalTemperatureTest {

    private static final double PRESSURE = 6.894757e6; // 1000 psia

    static List<String> rows() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/combustion/theoretical_temperature.csv")).stream()
                .filter(line -> !line.startsWith("#") && !line.startsWith("case,"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void flameIsThatOfTheTable(String row) {
        String[] cells = row.split(",");
        assertThat(Evidence.of(cells[8], cells[0])).isIn(Evidence.FROM_MEMORY, Evidence.INDEPENDENT);
        Reactants mixture = Mixtures.of(named(cells[1]), named(cells[2]), Double.parseDouble(cells[3]));
        GasState gas = EquilibriumSolver.of(Mixtures.LIBRARY, mixture).solveEnthalpyPressure(mixture, PRESSURE);
        if (!cells[4].isEmpty()) {
            double tolerance = Double.parseDouble(cells[5]);
            assertThat(gas.temperature()).as(row).isCloseTo(Double.parseDouble(cells[4]), within(tolerance));
        }
        if (!cells[6].isEmpty()) {
            double tolerance = Double.parseDouble(cells[7]);
            assertThat(gas.molarMass()).as(row).isCloseTo(Double.parseDouble(cells[6]), within(tolerance));
        }
    }

    private static Reactants named(String id) {
        return Stream.concat(Mixtures.OXIDIZERS.stream(), Mixtures.FUELS.stream())
                .filter(r ->
                        r.parts().stream().anyMatch(p -> p.propellant().id().equals(id)))
                .findFirst()
                .orElseThrow();
    }

    /**
     * NASA RP-1311 part II, example 8: inputs as printed; T, M and density recomputed from the same data by an independent
     * calculation (printed output not at hand) that took 1 atm as standard pressure, which alone moves T by 1.3 K.
     */
    @Test
    void hydrogenAndOxygenBurnAtTheTemperatureOfExampleEight() {
        Reactants mixture = Mixtures.of(Mixtures.OXYGEN, Mixtures.HYDROGEN, 5.55157);
        GasState gas = EquilibriumSolver.of(Mixtures.LIBRARY, mixture).solveEnthalpyPressure(mixture, 5.33172e6);
        assertThat(gas.temperature()).isCloseTo(3388.2, withinPercentage(0.1));
        assertThat(gas.molarMass()).isCloseTo(12.720e-3, withinPercentage(0.1));
        assertThat(gas.density()).isCloseTo(2.4075, withinPercentage(0.1));
    }

    /** Check numbers computed from the stated heats of formation: h = (MR·h_ox + h_f)/(1 + MR), in kJ/kg. */
    @ParameterizedTest
    @CsvSource({
        "oxygen, hydrogen, 5.55157, -1026.05",
        "oxygen, hydrogen, 6, -986.31",
        "oxygen, methane, 3.0, -1694.8",
        "oxygen, rp-1, 2.56, -788.4"
    })
    void mixtureEnthalpyIsTheWeightedMean(String oxidizer, String fuel, double ratio, double expected) {
        Reactants mixture = Mixtures.of(named(oxidizer), named(fuel), ratio);
        assertThat(mixture.enthalpy() / 1e3).isCloseTo(expected, withinPercentage(0.02));
    }

    /** Likewise 50/50 hydrazine and UDMH, and peroxide of 98 percent by ideal mixing. */
    @Test
    void blendsHaveTheEnthalpyOfTheirParts() {
        assertThat(Mixtures.HYDRAZINE_50.enthalpy() / 1e3).isCloseTo(1187.9, withinPercentage(0.02));
        assertThat(Mixtures.PEROXIDE_98.enthalpy() / 1e3).isCloseTo(-5727.5, withinPercentage(0.02));
    }
}
