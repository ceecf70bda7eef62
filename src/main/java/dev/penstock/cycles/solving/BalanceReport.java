package dev.penstock.cycles.solving;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.loss.LossNote;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.DesignLimits;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.cycles.origin.ExhaustLimit;
import dev.penstock.cycles.origin.Machines;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.cycles.origin.ShaftKey;
import dev.penstock.cycles.origin.TankLimit;
import dev.penstock.cycles.sheet.Auditor;
import dev.penstock.cycles.sheet.BalanceModels;
import dev.penstock.cycles.sheet.CarriedValues;
import dev.penstock.cycles.sheet.EnergyAudit;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.EngineSummary;
import dev.penstock.cycles.sheet.ExhaustJet;
import dev.penstock.cycles.sheet.ExhaustNozzle;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Residual;
import dev.penstock.cycles.sheet.Shaft;
import dev.penstock.cycles.sheet.Stream;
import dev.penstock.errors.ConservationViolated;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.LimitKind;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.electric.ElectricSizing;
import dev.penstock.turbomachinery.metal.MetalReport;
import dev.penstock.turbomachinery.pump.PumpLimit;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.shaft.GearTeeth;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import dev.penstock.turbomachinery.shaft.ShaftLimit;
import dev.penstock.turbomachinery.shaft.ShaftModel;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Makes the result of a closed arrangement: machines sized, limits held against their values, conservation checked. */
public final class BalanceReport {

    private final Balancer.Solved solved;
    private final BalanceModels balanceModels;
    private final Concept concept;
    private final Flowsheet sheet;
    private final ChamberPerformance chamber;
    private final Map<PumpKey, PumpSizing> pumps = new LinkedHashMap<>();
    private final Map<TurbinePlace, TurbineSizing> turbines = new LinkedHashMap<>();
    private final Map<ShaftKey, ShaftBalance> shafts = new LinkedHashMap<>();

    /** Limits of pumps, turbines and shafts, in this order; those by which speed or bearings were chosen are marked. */
    private final List<LimitCheck> ofPumps = new ArrayList<>();

    private final List<LimitCheck> ofTurbines = new ArrayList<>();
    private final List<LimitCheck> ofShafts = new ArrayList<>();
    private double mainPower;
    private final List<Warning> warnings = new ArrayList<>();

    private BalanceReport(Balancer.Solved solved) {
        this.solved = solved;
        this.balanceModels = solved.balanceModels();
        this.concept = balanceModels.concept();
        this.sheet = solved.sheet();
        this.chamber = solved.update().assumptions().chamber();
    }

    /** @throws ConservationViolated if a closing equation or the audit is out of balance by more than 1e-8 */
    public static EngineBalance of(Balancer.Solved solved) {
        return new BalanceReport(solved).make();
    }

    private EngineBalance make() {
        sizeMachines();
        List<JacketResult> jackets = solved.jackets();
        int chambers = concept.chambers();
        List<Residual> residuals = residuals();
        for (Residual residual : residuals) {
            if (!(residual.relative() <= Auditor.ALLOWED)) {
                throw new ConservationViolated(residual.name(), residual.relative(), Auditor.ALLOWED);
            }
        }
        EnergyAudit audit =
                new Auditor(sheet.stations(), sheet.components()).audit(heatLoads(jackets, chambers), shafts.values());
        Auditor.check(audit);
        EngineSummary summary = summary();
        MetalReport metals = MetalParts.of(concept, sheet);
        collectWarnings(jackets);
        warnings.addAll(metals.warnings());
        return new EngineBalance(
                concept,
                summary,
                sheet.stations(),
                sheet.components(),
                new Machines(pumps, turbines, shafts),
                chamber,
                jackets,
                sheet.ladder(),
                solved.update().jets(),
                electric(),
                losses(summary),
                limits(summary, jackets, metals),
                metals,
                warnings,
                residuals,
                audit,
                solved.effort(),
                sheet.recorder().orElseThrow().origins());
    }

