package dev.penstock.vehicle.mass;

import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidRange;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.Phase;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.OptionalDouble;

/** A gas of constant heat capacity, for limits that a real gas does not reach. */
record IdealGas(double molarMass, double gamma) implements Fluid {

    private double specificGasConstant() {
        return 8.31446261815324 / molarMass;
    }

    private double heatCapacity() {
        return gamma / (gamma - 1) * specificGasConstant();
    }

    @Override
    public ModelCard model() {
        return new ModelCard(
                "test.fluid",
                "a gas of constant heat capacity",
                "exact",
                "everywhere",
                "none",
                List.of("by definition"));
    }

    @Override
    public String id() {
        return "ideal gas";
    }

    @Override
    public String name() {
        return "Ideal gas";
    }

    @Override
    public FluidRange range() {
        return new FluidRange(1, 1e4, 1e9);
    }

    @Override
    public OptionalDouble criticalTemperature() {
        return OptionalDouble.empty();
    }

    @Override
    public OptionalDouble criticalPressure() {
        return OptionalDouble.empty();
    }

    @Override
    public FluidState atPressureTemperature(double p, double t) {
        double r = specificGasConstant();
        double cp = heatCapacity();
        double entropy = cp * Math.log(t / 300) - r * Math.log(p / 1e5);
        return new FluidState(
                id(),
                p,
                t,
                p / (r * t),
                cp * t,
                entropy,
                cp,
                cp - r,
                Math.sqrt(gamma * r * t),
                1e-5,
                0.1,
                Phase.GAS,
                OptionalDouble.empty());
    }

    @Override
    public FluidState atPressureEnthalpy(double p, double h) {
        return atPressureTemperature(p, h / heatCapacity());
    }

    @Override
    public FluidState atPressureEntropy(double p, double s) {
        return atPressureTemperature(
                p, 300 * Math.exp((s + specificGasConstant() * Math.log(p / 1e5)) / heatCapacity()));
    }

    @Override
    public FluidState saturatedLiquid(double temperature) {
        throw new UnsupportedOperationException();
    }

    @Override
    public double vapourPressure(double temperature) {
        throw new UnsupportedOperationException();
    }

    @Override
    public FluidCursor cursor() {
        throw new UnsupportedOperationException();
    }
}
