package dev.penstock.cycles.trail;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.loss.LossFigures;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.CoolingCircuit;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.ThrustTarget;
import dev.penstock.cycles.origin.InputPaths;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.origin.PartPlace;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EnergyAudit;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.ExhaustJet;
import dev.penstock.cycles.sheet.StationRecorder;
import dev.penstock.input.TableKey;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.LimitKind;
import dev.penstock.provenance.Place;
import dev.penstock.provenance.Place.Role;
import dev.penstock.provenance.Trail;
import dev.penstock.turbomachinery.mass.MassFigures;
import dev.penstock.turbomachinery.mass.MassItem;
import dev.penstock.turbomachinery.mass.MassPart;
import dev.penstock.turbomachinery.pump.PumpFigures;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import dev.penstock.turbomachinery.shaft.ShaftFigures;
import dev.penstock.turbomachinery.turbine.TurbineFigures;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is around each part of a balanced engine: its stations, its shaft, its tables of the concept. The arrangement wrote
 * down where its parts stand, so a new cycle needs nothing here.
 */
final class EnginePlaces {

    private static final List<TableKey> SHAPE = List.of(
            ConceptTables.NOZZLE,
            ConceptTables.CHAMBER,
            ConceptTables.EFFICIENCIES,
            ConceptTables.FILM,
            ConceptTables.OUTER_ZONE);
    private static final List<TableKey> COOLED =
            List.of(ConceptTables.COOLING, ConceptTables.CHAMBER, ConceptTables.NOZZLE);

    private static final String SEA_LEVEL = "constants.standard_atmosphere_Pa";

    private final EngineBalance balance;
    private final InputPaths inputs;

    EnginePlaces(EngineBalance balance) {
        this.balance = balance;
        this.inputs = new InputPaths(balance.concept());
    }

    /** Place of the engine as a whole, with every input of the concept. */
    static Place of(EngineBalance balance) {
        EnginePlaces places = new EnginePlaces(balance);
        return Place.at("")
                .with(Role.GIVEN, places.inputs.all())
                .with(Role.GAS, stations(places.component(PartKind.CHAMBER).outlets()))
                .with(Role.SHAFT, shafts(balance))
                .with(Role.TANKS, List.of(places.tank(Side.OXIDIZER), places.tank(Side.FUEL)));
    }

    /** Flows into the main chamber. */
    List<String> chamberFlows() {
        return component(PartKind.CHAMBER).inlets().stream()
                .map(number -> StationRecorder.at(number) + ".mass_flow_kg_s")
                .toList();
    }

    /** Station behind a tank. */
    String tank(Side side) {
        return StationRecorder.at(balance.tankOutlet(side).number());
    }

    /** Thrust of the chamber, and how many there are where there are several. */
    static List<String> chamberThrust(EngineBalance balance) {
        List<String> paths = new ArrayList<>(List.of("chamber.vacuum_thrust_N"));
        paths.addAll(severalChambers(balance));
        return paths;
    }

    private static List<String> severalChambers(EngineBalance balance) {
        return balance.concept().chambers() == 1
                ? List.of()
                : new InputPaths(balance.concept()).of(ConceptTables.ENGINE.of(EngineInputs.CHAMBERS));
    }

    /** Thrust of every jet of dumped gas. */
    static List<String> jets(EngineBalance balance) {
        return EngineFigures.EXHAUSTS.paths("exhausts", balance.exhausts(), "vacuum_thrust_N");
    }

    /** The enthalpy at every station. */
    static List<String> enthalpies(EngineBalance balance) {
        return EngineFigures.STATIONS.paths("stations", balance.stations(), "enthalpy_J_kg");
    }

    // ---- parts

    static Place pump(EngineBalance balance, PumpSizing pump, Place at) {
        return new EnginePlaces(balance).between(pump.name(), at);
    }

    static Place turbine(EngineBalance balance, TurbineSizing turbine, Place at) {
        return new EnginePlaces(balance).between(turbine.name(), at);
    }

