package dev.penstock.cycles.sheet;

import dev.penstock.combustion.RealFluidWorkingFluid;
import dev.penstock.combustion.TurbineGas;
import dev.penstock.combustion.WorkingFluid;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.cooling.design.DumpInputs;
import dev.penstock.cooling.design.JacketLoad;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.BurnerDesign;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.CoolingCircuit;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.cycles.concept.FeedDesign;
import dev.penstock.cycles.concept.FeedInputs;
import dev.penstock.cycles.concept.GasInputs;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.cycles.origin.Content;
import dev.penstock.cycles.origin.LineKey;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.Port;
import dev.penstock.cycles.origin.StationKey;
import dev.penstock.cycles.origin.StationOrder;
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
import java.util.function.UnaryOperator;

/**
 * One pass through an arrangement, from the tanks to the chamber. A cycle calls the components in the order of the flow;
 * each takes a stream and hands on the next. At the end the cycle states what must vanish ({@link #closes}). With
 * recording on, every stream becomes a numbered station and every call a component, and each says what it was made from;
 * without, nothing but numbers moves. Stations are numbered as a pass before has them along the flow ({@link #order}).
 */
public final class Flowsheet {

    /**
     * Coolant that is dumped.
     *
     * @param circuit the circuit that it has cooled
     * @param stream behind the jacket
     */
    public record Dumped(CoolingCircuit circuit, Stream stream) {}

    private record Joint(List<Stream> in, List<Stream> out) {}

    private final BalanceModels balanceModels;
    private final Concept concept;
    private final CarriedValues assumed;
    private final boolean recording;
    private final double chamberPressure;
    private final double facePressure;
    private final Machinery machinery;
    private final BoostTurbines boostTurbines;
    private final Optional<StationRecorder> recorder;
    private final StationOrder numbers;
    private final List<Joint> joints = new ArrayList<>();
    private final List<Residual> residuals = new ArrayList<>();
    private final List<Component> components = new ArrayList<>();
    private final List<Stream> tankStreams = new ArrayList<>();
    private final List<Stream> chamberStreams = new ArrayList<>();
    private final List<Stream> exhaustStreams = new ArrayList<>();
    private final List<Dumped> dumpedCoolant = new ArrayList<>();
    private final Map<String, Warning> warnings = new LinkedHashMap<>();
    private final Map<Burner, TurbineGas> gases = new EnumMap<>(Burner.class);
    private final Map<Burner, Stream> burnt = new EnumMap<>(Burner.class);
    private final Map<CircuitKey, Stream> coolantInlets = new HashMap<>();
    private double diluentFlow;
    private int stationCount;
    private int chamberStation;

    /** A pass in which nothing but numbers moves. */
    public static Flowsheet passing(BalanceModels balanceModels, CarriedValues assumed) {
        return new Flowsheet(balanceModels, assumed, false, StationOrder.asLaid());
    }

    /** A pass that writes down all stations, numbered in this order. */
    public static Flowsheet recording(BalanceModels balanceModels, CarriedValues assumed, StationOrder numbers) {
        return new Flowsheet(balanceModels, assumed, true, numbers);
    }

