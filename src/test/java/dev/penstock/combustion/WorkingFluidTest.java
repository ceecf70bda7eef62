package dev.penstock.combustion;

import static dev.penstock.combustion.Mixtures.HYDROGEN;
import static dev.penstock.combustion.Mixtures.KEROSENE;
import static dev.penstock.combustion.Mixtures.LIBRARY;
import static dev.penstock.combustion.Mixtures.METHANE;
import static dev.penstock.combustion.Mixtures.OXYGEN;
import static dev.penstock.combustion.Mixtures.of;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Identities that hold for whatever drives a turbine, from the three ways to ask for a state alone: T ds = dh − dp/ρ, the heat capacity
 * as a slope, the speed of sound as the slope of pressure over density at constant entropy. A wrong density, entropy, heat
 * capacity or speed of sound breaks one of them.
 */
class WorkingFluidTest {

    private static final double STEP = 1e-3;

    static Stream<String> fluids() {
        return all().keySet().stream();
    }

    private static Map<String, WorkingFluid> all() {
        Map<String, WorkingFluid> fluids = new TreeMap<>();
        fluids.put("measured", burnt(GasModel.AUTOMATIC, of(OXYGEN, KEROSENE, 0.4)));
        fluids.put("frozen", burnt(GasModel.FROZEN, of(OXYGEN, HYDROGEN, 0.9)));
        fluids.put("dense or frozen", burnt(GasModel.AUTOMATIC, of(OXYGEN, METHANE, 0.35)));
        fluids.put("equilibrium", burnt(GasModel.EQUILIBRIUM, of(OXYGEN, HYDROGEN, 3.5)));
        fluids.put("oxidizer-rich", burnt(GasModel.AUTOMATIC, of(OXYGEN, METHANE, 45)));
        fluids.put(
                "heated hydrogen", new RealFluidWorkingFluid(FluidLibrary.open().propellant("hydrogen")));
        return fluids;
    }

    private static WorkingFluid burnt(GasModel model, dev.penstock.combustion.equilibrium.Reactants mixture) {
        return new GasGeneratorGas(LIBRARY, model).burn(mixture, 12e6).fluid();
    }

    private static double temperature(String name) {
        return name.equals("heated hydrogen") ? 250 : name.equals("equilibrium") ? 2600 : 800;
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void statesAgreeHoweverTheyAreAskedFor(String name) {
        WorkingFluid fluid = all().get(name);
        for (double pressure : new double[] {0.4e6, 12e6}) {
            WorkingState state = fluid.atPressureTemperature(pressure, temperature(name));
            WorkingState byEnthalpy = fluid.atPressureEnthalpy(pressure, state.enthalpy());
            WorkingState byEntropy = fluid.atPressureEntropy(pressure, state.entropy());
            for (WorkingState again : new WorkingState[] {byEnthalpy, byEntropy}) {
                assertThat(again.temperature()).isCloseTo(state.temperature(), withinPercentage(1e-6));
                assertThat(again.density()).isCloseTo(state.density(), withinPercentage(1e-6));
                assertThat(again.entropy()).isCloseTo(state.entropy(), withinPercentage(1e-6));
                assertThat(again.soundSpeed()).isCloseTo(state.soundSpeed(), withinPercentage(1e-5));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void slopesAreThoseOfThermodynamics(String name) {
        WorkingFluid fluid = all().get(name);
        for (double pressure : new double[] {0.4e6, 12e6}) {
            WorkingState state = fluid.atPressureTemperature(pressure, temperature(name));
            WorkingState above = fluid.atPressureEntropy(pressure * (1 + STEP), state.entropy());
            WorkingState below = fluid.atPressureEntropy(pressure * (1 - STEP), state.entropy());
            double compressed = (above.enthalpy() - below.enthalpy()) / (above.pressure() - below.pressure());
            assertThat(compressed * state.density()).as("ρ ∂h/∂p at s").isCloseTo(1, withinPercentage(0.01));
            double stiffness = (above.pressure() - below.pressure()) / (above.density() - below.density());
            assertThat(state.soundSpeed() * state.soundSpeed() / stiffness)
                    .as("a² over ∂p/∂ρ at s")
                    .isCloseTo(1, withinPercentage(0.05));
            WorkingState hot = fluid.atPressureTemperature(pressure, state.temperature() * (1 + STEP));
            WorkingState cold = fluid.atPressureTemperature(pressure, state.temperature() * (1 - STEP));
            double heat = (hot.enthalpy() - cold.enthalpy()) / (hot.temperature() - cold.temperature());
            assertThat(state.isobaricHeatCapacity() / heat)
                    .as("cp over ∂h/∂T at p")
                    .isCloseTo(1, withinPercentage(0.05));
            assertThat((hot.enthalpy() - cold.enthalpy()) / (hot.entropy() - cold.entropy()))
                    .as("∂h/∂s at p")
                    .isCloseTo(state.temperature(), withinPercentage(0.01));
        }
    }

    /** A drop of a few per cent shows what is left of a search, most of all far above the critical temperature. */
    @ParameterizedTest
    @ValueSource(doubles = {300, 640, 861})
    void aHeatedPropellantIsTheSameWithAndWithoutKeptStates(double temperature) {
        Propellant methane = FluidLibrary.open().propellant("methane");
        WorkingFluid keeping = RealFluidWorkingFluid.keepingStates(methane);
        WorkingFluid plain = new RealFluidWorkingFluid(methane);
        WorkingState in = plain.atPressureTemperature(0.85e6, temperature);
        keeping.atPressureEntropy(0.8301e6, in.entropy());
        double kept =
                in.enthalpy() - keeping.atPressureEntropy(0.83e6, in.entropy()).enthalpy();
        double drop =
                in.enthalpy() - plain.atPressureEntropy(0.83e6, in.entropy()).enthalpy();
        assertThat(kept).isCloseTo(drop, withinPercentage(1e-7));
    }
}
