package dev.penstock.fluids.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.coolprop.CoolPropWay;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.Phase;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The table against the full model behind it. */
@ParameterizedClass
@MethodSource("dev.penstock.fluids.coolprop.CoolPropWay#here")
class FluidTableTest {

    private static final int POINTS = 600;

    @Parameter
    CoolPropWay way;

    @ParameterizedTest
    @CsvSource({
        "methane, 6e6, 25e6, 115, 700, 0.95",
        "hydrogen, 4e6, 30e6, 25, 600, 0.94",
        "oxygen, 8e6, 30e6, 95, 400, 0.97",
        "propane, 6e6, 25e6, 110, 600, 0.93",
        "ethanol, 8e6, 20e6, 280, 600, 0.93",
        "rp-1, 5e6, 30e6, 280, 620, 0.99",
        "mmh, 2e6, 20e6, 285, 440, 0.99"
    })
    void theTableErrsByLessThanATenthOfAPercent(
            String id, double low, double high, double cold, double hot, double served) {
        Fluid fluid = way.fluids().propellant(id).fluid();
        double from = fluid.atPressureTemperature(high, cold).enthalpy();
        double to = fluid.atPressureTemperature(low, hot).enthalpy();
        FluidTable table = FluidTable.build(fluid, low, high, from, to);
        Random random = new Random(1);
        try (FluidCursor full = fluid.cursor();
                FluidTableCursor fast = (FluidTableCursor) table.cursor()) {
            for (int i = 0; i < POINTS; i++) {
                double pressure = low * Math.pow(high / low, random.nextDouble());
                double enthalpy = from + (to - from) * random.nextDouble();
                full.setPressureEnthalpy(pressure, enthalpy);
                fast.setPressureEnthalpy(pressure, enthalpy);
                compare(fast, full);
                double temperature = full.temperature();
                fast.setPressureTemperature(pressure, temperature);
                compare(fast, full);
            }
            assertThat(1 - fast.fullEvaluations() / (2.0 * POINTS)).isGreaterThan(served);
        }
    }

    private static void compare(FluidCursor fast, FluidCursor full) {
        close("temperature", fast.temperature(), full.temperature());
        close("density", fast.density(), full.density());
        close("heat capacity", fast.isobaricHeatCapacity(), full.isobaricHeatCapacity());
        close("sound speed", fast.soundSpeed(), full.soundSpeed());
        close("viscosity", fast.viscosity(), full.viscosity());
        close("conductivity", fast.conductivity(), full.conductivity());
        assertThat(fast.entropy()).isCloseTo(full.entropy(), within(1.0));
    }

    private static void close(String what, double got, double expected) {
        assertThat(got).as(what).isCloseTo(expected, within(1e-3 * expected));
    }

    /** A jacket's box: from the pump to the end of the fluid's model. Uniform steps of enthalpy were too wide there. */
    @ParameterizedTest
    @CsvSource({
        "hydrogen, 5e6, 14e6, 32, 75, 0.95",
        "methane, 5e6, 14e6, 115, 170, 0.99",
        "propane, 5e6, 14e6, 120, 250, 0.95"
    })
    void theColdEndOfAJacketIsServedByTheTable(
            String id, double low, double high, double cold, double warm, double served) {
        Fluid fluid = way.fluids().propellant(id).fluid();
        double from = fluid.atPressureTemperature(high, cold).enthalpy();
        double to = fluid.atPressureTemperature(high, 0.9995 * fluid.range().maximumTemperature())
                .enthalpy();
        FluidTable table = new FluidTables().covering(fluid, low, high, from, to);
        Random random = new Random(2);
        try (FluidCursor full = fluid.cursor();
                FluidTableCursor fast = (FluidTableCursor) table.cursor()) {
            for (int i = 0; i < POINTS; i++) {
                double pressure = low * Math.pow(high / low, random.nextDouble());
                double temperature = cold + (warm - cold) * random.nextDouble();
                full.setPressureTemperature(pressure, temperature);
                fast.setPressureEnthalpy(pressure, full.enthalpy());
                compare(fast, full);
            }
            assertThat(1 - fast.fullEvaluations() / (double) POINTS).isGreaterThan(served);
        }
    }