    private Flowsheet(BalanceModels balanceModels, CarriedValues assumed, boolean recording, StationOrder numbers) {
        this.balanceModels = balanceModels;
        this.concept = balanceModels.concept();
        this.assumed = assumed;
        this.recording = recording;
        this.numbers = numbers;
        this.chamberPressure = concept.chamberPressure();
        this.facePressure = chamberPressure * assumed.faceRatio();
        this.recorder = recording ? Optional.of(new StationRecorder(concept, assumed)) : Optional.empty();
        this.machinery = new Machinery(this, balanceModels);
        this.boostTurbines = new BoostTurbines(this);
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

    public BoostTurbines boostTurbines() {
        return boostTurbines;
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

    /**
     * Oxidizer in a total flow, so that the tanks give the concept's mixture ratio (kg/s). The total is without what is drawn off to cool
     * and is dumped:
     * <pre>O/F = MR (1 - d_o)/(1 - d_f)</pre>
     * with the dumped shares d of what the tanks give.
     */
    public Traced oxidizerOf(Traced totalFlow) {
        Traced stated = given(concept.mixtureRatio(), ConceptTables.PROPELLANTS.of(EngineInputs.MIXTURE_RATIO));
        Traced ratio = stated;
        for (Side side : Side.values()) {
            if (concept.dumping(side).isPresent()) {
                Traced kept = dumpedShare(side).oneMinus();
                ratio = side == Side.OXIDIZER ? ratio.times(kept) : ratio.over(kept);
            }
        }
        return Traced.made(totalFlow.value() * ratio.value() / (1 + ratio.value()), totalFlow, ratio);
    }

    /** Share of what a tank gives that cools and is dumped (-). */
    private Traced dumpedShare(Side side) {
        CoolingCircuit circuit = concept.dumping(side).orElseThrow();
        return given(
                circuit.flowFraction(), ConceptTables.circuit(circuit.key()).of(EngineInputs.FLOW_FRACTION));
    }

    /** What a tank gives for a flow behind the place where coolant that is dumped is drawn off (kg/s). */
    Traced drawn(Side side, Traced behind) {
        return concept.dumping(side).isPresent() ? behind.over(dumpedShare(side).oneMinus()) : behind;
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
                .plus(given(loss, ConceptTables.INJECTOR.of(new FeedInputs(side).injectorLoss()))
                        .times(chamberPressure()));
    }

    /** Pressure before the injector of hot gas (Pa). */
    public Traced gasInjectorInlet() {
        double loss = concept.gasPath().injectorLoss();
        return facePressure()
                .plus(given(loss, ConceptTables.INJECTOR.of(GasInputs.GAS_INJECTOR_LOSS))
                        .times(chamberPressure()));
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
        return given(concept.gasPath().ductLoss(), ConceptTables.LINES.of(GasInputs.HOT_GAS_LOSS))
                .oneMinus();
    }

    /** Pressure loss of a burner's injectors over burner pressure (-). */
    public Traced burnerLoss(Burner burner) {
        return given(
                concept.burners().get(burner).injectorLoss(),
                ConceptTables.burner(burner).of(GasInputs.BURNER_INJECTOR_LOSS));
    }

    /** Pressure ratio that the concept states for a turbine (-). */
    public Optional<Traced> statedRatio(TurbinePlace place) {
        OptionalDouble ratio = concept.turbines().get(place).pressureRatio();
        return ratio.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        given(ratio.getAsDouble(), ConceptTables.turbine(place).of(GasInputs.PRESSURE_RATIO)));
    }

    /** Discharge pressure that line, jackets and valve need upstream of a pressure (Pa). */
    public Traced upstream(Side side, Traced pressure) {
        Traced losses = lineLoss(side).plus(valveLoss(side)).times(chamberPressure());
        Traced needed = pressure.plus(losses);
        for (int i = 0; i < concept.cooling().size(); i++) {
            if (passes(i, side)) {
                needed = needed.plus(jacketDrop(i));
            }
        }
        return needed;
    }

    /** Whether a propellant passes a jacket on its way to where it burns. */
    private boolean passes(int circuit, Side side) {
        return concept.cooling().get(circuit).coolant() == side
                && concept.cooling().get(circuit).returns();
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
        PartKey tank = PartKey.tank(side);
        Stream out = outlet(
                tank.at(Port.OUTLET),
                new Medium.Liquid(feed.propellant()),
                pressure,
                enthalpy,
                oxidizer ? flow.value() : 0,
                oxidizer ? 0 : flow.value(),
                0);
        recorder.ifPresent(r -> r.tank(out, side, flow, tankPressure));
        component(tank, List.of(), List.of(out), 0, 0);
        tankStreams.add(out);
        return out;
    }

    /** Tank and suction line without a pump behind them, for a flow behind the place where dumped coolant is drawn off. */
    public Stream fromTank(Side side, Traced flow, Traced tankPressure) {
        return withoutDumped(side, suctionLine(side, tank(side, drawn(side, flow), tankPressure)));
    }

    public Stream suctionLine(Side side, Stream in) {
        return drop(
                PartKey.suctionLine(side), LineKey.of(side), in, pressureOf(in).minus(suctionLoss(side)));
    }

    /**
     * Discharge line, then the jackets that this propellant cools, from the nozzle exit towards the injector, then the valve,
     * which takes what is left.
     */
    public Stream deliver(Side side, Stream pumped, Traced targetPressure) {
        Stream stream = drop(
                PartKey.dischargeLine(side),
                LineKey.of(side),
                pumped,
                pressureOf(pumped).minus(lineLoss(side).times(chamberPressure())));
        for (int i = concept.cooling().size() - 1; i >= 0; i--) {
            if (passes(i, side)) {
                stream = jacket(i, stream);
            }
        }
        UnaryOperator<Stream> valve = in -> valve(side, PartKey.valve(side), in, targetPressure);
        return side == Side.FUEL ? boostTurbines.besideValve(stream, targetPressure, valve) : valve.apply(stream);
    }

    /**
     * Draws off what cools the end of the nozzle and is dumped there: through an orifice to its jacket and out of the nozzles at its end.
     *
     * @return what flows on
     */
    Stream withoutDumped(Side side, Stream in) {
        Optional<CoolingCircuit> dumping = concept.dumping(side);
        if (dumping.isEmpty()) {
            return in;
        }
        CircuitKey key = dumping.get().key();
        List<Stream> ways = split(PartKey.coolantBranch(key), in, dumpedShare(side));
        Traced pressure = given(
                        dumping.get().dump().orElseThrow().pressureShare(),
                        ConceptTables.dump(key).of(DumpInputs.PRESSURE))
                .times(chamberPressure());
        Stream before = drop(PartKey.dumpOrifice(key), LineKey.dump(side), ways.get(0), pressure);
        Stream warm = heated(jacketPassage(concept.cooling().indexOf(dumping.get()), before));
        dumpedCoolant.add(new Dumped(dumping.get(), warm));
        component(PartKey.dump(key), List.of(warm), List.of(), 0, 0);
        return ways.get(1);
    }

    public Stream valve(Side side, PartKey valve, Stream in, Traced targetPressure) {
        return drop(valve, LineKey.of(side), in, targetPressure);
    }

    /** Isenthalpic pressure loss. */
    public Stream drop(PartKey part, LineKey line, Stream in, Traced behind) {
        double pressure = behind.value();
        if (!(pressure > 0) || pressure > in.pressure() * (1 + 1e-12)) {
            throw new OutsideValidity(
                    part.label(),
                    "pressure behind it (Pa)",
                    pressure,
                    String.format(Locale.ROOT, "above 0 and at most the %.6g Pa before it", in.pressure()));
        }
        Stream out = outlet(part.at(Port.BEHIND), in.medium(), pressure, in.enthalpy(), in);
        recorder.ifPresent(r -> r.passage(out, in, behind, part.kind()));
        component(part, List.of(in), List.of(out), 0, 0);
        step(line, part, in, out);
        return out;
    }

    /** Parts a stream in two: the first takes the share. */
    public List<Stream> split(PartKey part, Stream in, Traced taken) {
        double share = taken.value();
        if (!(share > 0 && share < 1)) {
            throw new OutsideValidity(part.label(), "share (-)", share, "between 0 and 1");
        }
        Stream first = outlet(
                part.at(Port.FIRST_BRANCH),
                in.medium(),
                in.pressure(),
                in.enthalpy(),
                share * in.oxidizerFlow(),
                share * in.fuelFlow(),
                share * in.diluentFlow());
        Stream second = outlet(
                part.at(Port.SECOND_BRANCH),
                in.medium(),
                in.pressure(),
                in.enthalpy(),
                in.oxidizerFlow() - first.oxidizerFlow(),
                in.fuelFlow() - first.fuelFlow(),
                in.diluentFlow() - first.diluentFlow());
        recorder.ifPresent(r -> {
            r.branch(first, in, taken);
            r.branch(second, in, taken);
        });
        component(part, List.of(in), List.of(first, second), 0, 0);
        return List.of(first, second);
    }

    /** Brings two streams of the same medium and pressure together. */
    public Stream merge(PartKey part, Stream a, Stream b) {
        double enthalpy = (a.enthalpyFlow() + b.enthalpyFlow()) / (a.flow() + b.flow());
        Stream out = outlet(
                part.at(Port.BEHIND),
                a.medium(),
                Math.min(a.pressure(), b.pressure()),
                enthalpy,
                a.oxidizerFlow() + b.oxidizerFlow(),
                a.fuelFlow() + b.fuelFlow(),
                a.diluentFlow() + b.diluentFlow());
        recorder.ifPresent(r -> r.merged(out, List.of(a, b), Traced.least(pressureOf(a), pressureOf(b))));
        component(part, List.of(a, b), List.of(out), 0, 0);
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
                PartKey.coolantBranch(key),
                in,
                given(share, ConceptTables.circuit(key).of(EngineInputs.FLOW_FRACTION)));
        Stream warm = jacketPassage(number, ways.get(0));
        Stream cold = drop(PartKey.bypass(key), LineKey.bypass(circuit.coolant()), ways.get(1), pressureOf(warm));
        return merge(PartKey.coolantMerge(key), warm, cold);
    }

