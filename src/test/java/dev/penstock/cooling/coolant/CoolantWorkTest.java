package dev.penstock.cooling.coolant;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.state.Fluid;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Identity: a pass of a march counts one, and more by what its state came from: a bound of work must mean time. */
class CoolantWorkTest {

    private static final double PRESSURE = 10e6;

    @ParameterizedTest
    @CsvSource({"hydrogen, 100, true, 1", "hydrogen, 100, false, 61", "rp-1, 350, true, 1", "rp-1, 350, false, 9"})
    void aPassCountsByWhereItsStateComesFrom(String id, double temperature, boolean tabulated, long expected) {
        Fluid fluid = FluidLibrary.open().propellant(id).fluid();
        double enthalpy = fluid.atPressureTemperature(PRESSURE, temperature).enthalpy();
        try (CoolantProperties properties = new CoolantProperties(fluid, Optional.empty(), PRESSURE, tabulated)) {
            long before = properties.work();
            properties.bulk(PRESSURE, enthalpy, new ChannelFlow());
            assertThat(properties.work() - before).isEqualTo(expected);
        }
    }

    /** Beyond the fluid's model each pass asks for its hottest state: after the first one from where the last one stood. */
    @Test
    void aPassBeyondTheModelCountsByHowItsStateIsFound() {
        Fluid propane = FluidLibrary.open().propellant("propane").fluid();
        double edge = propane.range().maximumTemperature() * 0.9995;
        try (CoolantProperties properties = new CoolantProperties(propane, Optional.empty(), PRESSURE, false)) {
            ChannelFlow flow = new ChannelFlow();
            double beyond = 1.1 * propane.atPressureTemperature(PRESSURE, edge).enthalpy();
            properties.bulk(PRESSURE, beyond, flow);
            long before = properties.work();
            properties.bulk(0.97 * PRESSURE, beyond, flow);
            assertThat(properties.work() - before).isEqualTo(16);
            assertThat(properties.beyondModel()).isTrue();
        }
    }
}
