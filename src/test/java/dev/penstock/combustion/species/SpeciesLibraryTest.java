package dev.penstock.combustion.species;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.combustion.Mixtures;
import dev.penstock.errors.InvalidInput;
import dev.penstock.quantities.Constants;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The species files: what they hold, what a user may add, and what is said about mistakes. */
class SpeciesLibraryTest {

    private static final double R = Constants.MOLAR_GAS_CONSTANT;

    static List<Species> species() {
        return Mixtures.LIBRARY.species();
    }

    @Test
    void holdsManyGasSpeciesValidToSixThousandKelvin() {
        long count = species().stream()
                .filter(s -> !s.condensed() && s.maximumTemperature() >= 6000)
                .count();
        assertThat(count).isGreaterThanOrEqualTo(40);
    }

    /** Published: CODATA key values, entropy at 298.15 K and 1 bar and enthalpy of formation (from memory). */
    @ParameterizedTest
    @CsvSource({
        "H2, 130.680, 0", "O2, 205.152, 0", "N2, 191.609, 0", "H2O, 188.835, -241.826", "CO, 197.660, -110.53",
        "CO2, 213.785, -393.51", "H, 114.717, 217.998", "O, 161.059, 249.18", "N, 153.301, 472.68", "He, 126.153, 0",
        "Ar, 154.846, 0", "NH3, 192.77, -45.94", "C(gr), 5.74, 0", "H2O(L), 69.95, -285.83"
    })
    void standardStateIsThatOfTheKeyValues(String name, double entropy, double enthalpy) {
        ThermoInterval fit = Mixtures.LIBRARY.named(name).intervals().get(0);
        assertThat(R * fit.entropy(298.15)).isCloseTo(entropy, within(0.06));
        assertThat(R * 0.29815 * fit.enthalpy(298.15)).isCloseTo(enthalpy, within(0.5));
    }

    /** Identity: dh/dT = cp and ds/dT = cp/T in every interval; the intervals join within what the report prints. */
    @ParameterizedTest
    @MethodSource("species")
    void fitsAreConsistent(Species s) {
        ThermoInterval before = null;
        for (ThermoInterval fit : s.intervals()) {
            double t = 0.5 * (fit.low() + fit.high());
            double d = 1e-4 * t;
            double slope = (fit.enthalpy(t + d) * (t + d) - fit.enthalpy(t - d) * (t - d)) / (2 * d);
            assertThat(slope).isCloseTo(fit.heatCapacity(t), within(1e-6));
            double entropySlope = (fit.entropy(t + d) - fit.entropy(t - d)) / (2 * d) * t;
            assertThat(entropySlope).isCloseTo(fit.heatCapacity(t), within(1e-6));
            if (before != null) {
                assertThat(fit.enthalpy(fit.low())).isCloseTo(before.enthalpy(fit.low()), within(1e-5));
                assertThat(fit.entropy(fit.low())).isCloseTo(before.entropy(fit.low()), within(1e-5));
            }
            before = fit;
        }
    }

    @Test
    void setHoldsOnlySpeciesOfItsElements() {
        SpeciesSet set = Mixtures.LIBRARY.speciesFor(Set.of("H", "O"));
        assertThat(set.species().stream().map(Species::name).collect(Collectors.toSet()))
                .containsExactlyInAnyOrder("H", "H2", "O", "O2", "O3", "OH", "H2O", "HO2", "H2O2", "H2O(L)");
    }

    @Test
    void elementWithoutGasSpeciesIsRefused() {
        assertThatThrownBy(() -> Mixtures.LIBRARY.speciesFor(Set.of("H", "F")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("F");
    }

    @Test
    void userAddsASpeciesByAddingAFile(@TempDir Path home) throws IOException {
        copyData(home);
        // fluorine, made up from argon's figures: only the way in is tested here
        Files.writeString(
                home.resolve("fluids/gas/own.toml"),
                """
                [[species]]
                name = "F"
                phase = "gas"
                atoms = { F = 1 }
                source = "own"
                temperatures_K = [200, 6000]
                coefficients = [2.5, 0, 0, 0, 0, 8800, 4.4]
                """);
        SpeciesSet set = SpeciesLibrary.open(home).speciesFor(Set.of("H", "F"));
        assertThat(set.indexOf("F")).isNotNegative();
    }

    @Test
    void everyMistakeOfAFileIsNamed(@TempDir Path home) throws IOException {
        copyData(home);
        Files.writeString(
                home.resolve("fluids/gas/own.toml"),
                """
                [[species]]
                name = "F"
                phase = "gaz"
                source = "own"
                temperatures_K = [200, 1000, 6000]
                coefficients = [2.5, 0, 0, 0, 0, 8800, 4.4]
                """);
        assertThatThrownBy(() -> SpeciesLibrary.open(home))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("own.toml:3")
                .hasMessageContaining("gaz")
                .hasMessageContaining("atoms")
                .hasMessageContaining("14 in all");
    }

    @Test
    void speciesDescribedTwiceIsRefused(@TempDir Path home) throws IOException {
        copyData(home);
        Files.copy(Path.of("fluids/gas/inert.toml"), home.resolve("fluids/gas/twice.toml"));
        assertThatThrownBy(() -> SpeciesLibrary.open(home))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("already");
    }

    private static void copyData(Path home) throws IOException {
        Path target = Files.createDirectories(home.resolve("fluids/gas"));
        for (String name : new String[] {"hydrogen-oxygen.toml", "inert.toml"}) {
            Files.copy(Path.of("fluids/gas", name), target.resolve(name));
        }
    }
}