    private Stream jacketPassage(int number, Stream in) {
        CoolingCircuit circuit = concept.cooling().get(number);
        CircuitKey key = circuit.key();
        CarriedValues.Jacket jacket = assumed.jackets().get(number);
        coolantInlets.put(key, in);
        Traced behind = pressureOf(in).minus(jacketDrop(number));
        double pressure = behind.value();
        double enthalpy = in.enthalpy() + jacket.heatLoad() / in.flow();
        refuseOverheating(circuit, jacket, in, pressure, enthalpy);
        PartKey part = PartKey.jacket(key);
        Stream out = outlet(part.at(Port.OUTLET), in.medium(), pressure, enthalpy, in);
        recorder.ifPresent(r -> {
            r.heated(out, in, behind, key.heat());
            r.place(key.owner(), part, ConceptTables.circuit(key), in, out);
        });
        component(part, List.of(in), List.of(out), jacket.heatLoad(), 0);
        step(circuit.returns() ? LineKey.of(circuit.coolant()) : LineKey.dump(circuit.coolant()), part, in, out);
        return out;
    }

    /** Cycles that live on the heat and coolant that is dumped need the outlet's state; elsewhere an overheated coolant is a missed limit. */
    private void refuseOverheating(
            CoolingCircuit circuit, CarriedValues.Jacket jacket, Stream in, double pressure, double enthalpy) {
        if (circuit.returns() && !concept.cycle().traits().livesOnJacketHeat()) {
            return;
        }
        try {
            balanceModels.liquidState((Medium.Liquid) in.medium(), pressure, enthalpy);
        } catch (PropertyFailure e) {
            throw new LimitReached(
                    "cooling",
                    String.format(
                            Locale.ROOT,
                            "%.4g MW into the jacket heats %.4g kg/s of %s beyond what its properties are known for%s (%s); "
                                    + "%scool less of the chamber, add a film or use the other propellant",
                            jacket.heatLoad() / 1e6,
                            in.flow(),
                            in.medium().name(),
                            jacket.load().map(Flowsheet::hottestPlace).orElse(""),
                            e.getMessage(),
                            circuit.returns() ? "" : "raise the flow_fraction that is dumped, "));
        }
    }

