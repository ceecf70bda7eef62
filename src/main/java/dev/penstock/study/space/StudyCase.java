package dev.penstock.study.space;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.Uncertainty;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.InputFile;
import dev.penstock.input.InputValue;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.VehicleRuns;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.reading.EngineChanges;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * A concept or a vehicle that a study evaluates at many points. Its files are read once, when it is opened; a point is what
 * they say with some values changed. No answer depends, in any bit, on what was asked before or on the thread. Immutable;
 * safe to share between threads.
 */
public final class StudyCase {

    private final EngineRuns runs;
    private final Path file;
    private final InputFile text;
    /** The engine of a concept; empty for a vehicle. */
    private final Optional<ConceptSource> concept;

    private final Map<String, String> changes;
    /** Engines of a vehicle in the order of its plan; empty for a concept. */
    private final List<ConceptSource> engines;

    /** The plan of a vehicle as its file has it; empty for a concept. */
    private final Optional<VehiclePlan> plan;

    private final String name;
    private final boolean ofVehicle;
    private final boolean withVehicle;
    /** Engines of which a study changes nothing, balanced once. */
    private final Map<String, EngineBalance> untouched = new ConcurrentHashMap<>();

    private StudyCase(EngineRuns runs, Path file, Map<String, String> changes) {
        this.runs = runs;
        this.file = file;
        this.text = InputFile.read(file);
        this.changes = Map.copyOf(changes);
        this.ofVehicle = !text.with(changes).root().has("cycle");
        if (ofVehicle) {
            VehiclePlan own = runs.vehicles().parse(file, text, changes);
            this.plan = Optional.of(own);
            this.concept = Optional.empty();
            this.engines = own.engineFiles().stream()
                    .map(path -> new ConceptSource(runs, path, InputFile.read(path), Map.of()))
                    .toList();
            this.name = own.name();
            this.withVehicle = true;
            EngineChanges.of(changes).check(engineNames());
        } else {
            ConceptSource own = new ConceptSource(runs, file, text, changes);
            this.plan = Optional.empty();
            this.concept = Optional.of(own);
            this.engines = List.of();
            this.name = own.name();
            this.withVehicle = runs.vehicles().of(own.base()).isPresent();
        }
    }

    /**
     * @param runs reads and balances concepts
     * @param file concept file or vehicle file
     * @param changes values by dotted path that replace or add to what it says, at every point
     * @return the case
     * @throws InvalidInput if the file, or one that it names, cannot be used
     */
    public static StudyCase open(EngineRuns runs, Path file, Map<String, String> changes) {
        return new StudyCase(runs, file, changes);
    }

    /** @return name for people */
    public String name() {
        return name;
    }

    /** @return its file */
    public Path file() {
        return file;
    }

    /** @return values that hold at every point, by dotted path */
    public Map<String, String> changes() {
        return changes;
    }

    /** @return all that its files and changes say, word for word */
    public String written() {
        StringBuilder all = new StringBuilder(text.text());
        engines.forEach(engine -> all.append('\n').append(engine.text()));
        new TreeMap<>(changes)
                .forEach((path, value) ->
                        all.append('\n').append(path).append('=').append(value));
        return all.toString();
    }

    /** @return whether it is a vehicle file; a concept otherwise */
    public boolean ofVehicle() {
        return ofVehicle;
    }

    /** @return whether a vehicle can be sized: of a vehicle file always, of a concept if it has such a table */
    public boolean withVehicle() {
        return withVehicle;
    }

    /** @return names of the engines of a vehicle; empty for a concept */
    public List<String> engineNames() {
        return engines.stream().map(ConceptSource::name).toList();
    }

    /** @return propellants of its engines as their files have them, each once */
    public List<Propellant> propellants() {
        return Stream.concat(concept.stream(), engines.stream())
                .map(ConceptSource::base)
                .flatMap(c -> Stream.of(c.oxidizer(), c.fuel()))
                .distinct()
                .toList();
    }

    /** @return reads what people write of inputs, figures and constraints of this case */
    public CasePaths paths() {
        return new CasePaths(this);
    }

    /**
     * @return inputs that are only known within bounds, by the path that a change has
     * @throws PenstockException if the case as it is most likely has no solution: some spreads are known then only
     */
    Map<String, InputValue> uncertain() {
        Map<String, InputValue> all = new LinkedHashMap<>();
        List<EngineBalance> balances = answer(Map.of(), false).engines();
        for (int i = 0; i < balances.size(); i++) {
            String before = ofVehicle ? EngineChanges.at(engines.get(i).name()) : "";
            Uncertainty.of(balances.get(i)).forEach((key, input) -> all.put(before + key, input));
        }
        plan.or(() -> concept.flatMap(own -> runs.vehicles().of(own.base()))).stream()
                .flatMap(own -> own.inputs().stream())
                .filter(said -> said.spread().isPresent())
                .forEach(said -> all.put(said.key(), said));
        return all;
    }

    /**
     * @param further values by dotted path, on top of those that hold at every point
     * @param sized whether the vehicle is wanted too
     * @return engines and vehicle there
     * @throws InvalidInput if a value cannot be used
     * @throws PenstockException if there is no solution
     */
    public CaseAnswer answer(Map<String, String> further, boolean sized) {
        return concept.map(own -> ofConcept(own, further, sized && withVehicle))
                .orElseGet(() -> ofEngines(with(further), sized));
    }

