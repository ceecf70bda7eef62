package dev.penstock.cooling.coolant;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.table.FluidTables;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Coolant properties for the march, without gaps: single-phase from a table of the fluid, or the fluid itself off the table; two-phase as a homogeneous mixture
 * between the saturated states; above the highest temperature of the fluid's model, or above boiling where it knows the
 * liquid only, carried on with constant cp, so that
 * a jacket that overheats its coolant still gives a number, with the missed limit beside it. Not thread-safe.
 */
public final class CoolantProperties implements AutoCloseable {

    private static final double BOILING_BAND = 2e-3;
    private static final double RANGE_EDGE = 0.9995;
    private static final double SURE = 0.9;
    private static final double BELOW_BOILING = 1 - 1e-3;

    /** Gauss's quadrature with three points on -1 to 1. */
    private static final double GAUSS_POINT = Math.sqrt(0.6);

    private static final double GAUSS_MIDDLE = 8.0 / 9;
    private static final double GAUSS_SIDE = 5.0 / 9;

    /** Above this share of the pressure at which the boiling line ends, boiling fades (-). */
    private static final double BOILING_FADES = 0.9;

    private final Fluid fluid;
    private final Supplier<FluidCursor> cursors;
    private final FluidCursor cursor;

    /** One for the wall, so that each search starts from the last state of its own kind. */
    private final FluidCursor wallCursor;

    private final Optional<SaturationLine> saturation;
    private final double lowest;
    private final double edge;
    private final double criticalPressure;
    private final double lastBoilingPressure;
    private double hottestSureEnthalpy;
    private boolean beyondModel;
    private long bulkStates;

    private double nearTemperature;
    private double nearDensity;
    private double nearViscosity;
    private double nearConductivity;
    private double nearEnthalpy;
    private double nearHeatCapacity;

    /**
     * @param fluid coolant
     * @param saturation its boiling line, if it has one
     * @param pressure highest pressure to come (Pa)
     * @param tabulated whether single-phase properties come from the fluid's table, not from the full model
     */
    public CoolantProperties(Fluid fluid, Optional<SaturationLine> saturation, double pressure, boolean tabulated) {
        this.fluid = fluid;
        this.saturation = saturation.map(SaturationLine::forOneThread);
        this.lowest = fluid.range().minimumTemperature() * (1 + 1e-6);
        this.edge = fluid.range().maximumTemperature() * RANGE_EDGE;
        this.criticalPressure = fluid.criticalPressure().orElse(Double.POSITIVE_INFINITY);
        this.lastBoilingPressure = Math.min(
                criticalPressure,
                saturation.map(SaturationLine::highestPressure).orElse(0.0));
        cursors = tabulated ? FluidTables.of(fluid)::cursor : fluid::cursor;
        this.cursor = cursors.get();
        this.wallCursor = cursors.get();
        cursor.setPressureTemperature(pressure, Math.min(SURE * edge, edgeTemperature(pressure)));
        this.hottestSureEnthalpy = cursor.enthalpy();
    }

    public Fluid fluid() {
        return fluid;
    }

    /** @return a new cursor of what properties come from; the caller closes it */
    public FluidCursor newCursor() {
        return cursors.get();
    }

    /** @return highest temperature of the fluid's model that is used (K) */
    public double highestTemperature() {
        return edge;
    }

    public double criticalPressure() {
        return criticalPressure;
    }

    /** @return whether the coolant has a boiling point at a pressure (Pa) */
    public boolean boils(double pressure) {
        return pressure < lastBoilingPressure;
    }

    /**
     * @param pressure pressure (Pa)
     * @return saturation temperature (K); infinite where the fluid does not boil
     */
    public double saturationTemperature(double pressure) {
        return boils(pressure) ? saturation.get().temperature(pressure) : Double.POSITIVE_INFINITY;
    }

    /**
     * How much of boiling is left at a pressure. Towards the end of the boiling line liquid and vapour become one, so what
     * boiling does fades, and a coolant that crosses the critical pressure sees no jump.
     *
     * @param pressure pressure (Pa)
     * @return 1 up to nine tenths of the pressure at which the line ends, 0 from there on (-)
     */
    public double boilingShare(double pressure) {
        double share = (1 - pressure / lastBoilingPressure) / (1 - BOILING_FADES);
        return Math.max(0, Math.min(1, share));
    }

    /**
     * @param pressure pressure (Pa)
     * @return enthalpy of the saturated liquid (J/kg); infinite where the fluid does not boil
     */
    public double liquidEnthalpy(double pressure) {
        return boils(pressure) ? saturation.get().liquidEnthalpy(pressure) : Double.POSITIVE_INFINITY;
    }

