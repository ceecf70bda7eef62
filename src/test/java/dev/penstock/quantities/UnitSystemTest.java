package dev.penstock.quantities;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitSystemTest {

    /** Factors of NIST SP 811 (2008), appendix B; from memory. */
    @ParameterizedTest
    @CsvSource({
        "bar, 6894.757, psi",
        "kN, 4.448222, lbf",
        "K, 0.5555556, °R",
        "MW, 745.6999, hp",
        "mm, 0.0254, in",
        "m, 0.3048, ft",
        "km, 1852, nmi",
        "t, 0.4535924, lb",
        "kg/m³, 16.01846, lb/ft³",
        "kJ/kg, 2326, Btu/lb",
        "J/kg, 2.989067, ft·lbf/lb",
        "MW/m², 1635340, Btu/(in²·s)",
        "J/(kg·K), 4186.8, Btu/(lb·°R)"
    })
    void customaryUnitsHaveTheirPublishedSize(String metric, double size, String unit) {
        Scale scale = UnitSystem.US.reading(() -> Scale.of(metric));
        assertThat(scale.unit()).isEqualTo(unit);
        assertThat(scale.size()).isCloseTo(size, within(2e-6 * size));
    }

    @Test
    void aNumberIsWrittenInTheUnitsOfItsReader() {
        assertThat(Notation.PRESSURE.writeWithUnit(80e5)).isEqualTo("80.00 bar");
        assertThat(UnitSystem.US.reading(() -> Notation.PRESSURE.writeWithUnit(80e5)))
                .isEqualTo("1160 psi");
        assertThat(UnitSystem.SI.reading(() -> Notation.PRESSURE.writeWithUnit(80e5)))
                .isEqualTo("8.000 MPa");
        assertThat(UnitSystem.US.reading(() -> Notation.POWER.writeWithUnit(7.457e6)))
                .isEqualTo("10000 hp");
        assertThat(UnitSystem.SI.reading(() -> Notation.SPEED.writeWithUnit(3000)))
                .isEqualTo("3000 rad/s");
        assertThat(UnitSystem.US.reading(() -> Notation.ofUnit("m").writeWithUnit(0.254)))
                .isEqualTo("10.00 in");
        assertThat(UnitSystem.US.reading(() -> Notation.PERCENT.writeWithUnit(0.5)))
                .isEqualTo("50.0 %");
    }

    @Test
    void aChoiceEndsWithWhatIsWritten() {
        UnitSystem.US.reading(() -> {
            assertThat(UnitSystem.SI.reading(Notation.PRESSURE::unit)).isEqualTo("MPa");
            assertThat(Notation.PRESSURE.unit()).isEqualTo("psi");
            return null;
        });
        assertThat(Notation.PRESSURE.unit()).isEqualTo("bar");
    }

    /** Whatever somebody reads, they may write: each unit is known to the inputs, as one of the same dimension. */
    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyUnitThatIsReadCanBeWritten(UnitSystem system) {
        for (Dimension dimension : Dimension.values()) {
            if (!dimension.siUnit().isEmpty()) {
                String text =
                        system.reading(() -> Notation.ofUnit(dimension.siUnit()).writeWithUnit(1234.5));
                Optional<Double> read = Units.parse(text, dimension);
                assertThat(read).as(system + " " + dimension + ": " + text).isPresent();
                assertThat(read.get()).as(text).isCloseTo(1234.5, within(6.0));
            }
        }
    }

    @Test
    void aSystemIsFoundByItsShortName() {
        assertThat(Arrays.stream(UnitSystem.values()).map(s -> UnitSystem.named(s.id())))
                .containsExactly(UnitSystem.values());
        assertThat(UnitSystem.named("anything")).isEqualTo(UnitSystem.METRIC);
    }
}
