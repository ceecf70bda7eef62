package dev.penstock.cycles.sheet;

import dev.penstock.cycles.concept.BoostDesign;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.FeedInputs;
import dev.penstock.cycles.concept.GasInputs;
import dev.penstock.cycles.concept.ShaftDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.cycles.origin.LineKey;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.Port;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.cycles.origin.ShaftKey;
import dev.penstock.errors.LimitReached;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.provenance.Traced;
import dev.penstock.turbomachinery.pump.HydraulicTurbine;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.pump.PumpDuty;
import dev.penstock.turbomachinery.pump.PumpPoint;
import dev.penstock.turbomachinery.pump.PumpWork;
import dev.penstock.turbomachinery.shaft.MechanicalLosses;
import dev.penstock.turbomachinery.speed.SpeedBound;
import dev.penstock.turbomachinery.speed.SpeedLimit;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import dev.penstock.turbomachinery.turbine.TurbineDuty;
import dev.penstock.turbomachinery.turbine.TurbinePoint;
import dev.penstock.turbomachinery.turbine.TurbineWork;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Pumps, turbines and shafts of one pass through an arrangement. */
public final class Machinery {

    private static final double NEAR = 1.05;
    private static final double SMALLEST_BOOST = 0.01;
    private static final double LARGEST_BOOST = 0.08;
    private static final double USUAL_EFFICIENCY = 0.7;
    private static final double BEARINGS = 0.985;

    private final Flowsheet sheet;
    private final BalanceModels balanceModels;
    private final ShaftDesign coupling;
    private final ShaftSpeeds speeds;
    private final BoundPaths paths;
    private final Map<ShaftKey, Shaft> shafts = new EnumMap<>(ShaftKey.class);
    private final Map<Side, Shaft> boosts = new EnumMap<>(Side.class);
    private final Map<String, PumpPoint> pumpPoints = new TreeMap<>();
    private final Map<Side, SpeedLimit> pumpSpeeds = new TreeMap<>();

    /** Both propellants behind their main pumps. */
    public record Pumped(Stream oxidizer, Stream fuel) {}

    Machinery(Flowsheet sheet, BalanceModels balanceModels) {
        this.sheet = sheet;
        this.balanceModels = balanceModels;
        this.coupling = balanceModels.concept().shafts();
        this.paths = new BoundPaths(sheet.recorder());
        this.speeds = new ShaftSpeeds(balanceModels, paths);
    }

    /**
     * Tanks, suction lines, boost pumps and main pumps. A shaft turns at the tightest of the limits of what is on it. The flows are those
     * behind the place where coolant that is dumped is drawn off, which the pumps pass too.
     */
    public Pumped mainPumps(Traced oxidizerFlow, Traced oxidizerDischarge, Traced fuelFlow, Traced fuelDischarge) {
        Map<Side, Stream> inlets = new EnumMap<>(Side.class);
        Map<Side, PumpDuty> duties = new EnumMap<>(Side.class);
        inlets.put(Side.OXIDIZER, suction(Side.OXIDIZER, oxidizerFlow));
        inlets.put(Side.FUEL, suction(Side.FUEL, fuelFlow));
        inlets.forEach(paths::inlet);
        duties.put(Side.OXIDIZER, duty(inlets.get(Side.OXIDIZER), oxidizerDischarge.value()));
        duties.put(Side.FUEL, duty(inlets.get(Side.FUEL), fuelDischarge.value()));
        Map<Side, SpeedLimit> wanted = boost(inlets, duties);
        inlets.forEach(paths::inlet);
        setSpeeds(duties, wanted);
        Stream oxidizer =
                mainPump(Side.OXIDIZER, inlets.get(Side.OXIDIZER), duties.get(Side.OXIDIZER), oxidizerDischarge);
        Stream fuel = mainPump(Side.FUEL, inlets.get(Side.FUEL), duties.get(Side.FUEL), fuelDischarge);
        return new Pumped(sheet.withoutDumped(Side.OXIDIZER, oxidizer), sheet.withoutDumped(Side.FUEL, fuel));
    }