    private static Map<PartKey, Double> heatLoads(List<JacketResult> jackets, int chambers) {
        Map<PartKey, Double> loads = new LinkedHashMap<>();
        jackets.forEach(j -> loads.put(PartKey.jacket(j.circuit()), chambers * j.heatLoad()));
        return loads;
    }

    private void sizeMachines() {
        for (Shaft shaft : sheet.machinery().shafts()) {
            sheet.recorder().orElseThrow().place(shaft);
            boolean chosen = shaft.speedSetBy().chosen();
            List<PumpSizing> own = new ArrayList<>();
            for (Shaft.PumpUse use : shaft.pumps()) {
                PumpSizing pump = balanceModels.pumpModel().size(use.name(), use.duty(), use.design());
                own.add(pump);
                pumps.put(use.key(), pump);
                ofPumps.add(dischargeLimit(pump));
                ofPumps.addAll(sizing(pump.limits(), chosen, false));
            }
            List<TurbineSizing> drivers = new ArrayList<>();
            for (Shaft.TurbineUse use : shaft.turbines()) {
                TurbineSizing turbine =
                        balanceModels.turbineModel().size(use.name(), use.duty(), use.speed(), use.design());
                drivers.add(turbine);
                turbines.put(use.place(), turbine);
                ofTurbines.addAll(sizing(turbine.limits(), chosen, setsGas(use.place())));
            }
            ShaftModel model = balanceModels.models().shafts();
            ShaftBalance balanced = drivers.isEmpty()
                    ? model.balance(
                            shaft.name(),
                            own,
                            shaft.driver(),
                            shaft.neededPower(),
                            shaft.losses(),
                            shaft.takenOff(),
                            shaft.speedSetBy().name())
                    : model.balance(
                            shaft.name(),
                            own,
                            drivers,
                            shaft.losses(),
                            shaft.takenOff(),
                            shaft.speedSetBy().name());
            shafts.put(shaft.key(), balanced);
            ofShafts.addAll(sizing(balanced.limits(), chosen, false));
            if (concept.shafts().geared() && shafts.size() == 1) {
                ofShafts.addAll(sizing(List.of(gearLimit(balanced)), chosen, false));
            }
            mainPower += shaft.key().boost() ? 0 : balanced.powerDelivered();
        }
    }

    private List<Residual> residuals() {
        List<Residual> residuals = new ArrayList<>(sheet.residuals());
        CarriedValues assumed = solved.assumed();
        CarriedValues found = solved.update().assumptions();
        residuals.add(new Residual(
                "flow of the chamber",
                "kg/s",
                assumed.chamberFlow() - found.chamberFlow(),
                found.chamberFlow(),
                List.of("chamber.mass_flow_kg_s")));
        for (int i = 0; i < found.jackets().size(); i++) {
            CircuitKey circuit = concept.cooling().get(i).key();
            CarriedValues.Jacket before = assumed.jackets().get(i);
            CarriedValues.Jacket after = found.jackets().get(i);
            double scale = Surroundings.heatScale(found, i);
            residuals.add(new Residual(
                    "heat into the " + circuit.word() + "jacket",
                    "W",
                    before.heatLoad() - after.heatLoad(),
                    scale,
                    List.of(circuit.heat())));
            residuals.add(new Residual(
                    "pressure drop of the " + circuit.word() + "jacket",
                    "Pa",
                    before.pressureDrop() - after.pressureDrop(),
                    concept.chamberPressure(),
                    List.of(circuit.drop())));
        }
        return residuals;
    }

