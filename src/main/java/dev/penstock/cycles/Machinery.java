package dev.penstock.cycles;

import dev.penstock.fluids.FluidState;
import dev.penstock.turbomachinery.GearTeeth;
import dev.penstock.turbomachinery.MechanicalLosses;
import dev.penstock.turbomachinery.PumpDesign;
import dev.penstock.turbomachinery.PumpDuty;
import dev.penstock.turbomachinery.PumpPoint;
import dev.penstock.turbomachinery.PumpWork;
import dev.penstock.turbomachinery.SpeedLimit;
import dev.penstock.turbomachinery.TurbineDesign;
import dev.penstock.turbomachinery.TurbineDuty;
import dev.penstock.turbomachinery.TurbinePoint;
import dev.penstock.turbomachinery.TurbineWork;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Pumps, turbines and shafts of one pass through an arrangement. */
final class Machinery {

    private static final String STATED = "the concept";
    private static final String BUILT = "the pressure asked for";

    private final Flowsheet sheet;
    private final Plant plant;
    private final ShaftDesign coupling;
    private final Map<String, Shaft> shafts = new TreeMap<>();
    private final List<Shaft> boosts = new ArrayList<>();
    private final Map<String, PumpPoint> pumpPoints = new TreeMap<>();
    private final Map<String, TurbinePoint> turbinePoints = new TreeMap<>();
    private final Map<Side, Double> pumpSpeeds = new TreeMap<>();

    /** Both propellants behind their main pumps. */
    record Pumped(Stream oxidizer, Stream fuel) {}

    Machinery(Flowsheet sheet, Plant plant) {
        this.sheet = sheet;
        this.plant = plant;
        this.coupling = plant.concept().shafts();
    }

    /**
     * Tanks, suction lines and main pumps. A shaft that carries both pumps turns at the speed that the slower allows.
     */
    Pumped mainPumps(double oxidizerFlow, double oxidizerDischarge, double fuelFlow, double fuelDischarge) {
        Stream oxidizer = suction(Side.OXIDIZER, oxidizerFlow);
        Stream fuel = suction(Side.FUEL, fuelFlow);
        PumpDuty oxidizerDuty = duty(oxidizer, oxidizerDischarge);
        PumpDuty fuelDuty = duty(fuel, fuelDischarge);
        setSpeeds(oxidizerDuty, fuelDuty);
        return new Pumped(mainPump(Side.OXIDIZER, oxidizer, oxidizerDuty), mainPump(Side.FUEL, fuel, fuelDuty));
    }

    private Stream suction(Side side, double flow) {
        FeedDesign feed = plant.concept().feed(side);
        Stream line = sheet.suctionLine(
                side, sheet.tank(side, flow, feed.tankPressure().orElseThrow()));
        return feed.boost().isPresent() ? boostPump(side, line, feed.boost().get()) : line;
    }

    private Stream boostPump(Side side, Stream in, BoostDesign boost) {
        String id = "pump." + side.key() + "_boost";
        String label = side.key() + " boost pump";
        PumpDuty duty = duty(in, in.pressure() + boost.pressureRise());
        PumpDesign design =
                plant.settle(id, boost.pump(), d -> plant.pumpModel().choose(duty, d));
        SpeedLimit fastest = design.speed().isPresent()
                ? new SpeedLimit(STATED, design.speed().getAsDouble())
                : SpeedLimit.least(ofPump(side.key() + " boost pump", duty, design));
        double speed = fastest.speed();
        Shaft own = new Shaft(side.key() + " boost shaft", new MechanicalLosses(boost.driveEfficiency(), 1, 0));
        own.turnAt(fastest);
        boosts.add(own);
        Stream out = pump(id, label, own, speed, side, in, duty, design);
        shaftOf(side).takeOff(own.neededPower());
        return out;
    }

    /** Speeds at which built pumps give the pressures asked for; pumps on one turbine keep their gear. */
    private void runBuilt(BuiltMachines built, PumpDuty oxidizer, PumpDuty fuel) {
        double oxidizerRatio = built.speedRatio(Side.OXIDIZER, oxidizer);
        double fuelRatio = built.speedRatio(Side.FUEL, fuel);
        if (coupling.oneTurbine()) {
            oxidizerRatio = Math.max(oxidizerRatio, fuelRatio);
            fuelRatio = oxidizerRatio;
        }
        pumpSpeeds.put(Side.OXIDIZER, oxidizerRatio * built.pump(Side.OXIDIZER).speed());
        pumpSpeeds.put(Side.FUEL, fuelRatio * built.pump(Side.FUEL).speed());
    }

