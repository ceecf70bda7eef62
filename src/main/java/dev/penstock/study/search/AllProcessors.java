package dev.penstock.study.search;

import dev.penstock.numerics.sampling.Workers;
import dev.penstock.study.Parallel;
import dev.penstock.study.Progress;
import java.util.stream.IntStream;

/** Workers on every processor. */
final class AllProcessors {

    static final Workers WORKERS = (count, work) -> Parallel.map(
            IntStream.range(0, count).boxed().toList(),
            i -> "",
            i -> {
                work.accept(i);
                return i;
            },
            Progress.NONE);

    private AllProcessors() {}
}
