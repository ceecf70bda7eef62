package dev.penstock.quantities;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitsTest {

    /** Customary units: NIST SP 811 (2008), appendix B.8, factors as printed there. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            7.5 MPa        | PRESSURE          | 7.5e6
            10MPa          | PRESSURE          | 1e7
            1 bar          | PRESSURE          | 1e5
            1 atm          | PRESSURE          | 101325
            1 psi          | PRESSURE          | 6894.757
            1000 psia      | PRESSURE          | 6894757
            750 klbf       | FORCE             | 3336166.2
            1 hp           | POWER             | 745.6999
            55000 hp       | POWER             | 4.101349e7
            30000 rpm      | ROTATIONAL_SPEED  | 3141.592654
            12 420 gpm     | MASS_FLOW         |
            15 deg         | ANGLE             | 0.2617993878
            1400 degF      | TEMPERATURE       | 1033.15
            -183 degC      | TEMPERATURE       | 90.15
            1062 K         | TEMPERATURE       | 1062
            15 K           | TEMPERATURE_DIFFERENCE | 15
            15 degC        | TEMPERATURE_DIFFERENCE |
            2.1 kJ/(kg·K)  | SPECIFIC_HEAT     | 2100
            2.1 kJ/kg/K    | SPECIFIC_HEAT     | 2100
            71.17 lb/ft^3  | DENSITY           | 1140.034
            810 kg/m³      | DENSITY           | 810
            810 kg/m3      | DENSITY           | 810
            1.5 mPa·s      | VISCOSITY         | 0.0015
            0.0015 Pa·s    | VISCOSITY         | 0.0015
            12e-6 1/K      | THERMAL_EXPANSION | 1.2e-5
            3 Btu/s/in^2   | HEAT_FLUX         | 4.90602e6
            16.04 g/mol    | MOLAR_MASS        | 0.01604
            3.4            | RATIO             | 3.4
            40 %           | RATIO             | 0.4
            3.4            | PRESSURE          |
            3.4 K          | PRESSURE          |
            seven bar      | PRESSURE          |
            3 parsecs      | LENGTH            |
            1e400 Pa       | PRESSURE          |
            """)
    void readsValuesWithUnits(String text, Dimension dimension, Double expected) {
        if (expected == null) {
            assertThat(Units.parse(text, dimension)).isEmpty();
        } else {
            assertThat(Units.parse(text, dimension)).isPresent();
            assertThat(Units.parse(text, dimension).get() / expected).isEqualTo(1, within(3e-6));
        }
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyDimensionReadsTheExampleInItsOwnErrorMessage(Dimension dimension) {
        String description = dimension.description();
        String example = dimension == Dimension.RATIO ? "2.5" : description.replaceAll(".*\"(.*)\".*", "$1");
        assertThat(Units.parse(example, dimension)).as(description).isPresent();
    }

    @Property(tries = 200)
    void writingAndReadingGivesTheSameValue(@ForAll @DoubleRange(min = 1, max = 1e9) double pascal) {
        double psi = Units.in(pascal, "psi", Dimension.PRESSURE);
        assertThat(Units.parse(psi + " psi", Dimension.PRESSURE).orElseThrow() / pascal)
                .isEqualTo(1, within(1e-12));
    }

    @Test
    void rangesAreDescribedInWords() {
        assertThat(Range.POSITIVE.describe("Pa")).isEqualTo("above 0 Pa");
        assertThat(Range.of(1, 400).describe("bar")).isEqualTo("1 to 400 bar");
        assertThat(Range.of(0.0625, 1e9).describe("Pa")).isEqualTo("0.0625 to 1e+09 Pa");
        assertThat(Range.NOT_NEGATIVE.describe("K")).isEqualTo("0 K or more");
        assertThat(Range.POSITIVE.contains(0)).isFalse();
        assertThat(Range.ANY.contains(Double.NaN)).isFalse();
    }

    @Test
    void whatIsNoQuantityIsNoneHoweverLongOrDeep() {
        assertThat(Units.parse("1e400 MPa", Dimension.PRESSURE)).isEmpty();
        assertThat(Units.parse("8 " + "(".repeat(20_000) + "MPa", Dimension.PRESSURE))
                .isEmpty();
        assertThat(Units.parse("8 MPa" + "·m/m".repeat(20_000), Dimension.PRESSURE))
                .isEmpty();
    }
}
