package dev.penstock.quantities;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NotationTest {

    @ParameterizedTest
    @CsvSource({
        "0, 4, 0",
        "3.14159, 3, 3.14",
        "-0.000123456, 2, -0.00012",
        "123456, 3, 123000",
        "12345678, 3, 1.23e+07",
        "0.00001234, 3, 1.23e-05",
        "9.9996, 4, 10.00"
    })
    void significantDigitsAreKept(double value, int digits, String expected) {
        assertThat(Notation.significant(value, digits)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "Pa, 7.5e6, 75.00 bar",
        "Pa, 2.5e7, 250.0 bar",
        "Pa, 35000, 0.350 bar",
        "K, 3601.4, 3601 K",
        "K, 110.04, 110.0 K",
        "W, 2.5e6, 2.500 MW",
        "W, 81234, 81.23 kW",
        "rad/s, 3141.592653589793, 30000 rpm",
        "m/s, 412.34, 412.3 m/s",
        "m, 0.12345, 123.5 mm",
        "N, 1.5e6, 1500 kN"
    })
    void valuesComeInTheUnitsOfTheTrade(String unit, double value, String expected) {
        assertThat(Notation.ofUnit(unit).writeWithUnit(value)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "0.125, 12.5 %",
        "-0.0001, 0.0 %",
        "-0.5, -50.0 %",
        "42, over 999 %",
        "-364.07, -364 times the limit",
        "-9.99, -999.0 %"
    })
    void marginsSayHowManyTimesWhereAPercentageSaysNothing(double margin, String expected) {
        assertThat(Notation.MARGIN.write(margin)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"-0.04, 1, 0.0", "0.05, 2, 0.05", "-1.25, 1, -1.3"})
    void fixedDecimalsHaveNoNegativeZero(double value, int decimals, String expected) {
        assertThat(Notation.fixed(value, decimals)).isEqualTo(expected);
    }

    /** The short way is that of the library to the last digit, near the middle of two roundings too. */
    @Test
    void whatIsWrittenQuicklyIsWrittenAsTheLibraryDoes() {
        java.util.Random random = new java.util.Random(1);
        for (int i = 0; i < 20_000; i++) {
            int decimals = random.nextInt(8);
            double value = Math.scalb(random.nextGaussian(), random.nextInt(40) - 15);
            double rounded = Math.rint(value * 100) / 100 + 0.005 * random.nextInt(2);
            for (double v : new double[] {value, rounded, -0.0, Math.rint(value)}) {
                assertThat(Notation.fixed(v, decimals)).isEqualTo(Notation.formatted(v, decimals));
            }
        }
    }
}