    private static String hottestPlace(JacketLoad load) {
        return String.format(
                Locale.ROOT, ", hottest at x = %.4g m (area ratio %.4g)", load.hottestX(), load.hottestAreaRatio());
    }

    /**
     * A third fluid on its way into a burner: tank, pump on the shaft of the fuel pump, valve.
     *
     * @param diluent what flows
     * @param propellants what the burner burns beside it (kg/s)
     * @param injectorInlet pressure before the burner's injector (Pa)
     */
    public Stream diluent(BurnerDesign.Diluent diluent, Traced propellants, Traced injectorInlet) {
        Traced flow = diluted(propellants).minus(propellants);
        Traced pressure = given(diluent.tankPressure(), ConceptTables.DILUENT.of(GasInputs.DILUENT_TANK_PRESSURE));
        PartKey tank = PartKey.diluentTank();
        Stream out = outlet(
                tank.at(Port.OUTLET),
                new Medium.Liquid(diluent.fluid()),
                pressure.value(),
                balanceModels.storedEnthalpy(diluent.fluid(), pressure.value()),
                0,
                0,
                flow.value());
        diluentFlow += flow.value();
        recorder.ifPresent(r -> r.diluentTank(out, flow, pressure));
        component(tank, List.of(), List.of(out), 0, 0);
        Stream raised = machinery.diluentPump(out, upstreamOfValve(Side.FUEL, injectorInlet));
        return drop(PartKey.diluentValve(), LineKey.diluent(out.medium().name()), raised, injectorInlet);
    }

