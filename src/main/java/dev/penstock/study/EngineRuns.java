package dev.penstock.study;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.InputFile;
import dev.penstock.vehicle.reading.VehicleReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Balances concept files, one or many, all in one study. Safe to share between threads. */
public final class EngineRuns {

    private final Path home;
    private final FluidLibrary fluids;
    private volatile ConceptReader reader;
    private EngineStudy study;

    /**
     * @param home home folder
     * @param fluids fluids of that folder
     */
    public EngineRuns(Path home, FluidLibrary fluids) {
        this.home = home;
        this.fluids = fluids;
    }

    /** Made when it is first asked for: what a concept may hold takes long to gather, and many a command needs none. */
    private ConceptReader reader() {
        ConceptReader made = reader;
        if (made == null) {
            // two threads may make one each: readers of the same fluids are alike
            made = new ConceptReader(fluids);
            reader = made;
        }
        return made;
    }

    /** @return a reader of vehicles with the fluids of these data */
    public VehicleReader vehicles() {
        return new VehicleReader(fluids);
    }

    /** @return the study of these data, opened when it is first asked for and the same ever after */
    public synchronized EngineStudy study() {
        if (study == null) {
            study = EngineStudy.open(home);
        }
        return study;
    }

    /**
     * @param file concept file
     * @param changes values by dotted path that replace or add to what the file says
     * @return the concept
     * @throws InvalidInput if anything in it cannot be used
     */
    public Concept read(Path file, Map<String, String> changes) {
        Concept concept = read(InputFile.read(file, changes), changes);
        vehicles().of(concept);
        return concept;
    }

    /** A vehicle lacks all that an engine has; that is one mistake, not one for each key. */
    private static void requireEngine(InputFile file) {
        if (!file.root().has("cycle") && file.root().has("stage")) {
            throw new InvalidInput(
                    file.name(),
                    "CASE",
                    "a vehicle",
                    "it must be an engine concept, with a cycle; penstock size takes vehicles, and their stages name"
                            + " their engines");
        }
    }

    /**
     * @param file a concept file, read without changes; it may be shared between threads
     * @param changes values by dotted path that replace or add to what the file says
     * @return the concept
     * @throws InvalidInput if anything in it cannot be used
     */
    public Concept read(InputFile file, Map<String, String> changes) {
        requireEngine(file);
        return reader().parse(file, changes);
    }

    /**
     * @param concept concept
     * @param changes further values by dotted path
     * @return the concept with them
     * @throws InvalidInput if one of them cannot be used
     */
    public Concept reread(Concept concept, Map<String, String> changes) {
        return reader().reread(concept, changes);
    }

    /**
     * @param concept concept
     * @param cycle another cycle
     * @return the concept with that cycle
     * @throws InvalidInput if what it says does not suit that cycle
     */
    public Concept withCycle(Concept concept, Cycle cycle) {
        return reader().withCycle(concept, cycle);
    }

    /**
     * Reads all files, then balances them over all processors.
     *
     * @param files concept files
     * @param changes values by dotted path that replace or add to what every file says
     * @param progress told of each concept that is done
     * @return an outcome for each file, in order
     * @throws InvalidInput with the problems of all files together, before anything is balanced
     */
    public List<Outcome> balance(List<Path> files, Map<String, String> changes, Progress progress) {
        return balance(files, file -> changes, progress);
    }

    /**
     * The same with changes of each file's own.
     *
     * @param files concept files
     * @param changes of each file the values by dotted path that replace or add to what it says
     * @param progress told of each concept that is done
     * @return an outcome for each file, in order
     * @throws InvalidInput with the problems of all files together, before anything is balanced
     */
    public List<Outcome> balance(List<Path> files, Function<Path, Map<String, String>> changes, Progress progress) {
        record Case(Path file, Concept concept) {}
        List<Case> cases = new ArrayList<>();
        List<InvalidInput.Problem> problems = new ArrayList<>();
        for (Path file : files) {
            try {
                cases.add(new Case(file, read(file, changes.apply(file))));
            } catch (InvalidInput e) {
                problems.addAll(e.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new InvalidInput(problems);
        }
        return Parallel.map(cases, c -> c.concept().name(), c -> outcome(c.file(), c.concept()), progress);
    }

    private Outcome outcome(Path file, Concept concept) {
        try {
            EngineBalance balance = study().balance(concept);
            return new Outcome(file, concept.name(), Optional.of(balance), Optional.empty());
        } catch (PenstockException e) {
            return new Outcome(file, concept.name(), Optional.empty(), Optional.of(e));
        }
    }
}