    private Stream suction(Side side, Traced flow) {
        double pressure = balanceModels.concept().feed(side).tankPressure().orElseThrow();
        Traced stated = sheet.given(pressure, ConceptTables.tank(side).of(FeedInputs.TANK_PRESSURE));
        return sheet.suctionLine(side, sheet.tank(side, sheet.drawn(side, flow), stated));
    }

    // ---- boost pumps

    /**
     * Puts boost pumps before the main pumps that have them; inlets and duties become those behind them.
     *
     * @return speeds that the main pumps would have with all the suction head they could use; empty without boost pumps
     */
    private Map<Side, SpeedLimit> boost(Map<Side, Stream> inlets, Map<Side, PumpDuty> duties) {
        Set<Side> boosted = EnumSet.noneOf(Side.class);
        for (Side side : Side.values()) {
            if (balanceModels.concept().feed(side).boost().isPresent()) {
                boosted.add(side);
            }
        }
        Map<Side, SpeedLimit> wanted =
                boosted.isEmpty() || balanceModels.built().isPresent()
                        ? Map.of()
                        : speeds.of(duties, unsettled(duties), boosted);
        for (Side side : boosted) {
            BoostDesign boost = balanceModels.concept().feed(side).boost().orElseThrow();
            Traced rise = boostRise(side, boost, duties.get(side), wanted);
            double discharge = duties.get(side).dischargePressure();
            Stream behind = boostPump(side, inlets.get(side), boost, rise);
            inlets.put(side, behind);
            duties.put(
                    side,
                    boost.drive() == BoostDesign.Drive.LIQUID
                            ? driving(side, boost, behind, discharge)
                            : duty(behind, discharge));
        }
        return wanted;
    }

    private Traced boostRise(Side side, BoostDesign boost, PumpDuty main, Map<Side, SpeedLimit> wanted) {
        Optional<Double> built = balanceModels.built().flatMap(b -> b.boostRise(side));
        if (built.isPresent()) {
            return Traced.of(built.get());
        }
        if (boost.pressureRise().isPresent()) {
            return sheet.given(
                    boost.pressureRise().getAsDouble(),
                    ConceptTables.boostPump(side).of(FeedInputs.PRESSURE_RISE));
        }
        SpeedLimit limit = wanted.get(side);
        List<String> needs = new ArrayList<>(limit.from());
        needs.addAll(paths.pump(side, SpeedBound.SUCTION));
        return new Traced(neededRise(side, main, limit.speed()), needs);
    }

    /**
     * Rise that gives the main pump the suction head for a speed, but no less than a hundredth and no more than a twelfth of the main
     * pump's own rise (Pa): common practice, no source. Beyond, the drive costs more than the speed brings.
     */
    private double neededRise(Side side, PumpDuty main, double speed) {
        double own = main.dischargePressure() - main.inlet().pressure();
        double needed = balanceModels.pumpModel().inletPressureFor(main, unsettled(side, main), speed)
                - main.inlet().pressure();
        return Math.min(Math.max(needed, SMALLEST_BOOST * own), LARGEST_BOOST * own);
    }

    private Stream boostPump(Side side, Stream in, BoostDesign boost, Traced rise) {
        PumpKey key = new PumpKey(side, PumpKey.Role.BOOST);
        Traced discharge = sheet.pressureOf(in).plus(rise);
        PumpDuty duty = duty(in, discharge.value());
        PumpDesign design = balanceModels
                .choices()
                .settle(key.id(), boost.pump(), d -> balanceModels.pumpModel().choose(duty, d));
        SpeedLimit fastest = speeds.alone(key.label(), duty, design, bound -> paths.boostPump(key, in, bound));
        boolean gear = boost.drive() == BoostDesign.Drive.GEAR;
        Shaft own = new Shaft(
                ShaftKey.boostOf(side), new MechanicalLosses(gear ? boost.driveEfficiency() : BEARINGS, 1, 0));
        turn(own, fastest);
        boosts.put(side, own);
        Stream out = pump(key, own, fastest, in, duty, design, 0, discharge);
        if (gear) {
            shaftOf(side).takeOff(own.neededPower());
        }
        return out;
    }