    private EngineSummary summary() {
        double oxidizer =
                sheet.tankStreams().stream().mapToDouble(Stream::oxidizerFlow).sum();
        double fuel = sheet.tankStreams().stream().mapToDouble(Stream::fuelFlow).sum();
        double chamberOxidizer = sheet.chamberStreams().stream()
                .mapToDouble(Stream::oxidizerFlow)
                .sum();
        double chamberFuel =
                sheet.chamberStreams().stream().mapToDouble(Stream::fuelFlow).sum();
        double jets = solved.update().jets().stream()
                .mapToDouble(ExhaustJet::vacuumThrust)
                .sum();
        double vacuum = concept.chambers() * chamber.vacuumThrust() + jets;
        double seaLevel = seaLevelThrust();
        double flow = oxidizer + fuel + sheet.diluentFlow();
        double gravity = Constants.STANDARD_GRAVITY;
        return new EngineSummary(
                concept.cycle().id(),
                concept.chamberPressure(),
                oxidizer / fuel,
                chamberOxidizer / chamberFuel,
                vacuum,
                seaLevel,
                vacuum / flow / gravity,
                seaLevel / flow / gravity,
                flow,
                oxidizer,
                fuel,
                sheet.diluentFlow(),
                chamber.areaRatio(),
                2 * Math.sqrt(chamber.throatArea() / Math.PI),
                2 * Math.sqrt(chamber.exitArea() / Math.PI),
                chamber.characteristicVelocity());
    }

    private Optional<ElectricSizing> electric() {
        return concept.electric().map(e -> e.drive().size(mainPower, e.burnTime()));
    }

    private double seaLevelThrust() {
        double ambient = Constants.STANDARD_ATMOSPHERE;
        if (!sonicAgainst(ambient)) {
            return 0;
        }
        return concept.chambers() * chamber.thrustAt(ambient)
                + solved.update().jets().stream()
                        .mapToDouble(j -> j.thrustAt(ambient))
                        .sum();
    }

    private boolean sonicAgainst(double ambient) {
        return chamber.profile().throat().pressure() > ambient;
    }

    private List<NamedLoss> losses(EngineSummary summary) {
        List<NamedLoss> losses = new ArrayList<>();
        double thrust = concept.chambers() * chamber.vacuumThrust();
        double flow = concept.chambers() * chamber.massFlow();
        double before = chamber.vacuumImpulse();
        List<ExhaustJet> jets = solved.update().jets();
        for (int i = 0; i < jets.size(); i++) {
            thrust += jets.get(i).vacuumThrust();
            flow += jets.get(i).massFlow();
            boolean last = i == jets.size() - 1;
            double after = last ? summary.vacuumIsp() * Constants.STANDARD_GRAVITY : thrust / flow;
            losses.add(new NamedLoss(
                    Optional.empty(),
                    jets.get(i).name(),
                    after / before,
                    before - after,
                    Optional.of(ExhaustNozzle.CARD),
                    LossNote.of(
                            jets.get(i).ofTurbines()
                                    ? "gas that drives the turbines leaves at a lower impulse than the chamber's"
                                    : "coolant that is dumped leaves at a lower impulse than the chamber's")));
            before = after;
        }
        return losses;
    }

    /**
     * Impulse of an engine that dumps nothing (m/s): the better of this chamber's and that of the same chamber, with the same losses,
     * where all burns that leaves the tanks. The chamber's own says little where most of the fuel is dumped.
     */
    private double withoutExhaust(EngineSummary summary) {
        Reactants tanks = Reactants.ofTanks(concept.oxidizer(), concept.fuel(), summary.mixtureRatio());
        double ideal = balanceModels.chamber(tanks).idealImpulse(concept.chamber(), tanks, chamber.areaRatio());
        return chamber.vacuumImpulse() * Math.max(1, ideal / chamber.ideal().vacuumImpulse());
    }

    private List<LimitCheck> limits(EngineSummary summary, List<JacketResult> jackets, MetalReport metals) {
        List<LimitCheck> limits = new ArrayList<>(ofPumps);
        limits.addAll(ofTurbines);
        limits.addAll(ofShafts);
        DesignLimits own = concept.limits();
        if (!sheet.exhaustStreams().isEmpty()) {
            limits.add(LimitCheck.atMost(
                    ExhaustLimit.IMPULSE_LOSS,
                    ExhaustLimit.OWNER,
                    ExhaustJet.costOfTurbines(
                            summary.vacuumIsp() * Constants.STANDARD_GRAVITY,
                            withoutExhaust(summary),
                            summary.massFlow(),
                            solved.update().jets()),
                    own.exhaustLoss(),
                    "",
                    own.exhaustSource()));
        }
        if (!concept.cycle().traits().pumped()) {
            for (Stream tank : sheet.tankStreams()) {
                Side side = tank.oxidizerFlow() > 0 ? Side.OXIDIZER : Side.FUEL;
                limits.add(LimitCheck.atMost(
                        TankLimit.PRESSURE,
                        PartKey.tank(side).label(),
                        tank.pressure(),
                        own.tankPressure(),
                        "Pa",
                        own.tankSource()));
            }
        }
        jackets.forEach(j -> limits.addAll(j.limits()));
        limits.addAll(metals.limits());
        return limits;
    }

