package dev.penstock.combustion;

import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.FrozenGas;
import dev.penstock.provenance.ModelCard;
import java.util.OptionalDouble;

/**
 * Burnt or decomposed gas whose composition does not change as it expands. Every search starts at the temperature that the
 * gas has when this is made, so that no answer depends on another. Safe to share between threads.
 */
public final class FrozenWorkingFluid implements WorkingFluid {

    private final FrozenGas gas;
    private final String description;
    private final double start;

    /**
     * @param gas the gas; moved by every question put to this fluid, and by nothing else from now on
     * @param description what it is, for reports
     */
    public FrozenWorkingFluid(FrozenGas gas, String description) {
        this.gas = gas;
        this.description = description;
        this.start = gas.temperature();
    }

    @Override
    public String description() {
        return description;
    }

    @Override
    public ModelCard model() {
        return EquilibriumSolver.CARD;
    }

    @Override
    public OptionalDouble moleFraction(String species, double pressure, double temperature) {
        return OptionalDouble.of(gas.moleFraction(species));
    }

    @Override
    public WorkingState atPressureTemperature(double pressure, double temperature) {
        synchronized (gas) {
            gas.setPressureTemperature(pressure, temperature);
            return state();
        }
    }

    @Override
    public WorkingState atPressureEnthalpy(double pressure, double enthalpy) {
        synchronized (gas) {
            gas.setPressureTemperature(pressure, start);
            gas.setPressureEnthalpy(pressure, enthalpy);
            return state();
        }
    }

    @Override
    public WorkingState atPressureEntropy(double pressure, double entropy) {
        synchronized (gas) {
            gas.setPressureTemperature(pressure, start);
            gas.setPressureEntropy(pressure, entropy);
            return state();
        }
    }

    private WorkingState state() {
        return new WorkingState(
                gas.pressure(),
                gas.temperature(),
                gas.density(),
                gas.enthalpy(),
                gas.entropy(),
                gas.frozenHeatCapacity(),
                gas.isentropicExponent(),
                gas.soundSpeed());
    }
}