    /**
     * Duty of a main pump that also drives its boost pump. How far the liquid that comes back warms the inlet is estimated from
     * a usual efficiency; the energy at the outlet is exact whatever the estimate.
     */
    private PumpDuty driving(Side side, BoostDesign boost, Stream in, double discharge) {
        Medium.Liquid liquid = (Medium.Liquid) in.medium();
        double power = boosts.get(side).neededPower();
        double density =
                balanceModels.liquidState(liquid, in.pressure(), in.enthalpy()).density();
        double work = (discharge - in.pressure()) / density / USUAL_EFFICIENCY;
        double drive = balanceModels
                .built()
                .map(b -> b.driveShare(side) * in.flow())
                .orElseGet(() -> HydraulicTurbine.driveFlow(
                        power,
                        liquid.propellant().fluid(),
                        balanceModels.liquidState(liquid, discharge, in.enthalpy() + work),
                        in.pressure(),
                        boost.driveEfficiency(),
                        balanceModels.pumpModel().known(liquid.propellant().fluid())));
        sheet.recorder().ifPresent(r -> {
            boosts.get(side)
                    .drivenBy(String.format(
                            Locale.ROOT, "hydraulic turbine on %.3g kg/s from the %s pump", drive, side.key()));
            r.driving(PumpKey.main(side), in, in.flow() + drive, boosts.get(side));
        });
        double mixed = HydraulicTurbine.mixedEnthalpy(in.enthalpy(), in.flow(), drive, work, power);
        return new PumpDuty(
                liquid.propellant(),
                balanceModels.liquidState(liquid, in.pressure(), mixed),
                discharge,
                in.flow() + drive);
    }

    /** Power that a main pump's liquid gives to the boost pump before it (W). */
    private double drawn(Side side) {
        return balanceModels
                .concept()
                .feed(side)
                .boost()
                .filter(b -> b.drive() == BoostDesign.Drive.LIQUID)
                .map(b -> boosts.get(side).neededPower())
                .orElse(0.0);
    }

    // ---- speeds

    /** Speeds at which built pumps give the pressures asked for; pumps on one turbine keep their gear. */
    private void runBuilt(BuiltMachines built, PumpDuty oxidizer, PumpDuty fuel) {
        double oxidizerRatio = built.speedRatio(Side.OXIDIZER, oxidizer, balanceModels.pumpModel());
        double fuelRatio = built.speedRatio(Side.FUEL, fuel, balanceModels.pumpModel());
        if (coupling.oneTurbine()) {
            oxidizerRatio = Math.max(oxidizerRatio, fuelRatio);
            fuelRatio = oxidizerRatio;
        }
        turn(Side.OXIDIZER, oxidizerRatio * built.pump(Side.OXIDIZER).speed());
        turn(Side.FUEL, fuelRatio * built.pump(Side.FUEL).speed());
    }

    private void turn(Side side, double speed) {
        pumpSpeeds.put(side, new SpeedLimit(SpeedBound.BUILT, speed));
    }

    private void setSpeeds(Map<Side, PumpDuty> duties, Map<Side, SpeedLimit> wanted) {
        if (balanceModels.built().isPresent()) {
            runBuilt(balanceModels.built().get(), duties.get(Side.OXIDIZER), duties.get(Side.FUEL));
            turnShafts();
            return;
        }
        Map<Side, SpeedLimit> set = speeds.of(duties, designs(duties), Set.of());
        set.forEach((side, limit) -> pumpSpeeds.put(side, setter(limit, wanted.getOrDefault(side, limit))));
        turnShafts();
    }

    /** A boost pump that gives just the suction head that another limit can use leaves that limit in charge. */
    private static SpeedLimit setter(SpeedLimit own, SpeedLimit other) {
        SpeedLimit first = other.speed() < NEAR * own.speed() ? other : own;
        return first.at(own.speed()).with(own.from());
    }

    private Map<Side, PumpDesign> unsettled(Map<Side, PumpDuty> duties) {
        Map<Side, PumpDesign> designs = new EnumMap<>(Side.class);
        duties.forEach((side, duty) -> designs.put(side, unsettled(side, duty)));
        return designs;
    }

