package dev.penstock.validation;

import dev.penstock.errors.PenstockException;
import dev.penstock.study.Parallel;
import dev.penstock.study.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Judges the built engines of the tables with chamber pressure, mixture ratio and cycle hidden; a row as each is done. */
public final class ClaimsCoverageRun {

    private ClaimsCoverageRun() {}

    /** @param arguments points carried for each kind of engine; number of engines at most */
    public static void main(String[] arguments) {
        if (arguments.length != 2) {
            System.err.println("arguments: POINTS ENGINES");
            return;
        }
        List<ClaimsCoverage.Row> rows = new ArrayList<>();
        for (PublishedEngine engine : ClaimsCoverage.engines().stream()
                .limit(Integer.parseInt(arguments[1]))
                .toList()) {
            try {
                ClaimsCoverage.Row row = ClaimsCoverage.judged(
                        engine,
                        "\"any\"",
                        Integer.parseInt(arguments[0]),
                        (count, work) -> Parallel.map(
                                IntStream.range(0, count).boxed().toList(),
                                i -> "",
                                i -> {
                                    work.accept(i);
                                    return i;
                                },
                                Progress.NONE));
                rows.add(row);
                System.out.println(row.line());
            } catch (PenstockException e) {
                System.out.println("| " + engine.name() + " | " + e.getMessage() + " |");
            }
        }
        long pressure = rows.stream().filter(ClaimsCoverage.Row::holdsPressure).count();
        long ratio = rows.stream().filter(ClaimsCoverage.Row::holdsRatio).count();
        long cycle = rows.stream().filter(r -> r.probability() > 0.1).count();
        System.out.printf(
                Locale.ROOT,
                "%d engines: pressure held %d, ratio held %d, own cycle above 10 %% %d%n",
                rows.size(),
                pressure,
                ratio,
                cycle);
    }
}