    private void setSpeeds(PumpDuty oxidizer, PumpDuty fuel) {
        if (plant.built().isPresent()) {
            runBuilt(plant.built().get(), oxidizer, fuel);
            turnShafts(BUILT, BUILT);
            return;
        }
        PumpDesign oxidizerDesign = settled(Side.OXIDIZER, oxidizer);
        PumpDesign fuelDesign = settled(Side.FUEL, fuel);
        OptionalDouble coupled = coupledSpeeds();
        SpeedLimit oxidizerSpeed;
        SpeedLimit fuelSpeed;
        if (coupled.isPresent()) {
            double ratio = coupled.getAsDouble();
            fuelSpeed = coupledFuelSpeed(oxidizer, oxidizerDesign, fuel, fuelDesign, ratio);
            oxidizerSpeed = fuelSpeed.geared(1 / ratio);
        } else {
            oxidizerSpeed = ownSpeed(Side.OXIDIZER, oxidizer, oxidizerDesign, List.of());
            List<SpeedLimit> teeth =
                    coupling.geared() ? List.of(teeth(oxidizer, fuel, fuelDesign)) : List.<SpeedLimit>of();
            fuelSpeed = ownSpeed(Side.FUEL, fuel, fuelDesign, teeth);
        }
        pumpSpeeds.put(Side.OXIDIZER, oxidizerSpeed.speed());
        pumpSpeeds.put(Side.FUEL, fuelSpeed.speed());
        turnShafts(oxidizerSpeed.name(), fuelSpeed.name());
    }

    /** Fuel-pump speed over oxidizer-pump speed, where one follows from the other. */
    private OptionalDouble coupledSpeeds() {
        return coupling.arrangement() == ShaftDesign.Arrangement.SINGLE
                ? OptionalDouble.of(1)
                : coupling.geared() ? coupling.pumpSpeedRatio() : OptionalDouble.empty();
    }

    private SpeedLimit coupledFuelSpeed(
            PumpDuty oxidizer, PumpDesign oxidizerDesign, PumpDuty fuel, PumpDesign fuelDesign, double ratio) {
        if (oxidizerDesign.speed().isPresent()) {
            return new SpeedLimit(STATED, oxidizerDesign.speed().getAsDouble() * ratio);
        }
        if (fuelDesign.speed().isPresent()) {
            return new SpeedLimit(STATED, fuelDesign.speed().getAsDouble());
        }
        List<SpeedLimit> limits = ofPump(label(Side.FUEL), fuel, fuelDesign);
        ofPump(label(Side.OXIDIZER), oxidizer, oxidizerDesign).forEach(l -> limits.add(l.geared(ratio)));
        if (coupling.geared()) {
            limits.add(teeth(oxidizer, fuel, fuelDesign));
        }
        annulus(Side.FUEL).ifPresent(limits::add);
        return SpeedLimit.least(limits);
    }

    private SpeedLimit ownSpeed(Side side, PumpDuty duty, PumpDesign design, List<SpeedLimit> further) {
        if (design.speed().isPresent()) {
            return new SpeedLimit(STATED, design.speed().getAsDouble());
        }
        List<SpeedLimit> limits = ofPump(label(side), duty, design);
        limits.addAll(further);
        annulus(side).ifPresent(limits::add);
        return SpeedLimit.least(limits);
    }

    private List<SpeedLimit> ofPump(String pump, PumpDuty duty, PumpDesign design) {
        List<SpeedLimit> limits = new ArrayList<>();
        plant.pumpModel().speedLimits(duty, design).forEach(l -> limits.add(l.of(pump)));
        return limits;
    }

    /** Teeth of the gearbox, on the fuel pump's shaft or, faster, on the turbine's. */
    private SpeedLimit teeth(PumpDuty oxidizer, PumpDuty fuel, PumpDesign fuelDesign) {
        double power =
                plant.pumpModel().hydraulicPower(oxidizer) + plant.pumpModel().hydraulicPower(fuel);
        double pinion = GearTeeth.fastest(power, fuelDesign, coupling.gearSpeedLimit());
        return new SpeedLimit("teeth of the gearbox", pinion / Math.max(1, coupling.gearRatio()));
    }

    /** The turbine that drives a side, as held while equations are solved, at the speed of that side's pump. */
    private Optional<SpeedLimit> annulus(Side side) {
        TurbinePlace place = coupling.oneTurbine()
                ? TurbinePlace.MAIN
                : side == Side.FUEL ? TurbinePlace.FUEL : TurbinePlace.OXIDIZER;
        if (coupling.geared() && side == Side.OXIDIZER) {
            return Optional.empty();
        }
        return plant.annulusLimit(place).map(l -> l.geared(1 / coupling.gearRatio()));
    }

