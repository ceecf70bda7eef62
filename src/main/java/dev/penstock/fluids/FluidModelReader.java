package dev.penstock.fluids;

import dev.penstock.fluids.coolprop.CoolPropFluid;
import dev.penstock.fluids.coolprop.CoolPropLibrary;
import dev.penstock.fluids.coolprop.CorrespondingStatesTransport;
import dev.penstock.fluids.correlation.Correlation;
import dev.penstock.fluids.correlation.CorrelationFluid;
import dev.penstock.fluids.correlation.CorrelationForm;
import dev.penstock.fluids.property.Composition;
import dev.penstock.fluids.property.TransportModel;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidRange;
import dev.penstock.fluids.store.FluidStore;
import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Reads the table {@code [model]} of a fluid's file into a {@link Fluid}. */
final class FluidModelReader {

    /** Steps in which a property is looked at over the range of its model. */
    private static final int CHECKED = 40;

    private static final Range TEMPERATURE = Range.of(1, 3000);
    private static final Range PRESSURE = Range.of(1, 1e9);
    private static final List<CorrelationForm> SMOOTH = List.of(
            CorrelationForm.POLYNOMIAL,
            CorrelationForm.EXPONENTIAL_POLYNOMIAL,
            CorrelationForm.DIPPR_101,
            CorrelationForm.DIPPR_105);
    private static final List<CorrelationForm> ANY = List.of(CorrelationForm.values());

    private final Supplier<CoolPropLibrary> coolProp;
    private final String id;
    private final String name;
    private final Composition composition;
    private final Function<Supplier<String>, FluidStore> stores;

    /**
     * @param coolProp CoolProp, not reached before a fluid of it is asked
     * @param id id of the fluid
     * @param name name for people
     * @param composition its elements
     * @param stores makes the store of its tables, of the version of what answers for it
     */
    FluidModelReader(
            Supplier<CoolPropLibrary> coolProp,
            String id,
            String name,
            Composition composition,
            Function<Supplier<String>, FluidStore> stores) {
        this.coolProp = coolProp;
        this.id = id;
        this.name = name;
        this.composition = composition;
        this.stores = stores;
    }

    Fluid read(InputTable table) {
        return table.choice("kind", List.of("coolprop", "correlation")).equals("coolprop")
                ? coolProp(table)
                : correlation(table);
    }

    private Fluid coolProp(InputTable table) {
        String fluid = table.text("fluid");
        table.text("source");
        table.text("uncertainty");
        return new CoolPropFluid(
                id,
                name,
                fluid,
                coolProp,
                table.has("transport") ? transport(table.table("transport"), fluid) : Optional.empty(),
                stores.apply(() -> "CoolProp " + coolProp.get().version()));
    }

    private Optional<TransportModel> transport(InputTable table, String fluid) {
        String similar = table.text("similar_fluid");
        table.text("source");
        table.text("uncertainty");
        Correlation viscosity = gas(table, "gas_viscosity");
        Correlation conductivity = gas(table, "gas_conductivity");
        double factor = table.quantity("liquid_factor", Dimension.RATIO, Range.of(-1, 1), 0);
        return Optional.of(new CorrespondingStatesTransport(
                coolProp,
                new CorrespondingStatesTransport.Data(
                        fluid, similar, viscosity.function(), conductivity.function(), factor)));
    }

    private Fluid correlation(InputTable table) {
        FluidRange range = new FluidRange(
                table.quantity("minimum_temperature", Dimension.TEMPERATURE, TEMPERATURE),
                table.quantity("maximum_temperature", Dimension.TEMPERATURE, TEMPERATURE),
                table.quantity("maximum_pressure", Dimension.PRESSURE, PRESSURE));
        CorrelationFluid.Data data = new CorrelationFluid.Data(
                id,
                name,
                composition.molarMass(),
                range,
                table.quantity("critical_temperature", Dimension.TEMPERATURE, TEMPERATURE),
                table.quantity("critical_pressure", Dimension.PRESSURE, PRESSURE),
                property(table, "density", SMOOTH, range),
                property(table, "bulk_modulus", SMOOTH, range),
                property(table, "heat_capacity", List.of(CorrelationForm.POLYNOMIAL), range),
                property(table, "vapour_pressure", ANY, range),
                property(table, "viscosity", ANY, range),
                property(table, "conductivity", ANY, range),
                table.quantity("tait_constant", Dimension.RATIO, Range.of(0.01, 0.5)),
                table.quantity("reference_pressure", Dimension.PRESSURE, PRESSURE),
                table.quantity("viscosity_compression", Dimension.RATIO, Range.of(-50, 50)),
                table.quantity("conductivity_compression", Dimension.RATIO, Range.of(-10, 10)));
        return new CorrelationFluid(data, stores.apply(() -> "correlations"));
    }

    private static Correlation property(InputTable table, String name, List<CorrelationForm> forms, FluidRange range) {
        InputTable own = table.table(name);
        Correlation correlation = Correlation.read(own, forms);
        check(own, name, correlation, range.minimumTemperature(), range.maximumTemperature(), "the model");
        return correlation;
    }

    /** A property of the gas that CoolProp does not give, over the data behind it. */
    private static Correlation gas(InputTable table, String name) {
        InputTable own = table.table(name);
        Correlation correlation = Correlation.read(own, ANY);
        check(own, name, correlation, correlation.lowest(), correlation.highest(), "its range");
        return correlation;
    }

    /** A property that has no value somewhere in its range is a mistake in the file, and is told with the place. */
    private static void check(
            InputTable own, String name, Correlation correlation, double low, double high, String whose) {
        for (int i = 0; i <= CHECKED; i++) {
            double temperature = low + (high - low) * i / CHECKED;
            double value = correlation.function().value(temperature);
            if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
                own.problem(
                        "coefficients",
                        String.format(Locale.ROOT, "%s of %.6g at %.6g K", name.replace('_', ' '), value, temperature),
                        String.format(
                                Locale.ROOT,
                                "it must be above 0 and finite at every temperature of %s, %.6g to %.6g K",
                                whose,
                                low,
                                high));
                break;
            }
        }
    }
}
