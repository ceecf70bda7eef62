package dev.penstock.cycles.reading;

import dev.penstock.chamber.design.ChamberInputs;
import dev.penstock.cooling.design.DumpInputs;
import dev.penstock.cooling.design.JacketInputs;
import dev.penstock.cooling.wall.WallInputs;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.cycles.concept.FeedInputs;
import dev.penstock.cycles.concept.GasInputs;
import dev.penstock.cycles.concept.ShaftDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.ThrustTarget;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.InputKind;
import dev.penstock.input.TableKey;
import dev.penstock.input.Usual;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.turbomachinery.electric.ElectricDrive;
import dev.penstock.turbomachinery.mass.MassPart;
import dev.penstock.turbomachinery.metal.MetalPart;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Every input of a concept file, table by table, as far as a cycle has a use for it. */
public final class ConceptInputs {

    static final Input<String> NAME = Input.text("name", "Name of the engine").example("\"New engine\"");
    static final Input<String> DESCRIPTION =
            Input.text("description", "A sentence about it").usual(Usual.of("", "", ""));
    static final Input<String> CYCLE = Input.word(
                    "cycle", Cycle.all().stream().map(Cycle::id).toList(), "How the pumps are driven")
            .example("\"gas-generator\"");

    static final Input<String> TECHNOLOGY = Input.word(
                    ConceptTables.TECHNOLOGY,
                    Technology.words(),
                    "How the engine is built, from which defaults of walls, speeds and masses follow")
            .usual(Usual.of(Technology.UNSTATED.word(), Technology.UNSTATED.description(), ""));

    static final Input<String> COOLANT = Input.word(
                    "coolant", List.of("fuel", "oxidizer", "none"), "Propellant that cools")
            .usual(Usual.common("fuel"));
    /** Key of the tables of further cooling circuits. */
    static final String CIRCUITS = "circuits";

    static final Input<String> CIRCUIT_NAME =
            Input.text("name", "Name of the circuit in results").example("\"nozzle\"");
    static final Input<String> CIRCUIT_COOLANT = Input.word(
                    "coolant", List.of("fuel", "oxidizer"), "Propellant that cools")
            .example("\"oxidizer\"");

    static final Input<Double> BATTERY_BURN_TIME = Input.quantity(
                    "burn_time", Dimension.TIME, Range.of(1, 1e4), "Time that the battery has to last")
            .usual(Usual.common(150.0).because("a first stage"));

    static final InputGroup SOURCES = InputGroup.free(
            "sources", "Where values come from, by key or by table; shown in reports", new InputKind.Text());
    static final InputGroup UNCERTAINTY = InputGroup.free(
            "uncertainty",
            "How sure values are, by key: lowest, most likely, highest; sampled by a study of uncertainty",
            new InputKind.Bounds());

    private final Optional<CycleTraits> traits;

    private ConceptInputs(Optional<CycleTraits> traits) {
        this.traits = traits;
    }

    /**
     * @param cycle a cycle
     * @param vehicle what the table {@code [vehicle]} may hold; it belongs to whoever sizes the vehicle
     * @return every table and input that a concept of this cycle may have
     */
    public static InputGroup of(Cycle cycle, InputGroup vehicle) {
        return new ConceptInputs(Optional.of(cycle.traits())).top(vehicle);
    }

    /**
     * @param vehicle what the table {@code [vehicle]} may hold
     * @return every table and input that a concept of any cycle may have
     */
    public static InputGroup ofAll(InputGroup vehicle) {
        return new ConceptInputs(Optional.empty()).top(vehicle);
    }

    private boolean with(Predicate<CycleTraits> trait) {
        return traits.map(trait::test).orElse(true);
    }

