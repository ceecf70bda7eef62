package dev.penstock.cycles.reading;

import dev.penstock.chamber.design.AltitudeCompensation;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.cooling.design.JacketInputs;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ConceptDocument;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.DesignLimits;
import dev.penstock.cycles.concept.ElectricDesign;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.cycles.concept.FeedDesign;
import dev.penstock.cycles.concept.PressurizationDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.ThrustTarget;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.UsualFluids;
import dev.penstock.input.DataFolder;
import dev.penstock.input.Input;
import dev.penstock.input.InputFile;
import dev.penstock.input.InputGroup;
import dev.penstock.input.InputTable;
import dev.penstock.input.InputValue;
import dev.penstock.input.Spelling;
import dev.penstock.input.Usual;
import dev.penstock.turbomachinery.mass.MassFactors;
import dev.penstock.turbomachinery.mass.MassPart;
import dev.penstock.turbomachinery.metal.AlloyLibrary;
import dev.penstock.turbomachinery.metal.MetalDesign;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * Reads a concept file. Everything that is wrong with it is reported together, with line, key, value and what is allowed.
 * The table {@code [vehicle]} belongs to whoever sizes the vehicle and is handed on unread.
 */
public final class ConceptReader {

    /** Dotted key of what dumped turbine gas may cost. */
    public static final String EXHAUST_LOSS =
            ConceptTables.LIMITS.of(EngineInputs.EXHAUST_LOSS_LIMIT).path();

    /** Left to whoever sizes the vehicle. */
    private static final InputGroup VEHICLE = InputGroup.table("vehicle", "The vehicle that the engine drives");

    /** What a concept of a cycle may hold, made when one is read: those of all cycles take longer than a short answer has. */
    private static final Map<Cycle, InputGroup> DECLARED = new ConcurrentHashMap<>();

    private static final InputGroup ANY_CYCLE = ConceptInputs.ofAll(VEHICLE);

    private final FluidLibrary fluids;
    private volatile AlloyLibrary alloys;

    /** @param fluids where propellants are looked up */
    public ConceptReader(FluidLibrary fluids) {
        this.fluids = fluids;
    }

    /** @return where propellants are looked up */
    public FluidLibrary fluids() {
        return fluids;
    }

    /**
     * @param file concept file
     * @return the concept
     * @throws InvalidInput if anything in it cannot be used
     */
    public Concept read(Path file) {
        return read(file, Map.of());
    }

    /**
     * @param file concept file
     * @param changes values by dotted path that replace or add to what the file says
     * @return the concept
     * @throws InvalidInput if anything in it cannot be used
     */
    public Concept read(Path file, Map<String, String> changes) {
        return read(InputFile.read(file, changes), changes);
    }

    /**
     * @param name what to call the text in messages
     * @param text text of a concept file
     * @param changes values by dotted path that replace or add to what the text says
     * @return the concept
     * @throws InvalidInput if anything in it cannot be used
     */
    public Concept parse(String name, String text, Map<String, String> changes) {
        return read(InputFile.parse(name, text, changes), changes);
    }

    /**
     * @param file a concept file, read without changes; it may be shared between threads
     * @param changes values by dotted path that replace or add to what the file says
     * @return the concept
     * @throws InvalidInput if anything in it cannot be used
     */
    public Concept parse(InputFile file, Map<String, String> changes) {
        return read(file.with(changes), changes);
    }

    /**
     * Reads the concept's own text again with other values, as a study does.
     *
     * @param concept a concept
     * @param changes values by dotted path, on top of those the concept was read with
     * @return the changed concept
     * @throws InvalidInput if a change cannot be used
     */
    public Concept reread(Concept concept, Map<String, String> changes) {
        Map<String, String> all = new LinkedHashMap<>(concept.document().changes());
        // What is changed last counts last.
        changes.keySet().forEach(all::remove);
        all.putAll(changes);
        return parse(concept.document().file(), concept.document().text(), all);
    }

