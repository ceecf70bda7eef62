package dev.penstock.cycles.sheet;

import dev.penstock.combustion.RealFluidWorkingFluid;
import dev.penstock.combustion.TurbineGas;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.cooling.design.JacketLoad;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.CoolingCircuit;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.cycles.concept.FeedDesign;
import dev.penstock.cycles.concept.FeedInputs;
import dev.penstock.cycles.concept.GasInputs;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.input.InputKey;
import dev.penstock.provenance.Traced;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * One pass through an arrangement, from the tanks to the chamber. A cycle calls the components in the order of the flow;
 * each takes a stream and hands on the next. At the end the cycle states what must vanish ({@link #closes}). With
 * recording on, every stream becomes a numbered station and every call a component, and each says what it was made from;
 * without, nothing but numbers moves.
 */
public final class Flowsheet {

    private final BalanceModels balanceModels;
    private final Concept concept;
    private final CarriedValues assumed;
    private final boolean recording;
    private final double chamberPressure;
    private final double facePressure;
    private final Machinery machinery;
    private final Optional<StationRecorder> recorder;
    private final List<Residual> residuals = new ArrayList<>();
    private final List<Component> components = new ArrayList<>();
    private final List<Stream> tankStreams = new ArrayList<>();
    private final List<Stream> chamberStreams = new ArrayList<>();
    private final List<Stream> exhaustStreams = new ArrayList<>();
    private final Map<String, Warning> warnings = new LinkedHashMap<>();
    private final Map<Burner, TurbineGas> gases = new EnumMap<>(Burner.class);
    private final Map<Burner, Stream> burnt = new EnumMap<>(Burner.class);
    private final Map<CircuitKey, Stream> coolantInlets = new HashMap<>();
    private int stationCount;

    public Flowsheet(BalanceModels balanceModels, CarriedValues assumed, boolean recording) {
        this.balanceModels = balanceModels;
        this.concept = balanceModels.concept();
        this.assumed = assumed;
        this.recording = recording;
        this.chamberPressure = concept.chamberPressure();
        this.facePressure = chamberPressure * assumed.faceRatio();
        this.recorder = recording ? Optional.of(new StationRecorder(concept, assumed)) : Optional.empty();
        this.machinery = new Machinery(this, balanceModels);
    }

    // ---- what the arrangement may ask

    public Concept concept() {
        return concept;
    }

    /** Whether the machines are built already, so that their flows must fit. */
    public boolean built() {
        return balanceModels.built().isPresent();
    }

    /** Pressure of a burner whose gas is dumped: what is available, or what the built turbine nozzles make of the flow. */
    public Traced generatorPressure(Traced available, Traced gasFlow) {
        return balanceModels
                .built()
                .flatMap(b -> b.generatorPressure(gasFlow.value()))
                .map(p -> Traced.made(Math.min(p, available.value()), available, gasFlow))
                .orElse(available);
    }

    public Machinery machinery() {
        return machinery;
    }

    /** A number that the concept states or takes as usual. */
    public Traced given(double value, InputKey input) {
        return new Traced(value, recorder.map(r -> r.inputs().of(input)).orElse(List.of()));
    }

    /** A number that has an entry in the trail. */
    private Traced known(double value, String path) {
        return recording ? new Traced(value, List.of(path)) : Traced.of(value);
    }

    /** Pressure of a stream, as other pressures are made from it (Pa). */
    public Traced pressureOf(Stream stream) {
        return recording ? known(stream.pressure(), StationRecorder.pressure(stream)) : Traced.of(stream.pressure());
    }

    /** Flow of a stream, as other flows are made from it (kg/s). */
    public Traced flowOf(Stream stream) {
        return recording ? known(stream.flow(), StationRecorder.flow(stream)) : Traced.of(stream.flow());
    }

    /** Flow through the throat (kg/s). */
    public Traced chamberFlow() {
        return known(assumed.chamberFlow(), "chamber.mass_flow_kg_s");
    }

    /** Oxidizer out of the tank for a total flow at the concept's mixture ratio (kg/s). */
    public Traced oxidizerOf(Traced totalFlow) {
        double ratio = concept.mixtureRatio();
        return Traced.made(
                totalFlow.value() * ratio / (1 + ratio), totalFlow, given(ratio, ConceptTables.PROPELLANTS.of(EngineInputs.MIXTURE_RATIO)));
    }

    /** Pressure at the nozzle entrance (Pa). */
    public Traced chamberPressure() {
        return given(chamberPressure, ConceptTables.ENGINE.of(EngineInputs.CHAMBER_PRESSURE));
    }

    /** Pressure at the injector face (Pa). */
    public Traced facePressure() {
        return Traced.made(facePressure, chamberPressure(), known(assumed.faceRatio(), StationRecorder.FACE_RATIO));
    }

    /** Pressure before the injector of a liquid (Pa). */
    public Traced injectorInlet(Side side) {
        double loss = concept.feed(side).injectorLoss();
        return facePressure()
                .plus(given(loss, ConceptTables.INJECTOR.of(new FeedInputs(side).injectorLoss())).times(chamberPressure()));
    }

    /** Pressure before the injector of hot gas (Pa). */
    public Traced gasInjectorInlet() {
        double loss = concept.gasPath().injectorLoss();
        return facePressure().plus(given(loss, ConceptTables.INJECTOR.of(GasInputs.GAS_INJECTOR_LOSS)).times(chamberPressure()));
    }

    /** Share of the fuel that goes through the jacket (-). */
    public Traced heatedShare() {
        return given(concept.gasPath().heatedShare(), ConceptTables.EXPANDER.of(GasInputs.HEATED_SHARE));
    }

    /** Loss between a tank and what follows it (Pa). */
    public Traced suctionLoss(Side side) {
        return given(concept.feed(side).suctionLoss(), ConceptTables.LINES.of(new FeedInputs(side).suctionLoss()));
    }

    private Traced lineLoss(Side side) {
        return given(concept.feed(side).lineLoss(), ConceptTables.LINES.of(new FeedInputs(side).dischargeLoss()));
    }

    private Traced valveLoss(Side side) {
        return given(concept.feed(side).valveLoss(), ConceptTables.LINES.of(new FeedInputs(side).valveLoss()));
    }

    private Traced jacketDrop(int circuit) {
        return known(
                assumed.jackets().get(circuit).pressureDrop(),
                concept.cooling().get(circuit).key().drop());
    }

    /** What a duct of hot gas leaves of a pressure (-). */
    public Traced ductShare() {
        return given(concept.gasPath().ductLoss(), ConceptTables.LINES.of(GasInputs.HOT_GAS_LOSS)).oneMinus();
    }

    /** Pressure loss of a burner's injectors over burner pressure (-). */
    public Traced burnerLoss(Burner burner) {
        return given(concept.burners().get(burner).injectorLoss(), ConceptTables.burner(burner).of(GasInputs.BURNER_INJECTOR_LOSS));
    }

    /** Pressure ratio that the concept states for a turbine (-). */
    public Optional<Traced> statedRatio(TurbinePlace place) {
        OptionalDouble ratio = concept.turbines().get(place).pressureRatio();
        return ratio.isEmpty()
                ? Optional.empty()
                : Optional.of(given(ratio.getAsDouble(), ConceptTables.turbine(place).of(GasInputs.PRESSURE_RATIO)));
    }

    /** Discharge pressure that line, jackets and valve need upstream of a pressure (Pa). */
    public Traced upstream(Side side, Traced pressure) {
        Traced losses = lineLoss(side).plus(valveLoss(side)).times(chamberPressure());
        Traced needed = pressure.plus(losses);
        for (int i = 0; i < concept.cooling().size(); i++) {
            if (concept.cooling().get(i).coolant() == side) {
                needed = needed.plus(jacketDrop(i));
            }
        }
        return needed;
    }

    /** Discharge pressure that a branch with a valve but no jacket needs (Pa). */
    public Traced upstreamOfValve(Side side, Traced pressure) {
        return pressure.plus(valveLoss(side).times(chamberPressure()));
    }

    /** What line, jacket and valve leave of nothing: the loss of a valve alone (Pa). */
    public Traced valveDrop(Side side) {
        return valveLoss(side).times(chamberPressure());
    }

    // ---- components

    public Stream tank(Side side, Traced flow, Traced tankPressure) {
        FeedDesign feed = concept.feed(side);
        double pressure = tankPressure.value();
        FluidState state = balanceModels.tankState(feed, pressure);
        double enthalpy = feed.propellant().absoluteEnthalpy(state.enthalpy());
        boolean oxidizer = side == Side.OXIDIZER;
        Stream out = outlet(
                side.key() + " tank outlet",
                new Medium.Liquid(feed.propellant()),
                pressure,
                enthalpy,
                oxidizer ? flow.value() : 0,
                oxidizer ? 0 : flow.value());
        recorder.ifPresent(r -> r.tank(out, side, flow, tankPressure));
        component("tank." + side.key(), Component.Kind.TANK, side.key() + " tank", List.of(), List.of(out), 0, 0);
        tankStreams.add(out);
        return out;
    }

    public Stream suctionLine(Side side, Stream in) {
        return drop(
                "line." + side.key() + "_suction",
                Component.Kind.LINE,
                side.key() + " suction line",
                side.key(),
                in,
                pressureOf(in).minus(suctionLoss(side)));
    }

    /**
     * Discharge line, then the jackets that this propellant cools, from the nozzle exit towards the injector, then the valve,
     * which takes what is left.
     */
    public Stream deliver(Side side, Stream in, Traced targetPressure) {
        Stream stream = drop(
                "line." + side.key() + "_discharge",
                Component.Kind.LINE,
                side.key() + " discharge line",
                side.key(),
                in,
                pressureOf(in).minus(lineLoss(side).times(chamberPressure())));
        for (int i = concept.cooling().size() - 1; i >= 0; i--) {
            if (concept.cooling().get(i).coolant() == side) {
                stream = jacket(i, stream);
            }
        }
        return valve(side, "valve." + side.key(), side.key() + " valve", stream, targetPressure);
    }

    public Stream valve(Side side, String id, String label, Stream in, Traced targetPressure) {
        return drop(id, Component.Kind.VALVE, label, side.key(), in, targetPressure);
    }

    /** Isenthalpic pressure loss. */
    public Stream drop(String id, Component.Kind kind, String label, String line, Stream in, Traced behind) {
        double pressure = behind.value();
        if (!(pressure > 0) || pressure > in.pressure() * (1 + 1e-12)) {
            throw new OutsideValidity(
                    label,
                    "pressure behind it (Pa)",
                    pressure,
                    String.format(Locale.ROOT, "above 0 and at most the %.6g Pa before it", in.pressure()));
        }
        Stream out =
                outlet("behind the " + label, in.medium(), pressure, in.enthalpy(), in.oxidizerFlow(), in.fuelFlow());
        recorder.ifPresent(r -> r.passage(out, in, behind, kind));
        component(id, kind, label, List.of(in), List.of(out), 0, 0);
        step(line, label, in, out);
        return out;
    }

    /** Parts a stream in two: the first takes the share. */
    public List<Stream> split(String id, String label, Stream in, Traced part) {
        double share = part.value();
        if (!(share > 0 && share < 1)) {
            throw new OutsideValidity(label, "share (-)", share, "between 0 and 1");
        }
        Stream first = outlet(
                label + ", first branch",
                in.medium(),
                in.pressure(),
                in.enthalpy(),
                share * in.oxidizerFlow(),
                share * in.fuelFlow());
        Stream second = outlet(
                label + ", second branch",
                in.medium(),
                in.pressure(),
                in.enthalpy(),
                in.oxidizerFlow() - first.oxidizerFlow(),
                in.fuelFlow() - first.fuelFlow());
        recorder.ifPresent(r -> {
            r.branch(first, in, part);
            r.branch(second, in, part);
        });
        component(id, Component.Kind.SPLIT, label, List.of(in), List.of(first, second), 0, 0);
        return List.of(first, second);
    }

    /** Brings two streams of the same medium and pressure together. */
    public Stream merge(String id, String label, Stream a, Stream b) {
        double enthalpy = (a.enthalpyFlow() + b.enthalpyFlow()) / (a.flow() + b.flow());
        Stream out = outlet(
                "behind the " + label,
                a.medium(),
                Math.min(a.pressure(), b.pressure()),
                enthalpy,
                a.oxidizerFlow() + b.oxidizerFlow(),
                a.fuelFlow() + b.fuelFlow());
        recorder.ifPresent(r -> r.merged(out, List.of(a, b), Traced.least(pressureOf(a), pressureOf(b))));
        component(id, Component.Kind.MERGE, label, List.of(a, b), List.of(out), 0, 0);
        return out;
    }

    private Stream jacket(int number, Stream in) {
        CoolingCircuit circuit = concept.cooling().get(number);
        CircuitKey key = circuit.key();
        double share = circuit.flowFraction();
        if (share >= 1) {
            return jacketPassage(number, in);
        }
        List<Stream> ways = split(
                key.id("split.coolant"),
                key.word() + "coolant branch",
                in,
                given(share, ConceptTables.circuit(key).of(EngineInputs.FLOW_FRACTION)));
        Stream warm = jacketPassage(number, ways.get(0));
        Stream cold = drop(
                key.id("orifice.bypass"),
                Component.Kind.ORIFICE,
                key.word() + "jacket bypass",
                circuit.coolant().key() + " bypass",
                ways.get(1),
                pressureOf(warm));
        return merge(key.id("merge.coolant"), key.word() + "coolant merge", warm, cold);
    }

    private Stream jacketPassage(int number, Stream in) {
        CoolingCircuit circuit = concept.cooling().get(number);
        CircuitKey key = circuit.key();
        CarriedValues.Jacket jacket = assumed.jackets().get(number);
        coolantInlets.put(key, in);
        Traced behind = pressureOf(in).minus(jacketDrop(number));
        double pressure = behind.value();
        double enthalpy = in.enthalpy() + jacket.heatLoad() / in.flow();
        refuseOverheating(jacket, in, pressure, enthalpy);
        Stream out =
                outlet(key.word() + "jacket outlet", in.medium(), pressure, enthalpy, in.oxidizerFlow(), in.fuelFlow());
        recorder.ifPresent(r -> {
            r.heated(out, in, behind, key.heat());
            r.place(key.owner(), key.id("jacket"), ConceptTables.circuit(key), in, out);
        });
        component(
                key.id("jacket"), Component.Kind.JACKET, key.label(), List.of(in), List.of(out), jacket.heatLoad(), 0);
        step(circuit.coolant().key(), key.label(), in, out);
        return out;
    }

    /** Checked where the outlet state is used: in the station table, and by cycles that live on the heat. */
    private void refuseOverheating(CarriedValues.Jacket jacket, Stream in, double pressure, double enthalpy) {
        if (!recording && !concept.cycle().traits().livesOnJacketHeat()) {
            return;
        }
        try {
            in.medium().at(pressure, enthalpy);
        } catch (PropertyFailure e) {
            throw new LimitReached(
                    "cooling",
                    String.format(
                            Locale.ROOT,
                            "%.4g MW into the jacket heats %.4g kg/s of %s beyond what its properties are known for%s (%s); "
                                    + "cool less of the chamber, add a film or use the other propellant",
                            jacket.heatLoad() / 1e6,
                            in.flow(),
                            in.medium().name(),
                            jacket.load().map(Flowsheet::hottestPlace).orElse(""),
                            e.getMessage()));
        }
    }

    private static String hottestPlace(JacketLoad load) {
        return String.format(
                Locale.ROOT, ", hottest at x = %.4g m (area ratio %.4g)", load.hottestX(), load.hottestAreaRatio());
    }

    /** Burns a stream of each propellant at a pressure; both must arrive above it. */
    public Stream burn(Burner burner, Stream oxidizer, Stream fuel, Traced burnerPressure) {
        double pressure = burnerPressure.value();
        double flow = oxidizer.flow() + fuel.flow();
        double enthalpy = (oxidizer.enthalpyFlow() + fuel.enthalpyFlow()) / flow;
        double oxidizerFlow = oxidizer.oxidizerFlow() + fuel.oxidizerFlow();
        double fuelFlow = oxidizer.fuelFlow() + fuel.fuelFlow();
        Reactants mixture = balanceModels.mixture(oxidizerFlow, fuelFlow, enthalpy);
        TurbineGas gas = balanceModels.gas(burner, mixture, pressure);
        gases.put(burner, gas);
        List<Stream> inlets = List.of(oxidizer, fuel);
        Medium medium = new Medium.Gas(
                burner == Burner.OXIDIZER_RICH ? "oxidizer-rich gas" : "fuel-rich gas",
                gas.fluid(),
                composedOf(inlets));
        Stream out = outlet(burner.title() + " outlet", medium, pressure, enthalpy, oxidizerFlow, fuelFlow);
        burnt.put(burner, out);
        recorder.ifPresent(r -> r.merged(out, inlets, burnerPressure));
        boolean dumped = burner == Burner.GENERATOR || burner == Burner.TAP_OFF;
        Component.Kind kind = dumped ? Component.Kind.GAS_GENERATOR : Component.Kind.PREBURNER;
        component(burner.key(), kind, burner.title(), inlets, List.of(out), 0, 0);
        if (oxidizer.pressure() > pressure) {
            step("oxidizer to the " + burner.title(), burner.title() + " injector", oxidizer, out);
            step("fuel to the " + burner.title(), burner.title() + " injector", fuel, out);
        }
        return out;
    }

    /** Lets a monopropellant decompose at a pressure. */
    public Stream decompose(Burner burner, Stream in, Traced burnerPressure) {
        double pressure = burnerPressure.value();
        Medium.Liquid liquid = (Medium.Liquid) in.medium();
        TurbineGas gas = balanceModels.gas(burner, Reactants.single(liquid.propellant(), in.enthalpy()), pressure);
        gases.put(burner, gas);
        Stream out = outlet(
                burner.title() + " outlet",
                new Medium.Gas("decomposed " + liquid.name(), gas.fluid(), liquid.madeFrom()),
                pressure,
                in.enthalpy(),
                in.oxidizerFlow(),
                in.fuelFlow());
        burnt.put(burner, out);
        recorder.ifPresent(r -> r.merged(out, List.of(in), burnerPressure));
        component(burner.key(), Component.Kind.GAS_GENERATOR, burner.title(), List.of(in), List.of(out), 0, 0);
        step(liquid.name(), burner.title() + " injector", in, out);
        return out;
    }

    /** The flows whose ratio makes up a gas. */
    private List<String> composedOf(List<Stream> inlets) {
        return recording ? inlets.stream().map(StationRecorder::flow).toList() : List.of();
    }

    /** A propellant heated so far that it drives turbines. */
    public Stream heated(Stream in) {
        Medium.Liquid liquid = (Medium.Liquid) in.medium();
        Medium gas = new Medium.Gas(liquid.name(), new RealFluidWorkingFluid(liquid.propellant()), liquid.madeFrom());
        return new Stream(in.station(), gas, in.pressure(), in.enthalpy(), in.oxidizerFlow(), in.fuelFlow());
    }

    /** Pressure loss of a duct of hot gas, as stated by the concept. */
    public Stream hotDuct(String id, String label, Stream in) {
        return drop(
                id,
                Component.Kind.LINE,
                label,
                in.medium().name(),
                in,
                pressureOf(in).times(ductShare()));
    }

    public Stream injector(String id, String label, String line, Stream in) {
        return drop("injector." + id, Component.Kind.INJECTOR, label, line, in, facePressure());
    }

    public Stream liquidInjector(Side side, Stream in) {
        return injector(side.key(), side.key() + " injector", side.key(), in);
    }

    /** Everything that reaches the injector face burns in the chamber, less the heat that goes into the jackets. */
    public void chamber(List<Stream> streams) {
        chamberStreams.addAll(streams);
        double oxidizerFlow = streams.stream().mapToDouble(Stream::oxidizerFlow).sum();
        double fuelFlow = streams.stream().mapToDouble(Stream::fuelFlow).sum();
        if (recording) {
            var gas = assumed.chamber().ideal().chamber();
            int number = ++stationCount;
            Station station = new Station(
                    number,
                    "chamber, nozzle entrance",
                    "combustion gas",
                    chamberPressure,
                    gas.temperature(),
                    gas.density(),
                    chamberEnthalpy(),
                    oxidizerFlow + fuelFlow);
            recorder.orElseThrow()
                    .chamber(
                            station,
                            streams,
                            chamberPressure(),
                            concept.cooling().stream().map(c -> c.key().heat()).toList());
            components.add(new Component(
                    "chamber",
                    Component.Kind.CHAMBER,
                    "thrust chamber",
                    streams.stream().map(Stream::station).toList(),
                    List.of(number),
                    -assumed.heatLoad(),
                    0));
            components.add(new Component("nozzle", Component.Kind.NOZZLE, "nozzle", List.of(number), List.of(), 0, 0));
            recorder.orElseThrow()
                    .step(
                            "chamber",
                            "combustion at finite speed",
                            facePressure(),
                            known(chamberPressure, StationRecorder.pressure(number)));
        }
    }

    /** Enthalpy of the chamber gas: injected less the heat into the jacket (J/kg). */
    public double chamberEnthalpy() {
        double injected =
                chamberStreams.stream().mapToDouble(Stream::enthalpyFlow).sum();
        double flow = chamberStreams.stream().mapToDouble(Stream::flow).sum();
        return (injected - assumed.heatLoad()) / flow;
    }

    /** Dumps gas through a nozzle of its own. */
    public void exhaust(Stream gas) {
        double loss = concept.gasPath().exhaust().ductLoss();
        Stream ducted = drop(
                "line.exhaust",
                Component.Kind.LINE,
                "exhaust duct",
                gas.medium().name(),
                gas,
                pressureOf(gas).times(given(loss, ConceptTables.EXHAUST.of(GasInputs.DUCT_LOSS)).oneMinus()));
        exhaustStreams.add(ducted);
        component("exhaust", Component.Kind.EXHAUST, "turbine exhaust nozzle", List.of(ducted), List.of(), 0, 0);
    }

    // ---- closing equations

    /** States that a value must vanish; the scale is the size of what is balanced, the paths those of its terms. */
    public void closes(String name, String unit, double value, double scale, Supplier<List<String>> terms) {
        residuals.add(new Residual(name, unit, value, scale, recording ? terms.get() : List.of()));
    }

    /** States that the gas of a burner has the temperature of the concept, if that gives one. */
    public void closesTemperature(Burner burner) {
        OptionalDouble wanted = concept.burners().get(burner).temperature();
        if (wanted.isPresent()) {
            double temperature = gases.get(burner).inlet().temperature();
            closes(
                    "temperature of the " + burner.title(),
                    "K",
                    temperature - wanted.getAsDouble(),
                    wanted.getAsDouble(),
                    () -> temperatures(burner));
        }
    }

    private List<String> temperatures(Burner burner) {
        List<String> terms = new ArrayList<>(List.of(StationRecorder.temperature(burnt.get(burner))));
        terms.addAll(recorder.orElseThrow().inputs().of(ConceptTables.burner(burner).of(GasInputs.BURNER_TEMPERATURE)));
        return terms;
    }

    // ---- recording

    public Stream outlet(
            String name, Medium medium, double pressure, double enthalpy, double oxidizerFlow, double fuelFlow) {
        int number = ++stationCount;
        if (recording) {
            Medium.Condition condition = medium.at(pressure, enthalpy);
            for (Warning warning : condition.warnings()) {
                warnings.putIfAbsent(warning.message(), warning);
            }
            Station station = new Station(
                    number,
                    name,
                    medium.name(),
                    pressure,
                    condition.temperature(),
                    condition.density(),
                    enthalpy,
                    oxidizerFlow + fuelFlow);
            recorder.orElseThrow().station(station, medium);
        }
        return new Stream(number, medium, pressure, enthalpy, oxidizerFlow, fuelFlow);
    }

    public void component(
            String id, Component.Kind kind, String label, List<Stream> in, List<Stream> out, double heat, double work) {
        if (recording) {
            components.add(new Component(
                    id,
                    kind,
                    label,
                    in.stream().map(Stream::station).toList(),
                    out.stream().map(Stream::station).toList(),
                    heat,
                    work));
        }
    }

    /** What is recorded of stations beyond their numbers; present while recording. */
    public Optional<StationRecorder> recorder() {
        return recorder;
    }

    public void step(String line, String component, Stream in, Stream out) {
        recorder.ifPresent(r -> r.step(line, component, pressureOf(in), pressureOf(out)));
    }

    // ---- results

    public List<Residual> residuals() {
        return residuals;
    }

    public List<Station> stations() {
        return recorder.map(StationRecorder::stations).orElse(List.of());
    }

    public List<Component> components() {
        return components;
    }

    public List<PressureStep> ladder() {
        return recorder.map(StationRecorder::ladder).orElse(List.of());
    }

    public List<Stream> tankStreams() {
        return tankStreams;
    }

    public List<Stream> chamberStreams() {
        return chamberStreams;
    }

    public List<Stream> exhaustStreams() {
        return exhaustStreams;
    }

    /** What fluid models say of the states recorded, each once. */
    public Collection<Warning> warnings() {
        return warnings.values();
    }

    /** Gas of each burner. */
    public Map<Burner, TurbineGas> gases() {
        return gases;
    }

    /** Coolant at the inlet of a circuit's jacket; there after {@link #deliver}. */
    public Stream coolantInlet(CircuitKey circuit) {
        return coolantInlets.get(circuit);
    }
}