    private InputGroup top(InputGroup vehicle) {
        List<InputGroup> groups = new ArrayList<>(List.of(propellants(), engine()));
        groups.add(ChamberInputs.NOZZLE);
        groups.add(ChamberInputs.CHAMBER);
        groups.add(ChamberInputs.EFFICIENCIES);
        groups.add(bySide(ConceptTables.TANKS, "Tanks", FeedInputs::tank));
        groups.add(lines());
        groups.add(injector());
        if (with(CycleTraits::pumped)) {
            groups.add(bySide(ConceptTables.PUMPS, "Pumps", FeedInputs::pump));
            groups.add(bySide(
                    ConceptTables.BOOST_PUMPS, "Boost pumps are there if their tables are", FeedInputs::boostPump));
        }
        groups.add(cooling());
        groups.addAll(drive());
        groups.add(limits());
        if (with(t -> !t.pumped())) {
            groups.add(PressurizationInputs.group());
        }
        groups.add(MassPart.group());
        groups.add(InputGroup.table(ConceptTables.METALS.key(), "Metals of parts that meet oxygen or hydrogen")
                .with(
                        MetalPart.group(Side.OXIDIZER.key(), "the oxidizer and gas rich in it"),
                        MetalPart.group(Side.FUEL.key(), "the fuel and gas rich in it")));
        groups.add(vehicle);
        groups.addAll(List.of(SOURCES, UNCERTAINTY));
        return InputGroup.table("", "A rocket engine", NAME, DESCRIPTION, CYCLE, TECHNOLOGY)
                .with(groups.toArray(InputGroup[]::new));
    }

    /** What drives the pumps: tables that mean nothing, or something else, to another cycle. */
    private List<InputGroup> drive() {
        List<InputGroup> groups = new ArrayList<>();
        if (with(CycleTraits::pumped)) {
            groups.add(GasInputs.shafts());
        }
        if (with(CycleTraits::turbines)) {
            groups.add(
                    InputGroup.table(ConceptTables.TURBINES.key(), "Turbines").with(turbines()));
        }
        groups.addAll(burners());
        if (with(CycleTraits::livesOnJacketHeat)) {
            groups.add(expander());
        }
        if (with(CycleTraits::dumps)) {
            groups.add(GasInputs.exhaust());
        }
        if (with(t -> t.closure() == CycleTraits.Closure.MOTOR_POWER)) {
            groups.add(ElectricDrive.GROUP.and(BATTERY_BURN_TIME));
        }
        return groups;
    }

    /**
     * @param vehicle what the table {@code [vehicle]} may hold
     * @return keys of tables and inputs that mean nothing, or something else, to a concept of another cycle
     */
    static Set<String> ofOneCycle(InputGroup vehicle) {
        Set<String> keys = new LinkedHashSet<>(List.of(CYCLE.key()));
        Stream.concat(new ConceptInputs(Optional.empty()).drive().stream(), Stream.of(SOURCES, UNCERTAINTY, vehicle))
                .forEach(group -> keys.add(group.key()));
        keys.add(ConceptTables.INJECTOR.of(GasInputs.GAS_INJECTOR_LOSS).path());
        return keys;
    }

    /** @return keys of tables in which a pressure-fed concept says of its tanks what does not suit pumps */
    static Set<String> ofPressureFeed() {
        return Set.of(
                ConceptTables.TANKS.key(),
                ConceptTables.LIMITS.key(),
                PressurizationInputs.group().key());
    }

    private static InputGroup bySide(
            TableKey key, String title, java.util.function.Function<FeedInputs, InputGroup> table) {
        return InputGroup.table(key.key(), title)
                .with(table.apply(new FeedInputs(Side.OXIDIZER)), table.apply(new FeedInputs(Side.FUEL)));
    }

    private static InputGroup propellants() {
        FeedInputs oxidizer = new FeedInputs(Side.OXIDIZER);
        FeedInputs fuel = new FeedInputs(Side.FUEL);
        return InputGroup.table(
                ConceptTables.PROPELLANTS.key(),
                "Propellants",
                oxidizer.propellant(),
                fuel.propellant(),
                EngineInputs.MIXTURE_RATIO,
                oxidizer.loading(),
                fuel.loading());
    }

    private static InputGroup engine() {
        return InputGroup.table(
                        ConceptTables.ENGINE.key(),
                        "Size of the engine: exactly one of a thrust and the throat diameter")
                .and(Arrays.stream(ThrustTarget.Kind.values())
                        .map(ThrustTarget.Kind::input)
                        .toArray(Input<?>[]::new))
                .and(EngineInputs.CHAMBER_PRESSURE, EngineInputs.CHAMBERS);
    }

    private InputGroup lines() {
        InputGroup group = InputGroup.table(ConceptTables.LINES.key(), "Losses of pressure in lines and valves");
        for (Side side : Side.values()) {
            FeedInputs feed = new FeedInputs(side);
            group = group.and(feed.suctionLoss(), feed.dischargeLoss(), feed.valveLoss());
        }
        return with(CycleTraits::turbines) ? group.and(GasInputs.HOT_GAS_LOSS) : group;
    }

