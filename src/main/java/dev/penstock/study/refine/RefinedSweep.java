package dev.penstock.study.refine;

import dev.penstock.input.InputFile;
import dev.penstock.study.Axis;
import dev.penstock.study.Measure;
import dev.penstock.study.Progress;
import dev.penstock.study.Sweep;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A sweep over two inputs that takes more values where its figures bend and where solutions end. */
public final class RefinedSweep {

    /** Rounds of more values; each halves gaps. */
    private static final int ROUNDS = 2;

    private final Sweep sweep;
    private final InputFile file;
    private final Map<String, String> changes;
    private final List<Measure> measures;

    /**
     * @param sweep balances combinations
     * @param file text of a concept, read without changes
     * @param changes values by dotted path that replace or add to what the text says
     * @param measures figures that are to be seen
     */
    public RefinedSweep(Sweep sweep, InputFile file, Map<String, String> changes, List<Measure> measures) {
        this.sweep = sweep;
        this.file = file;
        this.changes = changes;
        this.measures = List.copyOf(measures);
    }

    /**
     * @param axes two inputs, each with numbers that rise or fall
     * @param most most combinations in all
     * @param progress told of each balance that is done, out of {@code most}
     * @param cancelled asked before each balance; once it says yes, no more are begun
     * @return every combination of the finest grid that was finished; of the first grid if that was not
     */
    public Sweep.Result run(List<Axis> axes, int most, Progress progress, BooleanSupplier cancelled) {
        Sweep.Result result = sweep.run(file, changes, axes, 0, progress, cancelled);
        for (int round = 0; round < ROUNDS && result.complete(); round++) {
            List<Axis> finer = GridRefinement.finer(result.axes(), figures(result), most);
            if (finer.equals(result.axes())) {
                return result;
            }
            Sweep.Result more = more(result, finer, most, progress, cancelled);
            if (!more.complete()) {
                return result;
            }
            result = more;
        }
        return result;
    }

    private List<Function<List<String>, OptionalDouble>> figures(Sweep.Result result) {
        Map<List<String>, Sweep.Point> points = byValues(result.points());
        return measures.stream()
                .map(m -> (Function<List<String>, OptionalDouble>)
                        values -> points.get(values).balance().map(m::of).orElse(OptionalDouble.empty()))
                .toList();
    }

    private Sweep.Result more(
            Sweep.Result known, List<Axis> finer, int most, Progress progress, BooleanSupplier cancelled) {
        List<Sweep.Point> all = new ArrayList<>(known.points());
        Axis across = finer.get(0);
        Axis up = finer.get(1);
        boolean complete = true;
        List<Axis> before = known.axes();
        for (List<Optional<Axis>> block : List.of(
                List.of(across.without(before.get(0)), Optional.of(up)),
                List.of(Optional.of(before.get(0)), up.without(before.get(1))))) {
            if (block.stream().allMatch(Optional::isPresent)) {
                List<Axis> two = block.stream().flatMap(Optional::stream).toList();
                int had = all.size();
                Sweep.Result part = sweep.run(
                        file, changes, two, 0, (done, of, what) -> progress.done(had + done, most, what), cancelled);
                all.addAll(part.points());
                complete &= part.complete();
            }
        }
        Map<List<String>, Sweep.Point> points = byValues(all);
        List<Sweep.Point> ordered = across.values().stream()
                .flatMap(x -> up.values().stream().map(y -> points.get(List.of(x, y))))
                .filter(p -> p != null)
                .toList();
        return new Sweep.Result(known.name(), finer, ordered, complete);
    }

    private static Map<List<String>, Sweep.Point> byValues(List<Sweep.Point> points) {
        return points.stream().collect(Collectors.toMap(Sweep.Point::values, p -> p, (a, b) -> a, LinkedHashMap::new));
    }
}