    private Place between(String machine, Place at) {
        PartPlace place = place(machine);
        return at.with(Role.INLET, stations(place.inlets()))
                .with(Role.OUTLET, stations(place.outlets()))
                .with(Role.GIVEN, tables(place));
    }

    static Place shaft(EngineBalance balance, ShaftBalance shaft, Place at) {
        EnginePlaces places = new EnginePlaces(balance);
        return at.with(Role.GIVEN, places.tables(places.place(shaft.name())))
                .with(Role.PUMPS, PumpFigures.ALL.paths("pumps", shaft.pumps()))
                .with(Role.TURBINES, TurbineFigures.ALL.paths("turbines", shaft.turbines()));
    }

    /** A thrust chamber has either its throat given, or what it must thrust; dumped gas gives part of the thrust. */
    static Place chamber(EngineBalance balance, ChamberPerformance chamber, Place at) {
        InputPaths inputs = new EnginePlaces(balance).inputs;
        Place here = shaped(at, inputs, SHAPE);
        ThrustTarget.Kind kind = balance.concept().thrust().kind();
        List<String> asked = inputs.of(ConceptTables.ENGINE.of(kind.input()));
        if (kind == ThrustTarget.Kind.THROAT_DIAMETER) {
            return here.with(Role.THROAT, asked);
        }
        List<String> thrust = new ArrayList<>(asked);
        thrust.addAll(severalChambers(balance));
        thrust.addAll(jets(balance));
        if (kind == ThrustTarget.Kind.SEA_LEVEL_THRUST) {
            thrust.addAll(List.of(SEA_LEVEL, at.own("thrust_coefficient_vacuum"), at.own("area_ratio")));
            thrust.addAll(inputs.of(ConceptTables.ENGINE.of(EngineInputs.CHAMBER_PRESSURE)));
        }
        return here.with(Role.THRUST, thrust);
    }

    private static Place shaped(Place at, InputPaths inputs, List<TableKey> tables) {
        List<String> shape = new ArrayList<>();
        for (TableKey table : tables) {
            shape.addAll(inputs.table(table));
        }
        return at.with(Role.GIVEN, shape);
    }

    /** Each loss starts from the one before it, the first from the ideal impulse. */
    static Place loss(EngineBalance balance, NamedLoss loss, Place at) {
        List<NamedLoss> losses = balance.chamber().losses();
        int index = losses.indexOf(loss);
        String before = index == 0
                ? "chamber.ideal_vacuum_impulse_m_s"
                : LossFigures.ALL.paths("losses", losses, "factor").get(index - 1);
        return shaped(at, new EnginePlaces(balance).inputs, SHAPE).with(Role.BEFORE, List.of(before));
    }

    /** What dumped gas costs. */
    static Place engineLoss(EngineBalance balance, NamedLoss loss, Place at) {
        List<String> before = new ArrayList<>(List.of("chamber.vacuum_impulse_m_s"));
        before.addAll(jets(balance));
        return at.with(Role.GIVEN, List.of()).with(Role.BEFORE, before);
    }

    static Place jacket(EngineBalance balance, JacketResult jacket, Place at) {
        return shaped(at, new EnginePlaces(balance).inputs, COOLED)
                .with(
                        Role.INLET,
                        balance.components().stream()
                                .filter(component -> component.key().equals(PartKey.jacket(jacket.circuit())))
                                .flatMap(component -> component.inlets().stream())
                                .map(StationRecorder::at)
                                .toList());
    }

    static Place exhaust(EngineBalance balance, ExhaustJet jet, Place at) {
        EnginePlaces places = new EnginePlaces(balance);
        TableKey table = balance.concept().cooling().stream()
                .map(CoolingCircuit::key)
                .filter(circuit -> PartKey.dump(circuit).equals(jet.part()))
                .findFirst()
                .map(circuit -> ConceptTables.dump(circuit))
                .orElse(ConceptTables.EXHAUST);
        return at.with(Role.GIVEN, places.inputs.table(table))
                .with(
                        Role.INLET,
                        balance.components().stream()
                                .filter(component -> component.key().equals(jet.part()))
                                .flatMap(component -> stations(component.inlets()).stream())
                                .toList());
    }