    /**
     * Reads the concept's own text again with another cycle: propellants, thrust, chamber, nozzle, feeds and pumps stay;
     * what belongs to burners, turbines, shafts and exhaust takes the defaults of the other cycle. A cycle that lives on
     * the jacket's heat gets a jacket with the fuel if the concept has none, and one with the oxidizer behind it if that drives
     * a turbine too.
     *
     * @param concept a concept
     * @param cycle another cycle
     * @return the concept with that cycle
     * @throws InvalidInput if what stays does not suit the other cycle
     */
    public Concept withCycle(Concept concept, Cycle cycle) {
        Set<String> dropped = new LinkedHashSet<>(ConceptInputs.ofOneCycle(VEHICLE));
        if (!concept.cycle().traits().pumped()) {
            dropped.addAll(ConceptInputs.ofPressureFeed());
        }
        Map<String, String> changes = new LinkedHashMap<>();
        concept.document().changes().forEach((key, value) -> {
            if (dropped.stream().noneMatch(d -> key.equals(d) || key.startsWith(d + "."))) {
                changes.put(key, value);
            }
        });
        changes.put(ConceptInputs.CYCLE.key(), cycle.id());
        changes.putAll(jacketsFor(concept, cycle));
        String text = InputFile.without(concept.document().text(), dropped);
        return parse(concept.document().file(), text, changes);
    }

    /** The jackets that a cycle lives on and a concept lacks. */
    static Map<String, String> jacketsFor(Concept concept, Cycle cycle) {
        Map<String, String> changes = new LinkedHashMap<>();
        if (cycle.traits().livesOnJacketHeat() && !concept.cooledBy(Side.FUEL)) {
            changes.put(ConceptTables.COOLING.of(ConceptInputs.COOLANT).path(), Side.FUEL.key());
        }
        if (cycle.traits().heated().contains(Side.OXIDIZER) && !concept.cooledBy(Side.OXIDIZER)) {
            changes.putAll(oxidizerBehind(concept, cycle));
        }
        return changes;
    }

    /** What a concept of a cycle may hold. */
    static InputGroup declared(Cycle cycle) {
        return DECLARED.computeIfAbsent(cycle, c -> ConceptInputs.of(c, VEHICLE));
    }

    /** A jacket of the oxidizer behind that of the fuel, up to where the wall was cooled before. */
    private static Map<String, String> oxidizerBehind(Concept concept, Cycle cycle) {
        OptionalDouble end = concept.cooling().stream()
                .map(circuit -> circuit.jacket().route().endAreaRatio())
                .reduce(OptionalDouble.empty(), (before, last) -> last);
        String ending = JacketInputs.END_AREA_RATIO.key();
        String circuit = String.format(
                        Locale.ROOT,
                        "%s = %s, %s = \"%s\"",
                        ConceptInputs.CIRCUIT_NAME.key(),
                        ConceptInputs.CIRCUIT_NAME.example(),
                        ConceptInputs.CIRCUIT_COOLANT.key(),
                        Side.OXIDIZER.key())
                + (end.isPresent() ? ", " + ending + " = " + end.getAsDouble() : "");
        return Map.of(
                ConceptTables.COOLING.of(JacketInputs.END_AREA_RATIO).path(),
                Double.toString(cycle.example().oxidizerFrom().orElseThrow()),
                ConceptTables.COOLING.in(ConceptInputs.CIRCUITS).path(),
                "[{" + circuit + "}]");
    }

    private Concept read(InputFile file, Map<String, String> changes) {
        InputTable root = file.root().as(ANY_CYCLE);
        InputTable sourceTable = root.table(ConceptInputs.SOURCES);
        file.sources(sourceTable, "", "concept file, no source given");
        InputTable uncertainty = root.table(ConceptInputs.UNCERTAINTY);
        String name = root.read(ConceptInputs.NAME);
        String description = root.read(ConceptInputs.DESCRIPTION);
        String id = root.read(ConceptInputs.CYCLE);
        Cycle cycle =
                Cycle.all().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
        root.as(declared(cycle)).leave(VEHICLE.key());
        FeedKeys feeds = new FeedKeys(fluids);
        Optional<Propellant> oxidizer = feeds.propellant(root, Side.OXIDIZER);
        Optional<Propellant> fuel = feeds.propellant(root, Side.FUEL);
        // A usual propellant stands in for one that could not be read, so that the rest of the file is checked too; the
        // problem noted for it keeps the concept from being built.
        Head head = new Head(
                name,
                description,
                cycle,
                oxidizer.orElseGet(() -> fluids.propellant(UsualFluids.oxidizer())),
                fuel.orElseGet(() -> fluids.propellant(UsualFluids.fuel())));
        file.defaults(TechnologyDefaults.of(Technology.of(root.read(ConceptInputs.TECHNOLOGY)), head.fuel()));
        List<InputValue> inputs = new ArrayList<>();
        Supplier<Concept> concept =
                rest(root, feeds, head, () -> new ConceptDocument(file.name(), file.text(), changes, inputs));
        inputs.addAll(ConceptUncertainty.read(uncertainty, changes.keySet(), file.inputs()));
        checkKeys(sourceTable, inputs);
        checkKeys(uncertainty, inputs);
        file.finish();
        try {
            return concept.get();
        } catch (OutsideValidity e) {
            throw new InvalidInput(
                    file.name(), e.model() + ", " + e.quantity(), Double.toString(e.value()), e.getMessage());
        }
    }

