package dev.penstock.combustion;

import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.Phase;
import dev.penstock.provenance.ModelCard;
import java.util.OptionalDouble;

/**
 * A heated propellant that drives a turbine unburnt, with the properties of the real fluid and enthalpies relative to the
 * elements. gamma is −(∂ln p/∂ln v)_s = ρ a²/p. Immutable.
 */
public final class RealFluidWorkingFluid implements WorkingFluid {

    private final Propellant propellant;

    /** @param propellant the fluid */
    public RealFluidWorkingFluid(Propellant propellant) {
        this.propellant = propellant;
    }

    @Override
    public String description() {
        return "heated " + propellant.fluid().name() + ", real fluid";
    }

    @Override
    public ModelCard model() {
        return propellant.fluid().model();
    }

    @Override
    public OptionalDouble moleFraction(String species, double pressure, double temperature) {
        return OptionalDouble.of(propellant.moleFraction(species));
    }

    @Override
    public WorkingState atPressureTemperature(double pressure, double temperature) {
        return state(propellant.fluid().atPressureTemperature(pressure, temperature));
    }

    @Override
    public WorkingState atPressureEnthalpy(double pressure, double enthalpy) {
        return state(propellant.fluid().atPressureEnthalpy(pressure, enthalpy - propellant.absoluteEnthalpy(0)));
    }

    @Override
    public WorkingState atPressureEntropy(double pressure, double entropy) {
        return state(propellant.fluid().atPressureEntropy(pressure, entropy));
    }

    private WorkingState state(FluidState s) {
        return new WorkingState(
                s.pressure(),
                s.temperature(),
                s.density(),
                propellant.absoluteEnthalpy(s.enthalpy()),
                s.entropy(),
                s.isobaricHeatCapacity(),
                s.density() * s.soundSpeed() * s.soundSpeed() / s.pressure(),
                s.soundSpeed(),
                s.phase() == Phase.TWO_PHASE);
    }
}