    private static String label(Side side) {
        return side.key() + " pump";
    }

    private void turnShafts(String oxidizerSetBy, String fuelSetBy) {
        double gear = coupling.geared() ? coupling.gearRatio() : 1;
        shaftOf(Side.OXIDIZER).turnAt(new SpeedLimit(oxidizerSetBy, pumpSpeeds.get(Side.OXIDIZER)));
        shaftOf(Side.FUEL).turnAt(new SpeedLimit(fuelSetBy, pumpSpeeds.get(Side.FUEL) * gear));
    }

    private PumpDesign settled(Side side, PumpDuty duty) {
        return plant.settle("pump." + side.key(), plant.concept().feed(side).pump(), d -> plant.pumpModel()
                .choose(duty, d));
    }

    private Stream builtPump(BuiltMachines built, Side side, Stream in, PumpDuty duty) {
        String label = side.key() + " pump";
        PumpPoint point = built.at(side, duty, pumpSpeeds.get(side));
        pumpPoints.put(label, point);
        shaftOf(side).add(new Shaft.PumpUse(label, duty, built.pump(side).design()), point.power());
        Medium.Liquid liquid = (Medium.Liquid) in.medium();
        Stream out = sheet.outlet(
                label + " discharge",
                liquid,
                point.dischargePressure(),
                liquid.propellant().absoluteEnthalpy(point.outletEnthalpy()),
                in.oxidizerFlow(),
                in.fuelFlow());
        sheet.component("pump." + side.key(), Component.Kind.PUMP, label, List.of(in), List.of(out), 0, point.power());
        sheet.step(side.key(), label, in.pressure(), out.pressure());
        return out;
    }

    private Stream mainPump(Side side, Stream in, PumpDuty duty) {
        if (plant.built().isPresent()) {
            return builtPump(plant.built().get(), side, in, duty);
        }
        return pump(
                "pump." + side.key(),
                side.key() + " pump",
                shaftOf(side),
                pumpSpeeds.get(side),
                side,
                in,
                duty,
                settled(side, duty));
    }

    /** A small pump on the shaft of a main pump, for the little flow that needs more pressure. */
    Stream kickPump(Side side, Stream in, double discharge) {
        PumpDesign design = plant.concept().feed(side).pump().withEfficiency(plant.kickPumpEfficiency());
        return secondPump("_kick", " kick pump", side, in, discharge, design);
    }

    /** A second stage group on the shaft of a main pump, for a large part of the flow. */
    Stream secondPump(Side side, Stream in, double discharge) {
        return secondPump(
                "_second",
                " second pump",
                side,
                in,
                discharge,
                plant.concept().feed(side).pump());
    }

    private Stream secondPump(String suffix, String label, Side side, Stream in, double discharge, PumpDesign asked) {
        PumpDuty duty = duty(in, discharge);
        double speed = pumpSpeeds.get(side);
        PumpDesign design = plant.settle(
                "pump." + side.key() + suffix, asked, d -> plant.pumpModel().choose(duty, d.withSpeed(speed)));
        return pump("pump." + side.key() + suffix, side.key() + label, shaftOf(side), speed, side, in, duty, design);
    }

    private Stream pump(
            String id,
            String label,
            Shaft shaft,
            double speed,
            Side side,
            Stream in,
            PumpDuty duty,
            PumpDesign design) {
        PumpDesign running = design.withSpeed(speed);
        PumpWork work = plant.pumpModel().work(duty, running);
        shaft.add(new Shaft.PumpUse(label, duty, running), work.power());
        Medium.Liquid liquid = (Medium.Liquid) in.medium();
        double enthalpy = liquid.propellant().absoluteEnthalpy(work.outletEnthalpy());
        Stream out = sheet.outlet(
                label + " discharge", liquid, duty.dischargePressure(), enthalpy, in.oxidizerFlow(), in.fuelFlow());
        sheet.component(id, Component.Kind.PUMP, label, List.of(in), List.of(out), 0, work.power());
        sheet.step(side.key(), label, in.pressure(), out.pressure());
        return out;
    }

    private PumpDuty duty(Stream in, double discharge) {
        Medium.Liquid liquid = (Medium.Liquid) in.medium();
        FluidState state = plant.liquidState(liquid, in.pressure(), in.enthalpy());
        return new PumpDuty(liquid.propellant(), state, discharge, in.flow());
    }

