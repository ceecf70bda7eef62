package dev.penstock.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.fluids.coolprop.CoolPropWay;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import java.util.List;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;

/** States against figures from outside: each row names its kind and source. */
@ParameterizedClass
@MethodSource("dev.penstock.fluids.coolprop.CoolPropWay#here")
class PublishedStatesTest {

    @Parameter
    CoolPropWay way;

    static List<PublishedState> rows() {
        return PublishedState.all();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void statesAgreeWithFiguresFromOutside(PublishedState row) {
        double got = row.computed(way.fluids());
        assertThat(got)
                .as("%s: computed %.7g, off by %.1e", row, got, got / row.expected() - 1)
                .isCloseTo(row.expected(), within(row.tolerance() * row.expected()));
    }

    @ParameterizedTest(name = "{0} from {2} to {3} Pa")
    @CsvFileSource(resources = "/fluids/compressible-pumping.csv")
    void compressedLiquidsTakeTheWorkOfTheRealFluid(
            String id, double inlet, double low, double high, double density, double work, double outlet) {
        Fluid fluid = way.fluids().propellant(id).fluid();
        FluidState in = fluid.atPressureTemperature(low, inlet);
        double ideal = fluid.atPressureEntropy(high, in.entropy()).enthalpy() - in.enthalpy();
        FluidState out = fluid.atPressureEnthalpy(high, in.enthalpy() + ideal / 0.7);
        assertThat(in.density()).isCloseTo(density, within(5e-4 * density));
        assertThat(ideal).isCloseTo(work, within(5e-4 * work));
        assertThat(out.temperature()).isCloseTo(outlet, within(5e-4 * outlet));
        assertThat(ideal).isLessThan((high - low) / in.density());
    }
}