    /** Gas of a generator that takes a third fluid, from the propellants that it burns (kg/s). */
    public Traced diluted(Traced propellants) {
        double share = concept.diluent().orElseThrow().share();
        return propellants.over(
                given(share, ConceptTables.DILUENT.of(GasInputs.DILUENT_SHARE)).oneMinus());
    }

    /** What leaves the tank of a third fluid (kg/s). */
    public double diluentFlow() {
        return diluentFlow;
    }

    /** Burns a stream of each propellant at a pressure; both must arrive above it. */
    public Stream burn(Burner burner, Stream oxidizer, Stream fuel, Traced burnerPressure) {
        return burn(burner, oxidizer, fuel, Optional.empty(), burnerPressure);
    }

    /** Burns a stream of each propellant at a pressure, beside a third fluid; all must arrive above it. */
    public Stream burn(Burner burner, Stream oxidizer, Stream fuel, Optional<Stream> diluent, Traced burnerPressure) {
        double pressure = burnerPressure.value();
        List<Stream> inlets = new ArrayList<>(List.of(oxidizer, fuel));
        diluent.ifPresent(inlets::add);
        double flow = 0;
        double enthalpyFlow = 0;
        for (Stream in : inlets) {
            flow += in.flow();
            enthalpyFlow += in.enthalpyFlow();
        }
        double enthalpy = enthalpyFlow / flow;
        double oxidizerFlow = oxidizer.oxidizerFlow() + fuel.oxidizerFlow();
        double fuelFlow = oxidizer.fuelFlow() + fuel.fuelFlow();
        double diluted = diluent.map(Stream::flow).orElse(0.0);
        Reactants mixture = balanceModels.mixture(burner, oxidizerFlow, fuelFlow, enthalpy);
        TurbineGas gas = balanceModels.gas(burner, mixture, pressure);
        gases.put(burner, gas);
        Medium medium = new Medium.Gas(
                burner == Burner.OXIDIZER_RICH ? "oxidizer-rich gas" : "fuel-rich gas",
                gas.fluid(),
                composedOf(inlets),
                true);
        PartKey part = PartKey.burner(burner);
        Stream out = outlet(part.at(Port.OUTLET), medium, pressure, enthalpy, oxidizerFlow, fuelFlow, diluted);
        burnt.put(burner, out);
        recorder.ifPresent(r -> r.merged(out, inlets, burnerPressure));
        component(part, inlets, List.of(out), 0, 0);
        if (oxidizer.pressure() > pressure) {
            step(LineKey.to(burner, Side.OXIDIZER), PartKey.injector(burner), oxidizer, out);
            step(LineKey.to(burner, Side.FUEL), PartKey.injector(burner), fuel, out);
        }
        return out;
    }