    private LimitCheck dischargeLimit(PumpSizing pump) {
        DesignLimits own = concept.limits();
        return LimitCheck.atMost(
                PumpLimit.DISCHARGE_PRESSURE,
                pump.name(),
                pump.duty().dischargePressure(),
                own.dischargePressure(),
                "Pa",
                own.dischargeSource());
    }

    private LimitCheck gearLimit(ShaftBalance pinion) {
        return LimitCheck.atMost(
                ShaftLimit.GEAR_SPEED,
                pinion.name(),
                GearTeeth.speed(pinion.speed(), pinion.diameter()),
                concept.shafts().gearSpeedLimit(),
                "m/s",
                GearTeeth.SPEED_LIMIT.standing().source());
    }

    /** The same limits of a machine; those by which its speed, its gas or its bearings were chosen are marked. */
    private List<LimitCheck> sizing(List<LimitCheck> limits, boolean speedChosen, boolean setsGas) {
        return limits.stream()
                .map(limit -> chosen(limit.kind(), speedChosen, setsGas) ? limit.asSizing() : limit)
                .toList();
    }

    private boolean chosen(LimitKind kind, boolean speedChosen, boolean setsGas) {
        return switch (kind.sets()) {
            case NOTHING -> false;
            case GAS_TEMPERATURE -> setsGas;
            case SPEED -> speedChosen;
            case WHEEL ->
                concept.turbines().values().stream()
                        .noneMatch(t -> t.design().meanDiameter().isPresent());
            case BEARINGS -> true;
        };
    }

    private boolean setsGas(TurbinePlace turbine) {
        return concept.burners().entrySet().stream()
                .anyMatch(e -> e.getValue().asHotAsTurbine() && concept.drives(e.getKey(), turbine));
    }

    private void collectWarnings(List<JacketResult> jackets) {
        if (!sonicAgainst(Constants.STANDARD_ATMOSPHERE)) {
            warnings.add(new Warning(
                            "engine",
                            "the throat is not sonic against one atmosphere; sea-level thrust is given as zero")
                    .asAside());
        }
        if (concept.chambers() > 1) {
            warnings.add(new Warning(
                            "engine",
                            "throat, exit, chamber, losses and jackets are those of one of "
                                    + concept.chambers()
                                    + " equal chambers; thrust, flows, stations and masses are those of the whole engine")
                    .asAside());
        }
        KeptStages.of(balanceModels.choices(), pumps.keySet(), turbines.keySet())
                .ifPresent(warnings::add);
        chamber.warnings().forEach(w -> warnings.add(w.asAside()));
        warnings.addAll(sheet.warnings());
        sheet.gases().values().forEach(gas -> warnings.addAll(gas.warnings()));
        jackets.forEach(j -> warnings.addAll(j.warnings()));
        pumps.values().forEach(pump -> warnings.addAll(pump.warnings()));
        turbines.values().forEach(turbine -> warnings.addAll(turbine.warnings()));
        shafts.values().forEach(s -> warnings.addAll(s.warnings()));
        for (Stream exhaust : sheet.exhaustStreams()) {
            if (exhaust.pressure() < 2 * Constants.STANDARD_ATMOSPHERE) {
                warnings.add(new Warning(
                                "exhaust",
                                String.format(
                                        Locale.ROOT,
                                        "turbine exhaust has %.3g MPa, too little to leave a nozzle at sonic speed at sea level; "
                                                + "lower the turbine pressure ratio for use near the ground",
                                        exhaust.pressure() / 1e6))
                        .asAside());
            }
        }
    }
}
