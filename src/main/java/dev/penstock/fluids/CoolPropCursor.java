package dev.penstock.fluids;

import java.util.OptionalDouble;

/** A movable state of CoolProp's full equation. Not thread-safe; belongs to the thread that made it. */
final class CoolPropCursor implements FluidCursor {

    private static final int LIQUID_CODE = 0;
    private static final int SUPERCRITICAL_GAS_CODE = 2;
    private static final int SUPERCRITICAL_LIQUID_CODE = 3;
    private static final int GAS_CODE = 5;
    private static final int TWO_PHASE_CODE = 6;

    private final CoolPropFluid fluid;
    private final CoolPropHandle handle;

    CoolPropCursor(CoolPropFluid fluid, CoolPropHandle handle) {
        this.fluid = fluid;
        this.handle = handle;
    }

    @Override
    public void setPressureTemperature(double pressure, double temperature) {
        handle.update(CoolPropInputs.PRESSURE_TEMPERATURE, pressure, temperature);
    }

    @Override
    public void setPressureEnthalpy(double pressure, double enthalpy) {
        handle.update(CoolPropInputs.ENTHALPY_PRESSURE, enthalpy, pressure);
    }

    @Override
    public void setPressureEntropy(double pressure, double entropy) {
        handle.update(CoolPropInputs.PRESSURE_ENTROPY, pressure, entropy);
    }

    void setSaturatedLiquid(double temperature) {
        handle.update(CoolPropInputs.QUALITY_TEMPERATURE, 0, temperature);
    }

    @Override
    public double pressure() {
        return handle.output(CoolPropOutput.PRESSURE);
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
        return handle.output(CoolPropOutput.ISOBARIC_HEAT_CAPACITY);
    }

    @Override
    public double soundSpeed() {
        return handle.output(CoolPropOutput.SOUND_SPEED);
    }

    @Override
    public double viscosity() {
        return fluid.transport().isPresent()
                ? fluid.transport().get().viscosity(temperature(), density(), pressure())
                : handle.output(CoolPropOutput.VISCOSITY);
    }

    @Override
    public double conductivity() {
        return fluid.transport().isPresent()
                ? fluid.transport().get().conductivity(temperature(), density(), pressure())
                : handle.output(CoolPropOutput.CONDUCTIVITY);
    }

    @Override
    public FluidState snapshot() {
        double pressure = pressure();
        double temperature = temperature();
        double density = density();
        double enthalpy = enthalpy();
        double entropy = entropy();
        Phase phase = phase();
        CoolPropCursor inside = phase == Phase.TWO_PHASE ? saturatedLiquidAt(pressure) : this;
        double isobaric = inside.isobaricHeatCapacity();
        double isochoric = inside.handle.output(CoolPropOutput.ISOCHORIC_HEAT_CAPACITY);
        double soundSpeed = inside.soundSpeed();
        double viscosity = inside.viscosity();
        double conductivity = inside.conductivity();
        return new FluidState(
                fluid.id(),
                pressure,
                temperature,
                density,
                enthalpy,
                entropy,
                isobaric,
                isochoric,
                soundSpeed,
                viscosity,
                conductivity,
                phase,
                saturationPressure(temperature));
    }

    /** On the fluid's own state object for this thread, so that this cursor stays where it is. */
    private CoolPropCursor saturatedLiquidAt(double pressure) {
        CoolPropCursor cursor = fluid.own();
        cursor.handle.update(CoolPropInputs.PRESSURE_QUALITY, pressure, 0);
        return cursor;
    }

    private OptionalDouble saturationPressure(double temperature) {
        if (temperature >= fluid.criticalTemperature().orElseThrow()) {
            return OptionalDouble.empty();
        }
        double lowest = fluid.range().minimumTemperature();
        return OptionalDouble.of(fluid.vapourPressure(Math.max(temperature, lowest)));
    }

    private Phase phase() {
        return switch ((int) handle.output(CoolPropOutput.PHASE)) {
            case LIQUID_CODE, SUPERCRITICAL_LIQUID_CODE -> Phase.LIQUID;
            case GAS_CODE, SUPERCRITICAL_GAS_CODE -> Phase.GAS;
            case TWO_PHASE_CODE -> saturatedPhase(handle.output(CoolPropOutput.QUALITY));
            default -> Phase.SUPERCRITICAL;
        };
    }

    private static Phase saturatedPhase(double quality) {
        if (quality <= 0) {
            return Phase.LIQUID;
        }
        return quality >= 1 ? Phase.GAS : Phase.TWO_PHASE;
    }

    @Override
    public void close() {
        handle.close();
    }
}
