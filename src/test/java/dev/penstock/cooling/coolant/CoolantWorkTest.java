package dev.penstock.cooling.coolant;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.state.Fluid;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Identity: a pass of a march counts one, and more by what its state came from: a bound of work must mean time. */
class CoolantWorkTest {

    private static final double PRESSURE = 10e6;

    @ParameterizedTest
    @CsvSource({"hydrogen, 100, true, 1", "hydrogen, 100, false, 81", "rp-1, 350, true, 1", "rp-1, 350, false, 6"})
    void aPassCountsByWhereItsStateComesFrom(String id, double temperature, boolean tabulated, long expected) {
        Fluid fluid = FluidLibrary.open().propellant(id).fluid();
        double enthalpy = fluid.atPressureTemperature(PRESSURE, temperature).enthalpy();
        try (CoolantProperties properties = new CoolantProperties(fluid, Optional.empty(), PRESSURE, tabulated)) {
            long before = properties.work();
            properties.bulk(PRESSURE, enthalpy, new ChannelFlow());
            assertThat(properties.work() - before).isEqualTo(expected);
        }
    }
}