    /** Lets a monopropellant decompose at a pressure. */
    public Stream decompose(Burner burner, Stream in, Traced burnerPressure) {
        double pressure = burnerPressure.value();
        Medium.Liquid liquid = (Medium.Liquid) in.medium();
        TurbineGas gas = balanceModels.gas(burner, Reactants.single(liquid.propellant(), in.enthalpy()), pressure);
        gases.put(burner, gas);
        PartKey part = PartKey.burner(burner);
        Stream out = outlet(
                part.at(Port.OUTLET),
                new Medium.Gas("decomposed " + liquid.name(), gas.fluid(), liquid.madeFrom(), true),
                pressure,
                in.enthalpy(),
                in);
        burnt.put(burner, out);
        recorder.ifPresent(r -> r.merged(out, List.of(in), burnerPressure));
        component(part, List.of(in), List.of(out), 0, 0);
        step(in.line(), PartKey.injector(burner), in, out);
        return out;
    }

    /** The flows whose ratio makes up a gas. */
    private List<String> composedOf(List<Stream> inlets) {
        return recording ? inlets.stream().map(StationRecorder::flow).toList() : List.of();
    }

    /** A propellant heated so far that it drives turbines. */
    public Stream heated(Stream in) {
        Medium gas = gasOf(in);
        return new Stream(
                in.station(), gas, in.pressure(), in.enthalpy(), in.oxidizerFlow(), in.fuelFlow(), in.diluentFlow());
    }

    /** What drives a turbine: gas, or a propellant as the real fluid that it is. */
    Medium.Gas gasOf(Stream in) {
        if (!(in.medium() instanceof Medium.Liquid liquid)) {
            return (Medium.Gas) in.medium();
        }
        WorkingFluid fluid = recording
                ? new RealFluidWorkingFluid(liquid.propellant())
                : balanceModels.heatedFluid(liquid.propellant());
        return new Medium.Gas(liquid.name(), fluid, liquid.madeFrom(), false);
    }

    /** Pressure loss of a duct of hot gas, as stated by the concept. */
    public Stream hotDuct(PartKey duct, Stream in) {
        return drop(duct, in.line(), in, pressureOf(in).times(ductShare()));
    }

    public Stream injector(PartKey injector, LineKey line, Stream in) {
        return drop(injector, line, in, facePressure());
    }

    public Stream liquidInjector(Side side, Stream in) {
        return injector(PartKey.injector(side), LineKey.of(side), in);
    }

