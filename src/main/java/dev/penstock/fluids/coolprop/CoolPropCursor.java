package dev.penstock.fluids.coolprop;

import dev.penstock.errors.NotConverged;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.ExpansionState;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidRange;
import dev.penstock.fluids.state.FluidSamples;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.KnownStates;
import dev.penstock.fluids.state.Phase;
import java.util.OptionalDouble;

/**
 * A movable state of CoolProp's full equation. A state by pressure and enthalpy or entropy is first sought from where
 * the cursor stands ({@link WarmFlash}), then from the nearest of {@link FlashAnchors}, then by CoolProp's own search, then by {@link BracketedFlash}; between the
 * phases the lever rule serves ({@link SaturationPoint}). Not thread-safe; belongs to the thread that made it.
 */
final class CoolPropCursor implements FluidCursor {

    /** States from a table in whose time the equations are solved once (-): fitted to the time of slow engines. */
    private static final long EFFORT = 60;

    /** The same from a state at nearly the same temperature. */
    private static final long NEAR_EFFORT = 15;

    /** Share of the highest temperature of a model above which no fluid is solid at any of its pressures (-). */
    private static final double HOT = 0.5;

    private final CoolPropFluid fluid;
    private final CoolPropHandle handle;
    private final WarmFlash warm;
    private final boolean warmStart;
    private final SaturationPoints saturations;
    private SaturationPoint saturation;
    private Phase phase = Phase.LIQUID;
    private double pressure;
    private boolean placed;
    private long effort;
    private double quality;

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
        this.saturations = fluid.saturations();
    }

    @Override
    public void setPressureTemperature(double p, double t) {
        boolean near = warmStart && placed && phase != Phase.TWO_PHASE && isHotGas(p, t);
        placed = false;
        if (near && warm.moveToTemperature(p, t)) {
            effort += NEAR_EFFORT;
        } else {
            effort += EFFORT;
            handle.update(CoolPropInputs.PRESSURE_TEMPERATURE, p, t);
        }
        arrived(p);
    }

    /**
     * Whether a state lies inside the model's range, above the critical temperature and in the hot half of the range, where nothing is solid:
     * a search by density does not look for either, CoolProp's own by pressure does.
     */
    private boolean isHotGas(double p, double t) {
        FluidRange range = fluid.range();
        return t > fluid.criticalTemperature().orElseThrow()
                && t > HOT * range.maximumTemperature()
                && t <= range.maximumTemperature()
                && p <= range.maximumPressure();
    }

    @Override
    public void setPressureEnthalpy(double p, double h) {
        set(p, CoolPropOutput.ENTHALPY, h);
    }

    @Override
    public void setPressureEntropy(double p, double s) {
        set(p, CoolPropOutput.ENTROPY, s);
    }

    /** The state at a pressure and enthalpy, from a state that is known. */
    FluidState atPressureEnthalpy(double p, double h, KnownStates known) {
        move(p, CoolPropOutput.ENTHALPY, h, known);
        FluidState state = snapshot();
        keep(known, state.density(), state.temperature(), state.enthalpy(), state.entropy());
        return state;
    }

    /** What an expansion asks of the state at a pressure and enthalpy, from a state that is known. */
    ExpansionState expansionAtPressureEnthalpy(double p, double h, KnownStates known) {
        return expansion(p, CoolPropOutput.ENTHALPY, h, known);
    }

    /** What an expansion asks of the state at a pressure and entropy, from a state that is known. */
    ExpansionState expansionAtPressureEntropy(double p, double s, KnownStates known) {
        return expansion(p, CoolPropOutput.ENTROPY, s, known);
    }

    private ExpansionState expansion(double p, CoolPropOutput second, double wanted, KnownStates known) {
        move(p, second, wanted, known);
        ExpansionState state = new ExpansionState(
                pressure,
                temperature(),
                density(),
                enthalpy(),
                entropy(),
                isobaricHeatCapacity(),
                soundSpeed(),
                phase == Phase.TWO_PHASE);
        keep(known, state.density(), state.temperature(), state.enthalpy(), state.entropy());
        return state;
    }

    private void keep(KnownStates known, double density, double temperature, double enthalpy, double entropy) {
        if (phase != Phase.TWO_PHASE) {
            known.add(warm.point(pressure, density, temperature, enthalpy, entropy));
        }
    }

    private void move(double p, CoolPropOutput second, double wanted, KnownStates known) {
        placed = false;
        if (warm.arrive(known, p, second, wanted, WarmFlash.POLISHED)) {
            arrived(p);
        } else {
            // between the phases a search by density and temperature ends in vain, and each of its steps there takes
            // CoolProp long
            if (known.mixed() && mixture(p, second, wanted)) {
                effort += EFFORT;
            } else {
                set(p, second, wanted);
            }
            known.sought(p, phase == Phase.TWO_PHASE);
        }
    }

    /**
     * Enthalpy at a pressure and entropy, from a state that is known. The search ends early, and what is left of the way is made
     * up by dh = T ds + dp/ρ.
     */
    double enthalpyAtPressureEntropy(double p, double s, KnownStates known) {
        placed = false;
        boolean near = warm.arrive(known, p, CoolPropOutput.ENTROPY, s, WarmFlash.MADE_UP);
        if (!near) {
            set(p, CoolPropOutput.ENTROPY, s);
            if (phase == Phase.TWO_PHASE) {
                return enthalpy();
            }
        }
        double there = handle.output(CoolPropOutput.PRESSURE);
        double entropy = handle.output(CoolPropOutput.ENTROPY);
        double enthalpy = handle.output(CoolPropOutput.ENTHALPY);
        double density = handle.output(CoolPropOutput.DENSITY);
        double temperature = handle.output(CoolPropOutput.TEMPERATURE);
        known.add(warm.point(there, density, temperature, enthalpy, entropy));
        return near ? enthalpy + temperature * (s - entropy) + (p - there) / density : enthalpy;
    }

    void setSaturatedLiquid(double t) {
        placed = false;
        handle.update(CoolPropInputs.QUALITY_TEMPERATURE, 0, t);
        arrived(handle.output(CoolPropOutput.PRESSURE));
    }

    @Override
    public long effort() {
        return effort;
    }

    private void set(double p, CoolPropOutput second, double wanted) {
        effort += EFFORT;
        boolean wasPlaced = placed;
        placed = false;
        boolean near = warmStart && wasPlaced && p > 0;
        if (near && phase == Phase.TWO_PHASE && mixture(p, second, wanted)) {
            return;
        }
        if (near && phase != Phase.TWO_PHASE && warm.move(p, second, wanted)) {
            arrived(p);
        } else if (warm.arrive(fluid.anchors(), p, second, wanted)) {
            arrived(p);
        } else if (!mixture(p, second, wanted)) {
            search(p, second, wanted);
            arrived(p);
        }
    }

    private void search(double p, CoolPropOutput second, double wanted) {
        if (fluid.anchors().moveNear(handle, p, second, wanted) && warm.arrive(p, second, wanted)) {
            return;
        }
        roughly(p, second, wanted);
        if (CoolPropPhases.of(handle) != Phase.TWO_PHASE && !warm.polish(p, second, wanted)) {
            roughly(p, second, wanted);
        }
    }

    private void roughly(double p, CoolPropOutput second, double wanted) {
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

    @Override
    public FluidSamples sample(double[] pressures, double[] enthalpies, double[] densities, double[] temperatures) {
        placed = false;
        return new BatchFlash(handle, fluid.anchors(), fluid.transport(), pressures, enthalpies)
                .run(densities, temperatures);
    }

    /** A state between the phases by the lever rule; says no if the state lies on one side of them. */
    private boolean mixture(double p, CoolPropOutput second, double wanted) {
        if (!(p < fluid.criticalPressure().orElseThrow())) {
            return false;
        }
        try {
            saturation = saturations.at(handle, p);
        } catch (PropertyFailure e) {
            return false;
        }
        quality = saturation.quality(second, wanted);
        if (!(quality > 0 && quality < 1)) {
            return false;
        }
        phase = Phase.TWO_PHASE;
        pressure = p;
        placed = true;
        return true;
    }

    private void arrived(double p) {
        pressure = p;
        phase = CoolPropPhases.of(handle);
        if (phase == Phase.TWO_PHASE) {
            double x = handle.output(CoolPropOutput.ENTHALPY);
            saturation = saturations.at(handle, p);
            quality = saturation.quality(CoolPropOutput.ENTHALPY, x);
        }
        placed = true;
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
        return phase == Phase.TWO_PHASE ? saturation.temperature() : handle.output(CoolPropOutput.TEMPERATURE);
    }

    @Override
    public double density() {
        return phase == Phase.TWO_PHASE ? saturation.density(quality) : handle.output(CoolPropOutput.DENSITY);
    }

    @Override
    public double enthalpy() {
        return phase == Phase.TWO_PHASE ? saturation.enthalpy(quality) : handle.output(CoolPropOutput.ENTHALPY);
    }

    @Override
    public double entropy() {
        return phase == Phase.TWO_PHASE ? saturation.entropy(quality) : handle.output(CoolPropOutput.ENTROPY);
    }

    @Override
    public double isobaricHeatCapacity() {
        return phase == Phase.TWO_PHASE
                ? saturation.isobaricHeatCapacity()
                : handle.output(CoolPropOutput.ISOBARIC_HEAT_CAPACITY);
    }

    double isochoricHeatCapacity() {
        return phase == Phase.TWO_PHASE
                ? saturation.isochoricHeatCapacity()
                : handle.output(CoolPropOutput.ISOCHORIC_HEAT_CAPACITY);
    }

    @Override
    public double soundSpeed() {
        return phase == Phase.TWO_PHASE ? saturation.soundSpeed() : handle.output(CoolPropOutput.SOUND_SPEED);
    }

    @Override
    public double viscosity() {
        if (phase == Phase.TWO_PHASE) {
            return saturation.viscosity();
        }
        return fluid.transport().isPresent()
                ? fluid.transport().get().viscosity(temperature(), density(), pressure)
                : handle.output(CoolPropOutput.VISCOSITY);
    }

    @Override
    public double conductivity() {
        if (phase == Phase.TWO_PHASE) {
            return saturation.conductivity();
        }
        return fluid.transport().isPresent()
                ? fluid.transport().get().conductivity(temperature(), density(), pressure)
                : handle.output(CoolPropOutput.CONDUCTIVITY);
    }

    @Override
    public Phase phase() {
        return phase;
    }

    @Override
    public FluidState snapshot() {
        double temperature = temperature();
        double density = density();
        double enthalpy = enthalpy();
        double entropy = entropy();
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