    /** The design as held, or what would be chosen, without holding it. */
    private PumpDesign unsettled(Side side, PumpDuty duty) {
        return balanceModels.choices().heldPump(PumpKey.main(side).id()).orElseGet(() -> balanceModels
                .pumpModel()
                .choose(duty, balanceModels.concept().feed(side).pump()));
    }

    private Map<Side, PumpDesign> designs(Map<Side, PumpDuty> duties) {
        Map<Side, PumpDesign> designs = new EnumMap<>(Side.class);
        duties.forEach((side, duty) -> designs.put(side, settled(side, duty)));
        return designs;
    }

    private void turnShafts() {
        double gear = coupling.geared() ? coupling.gearRatio() : 1;
        SpeedLimit fuel = pumpSpeeds.get(Side.FUEL);
        turn(shaftOf(Side.OXIDIZER), pumpSpeeds.get(Side.OXIDIZER));
        turn(shaftOf(Side.FUEL), fuel.at(fuel.speed() * gear).with(paths.gear(GasInputs.GEAR_RATIO)));
    }

    private void turn(Shaft shaft, SpeedLimit limit) {
        shaft.turnAt(limit);
        sheet.recorder().ifPresent(r -> r.shaft(shaft));
    }

    private PumpDesign settled(Side side, PumpDuty duty) {
        return balanceModels
                .choices()
                .settle(
                        PumpKey.main(side).id(),
                        balanceModels.concept().feed(side).pump(),
                        d -> balanceModels.pumpModel().choose(duty, d));
    }

    private Stream builtPump(BuiltMachines built, Side side, Stream in, PumpDuty duty, Traced discharge) {
        PumpKey key = PumpKey.main(side);
        PumpPoint point = built.at(side, duty, pumpSpeeds.get(side).speed(), balanceModels.pumpModel());
        pumpPoints.put(key.label(), point);
        shaftOf(side).add(new Shaft.PumpUse(key, duty, built.pump(side).design()), point.power());
        Traced reached = Traced.made(point.dischargePressure(), discharge);
        return pumped(key, in, reached, point.power(), drawn(side));
    }

    private Stream mainPump(Side side, Stream in, PumpDuty duty, Traced discharge) {
        if (balanceModels.built().isPresent()) {
            return builtPump(balanceModels.built().get(), side, in, duty, discharge);
        }
        return pump(
                PumpKey.main(side),
                shaftOf(side),
                pumpSpeeds.get(side),
                in,
                duty,
                settled(side, duty),
                drawn(side),
                discharge);
    }

    /** A small pump on the shaft of a main pump, or on a gear of its own there, for the little flow that needs more pressure. */
    public Stream kickPump(Side side, Stream in, Traced discharge) {
        PumpDesign design =
                balanceModels.concept().feed(side).pump().withEfficiency(balanceModels.kickPumpEfficiency());
        SpeedLimit main = pumpSpeeds.get(side);
        double ratio = coupling.kickGearRatio();
        SpeedLimit speed = !coupling.kickGeared()
                ? main
                : main.at(ratio * main.speed()).with(paths.gear(GasInputs.KICK_GEAR_RATIO));
        Stream out = secondPump(new PumpKey(side, PumpKey.Role.KICK), speed, in, discharge, design);
        if (coupling.kickGeared()) {
            double power = out.flow() * (out.enthalpy() - in.enthalpy());
            shaftOf(side).takeOff(power / coupling.kickGearEfficiency() - power);
        }
        return out;
    }

    /** A small pump on the shaft of the fuel pump, for a third fluid. */
    Stream diluentPump(Stream in, Traced discharge) {
        PumpDesign design =
                balanceModels.concept().feed(Side.FUEL).pump().withEfficiency(balanceModels.kickPumpEfficiency());
        return secondPump(
                new PumpKey(Side.FUEL, PumpKey.Role.DILUENT), pumpSpeeds.get(Side.FUEL), in, discharge, design);
    }

    /** A second stage group on the shaft of a main pump, for a large part of the flow. */
    public Stream secondPump(Side side, Stream in, Traced discharge) {
        return secondPump(
                new PumpKey(side, PumpKey.Role.SECOND),
                pumpSpeeds.get(side),
                in,
                discharge,
                balanceModels.concept().feed(side).pump());
    }

