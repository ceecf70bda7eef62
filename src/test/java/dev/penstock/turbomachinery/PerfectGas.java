package dev.penstock.turbomachinery;

import dev.penstock.combustion.WorkingFluid;
import dev.penstock.combustion.WorkingState;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;

/** Gas of constant heat capacity, for worked examples that assume one. Enthalpy zero at 0 K, entropy zero at 1 K and 1 Pa. */
public record PerfectGas(double heatCapacity, double gamma) implements WorkingFluid {

    private double gasConstant() {
        return heatCapacity * (gamma - 1) / gamma;
    }

    double molarMass() {
        return Constants.MOLAR_GAS_CONSTANT / gasConstant();
    }

    @Override
    public String description() {
        return "perfect gas";
    }

    @Override
    public ModelCard model() {
        return new ModelCard("test.perfect-gas", "Perfect gas", "p = ρ R T", "tests", "exact", List.of("definition"));
    }

    @Override
    public WorkingState atPressureTemperature(double pressure, double temperature) {
        return new WorkingState(
                pressure,
                temperature,
                pressure / (gasConstant() * temperature),
                heatCapacity * temperature,
                heatCapacity * Math.log(temperature) - gasConstant() * Math.log(pressure),
                heatCapacity,
                gamma,
                Math.sqrt(gamma * gasConstant() * temperature));
    }

    @Override
    public WorkingState atPressureEnthalpy(double pressure, double enthalpy) {
        return atPressureTemperature(pressure, enthalpy / heatCapacity);
    }

    @Override
    public WorkingState atPressureEntropy(double pressure, double entropy) {
        return atPressureTemperature(pressure, Math.exp((entropy + gasConstant() * Math.log(pressure)) / heatCapacity));
    }
}
