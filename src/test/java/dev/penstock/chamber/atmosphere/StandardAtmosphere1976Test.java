package dev.penstock.chamber.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.OutsideValidity;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Against the printed table of the standard and its own definitions. */
class StandardAtmosphere1976Test {

    private final Atmosphere atmosphere = new StandardAtmosphere1976();

    /** U.S. Standard Atmosphere 1976, table 1, geometric altitude; to the digits given. */
    @ParameterizedTest(name = "{0} m")
    @CsvFileSource(resources = "/chamber/standard-atmosphere-1976.csv", numLinesToSkip = 1)
    void agreesWithThePrintedTable(
            double altitude, double temperature, double pressure, double density, double tolerance, String source) {
        Atmosphere.State air = atmosphere.at(altitude);
        assertThat(air.temperature()).as("temperature").isCloseTo(temperature, within(tolerance * temperature));
        assertThat(air.pressure()).as("pressure").isCloseTo(pressure, within(tolerance * pressure));
        assertThat(air.density()).as("density").isCloseTo(density, within(tolerance * density));
    }

    /** Identity: the ideal-gas law with the standard's own constants holds in the layers. */
    @Property(tries = 100)
    void gasLawHoldsInTheLayers(@ForAll @DoubleRange(min = -5000, max = 79_999) double altitude) {
        Atmosphere.State air = atmosphere.at(altitude);
        double density = air.pressure() * 28.9644 / (8314.32 * air.temperature());
        assertThat(air.density() / density).isCloseTo(1, within(1e-12));
    }

    /** Identity: dp/dz = −ρ g with g falling by the square of the radius, in layers and (within the table's straight lines) above. */
    @Property(tries = 100)
    void pressureIsTheWeightOfTheAirAbove(@ForAll @DoubleRange(min = -4900, max = 85_900) double altitude) {
        double step = 1;
        double slope = (atmosphere.at(altitude + step).pressure()
                        - atmosphere.at(altitude - step).pressure())
                / (2 * step);
        double radius = 6_356_766;
        double gravity = 9.80665 * Math.pow(radius / (radius + altitude), 2);
        double weight = atmosphere.at(altitude).density() * gravity;
        // A step across a layer boundary sees two lapse rates; central difference error is second order otherwise.
        assertThat(-slope / weight).isCloseTo(1, within(1e-5));
    }

    @Property(tries = 200)
    void pressureAndDensityFallWithAltitude(@ForAll @DoubleRange(min = -5000, max = 999_000) double altitude) {
        Atmosphere.State low = atmosphere.at(altitude);
        Atmosphere.State high = atmosphere.at(altitude + 500);
        assertThat(high.pressure()).isLessThan(low.pressure());
        assertThat(high.density()).isLessThan(low.density());
    }

    @Test
    void spaceIsEmpty() {
        assertThat(atmosphere.at(2e6).pressure()).isZero();
        assertThat(atmosphere.at(2e6).density()).isZero();
    }

    @Test
    void altitudeBelowTheStandardIsRefused() {
        assertThatThrownBy(() -> atmosphere.at(-6000))
                .isInstanceOf(OutsideValidity.class)
                .hasMessageContaining("altitude (m) is -6000");
        assertThatThrownBy(() -> atmosphere.at(Double.NaN)).isInstanceOf(OutsideValidity.class);
    }
}