    private Stream secondPump(PumpKey key, SpeedLimit speed, Stream in, Traced discharge, PumpDesign asked) {
        PumpDuty duty = duty(in, discharge.value());
        PumpDesign design = balanceModels
                .choices()
                .settle(key.id(), asked, d -> balanceModels.pumpModel().choose(duty, d.withSpeed(speed.speed())));
        return pump(key, shaftOf(key.side()), speed, in, duty, design, 0, discharge);
    }

    private Stream pump(
            PumpKey key,
            Shaft shaft,
            SpeedLimit speed,
            Stream in,
            PumpDuty duty,
            PumpDesign design,
            double drawn,
            Traced discharge) {
        PumpDesign running = design.withSpeed(speed.speed());
        PumpWork work = balanceModels.pumpModel().work(duty, running);
        shaft.add(new Shaft.PumpUse(key, duty, running), work.power());
        sheet.recorder().ifPresent(r -> r.pump(key, speed));
        return pumped(key, in, discharge, work.power(), drawn);
    }

    /** What leaves a pump of so much power, part of which its liquid may give to a boost pump (W). */
    private Stream pumped(PumpKey key, Stream in, Traced target, double shaftPower, double drawn) {
        PartKey part = PartKey.pump(key);
        double power = shaftPower - drawn;
        double enthalpy = in.enthalpy() + power / in.flow();
        Stream out = sheet.outlet(part.at(Port.DISCHARGE), in.medium(), target.value(), enthalpy, in);
        Optional<Shaft> driven = Optional.ofNullable(boosts.get(key.side())).filter(s -> drawn > 0);
        sheet.recorder().ifPresent(r -> {
            r.pumped(out, in, target, key, driven);
            r.place(key.label(), part, key.table(), in, out);
        });
        sheet.component(part, List.of(in), List.of(out), 0, power);
        sheet.step(LineKey.of(key.side()), part, in, out);
        return out;
    }

    private PumpDuty duty(Stream in, double discharge) {
        Medium.Liquid liquid = (Medium.Liquid) in.medium();
        if (discharge <= in.pressure()) {
            throw new LimitReached(
                    "tank.pressure",
                    String.format(
                            Locale.ROOT,
                            "%s reaches its pump at %.3f bar and is wanted at %.3f bar: no pump is needed there; raise"
                                    + " engine.chamber_pressure, lower the tank pressure or use the pressure-fed cycle",
                            liquid.propellant().name(),
                            in.pressure() / 1e5,
                            discharge / 1e5));
        }
        FluidState state = balanceModels.liquidState(liquid, in.pressure(), in.enthalpy());
        return new PumpDuty(liquid.propellant(), state, discharge, in.flow());
    }

    /** Expands gas through a turbine that drives the shaft of a place; part of it may pass by through an orifice. */
    public Stream turbine(TurbinePlace place, Stream in, Traced exit) {
        double bypass = balanceModels.concept().turbines().get(place).bypass();
        if (bypass == 0) {
            return wheel(place, in, exit);
        }
        Traced share = sheet.given(bypass, ConceptTables.turbine(place).of(GasInputs.BYPASS));
        List<Stream> ways = sheet.split(PartKey.turbineBranch(place), in, share.oneMinus());
        Stream driven = wheel(place, ways.get(0), exit);
        Stream past = sheet.drop(PartKey.turbineBypass(place), in.line(), ways.get(1), exit);
        return sheet.merge(PartKey.turbineMerge(place), driven, past);
    }

