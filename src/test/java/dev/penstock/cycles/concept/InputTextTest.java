package dev.penstock.cycles.concept;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InputTextTest {

    /** Identities: conversions by definition of the units. */
    @ParameterizedTest
    @CsvSource({
        "0.2617993877991494, rad, 15 deg",
        "2000000.0, Pa, 2 MPa",
        "40000.0, Pa, 40 kPa",
        "7.0E-4, m, 0.7 mm",
        "0.985, -, 0.985",
        "0.8, '', 0.8",
        "computed, m, computed",
        "bell, '', bell"
    })
    void anInputReadsAsPeopleWriteIt(String value, String unit, String text) {
        assertThat(InputText.of(new ConceptInput("a.key", value, unit, false, "default")))
                .isEqualTo(text);
    }
}