    private CaseAnswer ofConcept(ConceptSource own, Map<String, String> further, boolean sized) {
        EngineBalance balance = runs.study().balance(own.at(further));
        Optional<VehiclePlan> asked = sized ? runs.vehicles().of(balance.concept()) : Optional.empty();
        return new CaseAnswer(List.of(balance), asked.map(p -> VehicleRuns.size(p, balance)));
    }

    private CaseAnswer ofEngines(Map<String, String> all, boolean sized) {
        EngineChanges sorted = EngineChanges.of(all);
        Optional<VehiclePlan> asked = sized ? Optional.of(runs.vehicles().parse(file, text, all)) : Optional.empty();
        Map<Path, EngineBalance> balances = new LinkedHashMap<>();
        for (ConceptSource engine : engines) {
            Map<String, String> own = sorted.of(engine.name());
            balances.put(
                    engine.file(),
                    own.isEmpty()
                            ? untouched.computeIfAbsent(
                                    engine.name(), n -> runs.study().balance(engine.base()))
                            : runs.study().balance(engine.at(own)));
        }
        return new CaseAnswer(List.copyOf(balances.values()), asked.map(p -> VehicleRuns.size(p, balances)));
    }

    private Map<String, String> with(Map<String, String> further) {
        Map<String, String> all = new LinkedHashMap<>(changes);
        all.putAll(further);
        return all;
    }

    /**
     * Reads the case with other values, and does nothing with it.
     *
     * @param further values by dotted path, on top of those that hold at every point
     * @throws InvalidInput if a value cannot be used
     */
    void read(Map<String, String> further) {
        if (concept.isPresent()) {
            Concept read = concept.get().at(further);
            runs.vehicles().of(read);
            return;
        }
        EngineChanges sorted = EngineChanges.of(with(further));
        sorted.check(engineNames());
        runs.vehicles().parse(file, text, with(further));
        engines.forEach(engine -> engine.at(sorted.of(engine.name())));
    }

    /** @return what the files say of each input, by the path that a change has */
    public Map<String, InputValue> inputs() {
        Map<String, InputValue> all = new LinkedHashMap<>();
        concept.ifPresent(own -> own.base().document().inputs().forEach(said -> all.put(said.key(), said)));
        plan.ifPresent(own -> own.inputs().forEach(said -> all.put(said.key(), said)));
        for (ConceptSource engine : engines) {
            String at = EngineChanges.at(engine.name());
            engine.base().document().inputs().forEach(said -> all.put(at + said.key(), said));
        }
        return all;
    }

    /**
     * @param space inputs that vary
     * @return the values that the files themselves give them; empty if one of them has none between its ends
     */
    public Optional<double[]> own(StudySpace space) {
        double[] values = new double[space.size()];
        for (int i = 0; i < values.length; i++) {
            Variable variable = space.variables().get(i);
            OptionalDouble value =
                    input(variable.path()).map(said -> own(variable, said)).orElse(OptionalDouble.empty());
            if (value.isEmpty()) {
                return Optional.empty();
            }
            values[i] = value.getAsDouble();
        }
        return Optional.of(values);
    }

    private Optional<InputValue> input(String path) {
        if (concept.isPresent()) {
            return concept.get().input(path);
        }
        for (ConceptSource engine : engines) {
            String at = EngineChanges.at(engine.name());
            if (path.toLowerCase(Locale.ROOT).startsWith(at)) {
                return engine.input(path.substring(at.length()));
            }
        }
        return plan.stream()
                .flatMap(p -> p.inputs().stream())
                .filter(said -> said.key().equals(path))
                .findFirst();
    }

    private static OptionalDouble own(Variable variable, InputValue said) {
        if (variable instanceof Variable.Named named) {
            Object own = said.number().isPresent() ? (Object) said.number().getAsDouble() : said.value();
            int place = named.documents().indexOf(own);
            return place < 0 ? OptionalDouble.empty() : OptionalDouble.of(place);
        }
        OptionalDouble number = said.number();
        boolean between = number.isPresent()
                && variable.share(number.getAsDouble()) >= 0
                && variable.share(number.getAsDouble()) <= 1;
        return between ? number : OptionalDouble.empty();
    }

    /**
     * @param space inputs that vary
     * @param values a value for each of them
     * @param figures figures asked for
     * @return their values there, or why there is no answer; the models' refusals are no error here
     */
    public StudyPoint evaluate(StudySpace space, double[] values, List<StudyFigure> figures) {
        double[] numbers = new double[figures.size()];
        try {
            CaseAnswer answer = answer(space.changes(values), figures.stream().anyMatch(StudyFigure::ofVehicle));
            for (int i = 0; i < numbers.length; i++) {
                numbers[i] = figures.get(i).of().apply(answer).orElse(Double.NaN);
            }
            return new StudyPoint(values, numbers, Optional.empty());
        } catch (PenstockException e) {
            Arrays.fill(numbers, Double.NaN);
            return new StudyPoint(values, numbers, Optional.of(StudyPoint.Failure.of(e)));
        }
    }
}
