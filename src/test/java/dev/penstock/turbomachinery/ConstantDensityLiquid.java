package dev.penstock.turbomachinery;

import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.PropellantLimits;
import dev.penstock.fluids.property.ElementalComposition;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidRange;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.Phase;
import dev.penstock.fluids.traits.PropellantTraits;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** Liquid of constant density and heat capacity, for worked examples that assume one: h = c T + p/ρ, s = c ln T. */
public record ConstantDensityLiquid(double density, double heatCapacity, double vapourPressure) implements Fluid {

    /** The liquid as an oxidizer stored at 90 K. */
    public Propellant asOxidizer() {
        return asPropellant(Propellant.Role.OXIDIZER, 90);
    }

    public Propellant asPropellant(Propellant.Role role, double storageTemperature) {
        return new Propellant(
                this,
                new ElementalComposition(Map.of("O", 62.5)),
                0,
                1e5,
                storageTemperature,
                atPressureTemperature(1e5, storageTemperature).enthalpy(),
                atPressureTemperature(3e5, storageTemperature),
                density,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                new PropellantLimits(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()),
                PropellantTraits.NONE,
                Set.of(role),
                List.of(),
                List.of("invented"));
    }

    @Override
    public ModelCard model() {
        return new ModelCard(
                "test.fluid", "a liquid of constant density", "exact", "everywhere", "none", List.of("by definition"));
    }

    @Override
    public String id() {
        return "constant-density-liquid";
    }

    @Override
    public String name() {
        return "liquid of constant density";
    }

    @Override
    public double molarMass() {
        return 0.032;
    }

    @Override
    public FluidRange range() {
        return new FluidRange(1, 1000, 1e9);
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
    public FluidState atPressureTemperature(double pressure, double temperature) {
        return new FluidState(
                id(),
                pressure,
                temperature,
                density,
                heatCapacity * temperature + pressure / density,
                heatCapacity * Math.log(temperature),
                heatCapacity,
                heatCapacity,
                1000,
                2e-4,
                0.15,
                Phase.LIQUID,
                OptionalDouble.of(vapourPressure));
    }

    @Override
    public FluidState atPressureEnthalpy(double pressure, double enthalpy) {
        return atPressureTemperature(pressure, (enthalpy - pressure / density) / heatCapacity);
    }

    @Override
    public FluidState atPressureEntropy(double pressure, double entropy) {
        return atPressureTemperature(pressure, Math.exp(entropy / heatCapacity));
    }

    @Override
    public FluidState saturatedLiquid(double temperature) {
        return atPressureTemperature(vapourPressure, temperature);
    }

    @Override
    public double vapourPressure(double temperature) {
        return vapourPressure;
    }

    @Override
    public FluidCursor cursor() {
        return new Cursor();
    }

    private final class Cursor implements FluidCursor {
        private FluidState state;

        @Override
        public void setPressureTemperature(double pressure, double temperature) {
            state = atPressureTemperature(pressure, temperature);
        }

        @Override
        public void setPressureEnthalpy(double pressure, double enthalpy) {
            state = atPressureEnthalpy(pressure, enthalpy);
        }

        @Override
        public void setPressureEntropy(double pressure, double entropy) {
            state = atPressureEntropy(pressure, entropy);
        }

        @Override
        public double pressure() {
            return state.pressure();
        }

        @Override
        public double temperature() {
            return state.temperature();
        }

        @Override
        public double density() {
            return state.density();
        }

        @Override
        public double enthalpy() {
            return state.enthalpy();
        }

        @Override
        public double entropy() {
            return state.entropy();
        }

        @Override
        public double isobaricHeatCapacity() {
            return state.isobaricHeatCapacity();
        }

        @Override
        public double soundSpeed() {
            return state.soundSpeed();
        }

        @Override
        public double viscosity() {
            return state.viscosity();
        }

        @Override
        public double conductivity() {
            return state.conductivity();
        }

        @Override
        public FluidState snapshot() {
            return state;
        }

        @Override
        public void close() {
            // holds nothing
        }
    }
}