    private Stream wheel(TurbinePlace place, Stream in, Traced exit) {
        double exitPressure = exit.value();
        Medium.Gas gas = (Medium.Gas) in.medium();
        TurbineDuty duty = new TurbineDuty(gas.fluid(), in.pressure(), in.enthalpy(), exitPressure, in.flow());
        Shaft shaft = shaft(ShaftKey.of(place));
        TurbineWork work = turbineWork(place, shaft, duty);
        PartKey part = PartKey.turbine(place);
        Stream out = sheet.outlet(part.at(Port.EXIT), gas, exitPressure, work.outletEnthalpy(), in);
        sheet.recorder().ifPresent(r -> {
            r.expanded(out, in, exit, place);
            r.turns(place, shaft);
            r.place(place.title(), part, ConceptTables.turbine(place), in, out);
        });
        sheet.component(part, List.of(in), List.of(out), 0, -work.power());
        sheet.step(in.line(), part, in, out);
        return out;
    }

    private TurbineWork turbineWork(TurbinePlace place, Shaft shaft, TurbineDuty duty) {
        if (balanceModels.built().isPresent()) {
            return builtTurbine(balanceModels.built().get(), place, shaft, duty);
        }
        TurbineDesign design = balanceModels
                .choices()
                .settleTurbine(
                        PartKey.turbine(place).id(),
                        balanceModels.concept().turbines().get(place).design(),
                        d -> balanceModels.turbineModel().choose(duty, shaft.speed(), d));
        balanceModels.choices().holdAnnulusLimit(place, shaft.speed(), () -> balanceModels
                .turbineModel()
                .annulusLimit(duty, shaft.speed(), design)
                .of(place.title(), bound -> List.of()));
        TurbineWork work = balanceModels.turbineModel().work(duty, shaft.speed(), design);
        shaft.add(new Shaft.TurbineUse(place, duty, shaft.speed(), design), work.power());
        return work;
    }

    /** A built turbine passes what its nozzles let through; the second turbine on a gas stream has a trim valve. */
    private TurbineWork builtTurbine(BuiltMachines built, TurbinePlace place, Shaft shaft, TurbineDuty duty) {
        TurbinePoint point = built.at(place, duty, shaft.speed());
        CycleTraits traits = balanceModels.concept().cycle().traits();
        boolean leads = place != TurbinePlace.OXIDIZER || traits.ownGas();
        if (leads && traits.closure() != CycleTraits.Closure.GAS_FLOW) {
            sheet.closes(
                    "flow through the nozzles of the " + place.title(),
                    "kg/s",
                    duty.massFlow() - point.massFlow(),
                    duty.massFlow(),
                    List::of);
        }
        double power = duty.massFlow() * point.efficiency() * point.isentropicDrop();
        shaft.add(
                new Shaft.TurbineUse(
                        place, duty, shaft.speed(), built.turbine(place).design()),
                power);
        return new TurbineWork(point.isentropicDrop(), point.efficiency(), power, point.outletEnthalpy());
    }

    /** Operating points of built pumps, by name. */
    public Map<String, PumpPoint> pumpPoints() {
        return pumpPoints;
    }

    /** States that each shaft's turbines give what its pumps and losses take. */
    public void closesShafts() {
        for (Shaft shaft : mainShafts()) {
            double needed = shaft.neededPower();
            sheet.closes(
                    "power of the " + shaft.name(),
                    "W",
                    shaft.turbinePower() - needed,
                    needed,
                    () -> StationRecorder.powers(shaft));
        }
    }

    /** Drives each shaft with a motor that gives what it needs. */
    public void motors() {
        for (Shaft shaft : mainShafts()) {
            sheet.component(PartKey.motor(shaft.key()), List.of(), List.of(), 0, -shaft.neededPower());
        }
    }

    private List<Shaft> mainShafts() {
        return shafts.values().stream().filter(s -> !s.pumps().isEmpty()).toList();
    }

    /** Shafts that carry anything: main shafts, then those of boost pumps. */
    public List<Shaft> shafts() {
        List<Shaft> all = new ArrayList<>(mainShafts());
        all.addAll(boosts.values());
        return all;
    }

    /** Shaft of a boost pump, once that is laid out. */
    Shaft boostShaft(Side side) {
        return boosts.get(side);
    }

    private Shaft shaftOf(Side side) {
        return shaft(coupling.oneTurbine() ? ShaftKey.MAIN : ShaftKey.of(side));
    }

    private Shaft shaft(ShaftKey key) {
        return shafts.computeIfAbsent(key, k -> new Shaft(k, coupling.losses()));
    }
}
