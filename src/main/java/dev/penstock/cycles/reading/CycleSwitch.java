package dev.penstock.cycles.reading;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.CycleExample;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.cycles.concept.GasInputs;
import dev.penstock.cycles.concept.Side;
import dev.penstock.errors.InvalidInput;
import dev.penstock.input.InputGroup;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.KeyPath;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Gives a written concept another cycle: what both have stays word for word, the gas that drives a turbine keeps what is said of it in
 * the other burner's table, what the other cycle lacks is taken out, what it needs is added; and all of it is said. Not thread-safe.
 */
public final class CycleSwitch {

    /** Burners with gas of the same kind: fuel-rich, as hot as a turbine bears. */
    private static final List<Burner> ALIKE = List.of(Burner.GENERATOR, Burner.FUEL_RICH, Burner.TAP_OFF);

    private static final int MOST_ROUNDS = 12;

    private final ConceptReader reader;
    private final Concept before;
    private final Cycle cycle;
    private final Map<String, String> edits = new LinkedHashMap<>();
    /** Sentences by the path that they are about. */
    private final Map<String, String> said = new LinkedHashMap<>();

    private CycleSwitch(ConceptReader reader, Concept before, Cycle cycle) {
        this.reader = reader;
        this.before = before;
        this.cycle = cycle;
    }

    /**
     * What changes with the cycle.
     *
     * @param changes values by dotted path, on top of those that the concept was read with; an empty one takes out
     * @param said what was translated, left out and added, a sentence each
     */
    public record Switched(Map<String, String> changes, List<String> said) {

