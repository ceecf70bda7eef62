package dev.penstock.fluids.correlation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.property.TemperatureFunction;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each form with the coefficients of a known liquid or gas, all from memory; the value beside them is a well-known one. */
class CorrelationFormTest {

    private static TemperatureFunction form(String name, String coefficients) {
        List<Double> c =
                Arrays.stream(coefficients.split(" ")).map(Double::valueOf).toList();
        assertThat(CorrelationForm.of(name).takes(c.size())).isTrue();
        return CorrelationForm.of(name).with(c);
    }

    /**
     * Water boils at 101.3 kPa at 373.15 K by three forms; ethanol has 17.06 kmol/m³ (785.9 kg/m³) and water 1.007 mPa·s at room
     * temperature; nitrogen 17.8 µPa·s at 300 K. Evaluated by hand from the coefficients.
     */
    @ParameterizedTest
    @CsvSource({
        "dippr-101, 73.649 -7258.2 -7.3037 4.1653e-6 2, 373.15, 101260.563, 101325",
        "antoine, 23.1964 -3816.44 -46.13, 373.15, 101320.440, 101325",
        "wagner, 220.64e5 647.10 -7.86975 1.90561 -2.30891 -2.06472, 373.15, 101366.731, 101325",
        "dippr-105, 1.6288 0.27469 514 0.23178, 298.15, 17.0590853, 17.04",
        "dippr-102, 6.5592e-7 0.6081 54.714 100, 300, 1.77837485e-5, 1.78e-5",
        "ppds-9, 0.45047 1.39753 613.181 63.697 6.896e-5, 293.15, 1.00693905e-3, 1.002e-3",
        "polynomial, 2 3e-2 4e-4, 300, 47, 47",
        "exponential-polynomial, 1 -2e-3 1e-6, 300, 1.63231622, 1.63231622",
    })
    void eachFormIsItsEquation(String name, String coefficients, double t, double byHand, double known) {
        TemperatureFunction f = form(name, coefficients);
        assertThat(f.value(t)).isCloseTo(byHand, withinPercentage(1e-6));
        assertThat(byHand).isCloseTo(known, withinPercentage(0.6));
        // identity: slope and curvature are those of the value
        double step = 0.05;
        double slope = (f.value(t + step) - f.value(t - step)) / (2 * step);
        assertThat(f.slope(t)).isCloseTo(slope, withinPercentage(1e-3));
        double curvature = (f.slope(t + step) - f.slope(t - step)) / (2 * step);
        assertThat(f.curvature(t)).isCloseTo(curvature, withinPercentage(0.1));
    }
}
