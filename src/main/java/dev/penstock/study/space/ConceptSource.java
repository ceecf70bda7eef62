package dev.penstock.study.space;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ConceptDocument;
import dev.penstock.input.InputFile;
import dev.penstock.input.InputValue;
import dev.penstock.study.EngineRuns;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A concept file, read once, from which a study makes many concepts. Where the study varies the cycle, what belongs to the
 * file's own cycle gives way to the defaults of the other. Safe to share between threads.
 */
final class ConceptSource {

    private static final String CYCLE = "cycle";

    private final EngineRuns runs;
    private final Path file;
    private final Text own;
    private final Concept base;
    private final Map<String, Text> byCycle = new ConcurrentHashMap<>();

    /** What a file says, and the changes that stay. */
    private record Text(InputFile text, Map<String, String> changes) {}

    ConceptSource(EngineRuns runs, Path file, InputFile text, Map<String, String> changes) {
        this.runs = runs;
        this.file = file;
        this.own = new Text(text, changes);
        this.base = runs.read(text, changes);
    }

    String name() {
        return base.name();
    }

    /** Text of the file. */
    String text() {
        return own.text().text();
    }

    Path file() {
        return file;
    }

    /** The concept without further changes. */
    Concept base() {
        return base;
    }

    /** What the file says of an input. */
    Optional<InputValue> input(String path) {
        return base.document().inputs().stream()
                .filter(said -> said.key().equals(path))
                .findFirst();
    }

    /** The concept with further changes. */
    Concept at(Map<String, String> further) {
        Text text = Optional.ofNullable(further.get(CYCLE))
                .map(id -> id.replace("\"", ""))
                .filter(id -> !id.equals(base.cycle().id()))
                .flatMap(id ->
                        Cycle.all().stream().filter(c -> c.id().equals(id)).findFirst())
                .map(cycle -> byCycle.computeIfAbsent(cycle.id(), id -> of(cycle)))
                .orElse(own);
        Map<String, String> all = new LinkedHashMap<>(text.changes());
        all.putAll(further);
        return runs.read(text.text(), all);
    }

    private Text of(Cycle cycle) {
        ConceptDocument document = runs.withCycle(base, cycle).document();
        return new Text(InputFile.parse(document.file(), document.text(), Map.of()), document.changes());
    }
}
