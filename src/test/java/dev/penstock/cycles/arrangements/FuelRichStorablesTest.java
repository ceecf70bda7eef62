package dev.penstock.cycles.arrangements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.Warning;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Engines whose turbines run on fuel-rich gas of a hydrazine and nitrogen tetroxide, with nothing but defaults. */
class FuelRichStorablesTest {

    private static Concept concept(String cycle, String fuel, double ratio, String pressure) {
        return Concepts.READER.parse(
                "storable",
                """
                name = "Dipper"
                cycle = "%s"
                [propellants]
                oxidizer = "nitrogen-tetroxide"
                fuel = "%s"
                mixture_ratio = %s
                [engine]
                thrust_vacuum = "800 kN"
                chamber_pressure = "%s"
                [nozzle]
                area_ratio = 40
                """
                        .formatted(cycle, fuel, ratio, pressure),
                Map.of());
    }

    /**
     * The gas of the burner is no colder than the fuel's table begins: no mixture of such a fuel has the 850 or 900 K of other gas. The
     * first rows are from memory, the published 1181.5 K of one engine [nasa-sp-8107] lies a row higher.
     */
    @ParameterizedTest
    @CsvSource({
        "full-flow, udmh, 2.6, 15 MPa, FUEL_RICH, 960",
        "full-flow, mmh, 2.0, 12 MPa, FUEL_RICH, 1030",
        "staged-fuel-rich, udmh, 2.6, 8 MPa, FUEL_RICH, 960",
        "gas-generator, mmh, 2.0, 6 MPa, GENERATOR, 1030",
        "gas-generator, hydrazine-50, 1.9, 6 MPa, GENERATOR, 1100",
        "gas-generator, uh-25, 1.7, 6 MPa, GENERATOR, 960"
    })
    void closesOnDefaultsAndSaysThatItsGasIsInDoubt(
            String cycle, String fuel, double ratio, String pressure, Burner burner, double temperature) {
        Concept concept = concept(cycle, fuel, ratio, pressure);
        assertThat(concept.burners().get(burner).temperature()).hasValue(temperature);
        EngineBalance balance = Concepts.STUDY.balance(concept);
        assertThat(balance.stations().stream()
                        .filter(s -> s.name().equals(burner.title() + " outlet"))
                        .findFirst()
                        .orElseThrow()
                        .temperature())
                .isCloseTo(temperature, within(0.01));
        assertThat(balance.warnings()).extracting(Warning::message).anyMatch(m -> m.contains("from memory"));
    }

    /** Fuels whose tables reach that low keep the usual temperature, and so does a pair that the table is not of. */
    @ParameterizedTest
    @CsvSource({"rp-1, oxygen, 900", "mmh, oxygen, 900", "methane, oxygen, 900"})
    void otherGasKeepsTheUsualTemperature(String fuel, String oxidizer, double temperature) {
        Concept concept = Concepts.READER.parse(
                "other",
                """
                name = "Dipper"
                cycle = "gas-generator"
                [propellants]
                oxidizer = "%s"
                fuel = "%s"
                mixture_ratio = 2
                [engine]
                thrust_vacuum = "800 kN"
                chamber_pressure = "6 MPa"
                [nozzle]
                area_ratio = 20
                """
                        .formatted(oxidizer, fuel),
                Map.of());
        assertThat(concept.burners().get(Burner.GENERATOR).temperature()).hasValue(temperature);
    }
}
