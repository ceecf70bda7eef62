package dev.penstock.study.sample;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.study.space.CaseAnswer;
import dev.penstock.study.space.Constraint;
import dev.penstock.study.space.StudyFigure;
import dev.penstock.study.space.StudyPoint;
import dev.penstock.study.space.StudySpace;
import dev.penstock.study.space.Variable;
import dev.penstock.study.store.Column;
import dev.penstock.study.store.Row;
import dev.penstock.study.store.RowSchema;
import dev.penstock.study.store.StoredRows;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The columns of a study of many points, and the cells of one point. */
final class SampleColumns {

    private final StudySpace space;
    private final List<StudyFigure> figures;
    private final List<Constraint> constraints;
    private final RowSchema schema;

    SampleColumns(StudySpace space, List<StudyFigure> figures, List<Constraint> constraints) {
        this.space = space;
        this.constraints = List.copyOf(constraints);
        this.figures = List.copyOf(figures);
        List<Column> columns = new ArrayList<>();
        columns.add(new Column(StoredRows.POINT, Column.Kind.WHOLE, Column.Role.POINT, "", "Number of the point"));
        for (Variable variable : space.variables()) {
            columns.add(
                    new Column(variable.path(), kind(variable), Column.Role.INPUT, variable.unit(), variable.title()));
        }
        for (StudyFigure figure : figures) {
            columns.add(new Column(
                    figure.path(),
                    Column.Kind.NUMBER,
                    Column.Role.FIGURE,
                    figure.notation().siUnit(),
                    figure.title()));
        }
        columns.add(limit(StoredRows.WITHIN_LIMITS, Column.Kind.TRUTH, "Whether all limits are kept"));
        columns.add(limit(StoredRows.LIMITS_MISSED, Column.Kind.WORDS, "Limits that are missed"));
        columns.add(limit(StoredRows.TIGHTEST_LIMIT, Column.Kind.WORD, "Limit with the least margin"));
        if (!constraints.isEmpty()) {
            columns.add(limit(
                    StoredRows.CONSTRAINTS_KEPT,
                    Column.Kind.TRUTH,
                    "Whether kept: "
                            + constraints.stream().map(Constraint::text).collect(Collectors.joining(", "))));
        }
        columns.add(failure(StoredRows.FAILURE, "Why there is no answer"));
        columns.add(failure(StoredRows.FAILURE_KIND, "Kind of the failure"));
        columns.add(failure(StoredRows.FAILURE_SUBJECT, "What could not be solved"));
        this.schema = new RowSchema(columns);
    }

    private static Column limit(String name, Column.Kind kind, String title) {
        return new Column(name, kind, Column.Role.LIMIT, "", title);
    }

    private static Column failure(String name, String title) {
        return new Column(name, Column.Kind.WORD, Column.Role.FAILURE, "", title);
    }

    /** Names that are all numbers are a column of numbers. */
    private static Column.Kind kind(Variable variable) {
        if (variable instanceof Variable.Whole) {
            return Column.Kind.WHOLE;
        }
        return variable instanceof Variable.Named named
                        && !named.documents().stream().allMatch(Double.class::isInstance)
                ? Column.Kind.WORD
                : Column.Kind.NUMBER;
    }

    RowSchema schema() {
        return schema;
    }

    /** Whether the vehicle has to be sized for them. */
    boolean ofVehicle() {
        return Stream.concat(figures.stream(), constraints.stream().map(Constraint::figure))
                .anyMatch(StudyFigure::ofVehicle);
    }

    Row answered(int index, double[] values, CaseAnswer answer) {
        List<Optional<Object>> cells = inputs(index, values);
        for (StudyFigure figure : figures) {
            OptionalDouble number = figure.of().apply(answer);
            cells.add(number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty());
        }
        cells.add(Optional.of(answer.withinLimits()));
        List<Named> limits = limits(answer);
        cells.add(Optional.of(limits.stream()
                .filter(named -> !named.check().met())
                .map(Named::name)
                .toList()));
        cells.add(limits.stream()
                .filter(named -> LimitCheck.tightest(List.of(named.check())).isPresent())
                .min(Comparator.comparingDouble(named -> named.check().margin()))
                .map(Named::name));
        if (!constraints.isEmpty()) {
            cells.add(Optional.of(constraints.stream()
                    .allMatch(c -> c.kept(c.figure().of().apply(answer).orElse(Double.NaN)))));
        }
        for (int i = 0; i < 3; i++) {
            cells.add(Optional.empty());
        }
        return new Row(cells);
    }

    /** A limit by the name that tells it from those of other engines. */
    private record Named(String name, LimitCheck check) {}

    private static List<Named> limits(CaseAnswer answer) {
        boolean several = answer.engines().size() > 1;
        List<Named> limits = new ArrayList<>();
        for (EngineBalance engine : answer.engines()) {
            for (LimitCheck check : engine.limits()) {
                limits.add(new Named((several ? engine.concept().name() + ": " : "") + check.name(), check));
            }
        }
        return limits;
    }

    Row failed(int index, double[] values, StudyPoint.Failure failure, String subject) {
        List<Optional<Object>> cells = inputs(index, values);
        while (cells.size() < schema.columns().size() - 3) {
            cells.add(Optional.empty());
        }
        cells.add(Optional.of(failure.sentence()));
        cells.add(Optional.of(failure.kind()));
        cells.add(Optional.of(subject));
        return new Row(cells);
    }

    private List<Optional<Object>> inputs(int index, double[] values) {
        List<Optional<Object>> cells = new ArrayList<>();
        cells.add(Optional.of((long) index));
        for (int i = 0; i < values.length; i++) {
            Object document = space.variables().get(i).document(values[i]);
            cells.add(Optional.of(
                    switch (schema.columns().get(1 + i).kind()) {
                        case WHOLE -> (Object) ((Number) document).longValue();
                        case NUMBER -> document;
                        default -> document.toString();
                    }));
        }
        return cells;
    }
}