    /** What must be known before the rest can be read. */
    private record Head(String name, String description, Cycle cycle, Propellant oxidizer, Propellant fuel) {}

    private Supplier<Concept> rest(InputTable root, FeedKeys feeds, Head head, Supplier<ConceptDocument> document) {
        CycleTraits traits = head.cycle().traits();
        double ratio = root.at(ConceptTables.PROPELLANTS).read(EngineInputs.MIXTURE_RATIO);
        Optional<ThrustTarget> thrust = thrust(root.at(ConceptTables.ENGINE));
        double pressure = root.at(ConceptTables.ENGINE).read(EngineInputs.CHAMBER_PRESSURE);
        CoolingKeys.WallShield shield = CoolingKeys.shield(root);
        AltitudeCompensation compensation = ChamberKeys.compensation(root);
        Supplier<ChamberDesign> chamber = ChamberKeys.read(
                root,
                pressure,
                thrust,
                new UsualLength(head.oxidizer(), head.fuel(), ratio),
                UsualInjector.of(root, traits, head.fuel()),
                shield,
                compensation);
        Supplier<FeedDesign> oxidizerFeed = feeds.read(root, Side.OXIDIZER, head.oxidizer(), traits);
        Supplier<FeedDesign> fuelFeed = feeds.read(root, Side.FUEL, head.fuel(), traits);
        OptionalDouble exhaustInto = GasKeys.exhaustInto(root, traits);
        Supplier<CoolingKeys.Wall> cooling =
                CoolingKeys.read(root, traits, pressure, new CoolingKeys.Behind(exhaustInto, compensation.parting()));
        GasKeys gas = new GasKeys(root, fluids, traits, head.oxidizer(), head.fuel(), exhaustInto);
        Supplier<Optional<ElectricDesign>> electric = ElectricKeys.read(root, traits);
        Supplier<DesignLimits> limits = limits(root.at(ConceptTables.LIMITS), traits);
        Supplier<Optional<PressurizationDesign>> pressurization =
                PressurizationKeys.read(root, fluids, traits, head.oxidizer(), head.fuel());
        Supplier<MassFactors> mass = mass(root.table(MassPart.group()));
        Supplier<MetalDesign> metals = MetalKeys.read(root, alloys(), head.fuel());
        return () -> {
            ConceptDocument text = document.get();
            return new Concept(
                    text,
                    head.name(),
                    head.description(),
                    head.cycle(),
                    oxidizerFeed.get(),
                    fuelFeed.get(),
                    ratio,
                    thrust.orElseThrow(),
                    UsualInjector.withLosses(chamber.get(), oxidizerFeed.get(), fuelFeed.get()),
                    cooling.get().circuits(),
                    cooling.get().uncooled(),
                    gas.burners(),
                    gas.turbines(),
                    gas.shafts(),
                    gas.path(),
                    electric.get(),
                    limits.get(),
                    mass.get(),
                    metals.get(),
                    pressurization.get(),
                    new Again(this, text));
        };
    }

    /** Read when a concept is first read, then kept. */
    private AlloyLibrary alloys() {
        AlloyLibrary held = alloys;
        if (held == null) {
            held = AlloyLibrary.load(DataFolder.metals(fluids.home()));
            alloys = held;
        }
        return held;
    }

    /** Two are the same if reader and text are. */
    private record Again(ConceptReader reader, ConceptDocument text) implements Concept.AtPressure {