    /**
     * @param pressure pressure (Pa)
     * @param enthalpy enthalpy (J/kg)
     * @return vapour mass fraction, below 0 for liquid and above 1 for vapour (-); −1 where the fluid does not boil
     */
    public double quality(double pressure, double enthalpy) {
        if (!boils(pressure) || !saturation.get().hasVapour()) {
            return -1;
        }
        double liquid = saturation.get().liquidEnthalpy(pressure);
        return (enthalpy - liquid) / (saturation.get().vapourEnthalpy(pressure) - liquid);
    }

    /**
     * Sets the bulk state of a flow.
     *
     * @param pressure pressure (Pa)
     * @param enthalpy static enthalpy (J/kg)
     * @param flow receives the bulk properties
     * @throws PropertyFailure if the fluid has no state there
     */
    public void bulk(double pressure, double enthalpy, ChannelFlow flow) {
        bulkStates++;
        flow.pressure = pressure;
        flow.bulkEnthalpy = enthalpy;
        flow.bulkSoundSpeed = Double.POSITIVE_INFINITY;
        beyondModel = false;
        flow.quality = -1;
        double quality = quality(pressure, enthalpy);
        if (quality > -BOILING_BAND && quality < 1 + BOILING_BAND) {
            flow.quality = Math.max(0, Math.min(1, quality));
            mixture(pressure, flow.quality, flow);
            return;
        }
        if (enthalpy > hottestSureEnthalpy || boilsAway(pressure, enthalpy)) {
            double last = edgeTemperature(pressure);
            cursor.setPressureTemperature(pressure, last);
            double excess = enthalpy - cursor.enthalpy();
            if (excess > 0) {
                beyondModel = true;
                read(flow);
                flow.bulkTemperature = last + excess / flow.bulkHeatCapacity;
                flow.bulkDensity *= last / flow.bulkTemperature;
                return;
            }
        }
        cursor.setPressureEnthalpy(pressure, enthalpy);
        read(flow);
        flow.bulkSoundSpeed = cursor.soundSpeed();
    }

    /** @return effort so far, in bulk states from a table: counted, not timed */
    public long work() {
        return bulkStates + cursor.effort() + wallCursor.effort();
    }

    /** @return whether the last bulk state lay beyond the fluid's model and was carried on with constant cp */
    public boolean beyondModel() {
        return beyondModel;
    }

    /** A model of the liquid alone ends where it boils. */
    private boolean boilsAway(double pressure, double enthalpy) {
        return boils(pressure)
                && !saturation.get().hasVapour()
                && enthalpy > saturation.get().enthalpyBelowBoiling(pressure, 1 - BELOW_BOILING);
    }

    /** Last temperature of the fluid's model at a pressure (K). */
    public double edgeTemperature(double pressure) {
        if (boils(pressure) && !saturation.get().hasVapour()) {
            return Math.min(edge, saturation.get().temperature(pressure) * BELOW_BOILING);
        }
        return edge;
    }

    private void read(ChannelFlow flow) {
        flow.bulkTemperature = cursor.temperature();
        flow.bulkDensity = cursor.density();
        flow.bulkHeatCapacity = cursor.isobaricHeatCapacity();
        flow.bulkViscosity = cursor.viscosity();
        flow.bulkConductivity = cursor.conductivity();
    }

    private void mixture(double pressure, double quality, ChannelFlow flow) {
        SaturationLine line = saturation.get();
        flow.bulkTemperature = line.temperature(pressure);
        flow.bulkDensity = 1 / (quality / line.vapourDensity(pressure) + (1 - quality) / line.liquidDensity(pressure));
        flow.bulkHeatCapacity = line.blend(pressure, 0, quality);
        flow.bulkViscosity = line.blend(pressure, 1, quality);
        flow.bulkConductivity = line.blend(pressure, 2, quality);
    }

    /**
     * Sets the properties at the wall temperature of a flow: inside the model's range, and on the bulk's side of boiling.
     *
     * @param flow bulk state and wall temperature in, wall properties out
     */
    public void wall(ChannelFlow flow) {
        near(flow.wallTemperature, flow);
        flow.wallStateTemperature = nearTemperature;
        flow.wallDensity = nearDensity;
        flow.wallViscosity = nearViscosity;
        flow.wallConductivity = nearConductivity;
        flow.wallEnthalpy = nearEnthalpy;
    }

    /**
     * Sets the properties at the film temperature of a flow, with the same care.
     *
     * @param flow bulk state and wall temperature in, film properties out
     */
    public void film(ChannelFlow flow) {
        near(0.5 * (flow.wallTemperature + flow.bulkTemperature), flow);
        flow.filmDensity = nearDensity;
        flow.filmViscosity = nearViscosity;
        flow.filmConductivity = nearConductivity;
        flow.filmPrandtl = nearHeatCapacity * nearViscosity / nearConductivity;
    }

