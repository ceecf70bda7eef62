package dev.penstock.fluids.correlation;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.property.Polynomial;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidRange;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.store.FluidStore;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * A liquid described by published correlations in its data file: thermodynamics by {@link TaitLiquid}, transport by
 * temperature functions at the reference pressure with the effect of compression
 *
 * <pre>
 * μ = μ0(T) exp(n (298.15/T)² (ρ/ρ0 - 1)),   k = k0(T) (ρ/ρ0)^m
 * </pre>
 *
 * <p>n and m are in the data file; the form follows n-dodecane's reference correlations within 4 % in viscosity up to 60
 * MPa. Liquid only: below its vapour pressure there is no state. Immutable.
 */
public final class CorrelationFluid implements Fluid {

    public static final ModelCard CARD = TaitLiquid.CARD;

    private static final double TRANSPORT_TEMPERATURE = 298.15;
    private static final double SATURATION_TOLERANCE = 1e-6;

    /**
     * What the data file states.
     *
     * @param id fluid id
     * @param name name for people
     * @param molarMass mean molar mass (kg/mol)
     * @param range range of the model
     * @param criticalTemperature critical temperature (K)
     * @param criticalPressure critical pressure (Pa)
     * @param density density at the reference pressure (kg/m³)
     * @param bulkModulus isothermal bulk modulus at the reference pressure (Pa)
     * @param heatCapacity specific heat at the reference pressure (J/(kg·K))
     * @param vapourPressure vapour pressure (Pa)
     * @param viscosity viscosity at the reference pressure (Pa·s)
     * @param conductivity conductivity at the reference pressure (W/(m·K))
     * @param taitConstant Tait's C (-)
     * @param referencePressure reference pressure (Pa)
     * @param viscosityCompression n above (-)
     * @param conductivityCompression m above (-)
     */
    public record Data(
            String id,
            String name,
            double molarMass,
            FluidRange range,
            double criticalTemperature,
            double criticalPressure,
            Correlation density,
            Correlation bulkModulus,
            Correlation heatCapacity,
            Correlation vapourPressure,
            Correlation viscosity,
            Correlation conductivity,
            double taitConstant,
            double referencePressure,
            double viscosityCompression,
            double conductivityCompression) {}

    private final Data data;
    private final TaitLiquid liquid;
    private final FluidStore store;

    /**
     * @param data what its file states
     * @param store where its tables are kept
     */
    public CorrelationFluid(Data data, FluidStore store) {
        this.data = data;
        this.store = store;
        this.liquid = new TaitLiquid(
                data.density.function(),
                data.bulkModulus.function(),
                (Polynomial) data.heatCapacity.function(),
                data.taitConstant,
                data.referencePressure);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CorrelationFluid fluid && data.equals(fluid.data);
    }

    @Override
    public int hashCode() {
        return data.hashCode();
    }

    @Override
    public String id() {
        return data.id;
    }

    @Override
    public ModelCard model() {
        return CARD;
    }

    @Override
    public String name() {
        return data.name;
    }

    @Override
    public double molarMass() {
        return data.molarMass;
    }

    @Override
    public FluidRange range() {
        return data.range;
    }

    @Override
    public OptionalDouble criticalTemperature() {
        return OptionalDouble.of(data.criticalTemperature);
    }

    @Override
    public OptionalDouble criticalPressure() {
        return OptionalDouble.of(data.criticalPressure);
    }

    @Override
    public FluidState atPressureTemperature(double pressure, double temperature) {
        return moved(cursor -> cursor.setPressureTemperature(pressure, temperature));
    }

    @Override
    public FluidState atPressureEnthalpy(double pressure, double enthalpy) {
        return moved(cursor -> cursor.setPressureEnthalpy(pressure, enthalpy));
    }

    @Override
    public FluidState atPressureEntropy(double pressure, double entropy) {
        return moved(cursor -> cursor.setPressureEntropy(pressure, entropy));
    }

    private FluidState moved(Consumer<FluidCursor> move) {
        try (FluidCursor cursor = cursor()) {
            move.accept(cursor);
            return cursor.snapshot();
        }
    }

    @Override
    public FluidState saturatedLiquid(double temperature) {
        return atPressureTemperature(vapourPressure(temperature), temperature);
    }