    /** Everything that reaches the injector face burns in the chamber, less the heat that goes into the jackets. */
    public void chamber(List<Stream> streams) {
        chamberStreams.addAll(streams);
        double oxidizerFlow = streams.stream().mapToDouble(Stream::oxidizerFlow).sum();
        double fuelFlow = streams.stream().mapToDouble(Stream::fuelFlow).sum();
        chamberStation = ++stationCount;
        if (recording) {
            var gas = assumed.chamber().ideal().chamber();
            int number = numbers.of(chamberStation);
            Station station = new Station(
                    number,
                    PartKey.CHAMBER.at(Port.NOZZLE_ENTRANCE),
                    "combustion gas",
                    Content.BURNT_GAS,
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
                    PartKey.CHAMBER.times(concept.chambers()),
                    stations(streams),
                    List.of(number),
                    -assumed.heatLoad(),
                    0));
            components.add(new Component(PartKey.NOZZLE.times(concept.chambers()), List.of(number), List.of(), 0, 0));
            recorder.orElseThrow()
                    .step(
                            LineKey.CHAMBER,
                            PartKey.COMBUSTION,
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

    /** Dumps gas through a nozzle of its own, or into the main nozzle. */
    public void exhaust(Stream gas) {
        double loss = concept.gasPath().exhaust().ductLoss();
        Stream ducted = drop(
                PartKey.EXHAUST_DUCT,
                gas.line(),
                gas,
                pressureOf(gas)
                        .times(given(loss, ConceptTables.EXHAUST.of(GasInputs.DUCT_LOSS))
                                .oneMinus()));
        exhaustStreams.add(ducted);
        component(exhaustPart(), List.of(ducted), List.of(), 0, 0);
    }

    /** Where turbine gas leaves. */
    public PartKey exhaustPart() {
        return concept.gasPath().exhaust().into().isPresent() ? PartKey.EXHAUST_SLOTS : PartKey.EXHAUST;
    }

    // ---- closing equations

    /** States that a value must vanish; the scale is the size of what is balanced, the paths those of its terms. */
    public void closes(String name, String unit, double value, double scale, Supplier<List<String>> terms) {
        residuals.add(new Residual(name, unit, value, scale, recording ? terms.get() : List.of()));
    }

    /**
     * States that the gas of a burner has the temperature of the concept, if that gives one: in the burner, or before the turbine
     * where that chooses it (ducts between the two change the temperature of a real gas a little).
     *
     * @param burner which
     * @param ducted its gas before the turbine
     */
    public void closesTemperature(Burner burner, Stream ducted) {
        BurnerDesign design = concept.burners().get(burner);
        OptionalDouble wanted = design.temperature();
        if (wanted.isPresent()) {
            boolean before = design.asHotAsTurbine();
            double temperature = before
                    ? ducted.medium().at(ducted.pressure(), ducted.enthalpy()).temperature()
                    : gases.get(burner).inlet().temperature();
            closes(
                    "temperature of the " + burner.title(),
                    "K",
                    temperature - wanted.getAsDouble(),
                    wanted.getAsDouble(),
                    () -> temperatures(burner, before ? ducted : burnt.get(burner)));
        }
    }

    private List<String> temperatures(Burner burner, Stream where) {
        List<String> terms = new ArrayList<>(List.of(StationRecorder.temperature(where)));
        terms.addAll(
                recorder.orElseThrow().inputs().of(ConceptTables.burner(burner).of(GasInputs.BURNER_TEMPERATURE)));
        return terms;
    }

    // ---- recording

    /** A station through which all flows that is in a stream. */
    Stream outlet(StationKey key, Medium medium, double pressure, double enthalpy, Stream in) {
        return outlet(key, medium, pressure, enthalpy, in.oxidizerFlow(), in.fuelFlow(), in.diluentFlow());
    }

    private Stream outlet(
            StationKey key,
            Medium medium,
            double pressure,
            double enthalpy,
            double oxidizerFlow,
            double fuelFlow,
            double diluentFlow) {
        int number = numbers.of(++stationCount);
        Stream stream = new Stream(number, medium, pressure, enthalpy, oxidizerFlow, fuelFlow, diluentFlow);
        if (recording) {
            Medium.Condition condition = medium.at(pressure, enthalpy);
            for (Warning warning : condition.warnings()) {
                warnings.putIfAbsent(warning.message(), warning);
            }
            Station station = new Station(
                    number,
                    key,
                    medium.name(),
                    stream.content(),
                    pressure,
                    condition.temperature(),
                    condition.density(),
                    enthalpy,
                    stream.flow());
            recorder.orElseThrow().station(station, medium);
        }
        return stream;
    }

    public void component(PartKey part, List<Stream> in, List<Stream> out, double heat, double work) {
        joints.add(new Joint(in, out));
        if (recording) {
            components.add(new Component(part, stations(in), stations(out), heat, work));
        }
    }

    /** What is recorded of stations beyond their numbers; present while recording. */
    public Optional<StationRecorder> recorder() {
        return recorder;
    }

    public void step(LineKey line, PartKey part, Stream in, Stream out) {
        recorder.ifPresent(r -> r.step(line, part, pressureOf(in), pressureOf(out)));
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

    /** Stations of a pass without recording in the order of the flow. */
    public StationOrder order() {
        List<StationOrder.Part> parts = new ArrayList<>();
        for (Joint joint : joints) {
            parts.add(new StationOrder.Part(
                    stations(joint.in()),
                    joint.out().stream()
                            .map(s -> new StationOrder.Outlet(s.station(), s.content(), s.flow()))
                            .toList()));
        }
        double flow = chamberStreams.stream().mapToDouble(Stream::flow).sum();
        parts.add(new StationOrder.Part(
                stations(chamberStreams), List.of(new StationOrder.Outlet(chamberStation, Content.BURNT_GAS, flow))));
        return StationOrder.along(parts);
    }

    private static List<Integer> stations(List<Stream> streams) {
        return streams.stream().map(Stream::station).toList();
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

    /** Coolant that is dumped behind its jacket. */
    public List<Dumped> dumpedCoolant() {
        return dumpedCoolant;
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
