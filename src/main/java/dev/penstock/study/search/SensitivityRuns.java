package dev.penstock.study.search;

import dev.penstock.numerics.Cancellation;
import dev.penstock.numerics.sampling.Workers;
import dev.penstock.numerics.variance.Sampled;
import dev.penstock.numerics.variance.Screening;
import dev.penstock.numerics.variance.SobolIndices;
import dev.penstock.quantities.Notation;
import dev.penstock.study.Parallel;
import dev.penstock.study.Progress;
import dev.penstock.study.space.StudyFigure;
import dev.penstock.study.space.StudyPoint;
import dev.penstock.study.space.StudySpace;
import dev.penstock.study.space.Variable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** Finds which inputs of a case move its figures. Whether a point closes at all is a figure too. */
public final class SensitivityRuns {

    /** More inputs than that are screened first. */
    public static final int MOST = 15;

    private final Workers workers;
    private final PointJournal journal;

    /** Keeps nothing. */
    public SensitivityRuns() {
        this(Parallel.WORKERS, PointJournal.NONE);
    }

    /** @param journal keeps the points, and knows those of earlier runs */
    public SensitivityRuns(PointJournal journal) {
        this(Parallel.WORKERS, journal);
    }

    SensitivityRuns(Workers workers, PointJournal journal) {
        this.workers = workers;
        this.journal = journal;
    }

    /** Whether a point closes: 1 if it does, else 0. */
    private static final StudyFigure CLOSES = new StudyFigure(
            "closes", "the case closes", Notation.significant("", 3), false, answer -> OptionalDouble.of(1));

    /** One study on its way. */
    private final class Work {

        private final Question question;
        private final Progress progress;
        private final BooleanSupplier cancelled;
        private final int of;
        private final AtomicInteger done = new AtomicInteger();
        private final Map<String, Integer> failures = new ConcurrentHashMap<>();

        Work(Question question, Progress progress, BooleanSupplier cancelled, int of) {
            this.question = question;
            this.progress = progress;
            this.cancelled = cancelled;
            this.of = of;
        }

        Sampled over(StudySpace space) {
            return place -> {
                if (cancelled.getAsBoolean()) {
                    throw new CancellationException("the study was stopped");
                }
                StudyPoint point =
                        Cancellation.during(cancelled, () -> journal.at(question, space, space.values(place)));
                int count = point.figures().length;
                double[] values = Arrays.copyOf(point.figures(), count + 1);
                values[count] = point.closes() ? 1 : 0;
                point.failure().ifPresent(f -> failures.merge(f.kind(), 1, Integer::sum));
                synchronized (this) {
                    progress.done(done.incrementAndGet(), of, question.subject().name());
                }
                return values;
            };
        }
    }

    /**
     * @param space inputs that vary
     * @param samples points of the first half of the design
     * @return points that the study asks for, the screening of many inputs included
     */
    public static int evaluations(StudySpace space, int samples) {
        return (space.size() > MOST ? Screening.evaluations(space.size()) : 0)
                + SobolIndices.evaluations(Math.min(space.size(), MOST), samples);
    }

    /**
     * @param question the case, inputs that vary, each over its range alike, and as further figures those to explain
     * @param samples points of the first half of the design; the study asks as many times the number of inputs and two
     * @param seed seed of the random numbers
     * @param progress told of each point
     * @param cancelled asked before each point; once it says yes, the points that are done are the answer
     * @return the indices
     * @throws CancellationException if it was stopped before anything was found
     */
    public SensitivityResult run(
            Question question, int samples, long seed, Progress progress, BooleanSupplier cancelled) {
        StudySpace space = question.space();
        Work work = new Work(question, progress, cancelled, evaluations(space, samples));
        Map<String, List<Screening.Effect>> screened = new LinkedHashMap<>();
        StudySpace kept = space;
        if (space.size() > MOST) {
            List<List<Screening.Effect>> effects = Screening.of(work.over(space), space.size(), seed, workers);
            for (int i = 0; i < space.size(); i++) {
                int input = i;
                screened.put(
                        space.variables().get(i).path(),
                        effects.stream().map(f -> f.get(input)).toList());
            }
            kept = kept(space, effects);
        }
        List<SobolIndices.Result> results = SobolIndices.of(work.over(kept), kept.size(), samples, seed + 1, workers);
        List<StudyFigure> all = new ArrayList<>(question.further());
        all.add(CLOSES);
        return new SensitivityResult(
                question.subject(), kept, all, results, screened, new TreeMap<>(work.failures), work.done.get(), seed);
    }

    /** The inputs with the largest effects on any figure, in the order of the space. */
    private static StudySpace kept(StudySpace space, List<List<Screening.Effect>> effects) {
        double[] weight = new double[space.size()];
        for (List<Screening.Effect> ofFigure : effects) {
            double most =
                    ofFigure.stream().mapToDouble(Screening.Effect::mean).max().orElse(0);
            for (int i = 0; i < weight.length && most > 0; i++) {
                weight[i] = Math.max(weight[i], ofFigure.get(i).mean() / most);
            }
        }
        List<Variable> kept = IntStream.range(0, weight.length)
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(i -> -weight[i]).thenComparing(i -> i))
                .limit(MOST)
                .sorted()
                .map(i -> space.variables().get(i))
                .toList();
        return new StudySpace(kept);
    }
}