    @Override
    public double vapourPressure(double temperature) {
        requireLiquid(data.range.maximumPressure(), temperature, Second.TEMPERATURE, temperature);
        return data.vapourPressure.value(temperature);
    }

    @Override
    public List<Warning> warnings(FluidState state) {
        Map<String, Correlation> parts = new LinkedHashMap<>();
        parts.put("density", data.density);
        parts.put("bulk modulus", data.bulkModulus);
        parts.put("heat capacity", data.heatCapacity);
        parts.put("vapour pressure", data.vapourPressure);
        parts.put("viscosity", data.viscosity);
        parts.put("conductivity", data.conductivity);
        List<Warning> list = new ArrayList<>();
        parts.forEach((property, correlation) -> {
            if (!correlation.covers(state.temperature())) {
                list.add(new Warning(
                        "fluid " + data.id,
                        String.format(
                                Locale.ROOT,
                                "%s at %.1f K is extrapolated; its data cover %.1f to %.1f K",
                                property,
                                state.temperature(),
                                correlation.lowest(),
                                correlation.highest())));
            }
        });
        return List.copyOf(list);
    }

    @Override
    public FluidStore store() {
        return store;
    }

    @Override
    public FluidCursor cursor() {
        return new CorrelationCursor(this);
    }

    TaitLiquid liquid() {
        return liquid;
    }

    double viscosity(double pressure, double temperature) {
        double squeeze = liquid.compression(pressure, temperature) - 1;
        double ratio = TRANSPORT_TEMPERATURE / temperature;
        return data.viscosity.value(temperature) * Math.exp(data.viscosityCompression * ratio * ratio * squeeze);
    }

    double conductivity(double pressure, double temperature) {
        return data.conductivity.value(temperature)
                * Math.pow(liquid.compression(pressure, temperature), data.conductivityCompression);
    }

    /**
     * @param pressure pressure (Pa)
     * @param temperature temperature (K)
     * @param second the input beside the pressure, for the message
     * @param value its value
     * @throws PropertyFailure unless the liquid exists there
     */
    void requireLiquid(double pressure, double temperature, Second second, double value) {
        requirePressure(pressure, second, value);
        double low = data.range.minimumTemperature();
        double high = data.range.maximumTemperature();
        if (!(temperature >= low && temperature <= high)) {
            throw failure(
                    pressure,
                    second,
                    value,
                    "the temperature must lie within %.6g to %.6g K, its model's range",
                    low,
                    high);
        }
        double boils = data.vapourPressure.value(temperature);
        if (!(pressure >= boils * (1 - SATURATION_TOLERANCE))) {
            throw failure(
                    pressure,
                    second,
                    value,
                    "it boils there (vapour pressure %.6g Pa at %.6g K), and its model describes the liquid only",
                    boils,
                    temperature);
        }
    }

    /** Highest temperature of the liquid at a pressure (K): where it boils, or the end of the range. */
    double hottestLiquid(double pressure) {
        double low = data.range.minimumTemperature();
        double high = data.range.maximumTemperature();
        if (data.vapourPressure.value(high) <= pressure) {
            return high;
        }
        if (data.vapourPressure.value(low) >= pressure) {
            return low;
        }
        return RootFinder.between(
                        "boiling temperature of " + data.name,
                        t -> Math.log(data.vapourPressure.value(t) / pressure),
                        low,
                        high,
                        1e-12)
                .value();
    }

    void requirePressure(double pressure, Second second, double value) {
        if (!(pressure > 0 && pressure <= data.range.maximumPressure())) {
            throw failure(
                    pressure,
                    second,
                    value,
                    "the pressure must be above 0 and at most %.6g Pa",
                    data.range.maximumPressure());
        }
    }

    PropertyFailure failure(double pressure, Second second, double value, String reason, Object... numbers) {
        String inputs = String.format(Locale.ROOT, "p = %.8g Pa, " + second.format, pressure, value);
        return new PropertyFailure(data.id, inputs, String.format(Locale.ROOT, reason, numbers));
    }

    /** The input beside the pressure. */
    enum Second {
        TEMPERATURE("T = %.8g K"),
        ENTHALPY("h = %.8g J/kg"),
        ENTROPY("s = %.8g J/(kg·K)");

        private final String format;

        Second(String format) {
            this.format = format;
        }
    }
}