        public Switched {
            changes = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(changes));
            said = List.copyOf(said);
        }
    }

    /**
     * @param reader reads concepts
     * @param before a concept
     * @param cycle another cycle
     * @return what has to change, in the order in which it counts
     * @throws InvalidInput if nothing that could be left out or added makes a concept of that cycle
     */
    public static Switched of(ConceptReader reader, Concept before, Cycle cycle) {
        return new CycleSwitch(reader, before, cycle).switched();
    }

    private Switched switched() {
        InputGroup declared = ConceptReader.declared(cycle);
        Map<String, InputValue> given = new LinkedHashMap<>();
        before.document().inputs().stream().filter(InputValue::given).forEach(i -> given.put(i.key(), i));
        edits.put(ConceptInputs.CYCLE.key(), cycle.id());
        for (InputValue input : given.values()) {
            beyond(declared, input.key()).ifPresent(table -> {
                Optional<String> there = translated(input.key(), declared, given.keySet());
                if (there.isPresent()) {
                    edits.put(there.get(), input.toml().map(CycleSwitch::plain).orElse(input.value()));
                    said.putIfAbsent(input.key(), input.key() + " (" + input.readable() + ") becomes " + there.get());
                } else {
                    said.putIfAbsent(
                            input.key(),
                            input.key() + " (" + input.readable() + ") is left out: it means nothing to this cycle");
                }
                edits.putIfAbsent(table, "");
            });
        }
        if (cycle.traits().closure() == CycleTraits.Closure.RATIO_OR_TEMPERATURE) {
            temperatureCloses(given.keySet());
        }
        ConceptReader.jacketsFor(before, cycle).forEach((key, value) -> {
            edits.put(key, value);
            said.putIfAbsent(key, key + " = " + value + " is added: this cycle lives on the heat of the jacket");
        });
        for (int round = 0; ; round++) {
            try {
                reader.reread(before, edits);
                return new Switched(edits, List.copyOf(said.values()));
            } catch (InvalidInput e) {
                if (round == MOST_ROUNDS || !mended(e, given)) {
                    throw e;
                }
            }
        }
    }

    /** Where either closes the balance and both are stated, the temperature of the gas stays. */
    private void temperatureCloses(Set<String> given) {
        boolean stated = cycle.traits().burners().stream()
                .map(b -> b.key() + "." + GasInputs.BURNER_TEMPERATURE.key())
                .anyMatch(key -> given.contains(key) || edits.containsKey(key));
        if (stated) {
            given.stream()
                    .filter(key -> key.endsWith("." + GasInputs.PRESSURE_RATIO.key()))
                    .filter(key -> key.startsWith(ConceptTables.TURBINES.key() + "."))
                    .filter(key -> !said.containsKey(key))
                    .forEach(key -> {
                        edits.put(key, "");
                        said.putIfAbsent(key, key + " is left out: it follows from the stated temperature of the gas");
                    });
        }
    }

    private static String plain(String toml) {
        return toml.replaceAll("^\"(.*)\"$", "$1");
    }

    /** The first part of a path that a cycle does not have; empty if it has all of it. */
    private static Optional<String> beyond(InputGroup top, String path) {
        InputGroup group = top;
        List<String> parts = KeyPath.keys(path);
        StringBuilder way = new StringBuilder();
        for (int i = 0; i < parts.size(); i++) {
            way.append(i == 0 ? "" : ".").append(parts.get(i));
            String key = parts.get(i).replaceAll("\\[\\d+]", "");
            Optional<InputGroup> inside = group.group(key);
            if (inside.isEmpty()) {
                boolean there = group.free().isPresent()
                        || group.inputs().stream().anyMatch(in -> in.key().equals(key));
                return there ? Optional.empty() : Optional.of(way.toString());
            }
            group = inside.get();
        }
        return Optional.empty();
    }

    /** The same thing said of the burner that takes the place of this one. */
    private Optional<String> translated(String path, InputGroup declared, Set<String> given) {
        for (Burner from : ALIKE) {
            if (!path.startsWith(from.key() + ".")) {
                continue;
            }
            for (Burner to : ALIKE) {
                String there = to.key() + path.substring(from.key().length());
                if (cycle.traits().burners().contains(to)
                        && !given.contains(there)
                        && beyond(declared, there).isEmpty()) {
                    return Optional.of(there);
                }
            }
        }
        return Optional.empty();
    }

    /** Takes out what is refused, and gives propellants of the new cycle where it cannot have those that there are. */
    private boolean mended(InvalidInput refused, Map<String, InputValue> given) {
        boolean mended = false;
        for (InvalidInput.Problem problem : refused.problems()) {
            // A source is named by the path of its input, in quotes.
            String key = problem.key().replace("\"", "");
            if (edits.containsKey(key) && edits.get(key).isEmpty()) {
                continue;
            }
            if (key.startsWith(ConceptTables.PROPELLANTS.key()) || !known(key, given)) {
                mended |= propellants(problem);
            } else {
                edits.put(key, "");
                mended = true;
                if (!key.startsWith(ConceptInputs.SOURCES.key()) && !key.startsWith(ConceptInputs.UNCERTAINTY.key())) {
                    said.putIfAbsent(key, lost(key, given, problem));
                }
            }
        }
        return mended;
    }

    /** A table that the cycle lacks is told by what stood in it. */
    private static String lost(String key, Map<String, InputValue> given, InvalidInput.Problem problem) {
        List<String> inside = given.values().stream()
                .filter(input -> input.key().startsWith(key + "."))
                .map(input -> input.key() + " (" + input.readable() + ")")
                .toList();
        return inside.isEmpty()
                ? key + " is left out: " + problem.allowed()
                : String.join(", ", inside) + (inside.size() == 1 ? " is" : " are")
                        + " left out: this cycle has no table " + key;
    }

    /** Whether the concept states it, or a table of that name. */
    private boolean known(String key, Map<String, InputValue> given) {
        return given.keySet().stream().anyMatch(k -> k.equals(key) || k.startsWith(key + "."))
                || key.startsWith(ConceptInputs.SOURCES.key())
                || key.startsWith(ConceptInputs.UNCERTAINTY.key())
                || edits.containsKey(key)
                || !key.contains(".");
    }

    private boolean propellants(InvalidInput.Problem problem) {
        CycleExample example = cycle.example();
        String oxidizer = ConceptTables.PROPELLANTS.key() + "." + Side.OXIDIZER.key();
        if (edits.containsKey(oxidizer)) {
            return false;
        }
        edits.put(oxidizer, example.oxidizer());
        edits.put(ConceptTables.PROPELLANTS.key() + "." + Side.FUEL.key(), example.fuel());
        edits.put(
                ConceptTables.PROPELLANTS.of(EngineInputs.MIXTURE_RATIO).path(),
                Double.toString(example.mixtureRatio()));
        said.putIfAbsent(
                oxidizer,
                "the propellants become " + example.oxidizer() + " and " + example.fuel() + " at a mixture ratio of "
                        + example.mixtureRatio() + ": with those before, " + problem.key() + " is " + problem.value()
                        + "; "
                        + problem.allowed());
        return true;
    }
}
