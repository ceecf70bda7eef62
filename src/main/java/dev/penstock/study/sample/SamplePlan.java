package dev.penstock.study.sample;

import dev.penstock.errors.PenstockException;
import dev.penstock.numerics.Cancellation;
import dev.penstock.numerics.design.UnitDesign;
import dev.penstock.study.Measure;
import dev.penstock.study.space.CasePaths;
import dev.penstock.study.space.StudyCase;
import dev.penstock.study.space.StudyFigure;
import dev.penstock.study.space.StudyPoint;
import dev.penstock.study.store.Row;
import dev.penstock.study.store.RowFile;
import dev.penstock.study.store.RowSchema;
import dev.penstock.vehicle.stage.VehicleFigures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CancellationException;

/**
 * A study of many points, ready to be worked at batch by batch. A batch follows from the study and its number alone: each
 * point is answered as if it were the only one. Safe to share between threads.
 */
public final class SamplePlan {

    private final StudyCase subject;
    private final SampleRequest request;
    private final SamplePoints points;
    private final SampleColumns columns;
    private final int size;
    private final boolean sized;

    private SamplePlan(StudyCase subject, SampleRequest request) {
        this.subject = subject;
        this.request = request;
        CasePaths paths = subject.paths();
        this.points = SamplePoints.of(paths, request);
        Map<String, StudyFigure> figures = new LinkedHashMap<>();
        usual(subject).forEach(path -> {
            StudyFigure figure = paths.figure("--figure", path);
            figures.put(figure.path(), figure);
        });
        paths.figures("--figure", request.figures()).forEach(figure -> figures.put(figure.path(), figure));
        points.space().variables().forEach(variable -> figures.remove(variable.path()));
        this.columns = new SampleColumns(
                points.space(), List.copyOf(figures.values()), paths.constraints(request.subjectTo()));
        this.size = points.design().size();
        this.sized = columns.ofVehicle();
    }

    /**
     * @param subject case to evaluate
     * @param request what is asked for
     * @return the study
     * @throws dev.penstock.errors.InvalidInput if something asked for cannot be used
     */
    public static SamplePlan of(StudyCase subject, SampleRequest request) {
        return new SamplePlan(subject, request);
    }

    private static List<String> usual(StudyCase subject) {
        List<String> paths = new ArrayList<>();
        if (subject.ofVehicle()) {
            VehicleFigures.ALL.figures().stream()
                    .filter(figure -> figure.isNumber() && !figure.key().contains("."))
                    .forEach(figure -> paths.add(figure.key()));
        } else {
            Measure.ALL.forEach(measure -> paths.add(measure.path()));
        }
        return paths;
    }

    /** @return what is asked for */
    public SampleRequest request() {
        return request;
    }

    /** @return number of points */
    public int points() {
        return size;
    }

    /** @return number of batches */
    public int batches() {
        return (size + request.batch() - 1) / request.batch();
    }

    /**
     * @param batch number of a batch
     * @return how many points it has
     */
    public int points(int batch) {
        return Math.min(request.batch(), size - batch * request.batch());
    }

    /** @return columns of the rows */
    public RowSchema schema() {
        return columns.schema();
    }

    /**
     * @param batch number of a batch, 0 to {@code batches() - 1}
     * @param done told after each point
     * @return its file
     * @throws CancellationException if the work on this thread is to stop, see {@link Cancellation}
     */
    public byte[] parquet(int batch, Runnable done) {
        return RowFile.parquet(schema(), rows(batch, done));
    }

    /**
     * @param batch number of a batch, 0 to {@code batches() - 1}
     * @param done told after each point
     * @return its rows
     * @throws CancellationException if the work on this thread is to stop, see {@link Cancellation}
     */
    public List<Row> rows(int batch, Runnable done) {
        UnitDesign design = points.design();
        double[] shares = new double[design.dimensions()];
        List<Row> rows = new ArrayList<>(points(batch));
        int first = batch * request.batch();
        for (int index = first; index < first + points(batch); index++) {
            Cancellation.check();
            design.point(index, shares);
            rows.add(row(index, points.space().values(shares)));
            done.run();
        }
        return rows;
    }

    private Row row(int index, double[] values) {
        try {
            return columns.answered(index, values, subject.answer(points.space().changes(values), sized));
        } catch (CancellationException e) {
            throw e;
        } catch (PenstockException e) {
            return columns.failed(
                    index, values, StudyPoint.Failure.of(e), e.subject().name().toLowerCase(Locale.ROOT));
        } catch (RuntimeException e) {
            // One point that shows a defect must not hold up a million others; its row says so.
            return columns.failed(index, values, new StudyPoint.Failure("defect", e.toString()), "program");
        }
    }
}
