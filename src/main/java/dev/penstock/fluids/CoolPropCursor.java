package dev.penstock.fluids;

import dev.penstock.errors.NotConverged;
import dev.penstock.errors.PropertyFailure;
import java.util.OptionalDouble;

/**
 * A movable state of CoolProp's full equation. A state by pressure and enthalpy or entropy is first sought from where
 * the cursor stands ({@link WarmFlash}), then by CoolProp's own search, then by {@link BracketedFlash}. Not thread-safe;
 * belongs to the thread that made it.
 */
final class CoolPropCursor implements FluidCursor {

    private final CoolPropFluid fluid;
    private final CoolPropHandle handle;
    private final WarmFlash warm;
    private final boolean warmStart;
    private boolean singlePhase;
    private boolean liquidKnown;
    private double liquidIsobaric;
    private double liquidIsochoric;
    private double liquidSoundSpeed;
    private double liquidViscosity;
    private double liquidConductivity;
    private double pressure;

    /**
     * @param fluid fluid
     * @param handle state object to move
     * @param warmStart whether a search may start from the last state: faster, but then the last digits depend on it
     */
    CoolPropCursor(CoolPropFluid fluid, CoolPropHandle handle, boolean warmStart) {
        this.fluid = fluid;
        this.handle = handle;
        this.warm = new WarmFlash(handle);
        this.warmStart = warmStart;
    }

    @Override
    public void setPressureTemperature(double p, double t) {
        singlePhase = false;
        handle.update(CoolPropInputs.PRESSURE_TEMPERATURE, p, t);
        arrived(p);
    }

    @Override
    public void setPressureEnthalpy(double p, double h) {
        set(p, CoolPropOutput.ENTHALPY, h);
    }

    @Override
    public void setPressureEntropy(double p, double s) {
        set(p, CoolPropOutput.ENTROPY, s);
    }

    void setSaturatedLiquid(double t) {
        handle.update(CoolPropInputs.QUALITY_TEMPERATURE, 0, t);
        arrived(handle.output(CoolPropOutput.PRESSURE));
    }

    void setSaturatedLiquidAtPressure(double p) {
        handle.update(CoolPropInputs.PRESSURE_QUALITY, p, 0);
        arrived(p);
    }

    private void set(double p, CoolPropOutput second, double wanted) {
        if (warmStart && singlePhase && p > 0) {
            singlePhase = false;
            if (warm.move(p, second, wanted)) {
                arrived(p);
                return;
            }
        }
        singlePhase = false;
        search(p, second, wanted);
        arrived(p);
    }

    private void search(double p, CoolPropOutput second, double wanted) {
        try {
            if (second == CoolPropOutput.ENTHALPY) {
                handle.update(CoolPropInputs.ENTHALPY_PRESSURE, wanted, p);
            } else {
                handle.update(CoolPropInputs.PRESSURE_ENTROPY, p, wanted);
            }
        } catch (PropertyFailure first) {
            try {
                new BracketedFlash(
                                handle, fluid.range(), fluid.criticalPressure().orElseThrow())
                        .move(p, second, wanted);
            } catch (PropertyFailure | NotConverged later) {
                throw first;
            }
        }
    }

    private void arrived(double p) {
        pressure = p;
        singlePhase = CoolPropPhases.of(handle) != Phase.TWO_PHASE;
        liquidKnown = false;
    }

    /** @return evaluations of the equation of state that warm searches took so far */
    int warmEvaluations() {
        return warm.evaluations();
    }

    @Override
    public double pressure() {
        return pressure;
    }

    @Override
    public double temperature() {
        return handle.output(CoolPropOutput.TEMPERATURE);
    }

    @Override
    public double density() {
        return handle.output(CoolPropOutput.DENSITY);
    }

    @Override
    public double enthalpy() {
        return handle.output(CoolPropOutput.ENTHALPY);
    }

    @Override
    public double entropy() {
        return handle.output(CoolPropOutput.ENTROPY);
    }

    @Override
    public double isobaricHeatCapacity() {
        return between() ? liquidIsobaric : handle.output(CoolPropOutput.ISOBARIC_HEAT_CAPACITY);
    }

    private double isochoricHeatCapacity() {
        return between() ? liquidIsochoric : handle.output(CoolPropOutput.ISOCHORIC_HEAT_CAPACITY);
    }

    @Override
    public double soundSpeed() {
        return between() ? liquidSoundSpeed : handle.output(CoolPropOutput.SOUND_SPEED);
    }

    @Override
    public double viscosity() {
        if (between()) {
            return liquidViscosity;
        }
        return fluid.transport().isPresent()
                ? fluid.transport().get().viscosity(temperature(), density(), pressure)
                : handle.output(CoolPropOutput.VISCOSITY);
    }

    @Override
    public double conductivity() {
        if (between()) {
            return liquidConductivity;
        }
        return fluid.transport().isPresent()
                ? fluid.transport().get().conductivity(temperature(), density(), pressure)
                : handle.output(CoolPropOutput.CONDUCTIVITY);
    }

    /** Whether the state lies between the phases; then the saturated liquid's properties are at hand. */
    private boolean between() {
        if (singlePhase) {
            return false;
        }
        if (!liquidKnown) {
            CoolPropCursor liquid = fluid.saturatedLiquidAtPressure(pressure);
            liquidIsobaric = liquid.isobaricHeatCapacity();
            liquidIsochoric = liquid.isochoricHeatCapacity();
            liquidSoundSpeed = liquid.soundSpeed();
            liquidViscosity = liquid.viscosity();
            liquidConductivity = liquid.conductivity();
            liquidKnown = true;
        }
        return true;
    }

    @Override
    public FluidState snapshot() {
        double temperature = temperature();
        double density = density();
        double enthalpy = enthalpy();
        double entropy = entropy();
        Phase phase = CoolPropPhases.of(handle);
        return new FluidState(
                fluid.id(),
                pressure,
                temperature,
                density,
                enthalpy,
                entropy,
                isobaricHeatCapacity(),
                isochoricHeatCapacity(),
                soundSpeed(),
                viscosity(),
                conductivity(),
                phase,
                saturationPressure(temperature));
    }

    private OptionalDouble saturationPressure(double temperature) {
        if (temperature >= fluid.criticalTemperature().orElseThrow()) {
            return OptionalDouble.empty();
        }
        double lowest = fluid.range().minimumTemperature();
        return OptionalDouble.of(fluid.vapourPressure(Math.max(temperature, lowest)));
    }

    @Override
    public void close() {
        handle.close();
    }
}