    /** A jacket takes up its heat; the chamber gives that of all of them. */
    static Place component(EngineBalance balance, Component component, Place at) {
        return at.with(Role.INLET, stations(component.inlets()))
                .with(Role.OUTLET, stations(component.outlets()))
                .with(
                        Role.JACKET,
                        balance.cooling().stream()
                                .filter(jacket -> component.kind() == PartKind.CHAMBER
                                        || component.key().equals(PartKey.jacket(jacket.circuit())))
                                .map(jacket -> jacket.circuit().path())
                                .toList());
    }

    /** A component is audited between its stations, the whole engine over all of them. */
    static Place audited(EngineBalance balance, EnergyAudit.Item item, Place at) {
        List<Integer> ends = balance.components().stream()
                .filter(component -> component.id().equals(item.component()))
                .flatMap(component -> Stream.concat(component.inlets().stream(), component.outlets().stream()))
                .toList();
        return at.with(
                Role.INLET,
                ends.isEmpty() ? EngineFigures.STATIONS.paths("stations", balance.stations()) : stations(ends));
    }

    /** The station behind what an item belongs to, the shaft that it is, the parts that it adds to. */
    static Place mass(EngineBalance balance, MassItem item, Place at) {
        List<MassItem> items = balance.mass().items();
        Place here = at.with(
                Role.OUTLET,
                balance.components().stream()
                        .filter(component -> component.label().equals(item.owner()))
                        .limit(1)
                        .flatMap(component -> component.outlets().stream().limit(1))
                        .map(StationRecorder::at)
                        .toList());
        return item.part() == MassPart.TURBOPUMP
                ? here.with(Role.SHAFT, List.of("shafts." + Trail.slug(item.owner())))
                : here.with(
                        Role.BEFORE,
                        MassFigures.ITEMS
                                .paths("mass.items", items, "mass_kg")
                                .subList(0, Math.max(0, items.indexOf(item))));
    }

    /** A limit is made from figures of its part, or of its station where the part does not publish them. */
    static Place limit(EngineBalance balance, LimitCheck limit, Place at) {
        EnginePlaces places = new EnginePlaces(balance);
        Optional<PartPlace> place = balance.origins().place(limit.owner());
        LimitKind.Terms terms = limit.kind().terms();
        List<String> from = new ArrayList<>();
        for (String figure : terms.figures()) {
            String own = limit.kind().path(limit.owner()) + "." + figure;
            from.add(
                    EngineFigures.ALL.at(own).isPresent()
                            ? own
                            : StationRecorder.at(place.orElseThrow().outlets().get(0)) + "." + figure);
        }
        List<String> bounds = new ArrayList<>(places.inputs.of(terms.bounds().toArray(String[]::new)));
        place.ifPresent(part -> part.tables().forEach(table -> {
            from.addAll(places.inputs.in(table, terms.inputs()));
            bounds.addAll(places.inputs.in(table, terms.bounds()));
        }));
        return at.with(Role.BEFORE, from).with(Role.BOUND, bounds);
    }

    // ---- paths

    private static List<String> stations(List<Integer> numbers) {
        return numbers.stream().map(StationRecorder::at).toList();
    }

    private static List<String> shafts(EngineBalance balance) {
        return ShaftFigures.ALL.paths("shafts", balance.shafts());
    }

    private Component component(PartKind kind) {
        return balance.components().stream()
                .filter(component -> component.kind() == kind)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no " + kind));
    }

    private PartPlace place(String part) {
        return balance.origins().place(part).orElseThrow(() -> new IllegalStateException("no place of the " + part));
    }

    private List<String> tables(PartPlace place) {
        List<String> paths = new ArrayList<>();
        place.tables().forEach(table -> paths.addAll(inputs.table(table)));
        return paths;
    }
}