        @Override
        public Concept at(double pressure) {
            return reader.again(text, pressure);
        }
    }

    /** The concept read again with another chamber pressure, so that whatever follows the pressure does follow. */
    private Concept again(ConceptDocument document, double pressure) {
        Map<String, String> changes = new LinkedHashMap<>(document.changes());
        changes.put(ChamberKeys.PRESSURE, pressure + " Pa");
        try {
            return parse(document.file(), document.text(), changes);
        } catch (InvalidInput e) {
            InvalidInput.Problem problem = e.problems().get(0);
            throw new LimitReached(
                    problem.key(),
                    String.format(
                            Locale.ROOT, "at a chamber pressure of %.4g MPa %s", pressure / 1e6, problem.sentence()));
        }
    }

    private static Optional<ThrustTarget> thrust(InputTable keys) {
        int chambers = keys.read(EngineInputs.CHAMBERS);
        List<ThrustTarget.Kind> given = new ArrayList<>();
        Map<ThrustTarget.Kind, Double> values = new LinkedHashMap<>();
        for (ThrustTarget.Kind kind : ThrustTarget.Kind.values()) {
            OptionalDouble value = keys.number(kind.input());
            if (keys.has(kind.key())) {
                given.add(kind);
                value.ifPresent(v -> values.put(kind, v));
            }
        }
        if (given.size() != 1) {
            String found = given.isEmpty()
                    ? "missing"
                    : "given together with "
                            + given.stream().skip(1).map(ThrustTarget.Kind::key).toList();
            keys.problem(
                    ThrustTarget.Kind.VACUUM_THRUST.input(),
                    found,
                    "write exactly one of thrust_vacuum, thrust_sea_level and throat_diameter");
        }
        return given.size() == 1 && values.containsKey(given.get(0))
                ? Optional.of(new ThrustTarget(given.get(0), values.get(given.get(0)), chambers))
                : Optional.empty();
    }

    private static Supplier<DesignLimits> limits(InputTable keys, CycleTraits traits) {
        double discharge = traits.pumped()
                ? keys.read(EngineInputs.DISCHARGE_PRESSURE_LIMIT)
                : EngineInputs.DISCHARGE_PRESSURE_LIMIT.standing().value();
        double tank = traits.pumped()
                ? EngineInputs.TANK_PRESSURE_LIMIT.standing().value()
                : keys.read(EngineInputs.TANK_PRESSURE_LIMIT);
        double exhaust = traits.dumps()
                ? keys.read(EngineInputs.EXHAUST_LOSS_LIMIT)
                : EngineInputs.EXHAUST_LOSS_LIMIT.standing().value();
        String exhaustSource = sourceOf(keys, EngineInputs.EXHAUST_LOSS_LIMIT);
        String dischargeSource = sourceOf(keys, EngineInputs.DISCHARGE_PRESSURE_LIMIT);
        String tankSource = sourceOf(keys, EngineInputs.TANK_PRESSURE_LIMIT);
        return () -> new DesignLimits(discharge, dischargeSource, tank, tankSource, exhaust, exhaustSource);
    }

    /** Factors on the masses of parts, for who knows a part better than the model. */
    private static Supplier<MassFactors> mass(InputTable keys) {
        Map<MassPart, Double> factors = new LinkedHashMap<>();
        for (MassPart part : MassPart.scaled()) {
            factors.put(part, keys.read(part.factor()));
        }
        return () -> new MassFactors(factors);
    }

    private static String sourceOf(InputTable keys, Input<Double> limit) {
        return keys.has(limit)
                ? "concept file, " + ConceptTables.LIMITS.of(limit).path()
                : Usual.COMMON;
    }

    private static void checkKeys(InputTable table, List<InputValue> inputs) {
        for (String key : table.keys()) {
            table.leave(key);
            boolean known = key.startsWith("vehicle")
                    || inputs.stream()
                            .anyMatch(i -> i.key().equals(key) || i.key().startsWith(key + "."));
            if (!known) {
                String near = inputs.stream()
                        .map(InputValue::key)
                        .min(Comparator.comparingInt(k -> Spelling.distance(k, key)))
                        .orElse("");
                table.problem('"' + key + '"', "not an input of this concept", "did you mean \"" + near + "\"?");
            }
        }
    }
}
