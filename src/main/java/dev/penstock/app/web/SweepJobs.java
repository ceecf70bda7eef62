package dev.penstock.app.web;

import dev.penstock.input.InputFile;
import dev.penstock.reports.study.SweepCharts;
import dev.penstock.study.Axis;
import dev.penstock.study.Measure;
import dev.penstock.study.Sweep;
import dev.penstock.study.refine.RefinedSweep;
import io.javalin.config.RoutesConfig;
import java.time.Duration;
import java.util.List;
import java.util.Map;

/** Sweeps that a page has asked for; a stopped one keeps what is done. */
final class SweepJobs implements AutoCloseable {

    /** More balances than somebody waits for in front of a page; the command line goes further. */
    static final int MOST_POINTS = 2500;

    /** How many times as many combinations a map may take where its figures bend. */
    private static final int FINER = 4;

    /** What messages call the text by. */
    private static final String NAME = "concept";

    private final Sweep sweep;
    private final Jobs<Sweep.Result> jobs;

    /**
     * @param sweep runs a sweep
     * @param longest after this time a sweep is stopped
     */
    SweepJobs(Sweep sweep, Duration longest) {
        this.sweep = sweep;
        this.jobs = new Jobs<>("sweep", longest);
    }

    /**
     * @param text text of a concept
     * @param changes values that replace or add to what the text says
     * @param axes inputs to vary
     * @param samples engines to sample about each combination; 0 for none
     * @param asked figure for which a map takes more values where it bends
     * @return id of the sweep
     * @throws Refusal if another one runs, or it would be too large
     */
    String start(String text, Map<String, String> changes, List<Axis> axes, int samples, Measure asked) {
        long points = axes.stream().mapToLong(a -> a.values().size()).reduce(1, (a, b) -> Math.min(a * b, 1_000_000));
        if (axes.isEmpty() || axes.size() > 2 || points > MOST_POINTS) {
            throw new Refusal(422, "vary one or two inputs, " + MOST_POINTS + " combinations at most");
        }
        if (samples < 0 || samples == 1 || samples > 0 && axes.size() > 1 || points * (1 + samples) > MOST_POINTS) {
            throw new Refusal(
                    422, "a band needs one input and 2 samples or more, " + MOST_POINTS + " balances at most in all");
        }
        if (axes.size() == 2
                && axes.stream().allMatch(a -> a.numeric() && a.values().size() > 1)) {
            int most = (int) Math.min(MOST_POINTS, FINER * points);
            return jobs.start(most, job -> refined(job, text, changes, axes, most, asked));
        }
        return jobs.start((int) points * (1 + samples), job -> run(job, text, changes, axes, samples));
    }

    private Sweep.Result run(
            Jobs.Job<Sweep.Result> job, String text, Map<String, String> changes, List<Axis> axes, int samples) {
        InputFile file = InputFile.parse(NAME, text, Map.of());
        return sweep.run(file, changes, axes, samples, (done, of, what) -> job.at(done), job::stopped);
    }

    private Sweep.Result refined(
            Jobs.Job<Sweep.Result> job,
            String text,
            Map<String, String> changes,
            List<Axis> axes,
            int most,
            Measure asked) {
        InputFile file = InputFile.parse(NAME, text, Map.of());
        return new RefinedSweep(sweep, file, changes, SweepCharts.mapped(asked))
                .run(axes, most, (done, of, what) -> job.at(done), job::stopped);
    }

    void addTo(RoutesConfig routes, String path) {
        jobs.addTo(routes, path);
    }

    Sweep.Result result(String id) {
        return jobs.result(id);
    }

    @Override
    public void close() {
        jobs.close();
    }
}
