package dev.penstock.cycles.sheet;

import dev.penstock.combustion.RealFluidWorkingFluid;
import dev.penstock.combustion.TurbineGas;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.cooling.design.JacketLoad;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.FeedDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.state.FluidState;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * One pass through an arrangement, from the tanks to the chamber. A cycle calls the components in the order of the flow;
 * each takes a stream and hands on the next. At the end the cycle states what must vanish ({@link #closes}). With
 * recording on, every stream becomes a numbered station and every call a component; without, nothing but numbers moves.
 */
public final class Flowsheet {

    private final Plant plant;
    private final Concept concept;
    private final Assumptions assumed;
    private final boolean recording;
    private final double chamberPressure;
    private final double facePressure;
    private final Machinery machinery;
    private final List<Residual> residuals = new ArrayList<>();
    private final List<Station> stations = new ArrayList<>();
    private final List<Component> components = new ArrayList<>();
    private final List<PressureStep> ladder = new ArrayList<>();
    private final List<Stream> tankStreams = new ArrayList<>();
    private final List<Stream> chamberStreams = new ArrayList<>();
    private final List<Stream> exhaustStreams = new ArrayList<>();
    private final Map<String, Warning> warnings = new LinkedHashMap<>();
    private final Map<Burner, TurbineGas> gases = new EnumMap<>(Burner.class);
    private Stream coolantInlet;
    private int stationCount;

    public Flowsheet(Plant plant, Assumptions assumed, boolean recording) {
        this.plant = plant;
        this.concept = plant.concept();
        this.assumed = assumed;
        this.recording = recording;
        this.chamberPressure = concept.chamberPressure();
        this.facePressure = chamberPressure * assumed.faceRatio();
        this.machinery = new Machinery(this, plant);
    }

    // ---- what the arrangement may ask

    public Concept concept() {
        return concept;
    }

    /** Whether the machines are built already, so that their flows must fit. */
    public boolean built() {
        return plant.built().isPresent();
    }

    /** Pressure of a burner whose gas is dumped: what is available, or what the built turbine nozzles make of the flow. */
    public double generatorPressure(double available, double gasFlow) {
        return plant.built()
                .flatMap(b -> b.generatorPressure(gasFlow))
                .map(p -> Math.min(p, available))
                .orElse(available);
    }

    public Machinery machinery() {
        return machinery;
    }

    /** Flow through the throat (kg/s). */
    public double chamberFlow() {
        return assumed.chamberFlow();
    }

    /** Oxidizer out of the tank for a total flow at the concept's mixture ratio (kg/s). */
    public double oxidizerOf(double totalFlow) {
        return totalFlow * concept.mixtureRatio() / (1 + concept.mixtureRatio());
    }

    /** Pressure at the injector face (Pa). */
    public double facePressure() {
        return facePressure;
    }

    boolean cooledBy(Side side) {
        return concept.cooling().map(c -> c.coolant() == side).orElse(false);
    }

    /** Pressure before the injector of a liquid (Pa). */
    public double injectorInlet(Side side) {
        return facePressure + concept.feed(side).injectorLoss() * chamberPressure;
    }

    /** Pressure before the injector of hot gas (Pa). */
    public double gasInjectorInlet() {
        return facePressure + concept.gasPath().injectorLoss() * chamberPressure;
    }

    /** Discharge pressure that line, jacket and valve need upstream of a pressure (Pa). */
    public double upstream(Side side, double pressure) {
        FeedDesign feed = concept.feed(side);
        double jacket = cooledBy(side) ? assumed.jacketDrop() : 0;
        return pressure + (feed.lineLoss() + feed.valveLoss()) * chamberPressure + jacket;
    }

    /** Discharge pressure that a branch with a valve but no jacket needs (Pa). */
    public double upstreamOfValve(Side side, double pressure) {
        return pressure + concept.feed(side).valveLoss() * chamberPressure;
    }

    // ---- components

    public Stream tank(Side side, double flow, double tankPressure) {
        FeedDesign feed = concept.feed(side);
        FluidState state = plant.tankState(feed, tankPressure);
        double enthalpy = feed.propellant().absoluteEnthalpy(state.enthalpy());
        boolean oxidizer = side == Side.OXIDIZER;
        Stream out = outlet(
                side.key() + " tank outlet",
                new Medium.Liquid(feed.propellant()),
                tankPressure,
                enthalpy,
                oxidizer ? flow : 0,
                oxidizer ? 0 : flow);
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
                in.pressure() - concept.feed(side).suctionLoss());
    }

    /** Discharge line, then the jacket if this propellant cools, then the valve, which takes what is left. */
    public Stream deliver(Side side, Stream in, double targetPressure) {
        Stream stream = drop(
                "line." + side.key() + "_discharge",
                Component.Kind.LINE,
                side.key() + " discharge line",
                side.key(),
                in,
                in.pressure() - concept.feed(side).lineLoss() * chamberPressure);
        if (cooledBy(side)) {
            stream = jacket(side, stream);
        }
        return valve(side, "valve." + side.key(), side.key() + " valve", stream, targetPressure);
    }

    public Stream valve(Side side, String id, String label, Stream in, double targetPressure) {
        return drop(id, Component.Kind.VALVE, label, side.key(), in, targetPressure);
    }

    /** Isenthalpic pressure loss. */
    Stream drop(String id, Component.Kind kind, String label, String line, Stream in, double pressure) {
        if (!(pressure > 0) || pressure > in.pressure() * (1 + 1e-12)) {
            throw new OutsideValidity(
                    label,
                    "pressure behind it (Pa)",
                    pressure,
                    String.format(Locale.ROOT, "above 0 and at most the %.6g Pa before it", in.pressure()));
        }
        Stream out =
                outlet("behind the " + label, in.medium(), pressure, in.enthalpy(), in.oxidizerFlow(), in.fuelFlow());
        component(id, kind, label, List.of(in), List.of(out), 0, 0);
        step(line, label, in.pressure(), pressure);
        return out;
    }

    /** Parts a stream in two: the first takes the share. */
    public List<Stream> split(String id, String label, Stream in, double share) {
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
        component(id, Component.Kind.MERGE, label, List.of(a, b), List.of(out), 0, 0);
        return out;
    }

    private Stream jacket(Side side, Stream in) {
        double share = concept.cooling().orElseThrow().flowFraction();
        if (share >= 1) {
            return jacketPassage(side, in);
        }
        List<Stream> ways = split("split.coolant", "coolant branch", in, share);
        Stream warm = jacketPassage(side, ways.get(0));
        Stream cold = drop(
                "orifice.bypass",
                Component.Kind.ORIFICE,
                "jacket bypass",
                side.key() + " bypass",
                ways.get(1),
                warm.pressure());
        return merge("merge.coolant", "coolant merge", warm, cold);
    }

    private Stream jacketPassage(Side side, Stream in) {
        coolantInlet = in;
        double pressure = in.pressure() - assumed.jacketDrop();
        double enthalpy = in.enthalpy() + assumed.heatLoad() / in.flow();
        refuseOverheating(in, pressure, enthalpy);
        Stream out = outlet("jacket outlet", in.medium(), pressure, enthalpy, in.oxidizerFlow(), in.fuelFlow());
        component("jacket", Component.Kind.JACKET, "cooling jacket", List.of(in), List.of(out), assumed.heatLoad(), 0);
        step(side.key(), "cooling jacket", in.pressure(), pressure);
        return out;
    }

    /** Checked where the outlet state is used: in the station table, and by cycles that live on the heat. */
    private void refuseOverheating(Stream in, double pressure, double enthalpy) {
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
                            assumed.heatLoad() / 1e6,
                            in.flow(),
                            in.medium().name(),
                            assumed.jacket().map(Flowsheet::hottestPlace).orElse(""),
                            e.getMessage()));
        }
    }

    private static String hottestPlace(JacketLoad jacket) {
        return String.format(
                Locale.ROOT, ", hottest at x = %.4g m (area ratio %.4g)", jacket.hottestX(), jacket.hottestAreaRatio());
    }

    /** Burns a stream of each propellant at a pressure; both must arrive above it. */
    public Stream burn(Burner burner, Stream oxidizer, Stream fuel, double pressure) {
        double flow = oxidizer.flow() + fuel.flow();
        double enthalpy = (oxidizer.enthalpyFlow() + fuel.enthalpyFlow()) / flow;
        double oxidizerFlow = oxidizer.oxidizerFlow() + fuel.oxidizerFlow();
        double fuelFlow = oxidizer.fuelFlow() + fuel.fuelFlow();
        Reactants mixture = plant.mixture(oxidizerFlow, fuelFlow, enthalpy);
        TurbineGas gas = plant.gas(burner, mixture, pressure);
        gases.put(burner, gas);
        Medium medium =
                new Medium.Gas(burner == Burner.OXIDIZER_RICH ? "oxidizer-rich gas" : "fuel-rich gas", gas.fluid());
        Stream out = outlet(burner.title() + " outlet", medium, pressure, enthalpy, oxidizerFlow, fuelFlow);
        boolean dumped = burner == Burner.GENERATOR || burner == Burner.TAP_OFF;
        Component.Kind kind = dumped ? Component.Kind.GAS_GENERATOR : Component.Kind.PREBURNER;
        component(burner.key(), kind, burner.title(), List.of(oxidizer, fuel), List.of(out), 0, 0);
        if (oxidizer.pressure() > pressure) {
            step("oxidizer to the " + burner.title(), burner.title() + " injector", oxidizer.pressure(), pressure);
            step("fuel to the " + burner.title(), burner.title() + " injector", fuel.pressure(), pressure);
        }
        return out;
    }

    /** Lets a monopropellant decompose at a pressure. */
    public Stream decompose(Burner burner, Stream in, double pressure) {
        Medium.Liquid liquid = (Medium.Liquid) in.medium();
        TurbineGas gas = plant.gas(burner, Reactants.single(liquid.propellant(), in.enthalpy()), pressure);
        gases.put(burner, gas);
        Stream out = outlet(
                burner.title() + " outlet",
                new Medium.Gas("decomposed " + liquid.name(), gas.fluid()),
                pressure,
                in.enthalpy(),
                in.oxidizerFlow(),
                in.fuelFlow());
        component(burner.key(), Component.Kind.GAS_GENERATOR, burner.title(), List.of(in), List.of(out), 0, 0);
        step(liquid.name(), burner.title() + " injector", in.pressure(), pressure);
        return out;
    }

    /** A propellant heated so far that it drives turbines. */
    public Stream heated(Stream in) {
        Medium.Liquid liquid = (Medium.Liquid) in.medium();
        Medium gas = new Medium.Gas(liquid.name(), new RealFluidWorkingFluid(liquid.propellant()));
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
                in.pressure() * (1 - concept.gasPath().ductLoss()));
    }

    public Stream injector(String id, String label, String line, Stream in) {
        return drop("injector." + id, Component.Kind.INJECTOR, label, line, in, facePressure);
    }

    public Stream liquidInjector(Side side, Stream in) {
        return injector(side.key(), side.key() + " injector", side.key(), in);
    }

    /** Everything that reaches the injector face burns in the chamber, less the heat that goes into the jacket. */
    public void chamber(List<Stream> streams) {
        chamberStreams.addAll(streams);
        double oxidizerFlow = streams.stream().mapToDouble(Stream::oxidizerFlow).sum();
        double fuelFlow = streams.stream().mapToDouble(Stream::fuelFlow).sum();
        if (recording) {
            var gas = assumed.chamber().ideal().chamber();
            int number = ++stationCount;
            stations.add(new Station(
                    number,
                    "chamber, nozzle entrance",
                    "combustion gas",
                    chamberPressure,
                    gas.temperature(),
                    gas.density(),
                    chamberEnthalpy(),
                    oxidizerFlow + fuelFlow));
            components.add(new Component(
                    "chamber",
                    Component.Kind.CHAMBER,
                    "thrust chamber",
                    streams.stream().map(Stream::station).toList(),
                    List.of(number),
                    -assumed.heatLoad(),
                    0));
            components.add(new Component("nozzle", Component.Kind.NOZZLE, "nozzle", List.of(number), List.of(), 0, 0));
            step("chamber", "combustion at finite speed", facePressure, chamberPressure);
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
        Stream ducted = drop(
                "line.exhaust",
                Component.Kind.LINE,
                "exhaust duct",
                gas.medium().name(),
                gas,
                gas.pressure() * (1 - concept.gasPath().exhaust().ductLoss()));
        exhaustStreams.add(ducted);
        component("exhaust", Component.Kind.EXHAUST, "turbine exhaust nozzle", List.of(ducted), List.of(), 0, 0);
    }

    // ---- closing equations

    /** States that a value must vanish; the scale is the size of what is balanced. */
    void closes(String name, String unit, double value, double scale) {
        residuals.add(new Residual(name, unit, value, scale));
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
                    wanted.getAsDouble());
        }
    }

    // ---- recording

    Stream outlet(String name, Medium medium, double pressure, double enthalpy, double oxidizerFlow, double fuelFlow) {
        int number = ++stationCount;
        if (recording) {
            Medium.Condition condition = medium.at(pressure, enthalpy);
            for (Warning warning : condition.warnings()) {
                warnings.putIfAbsent(warning.message(), warning);
            }
            stations.add(new Station(
                    number,
                    name,
                    medium.name(),
                    pressure,
                    condition.temperature(),
                    condition.density(),
                    enthalpy,
                    oxidizerFlow + fuelFlow));
        }
        return new Stream(number, medium, pressure, enthalpy, oxidizerFlow, fuelFlow);
    }

    void component(
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

    void step(String line, String component, double from, double to) {
        if (recording) {
            ladder.add(new PressureStep(line, component, from, to));
        }
    }

    // ---- results

    public List<Residual> residuals() {
        return residuals;
    }

    public List<Station> stations() {
        return stations;
    }

    public List<Component> components() {
        return components;
    }

    public List<PressureStep> ladder() {
        return ladder;
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

    /** Coolant at the jacket inlet; present after {@link #deliver} if the concept has a jacket. */
    public Stream coolantInlet() {
        return coolantInlet;
    }
}
