package dev.penstock.cooling;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.Fluid;
import dev.penstock.fluids.FluidCursor;
import java.util.Optional;

/**
 * Coolant properties for the march, without gaps: single-phase from the fluid itself; two-phase as a homogeneous mixture
 * between the saturated states; above the highest temperature of the fluid's model carried on with constant cp, so that
 * a jacket that overheats its coolant still gives a number, with the missed limit beside it. Not thread-safe.
 */
final class CoolantProperties implements AutoCloseable {

    private static final double BOILING_BAND = 2e-3;
    private static final double RANGE_EDGE = 0.9995;

    private final Fluid fluid;
    private final FluidCursor cursor;
    private final Optional<SaturationLine> saturation;
    private final double lowest;
    private final double edge;
    private final double criticalPressure;
    private final double criticalTemperature;
    private final CoolantTable table;
    private double hottestSureEnthalpy;

    /**
     * @param fluid coolant
     * @param saturation its boiling line, if it has one
     * @param table its table, used by nobody else meanwhile
     * @param pressure highest pressure to come (Pa)
     */
    CoolantProperties(Fluid fluid, Optional<SaturationLine> saturation, CoolantTable table, double pressure) {
        this.fluid = fluid;
        this.saturation = saturation;
        this.table = table;
        this.cursor = fluid.cursor();
        this.lowest = fluid.range().minimumTemperature() * (1 + 1e-6);
        this.edge = fluid.range().maximumTemperature() * RANGE_EDGE;
        this.criticalPressure = fluid.criticalPressure().orElse(Double.POSITIVE_INFINITY);
        this.criticalTemperature = fluid.criticalTemperature().orElse(0.5 * (lowest + edge));
        try {
            cursor.setPressureTemperature(pressure, 0.98 * edge);
            this.hottestSureEnthalpy = cursor.enthalpy();
        } catch (PropertyFailure e) {
            cursor.close();
            throw e;
        }
    }

    Fluid fluid() {
        return fluid;
    }

    /** @return highest temperature of the fluid's model that is used (K) */
    double highestTemperature() {
        return edge;
    }

    double criticalPressure() {
        return criticalPressure;
    }

    private boolean boils(double pressure) {
        return saturation.isPresent()
                && pressure < criticalPressure
                && pressure < saturation.get().highestPressure();
    }

    /**
     * @param pressure pressure (Pa)
     * @return saturation temperature (K); infinite where the fluid does not boil
     */
    double saturationTemperature(double pressure) {
        return boils(pressure) ? saturation.get().temperature(pressure) : Double.POSITIVE_INFINITY;
    }

    /**
     * @param pressure pressure (Pa)
     * @return enthalpy of the saturated liquid (J/kg); infinite where the fluid does not boil
     */
    double liquidEnthalpy(double pressure) {
        return boils(pressure) ? saturation.get().liquidEnthalpy(pressure) : Double.POSITIVE_INFINITY;
    }

    /**
     * @param pressure pressure (Pa)
     * @param enthalpy enthalpy (J/kg)
     * @return vapour mass fraction, below 0 for liquid and above 1 for vapour (-); −1 where the fluid does not boil
     */
    double quality(double pressure, double enthalpy) {
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
    void bulk(double pressure, double enthalpy, ChannelFlow flow) {
        flow.pressure = pressure;
        flow.bulkEnthalpy = enthalpy;
        flow.bulkSoundSpeed = Double.POSITIVE_INFINITY;
        double quality = quality(pressure, enthalpy);
        if (quality > -BOILING_BAND && quality < 1 + BOILING_BAND) {
            mixture(pressure, Math.max(0, Math.min(1, quality)), flow);
            return;
        }
        if (enthalpy > hottestSureEnthalpy) {
            cursor.setPressureTemperature(pressure, edge);
            double excess = enthalpy - cursor.enthalpy();
            if (excess > 0) {
                read(flow);
                flow.bulkEnthalpy = enthalpy;
                flow.bulkTemperature = edge + excess / flow.bulkHeatCapacity;
                flow.bulkDensity *= edge / flow.bulkTemperature;
                return;
            }
        }
        double guess = flow.bulkTemperature > lowest ? flow.bulkTemperature : criticalTemperature;
        if (!table.bulk(pressure, enthalpy, guess, cursor, flow)) {
            cursor.setPressureEnthalpy(pressure, enthalpy);
            read(flow);
            flow.bulkSoundSpeed = cursor.soundSpeed();
        }
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

    /** Temperature at which wall or film properties are read: inside the model, and on the bulk's side of boiling. */
    private double usable(double temperature, ChannelFlow flow) {
        double t = Math.max(lowest, Math.min(edge, temperature));
        double boiling = saturationTemperature(flow.pressure);
        if (boiling < Double.POSITIVE_INFINITY) {
            t = flow.bulkTemperature <= boiling * (1 + 1e-9)
                    ? Math.min(t, boiling * (1 - 1e-4))
                    : Math.max(t, boiling * (1 + 1e-4));
        }
        return Math.max(lowest, Math.min(edge, t));
    }

    /**
     * Sets the properties at the wall temperature of a flow.
     *
     * @param flow bulk pressure and temperature and the wall temperature in, wall properties out
     */
    void wall(ChannelFlow flow) {
        flow.wallStateTemperature = usable(flow.wallTemperature, flow);
        if (table.place(flow.pressure, flow.wallStateTemperature, cursor)) {
            flow.wallDensity = table.density();
            flow.wallViscosity = table.viscosity();
            flow.wallConductivity = table.conductivity();
            flow.wallEnthalpy = table.enthalpy();
            return;
        }
        cursor.setPressureTemperature(flow.pressure, flow.wallStateTemperature);
        flow.wallDensity = cursor.density();
        flow.wallViscosity = cursor.viscosity();
        flow.wallConductivity = cursor.conductivity();
        flow.wallEnthalpy = cursor.enthalpy();
    }

    /**
     * Sets the properties at the film temperature of a flow.
     *
     * @param flow bulk pressure, bulk and wall temperature in, film properties out
     */
    void film(ChannelFlow flow) {
        double middle = 0.5 * (flow.wallTemperature + flow.bulkTemperature);
        double temperature = usable(middle, flow);
        if (table.place(flow.pressure, temperature, cursor)) {
            flow.filmDensity = table.density();
            flow.filmViscosity = table.viscosity();
            flow.filmConductivity = table.conductivity();
            flow.filmPrandtl = table.heatCapacity() * flow.filmViscosity / flow.filmConductivity;
            return;
        }
        cursor.setPressureTemperature(flow.pressure, temperature);
        flow.filmDensity = cursor.density();
        flow.filmViscosity = cursor.viscosity();
        flow.filmConductivity = cursor.conductivity();
        flow.filmPrandtl = cursor.isobaricHeatCapacity() * flow.filmViscosity / flow.filmConductivity;
    }

    @Override
    public void close() {
        cursor.close();
    }
}
