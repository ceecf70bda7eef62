package dev.penstock.fluids.coolprop;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * What a state costs by each way to CoolProp, one by one and many at once, and whether threads do better with a worker each
 * than with one for all. Wall-clock time and processor time of this process and its workers; Linux.
 */
final class WorkerBenchmark {

    private static final int STATES = 5000;
    private static final Path FOLDER = Path.of("").toAbsolutePath().resolve(".penstock/coolprop");

    private WorkerBenchmark() {}

    public static void main(String[] arguments) throws Exception {
        PythonRuntime.find(FOLDER).ifPresent(python -> ways("this process", CoolPropWheel.load(FOLDER, python)));
        ways("worker", CoolPropWorker.load(FOLDER));
        for (int threads : new int[] {1, 2, 4}) {
            CoolPropLibrary one = CoolPropWorker.load(FOLDER);
            List<CoolPropLibrary> each = new ArrayList<>();
            for (int i = 0; i < threads; i++) {
                each.add(CoolPropWorker.load(FOLDER));
            }
            threads("one worker for " + threads + " threads", List.of(one), threads);
            threads("a worker each for " + threads + " threads", each, threads);
        }
    }

    private static void ways(String way, CoolPropLibrary library) {
        try (CoolPropHandle methane = library.open("Methane", "methane")) {
            for (int round = 0; round < 3; round++) {
                time(way + ", a state and what a search reads", STATES, () -> single(methane, 0));
                time(way + ", the same, many at once", STATES, () -> many(methane));
            }
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static Void single(CoolPropHandle handle, int offset) {
        for (int i = 0; i < STATES; i++) {
            handle.update(CoolPropInputs.DENSITY_TEMPERATURE, 200 + 1e-3 * (i + offset), 300);
            handle.output(CoolPropOutput.PRESSURE);
            handle.output(CoolPropOutput.ENTHALPY);
            handle.output(CoolPropOutput.ISOCHORIC_HEAT_CAPACITY);
            handle.output(CoolPropOutput.PRESSURE_BY_DENSITY);
            handle.output(CoolPropOutput.PRESSURE_BY_TEMPERATURE);
        }
        return null;
    }

    private static Void many(CoolPropHandle handle) {
        double[] densities = new double[STATES];
        double[] temperatures = new double[STATES];
        for (int i = 0; i < STATES; i++) {
            densities[i] = 200 + 1e-3 * i;
            temperatures[i] = 300;
        }
        handle.evaluate(
                CoolPropInputs.DENSITY_TEMPERATURE,
                densities,
                temperatures,
                CoolPropOutput.PRESSURE,
                CoolPropOutput.ENTHALPY,
                CoolPropOutput.ISOCHORIC_HEAT_CAPACITY,
                CoolPropOutput.PRESSURE_BY_DENSITY,
                CoolPropOutput.PRESSURE_BY_TEMPERATURE);
        return null;
    }

    private static void threads(String what, List<CoolPropLibrary> libraries, int threads) throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        List<Callable<Void>> jobs = new ArrayList<>();
        for (int i = 0; i < threads; i++) {
            CoolPropHandle handle = libraries.get(i % libraries.size()).open("Methane", "methane");
            int offset = i;
            jobs.add(() -> single(handle, offset));
        }
        for (int round = 0; round < 2; round++) {
            time(what, threads * STATES, () -> pool.invokeAll(jobs));
        }
        pool.shutdown();
    }

    private static void time(String what, int states, Callable<?> job) throws Exception {
        double processor = processor();
        long wall = System.nanoTime();
        job.call();
        System.out.printf(
                Locale.ROOT,
                "%-50s %6.1f µs wall, %6.1f µs processor a state%n",
                what,
                (System.nanoTime() - wall) / 1e3 / states,
                (processor() - processor) / 1e3 / states);
    }

    /** Processor time of this process and its children in ns. */
    private static double processor() {
        return nanoseconds(ProcessHandle.current())
                + ProcessHandle.current()
                        .children()
                        .mapToDouble(WorkerBenchmark::nanoseconds)
                        .sum();
    }

    private static double nanoseconds(ProcessHandle process) {
        return process.info().totalCpuDuration().orElse(Duration.ZERO).toNanos();
    }
}
