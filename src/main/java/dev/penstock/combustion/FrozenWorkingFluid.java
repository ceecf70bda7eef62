package dev.penstock.combustion;

/** Burnt or decomposed gas whose composition does not change as it expands. Not thread-safe. */
public final class FrozenWorkingFluid implements WorkingFluid {

    private final FrozenGas gas;
    private final String description;

    /**
     * @param gas the gas; moved by every question put to this fluid
     * @param description what it is, for reports
     */
    public FrozenWorkingFluid(FrozenGas gas, String description) {
        this.gas = gas;
        this.description = description;
    }

    @Override
    public String description() {
        return description;
    }

    @Override
    public WorkingState atPressureTemperature(double pressure, double temperature) {
        gas.setPressureTemperature(pressure, temperature);
        return state();
    }

    @Override
    public WorkingState atPressureEnthalpy(double pressure, double enthalpy) {
        gas.setPressureEnthalpy(pressure, enthalpy);
        return state();
    }

    @Override
    public WorkingState atPressureEntropy(double pressure, double entropy) {
        gas.setPressureEntropy(pressure, entropy);
        return state();
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