    /**
     * Averages the properties of a flow over temperature from bulk to wall, with the same care: three points of Gauss over the logarithm of
     * temperature, which is exact for the density of an ideal gas.
     *
     * @param flow bulk state and wall temperature in, averaged properties out
     */
    public void mean(ChannelFlow flow) {
        double middle = 0.5 * Math.log(flow.wallTemperature * flow.bulkTemperature);
        double half = 0.5 * Math.log(flow.wallTemperature / flow.bulkTemperature);
        double weight = 0;
        double density = 0;
        double viscosity = 0;
        double conductivity = 0;
        double heatCapacity = 0;
        for (int i = -1; i <= 1; i++) {
            double temperature = Math.exp(middle + i * GAUSS_POINT * half);
            near(temperature, flow);
            double w = temperature * (i == 0 ? GAUSS_MIDDLE : GAUSS_SIDE);
            weight += w;
            density += w * nearDensity;
            viscosity += w * nearViscosity;
            conductivity += w * nearConductivity;
            heatCapacity += w * nearHeatCapacity;
        }
        flow.meanDensity = density / weight;
        flow.meanViscosity = viscosity / weight;
        flow.meanConductivity = conductivity / weight;
        flow.meanPrandtl = heatCapacity / weight * flow.meanViscosity / flow.meanConductivity;
    }

    private void near(double wanted, ChannelFlow flow) {
        double temperature = Math.max(lowest, Math.min(edge, wanted));
        double boiling = saturationTemperature(flow.pressure);
        if (boiling < Double.POSITIVE_INFINITY) {
            boolean liquid = flow.bulkTemperature <= boiling * (1 + 1e-9);
            if (liquid && temperature >= boiling) {
                double dry = 1 - (1 - Math.max(0, flow.quality)) * boilingShare(flow.pressure);
                if (dry > 0) {
                    nearWetAndDry(temperature, boiling, dry, flow);
                } else {
                    nearSaturated(flow.pressure, boiling, 0);
                }
                return;
            }
            if (!liquid && temperature <= boiling && saturation.get().hasVapour()) {
                nearSaturated(flow.pressure, boiling, 1);
                return;
            }
        }
        nearSinglePhase(temperature, flow);
    }

    /** Between boiling liquid and hot vapour, so that neither drying out nor the critical pressure makes a step. */
    private void nearWetAndDry(double temperature, double boiling, double dry, ChannelFlow flow) {
        nearSinglePhase(temperature, flow);
        double t = nearTemperature;
        double density = nearDensity;
        double viscosity = nearViscosity;
        double conductivity = nearConductivity;
        double enthalpy = nearEnthalpy;
        double heatCapacity = nearHeatCapacity;
        nearSaturated(flow.pressure, boiling, 0);
        nearTemperature += dry * (t - nearTemperature);
        nearDensity += dry * (density - nearDensity);
        nearViscosity += dry * (viscosity - nearViscosity);
        nearConductivity += dry * (conductivity - nearConductivity);
        nearEnthalpy += dry * (enthalpy - nearEnthalpy);
        nearHeatCapacity += dry * (heatCapacity - nearHeatCapacity);
    }

    private void nearSinglePhase(double temperature, ChannelFlow flow) {
        nearTemperature = temperature;
        try {
            wallCursor.setPressureTemperature(flow.pressure, temperature);
            nearDensity = wallCursor.density();
            nearViscosity = wallCursor.viscosity();
            nearConductivity = wallCursor.conductivity();
            nearEnthalpy = wallCursor.enthalpy();
            nearHeatCapacity = wallCursor.isobaricHeatCapacity();
        } catch (PropertyFailure e) {
            // the fluid would be frozen there: a guess on the way to the solution, so the bulk's properties will do
            nearBulk(flow);
        }
    }

    private void nearBulk(ChannelFlow flow) {
        nearTemperature = flow.bulkTemperature;
        nearDensity = flow.bulkDensity;
        nearViscosity = flow.bulkViscosity;
        nearConductivity = flow.bulkConductivity;
        nearEnthalpy = flow.bulkEnthalpy;
        nearHeatCapacity = flow.bulkHeatCapacity;
    }

    private void nearSaturated(double pressure, double boiling, int quality) {
        SaturationLine line = saturation.get();
        nearTemperature = boiling;
        nearDensity = quality == 0 ? line.liquidDensity(pressure) : line.vapourDensity(pressure);
        nearEnthalpy = quality == 0 ? line.liquidEnthalpy(pressure) : line.vapourEnthalpy(pressure);
        nearHeatCapacity = line.blend(pressure, 0, quality);
        nearViscosity = line.blend(pressure, 1, quality);
        nearConductivity = line.blend(pressure, 2, quality);
    }

    @Override
    public void close() {
        cursor.close();
        wallCursor.close();
    }
}
