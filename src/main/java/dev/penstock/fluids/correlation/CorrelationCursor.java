package dev.penstock.fluids.correlation;

import dev.penstock.fluids.correlation.CorrelationFluid.Second;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.Phase;
import dev.penstock.numerics.RootFinder;
import java.util.OptionalDouble;

/** A movable state of a {@link CorrelationFluid}; starts each search for a temperature at the last one. */
final class CorrelationCursor implements FluidCursor {

    private static final int MAXIMUM_STEPS = 60;
    private static final double TOLERANCE = 1e-11;

    /** States from a table in whose time the relations are solved once (-): measured. */
    private static final long EFFORT = 8;

    private final CorrelationFluid fluid;
    private final TaitLiquid liquid;
    private double pressure;
    private double temperature = 298.15;
    private long states;

    CorrelationCursor(CorrelationFluid fluid) {
        this.fluid = fluid;
        this.liquid = fluid.liquid();
    }

    @Override
    public long effort() {
        return EFFORT * states;
    }

    @Override
    public void setPressureTemperature(double p, double t) {
        states++;
        fluid.requireLiquid(p, t, Second.TEMPERATURE, t);
        pressure = p;
        temperature = t;
    }

    @Override
    public void setPressureEnthalpy(double p, double h) {
        setByNewton(p, Second.ENTHALPY, h);
    }

    @Override
    public void setPressureEntropy(double p, double s) {
        setByNewton(p, Second.ENTROPY, s);
    }

    private double value(double p, double t, Second second) {
        return second == Second.ENTHALPY ? liquid.enthalpy(p, t) : liquid.entropy(p, t);
    }

    /**
     * Enthalpy and entropy rise with temperature, so Newton's method, kept within the range, finds the one temperature. Near
     * boiling a step may leave the liquid, where the relations bend the other way; then the liquid's range is bracketed.
     */
    private void setByNewton(double p, Second second, double wanted) {
        states++;
        fluid.requirePressure(p, second, wanted);
        double low = fluid.range().minimumTemperature();
        double high = fluid.range().maximumTemperature();
        double t = Math.min(Math.max(temperature, low), high);
        for (int i = 0; i < MAXIMUM_STEPS; i++) {
            double slope = liquid.isobaricHeatCapacity(p, t);
            double missing = wanted - value(p, t, second);
            double step = second == Second.ENTHALPY ? missing / slope : missing / slope * t;
            double next = Math.min(Math.max(t + step, low), high);
            if (Math.abs(step) <= TOLERANCE * t) {
                fluid.requireLiquid(p, next, second, wanted);
                pressure = p;
                temperature = next;
                return;
            }
            if (!(Math.abs(next - t) > 0)) {
                break;
            }
            t = next;
        }
        double top = fluid.hottestLiquid(p);
        if (value(p, low, second) <= wanted && wanted <= value(p, top, second)) {
            temperature = RootFinder.between(
                            "temperature of a liquid", x -> value(p, x, second) - wanted, low, top, TOLERANCE)
                    .value();
            pressure = p;
            return;
        }
        throw fluid.failure(
                p, second, wanted, "no temperature from %.6g to %.6g K, its model's range, gives that", low, high);
    }

    @Override
    public double pressure() {
        return pressure;
    }

    @Override
    public double temperature() {
        return temperature;
    }

    @Override
    public double density() {
        return 1 / liquid.volume(pressure, temperature);
    }

    @Override
    public double enthalpy() {
        return liquid.enthalpy(pressure, temperature);
    }

    @Override
    public double entropy() {
        return liquid.entropy(pressure, temperature);
    }

    @Override
    public double isobaricHeatCapacity() {
        return liquid.isobaricHeatCapacity(pressure, temperature);
    }

    @Override
    public double soundSpeed() {
        return liquid.soundSpeed(pressure, temperature);
    }

    @Override
    public double viscosity() {
        return fluid.viscosity(pressure, temperature);
    }

    @Override
    public double conductivity() {
        return fluid.conductivity(pressure, temperature);
    }

    @Override
    public Phase phase() {
        return Phase.LIQUID;
    }

    @Override
    public FluidState snapshot() {
        return new FluidState(
                fluid.id(),
                pressure,
                temperature,
                density(),
                enthalpy(),
                entropy(),
                isobaricHeatCapacity(),
                liquid.isochoricHeatCapacity(pressure, temperature),
                soundSpeed(),
                viscosity(),
                conductivity(),
                phase(),
                OptionalDouble.of(fluid.vapourPressure(temperature)));
    }

    @Override
    public void close() {
        // holds nothing outside the heap
    }
}