    @Test
    void nearSaturationTheFullModelAnswers() {
        Fluid methane = way.fluids().propellant("methane").fluid();
        double from = methane.atPressureTemperature(3e6, 120).enthalpy();
        double to = methane.atPressureTemperature(3e6, 300).enthalpy();
        FluidTable table = FluidTable.build(methane, 2e6, 4e6, from, to);
        double saturated = methane.saturatedLiquid(170).enthalpy();
        double pressure = methane.vapourPressure(170);
        try (FluidTableCursor cursor = (FluidTableCursor) table.cursor();
                FluidCursor full = methane.cursor()) {
            for (double distance : new double[] {-2e3, -10, 10, 2e3, 1e5}) {
                cursor.setPressureEnthalpy(pressure, saturated + distance);
                full.setPressureEnthalpy(pressure, saturated + distance);
                compare(cursor, full);
                assertThat(cursor.phase()).isEqualTo(full.phase());
            }
            assertThat(cursor.fullEvaluations()).isEqualTo(5);
            cursor.setPressureEnthalpy(pressure, from + 2e4);
            assertThat(cursor.fullEvaluations()).isEqualTo(5);
            assertThat(cursor.phase()).isEqualTo(Phase.LIQUID);
        }
    }

    @Test
    void outsideItsBoxTheFullModelAnswers() {
        Fluid water = way.fluids().propellant("water").fluid();
        double from = water.atPressureTemperature(20e6, 300).enthalpy();
        FluidTable table = FluidTable.build(water, 10e6, 20e6, from, from + 3e5, 8, 20);
        try (FluidTableCursor cursor = (FluidTableCursor) table.cursor()) {
            cursor.setPressureTemperature(15e6, 500);
            assertThat(cursor.snapshot()).isEqualTo(water.atPressureTemperature(15e6, 500));
            cursor.setPressureEntropy(
                    15e6, water.atPressureTemperature(15e6, 320).entropy());
            assertThat(cursor.temperature()).isCloseTo(320, within(1e-4));
            assertThat(cursor.fullEvaluations()).isEqualTo(1);
            double below = water.atPressureTemperature(15e6, 280).enthalpy();
            cursor.setPressureEnthalpy(15e6, below);
            assertThat(cursor.temperature()).isCloseTo(280, within(1e-6));
            assertThat(cursor.fullEvaluations()).isEqualTo(2);
        }
    }

    @Test
    void successiveRangesThatDifferALittleShareATable() {
        Fluid rp1 = way.fluids().propellant("rp-1").fluid();
        FluidTables tables = new FluidTables();
        FluidTable first = tables.covering(rp1, 6.1e6, 14.2e6, 10e3, 700e3);
        FluidTable second = tables.covering(rp1, 6.3e6, 14.0e6, 12e3, 690e3);
        assertThat(second).isSameAs(first);
        assertThat(tables.covering(rp1, 1e6, 14.0e6, 12e3, 690e3)).isNotSameAs(first);
        Fluid again = FluidLibrary.open().propellant("rp-1").fluid();
        assertThat(tables.covering(again, 6.1e6, 14.2e6, 10e3, 700e3)).isSameAs(first);
    }

    @Test
    void anEmptyRangeIsRefused() {
        Fluid rp1 = way.fluids().propellant("rp-1").fluid();
        assertThatThrownBy(() -> FluidTable.build(rp1, 5e6, 4e6, 0, 1e5)).isInstanceOf(OutsideValidity.class);
        assertThatThrownBy(() -> FluidTable.build(rp1, 4e6, 5e6, 1e5, 1e5)).isInstanceOf(OutsideValidity.class);
    }
}