    private InputGroup injector() {
        InputGroup group = InputGroup.table(
                ConceptTables.INJECTOR.key(),
                "Losses of pressure in the injector",
                new FeedInputs(Side.OXIDIZER).injectorLoss(),
                new FeedInputs(Side.FUEL).injectorLoss());
        return with(CycleTraits::gasInjector) ? group.and(GasInputs.GAS_INJECTOR_LOSS) : group;
    }

    /** Further circuits: what belongs to the wall as a whole stands in {@code [cooling]}. */
    private static InputGroup circuits() {
        return new InputGroup(
                CIRCUITS,
                "A further cooling circuit; it begins where the one before it ends",
                InputGroup.Presence.REPEATED,
                Stream.concat(
                                Stream.of(CIRCUIT_NAME, CIRCUIT_COOLANT, EngineInputs.FLOW_FRACTION),
                                JacketInputs.OF_ONE_CIRCUIT.stream())
                        .toList(),
                List.of(WallInputs.COATING, JacketInputs.SECTIONS, JacketInputs.LIMITS, DumpInputs.GROUP),
                Optional.empty());
    }

    private static InputGroup cooling() {
        return new InputGroup(
                        ConceptTables.COOLING.key(),
                        "A cooling jacket; without this table the chamber is not cooled",
                        InputGroup.Presence.IF_WRITTEN,
                        Stream.concat(
                                        Stream.of(COOLANT, EngineInputs.FLOW_FRACTION),
                                        JacketInputs.GROUP.inputs().stream())
                                .toList(),
                        JacketInputs.GROUP.groups(),
                        Optional.empty())
                .with(circuits());
    }

    private InputGroup[] turbines() {
        List<InputGroup> groups = new ArrayList<>();
        for (TurbinePlace place : TurbinePlace.values()) {
            ShaftDesign.Arrangement two = ShaftDesign.Arrangement.DUAL;
            boolean there = with(t -> place == TurbinePlace.MAIN
                    ? t.arrangements().stream().anyMatch(a -> a != two)
                    : t.arrangements().contains(two));
            boolean ownRatio = with(
                    t -> t.closure() != CycleTraits.Closure.RATIO && (place != TurbinePlace.OXIDIZER || t.ownGas()));
            if (there) {
                groups.add(GasInputs.turbine(place, ownRatio));
            }
        }
        return groups.toArray(InputGroup[]::new);
    }

    /** A dotted key leads into a table that several burners share. */
    private List<InputGroup> burners() {
        Map<String, InputGroup> groups = new LinkedHashMap<>();
        for (Burner burner : Burner.values()) {
            if (!with(t -> t.burners().contains(burner))) {
                continue;
            }
            int dot = burner.key().indexOf('.');
            if (dot < 0) {
                groups.put(burner.key(), GasInputs.burner(burner.key(), burner));
            } else {
                groups.merge(
                        burner.key().substring(0, dot),
                        InputGroup.table(burner.key().substring(0, dot), "Preburners")
                                .with(GasInputs.burner(burner.key().substring(dot + 1), burner)),
                        (a, b) -> a.with(b.groups().toArray(InputGroup[]::new)));
            }
        }
        return List.copyOf(groups.values());
    }

    private InputGroup expander() {
        InputGroup group = InputGroup.table(ConceptTables.EXPANDER.key(), "Fuel that takes up the heat of the jacket");
        if (with(t -> t.heatedShare() < 1)) {
            group = group.and(GasInputs.HEATED_SHARE);
        }
        return with(t -> !t.dumps()) ? group.and(GasInputs.TURBINE_BYPASS) : group;
    }

    private InputGroup limits() {
        InputGroup group = InputGroup.table(ConceptTables.LIMITS.key(), "Limits of the hardware");
        if (with(CycleTraits::pumped)) {
            group = group.and(EngineInputs.DISCHARGE_PRESSURE_LIMIT);
        }
        if (with(t -> !t.pumped())) {
            group = group.and(EngineInputs.TANK_PRESSURE_LIMIT);
        }
        if (with(CycleTraits::dumps)) {
            group = group.and(EngineInputs.EXHAUST_LOSS_LIMIT);
        }
        return with(CycleTraits::turbines) ? group.and(EngineInputs.TURBINE_TEMPERATURE_LIMIT) : group;
    }
}
