package dev.penstock.fluids.coolprop;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.property.TransportModel;
import dev.penstock.fluids.state.ExpansionState;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidRange;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.KnownStates;
import dev.penstock.fluids.state.SaturationSamples;
import dev.penstock.fluids.store.FluidStore;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * A pure fluid by CoolProp's full equation of state [bell-2014]. Each thread that asks has its own state object inside
 * CoolProp, freed after the thread. Where CoolProp has no transport model the data file gives correlations.
 */
public final class CoolPropFluid implements Fluid {

    public static final ModelCard CARD = new ModelCard(
            "fluids.coolprop",
            "Multiparameter equation of state through CoolProp",
            "a(T, rho) / (R T) = alpha0(tau, delta) + alphar(tau, delta); every property by differentiation",
            "triple point to the limits of each published equation, see the fluid's data file",
            "density 0.01 to 0.2 %, sound speed and heat capacity 0.5 to 3 %, transport 1 to 10 %, by fluid",
            List.of("bell-2014"));

    private final String id;
    private final String name;
    private final String coolPropName;
    private final Supplier<CoolPropLibrary> coolProp;
    private final Optional<TransportModel> transport;
    private final FluidStore store;
    private final ThreadLocal<CoolPropHandle> handles = ThreadLocal.withInitial(this::open);

    /** State objects of closed cursors, which the next cursors of their thread take: opening one takes longer than a search. */
    private final ThreadLocal<Deque<CoolPropHandle>> spare = ThreadLocal.withInitial(ArrayDeque::new);

    private final ThreadLocal<SaturationPoints> saturations;

    private volatile Constants constants;
    private volatile FlashAnchors anchors;
    private volatile VapourPressureCurve vapourPressures;
    private volatile OptionalDouble acentricFactor;

    private record Constants(double molarMass, FluidRange range, double criticalTemperature, double criticalPressure) {}

    /**
     * @param id id, as in {@code fluids/<id>.toml}
     * @param name name for people
     * @param coolPropName CoolProp's name of the fluid
     * @param coolProp CoolProp, not reached before the first question
     * @param transport viscosity and conductivity, if CoolProp's own are not to be used
     * @param store where its tables are kept
     */
    public CoolPropFluid(
            String id,
            String name,
            String coolPropName,
            Supplier<CoolPropLibrary> coolProp,
            Optional<TransportModel> transport,
            FluidStore store) {
        this.id = id;
        this.name = name;
        this.coolPropName = coolPropName;
        this.coolProp = coolProp;
        this.transport = transport;
        this.store = store;
        this.saturations = ThreadLocal.withInitial(() -> new SaturationPoints(
                transport, pressure -> vapourPressureCurve().temperature(pressure)));
    }

    /** {@inheritDoc} By which way CoolProp is reached makes no difference to its numbers. */
    @Override
    public boolean equals(Object other) {
        return other instanceof CoolPropFluid fluid
                && id.equals(fluid.id)
                && name.equals(fluid.name)
                && coolPropName.equals(fluid.coolPropName)
                && transport.equals(fluid.transport);
    }

    @Override
    public int hashCode() {
        return Objects.hash(id, name, coolPropName, transport);
    }