    /** Expands gas through a turbine that drives the shaft of a place. */
    Stream turbine(TurbinePlace place, Stream in, double exitPressure) {
        Medium.Gas gas = (Medium.Gas) in.medium();
        TurbineDuty duty = new TurbineDuty(gas.fluid(), in.pressure(), in.enthalpy(), exitPressure, in.flow());
        Shaft shaft = shaftOf(place);
        TurbineWork work = turbineWork(place, shaft, duty);
        Stream out = sheet.outlet(
                place.title() + " exit", gas, exitPressure, work.outletEnthalpy(), in.oxidizerFlow(), in.fuelFlow());
        sheet.component(
                "turbine." + place.key(),
                Component.Kind.TURBINE,
                place.title(),
                List.of(in),
                List.of(out),
                0,
                -work.power());
        sheet.step(gas.name(), place.title(), in.pressure(), exitPressure);
        return out;
    }

    private TurbineWork turbineWork(TurbinePlace place, Shaft shaft, TurbineDuty duty) {
        if (plant.built().isPresent()) {
            return builtTurbine(plant.built().get(), place, shaft, duty);
        }
        TurbineDesign design = plant.settleTurbine(
                "turbine." + place.key(), plant.concept().turbines().get(place).design(), d -> plant.turbineModel()
                        .choose(duty, shaft.speed(), d));
        plant.holdAnnulusLimit(place, shaft.speed(), () -> plant.turbineModel()
                .annulusLimit(duty, shaft.speed(), design)
                .of(place.title()));
        TurbineWork work = plant.turbineModel().work(duty, shaft.speed(), design);
        shaft.add(new Shaft.TurbineUse(place.title(), duty, shaft.speed(), design), work.power());
        return work;
    }

    /** A built turbine passes what its nozzles let through; the second turbine on a gas stream has a trim valve. */
    private TurbineWork builtTurbine(BuiltMachines built, TurbinePlace place, Shaft shaft, TurbineDuty duty) {
        TurbinePoint point = built.at(place, duty, shaft.speed());
        turbinePoints.put(place.title(), point);
        CycleTraits traits = plant.concept().cycle().traits();
        boolean leads = place != TurbinePlace.OXIDIZER || traits.ownBurners();
        if (leads && traits.closure() != CycleTraits.Closure.GAS_FLOW) {
            sheet.closes(
                    "flow through the nozzles of the " + place.title(),
                    "kg/s",
                    duty.massFlow() - point.massFlow(),
                    duty.massFlow());
        }
        double power = duty.massFlow() * point.efficiency() * point.isentropicDrop();
        shaft.add(
                new Shaft.TurbineUse(
                        place.title(), duty, shaft.speed(), built.turbine(place).design()),
                power);
        return new TurbineWork(point.isentropicDrop(), point.efficiency(), power, point.outletEnthalpy());
    }

    /** Operating points of built pumps, by name. */
    Map<String, PumpPoint> pumpPoints() {
        return pumpPoints;
    }

    /** Operating points of built turbines, by name. */
    Map<String, TurbinePoint> turbinePoints() {
        return turbinePoints;
    }

    /** States that each shaft's turbines give what its pumps and losses take. */
    void closesShafts() {
        for (Shaft shaft : mainShafts()) {
            double needed = shaft.neededPower();
            sheet.closes("power of the " + shaft.name(), "W", shaft.turbinePower() - needed, needed);
        }
    }

    /** Drives each shaft with a motor that gives what it needs. */
    void motors() {
        for (Shaft shaft : mainShafts()) {
            sheet.component(
                    "motor." + shaft.name().replace(" shaft", ""),
                    Component.Kind.MOTOR,
                    "motor of the " + shaft.name(),
                    List.of(),
                    List.of(),
                    0,
                    -shaft.neededPower());
        }
    }

    private List<Shaft> mainShafts() {
        return shafts.values().stream().filter(s -> !s.pumps().isEmpty()).toList();
    }

    /** Shafts that carry anything: main shafts, then those of boost pumps. */
    List<Shaft> shafts() {
        List<Shaft> all = new ArrayList<>(mainShafts());
        all.addAll(boosts);
        return all;
    }

    private Shaft shaftOf(Side side) {
        return shaft(coupling.oneTurbine() ? "main shaft" : side.key() + " shaft");
    }

    private Shaft shaftOf(TurbinePlace place) {
        return shaft(place == TurbinePlace.MAIN ? "main shaft" : place.key() + " shaft");
    }

    private Shaft shaft(String name) {
        return shafts.computeIfAbsent(name, n -> new Shaft(n, coupling.losses()));
    }
}
