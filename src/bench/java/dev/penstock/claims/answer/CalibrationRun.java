package dev.penstock.claims.answer;

import dev.penstock.study.Parallel;
import dev.penstock.study.Progress;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/** Simulation-based calibration with many engines; its histogram stands on docs/validation/claims.md. */
public final class CalibrationRun {

    private static final int BINS = 10;

    private CalibrationRun() {}

    /** @param arguments cycle; number of engines; points carried for each; seed */
    public static void main(String[] arguments) {
        if (arguments.length != 4) {
            System.err.println("arguments: CYCLE ENGINES POINTS SEED");
            return;
        }
        Calibration calibration = new Calibration(
                arguments[0],
                Integer.parseInt(arguments[2]),
                (count, work) -> Parallel.map(
                        IntStream.range(0, count).boxed().toList(),
                        i -> "",
                        i -> {
                            work.accept(i);
                            return i;
                        },
                        Progress.NONE));
        Map<String, List<Double>> shares =
                calibration.run(Integer.parseInt(arguments[1]), Long.parseLong(arguments[3]));
        shares.forEach((path, list) -> System.out.printf(
                Locale.ROOT,
                "| %s | %s | %.1f |%n",
                path,
                Arrays.toString(Calibration.counts(list, BINS)),
                Calibration.chiSquare(list, BINS)));
    }
}