    @Override
    public ModelCard model() {
        return CARD;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public double molarMass() {
        return constants().molarMass;
    }

    @Override
    public FluidRange range() {
        return constants().range;
    }

    @Override
    public OptionalDouble criticalTemperature() {
        return OptionalDouble.of(constants().criticalTemperature);
    }

    @Override
    public OptionalDouble criticalPressure() {
        return OptionalDouble.of(constants().criticalPressure);
    }

    /** {@inheritDoc} Asked of CoolProp once. */
    @Override
    public OptionalDouble acentricFactor() {
        OptionalDouble known = acentricFactor;
        if (known == null) {
            known = Fluid.super.acentricFactor();
            acentricFactor = known;
        }
        return known;
    }

    @Override
    public FluidState atPressureTemperature(double pressure, double temperature) {
        CoolPropCursor cursor = own();
        cursor.setPressureTemperature(pressure, temperature);
        return cursor.snapshot();
    }

    @Override
    public FluidState atPressureEnthalpy(double pressure, double enthalpy) {
        CoolPropCursor cursor = own();
        cursor.setPressureEnthalpy(pressure, enthalpy);
        return cursor.snapshot();
    }

    @Override
    public FluidState atPressureEnthalpy(double pressure, double enthalpy, KnownStates known) {
        return own().atPressureEnthalpy(pressure, enthalpy, known);
    }

    @Override
    public FluidState atPressureEntropy(double pressure, double entropy) {
        CoolPropCursor cursor = own();
        cursor.setPressureEntropy(pressure, entropy);
        return cursor.snapshot();
    }

    @Override
    public ExpansionState expansionAtPressureEnthalpy(double pressure, double enthalpy, KnownStates known) {
        return own().expansionAtPressureEnthalpy(pressure, enthalpy, known);
    }

    @Override
    public ExpansionState expansionAtPressureEntropy(double pressure, double entropy, KnownStates known) {
        return own().expansionAtPressureEntropy(pressure, entropy, known);
    }

    @Override
    public double enthalpyAtPressureEntropy(double pressure, double entropy) {
        CoolPropCursor cursor = own();
        cursor.setPressureEntropy(pressure, entropy);
        return cursor.enthalpy();
    }

    @Override
    public double enthalpyAtPressureEntropy(double pressure, double entropy, KnownStates known) {
        return own().enthalpyAtPressureEntropy(pressure, entropy, known);
    }

    @Override
    public FluidState saturatedLiquid(double temperature) {
        CoolPropCursor cursor = own();
        cursor.setSaturatedLiquid(temperature);
        return cursor.snapshot();
    }

    @Override
    public double vapourPressure(double temperature) {
        double known = vapourPressureCurve().at(temperature);
        if (!Double.isNaN(known)) {
            return known;
        }
        CoolPropHandle handle = handles.get();
        handle.update(CoolPropInputs.QUALITY_TEMPERATURE, 0, temperature);
        return handle.output(CoolPropOutput.PRESSURE);
    }

    @Override
    public Optional<SaturationSamples> saturation(double[] pressures) {
        CoolPropHandle handle = handles.get();
        double[] quality = new double[pressures.length];
        double[] liquid = handle.evaluate(
                CoolPropInputs.PRESSURE_QUALITY,
                pressures,
                quality,
                CoolPropOutput.TEMPERATURE,
                CoolPropOutput.ENTHALPY);
        Arrays.fill(quality, 1);
        double[] vapour = handle.evaluate(CoolPropInputs.PRESSURE_QUALITY, pressures, quality, CoolPropOutput.ENTHALPY);
        double[] temperature = new double[pressures.length];
        double[] enthalpy = new double[pressures.length];
        for (int i = 0; i < pressures.length; i++) {
            temperature[i] = liquid[2 * i];
            enthalpy[i] = liquid[2 * i + 1];
        }
        return Optional.of(new SaturationSamples(temperature, enthalpy, vapour));
    }

    @Override
    public List<Warning> warnings(FluidState state) {
        FluidRange range = range();
        if (state.temperature() <= range.maximumTemperature() && state.pressure() <= range.maximumPressure()) {
            return List.of();
        }
        return List.of(new Warning(
                "fluid " + id,
                String.format(
                        Locale.ROOT,
                        "%.4g MPa and %.1f K lie beyond the equation of state's data, which reach %.4g MPa and %.1f K",
                        state.pressure() / 1e6,
                        state.temperature(),
                        range.maximumPressure() / 1e6,
                        range.maximumTemperature())));
    }

    @Override
    public FluidStore store() {
        return store;
    }

    @Override
    public FluidCursor cursor() {
        Deque<CoolPropHandle> kept = spare.get();
        CoolPropHandle known = kept.pollLast();
        return new CoolPropCursor(this, new LentHandle(id, known == null ? open() : known, kept), true);
    }

    /** On this thread's own state object, which the next question moves. */
    private CoolPropCursor own() {
        return new CoolPropCursor(this, handles.get(), false);
    }

    private CoolPropHandle open() {
        try {
            return coolProp.get().open(coolPropName, id);
        } catch (PropertyFailure e) {
            throw new PropertyFailure(id, "any input", e.getMessage().replaceFirst("^no state of .*?: ", ""));
        }
    }

    private VapourPressureCurve vapourPressureCurve() {
        VapourPressureCurve known = vapourPressures;
        if (known == null) {
            try (CoolPropHandle handle = open()) {
                known = store.get(
                        "boiling",
                        VapourPressureCurve.FORMAT,
                        VapourPressureCurve::read,
                        curve -> curve.isOf(handle),
                        () -> VapourPressureCurve.make(
                                handle, constants().range.minimumTemperature(), constants().criticalTemperature));
            }
            vapourPressures = known;
        }
        return known;
    }

    /** Saturation at the pressures that this thread asked for last. */
    SaturationPoints saturations() {
        return saturations.get();
    }

    FlashAnchors anchors() {
        FlashAnchors known = anchors;
        if (known == null) {
            known = coolProp.get().anchors(coolPropName, () -> {
                try (CoolPropHandle handle = open()) {
                    return store.get(
                            "anchors",
                            FlashAnchors.FORMAT,
                            FlashAnchors::read,
                            read -> read.isOf(handle),
                            () -> FlashAnchors.make(handle, range()));
                }
            });
            anchors = known;
        }
        return known;
    }

    Optional<TransportModel> transport() {
        return transport;
    }

    private Constants constants() {
        Constants known = constants;
        if (known == null) {
            CoolPropHandle handle = handles.get();
            known = new Constants(
                    handle.output(CoolPropOutput.MOLAR_MASS),
                    new FluidRange(
                            handle.output(CoolPropOutput.MINIMUM_TEMPERATURE),
                            handle.output(CoolPropOutput.MAXIMUM_TEMPERATURE),
                            handle.output(CoolPropOutput.MAXIMUM_PRESSURE)),
                    handle.output(CoolPropOutput.CRITICAL_TEMPERATURE),
                    handle.output(CoolPropOutput.CRITICAL_PRESSURE));
            constants = known;
        }
        return known;
    }
}
