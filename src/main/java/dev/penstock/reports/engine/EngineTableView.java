package dev.penstock.reports.engine;

import dev.penstock.provenance.Figure;
import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.text.DocumentTable;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.EngineTable;
import dev.penstock.study.store.Column;
import dev.penstock.study.store.Row;
import dev.penstock.study.store.RowFile;
import dev.penstock.study.store.RowSchema;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** A table of an engine over its settings as JSON document, comma-separated lines, Parquet file and terminal table. */
public final class EngineTableView {

    private static final Notation ISP = Notation.fixed("s", "s", 1, 1);
    private static final Notation RATIO = Notation.significant("", 4);

    /** Columns of the table. */
    public static final FigureTable<EngineTable.Point> COLUMNS = FigureTable.<EngineTable.Point>ofOne()
            .optional("altitude_m", "altitude", Notation.fixed("m", "km", 1e-3, 1), p -> p.surrounding()
                    .altitude())
            .number("ambient_pressure_Pa", "ambient pressure", Notation.PRESSURE, p -> p.surrounding()
                    .pressure())
            .number("throttle", "throttle", Notation.PERCENT, EngineTable.Point::throttle)
            .number("mixture_ratio", "mixture ratio", RATIO, EngineTable.Point::mixtureRatio)
            .optional("chamber_pressure_Pa", "chamber pressure", Notation.PRESSURE, state(s -> s.operating()
                    .chamberPressure()))
            .optional("thrust_N", "thrust", Notation.FORCE, state(EngineTable.State::thrust))
            .optional("isp_s", "specific impulse", ISP, state(EngineTable.State::impulse))
            .optional("mass_flow_kg_s", "flow leaving the tanks", Notation.MASS_FLOW, state(s -> s.operating()
                    .massFlow()))
            .optional("oxidizer_flow_kg_s", "oxidizer flow", Notation.MASS_FLOW, state(s -> s.operating()
                    .oxidizerFlow()))
            .optional("fuel_flow_kg_s", "fuel flow", Notation.MASS_FLOW, state(s -> s.operating()
                    .fuelFlow()))
            .optional("exit_pressure_Pa", "exit pressure", Notation.PRESSURE, state(EngineTable.State::exitPressure))
            .word("separated", "flow separates in the nozzle", p -> p.state()
                    .map(s -> s.separationAreaRatio().isPresent()))
            .optional("separation_area_ratio", "area ratio where it separates", RATIO, p -> p.state()
                    .map(EngineTable.State::separationAreaRatio)
                    .orElse(OptionalDouble.empty()))
            .word("within_limits", "every margin is kept", p -> p.state()
                    .map(s -> s.operating().withinLimits()))
            .word(
                    "failure",
                    "why the engine cannot run there",
                    p -> p.failure().isEmpty() ? Optional.empty() : Optional.of(p.failure()))
            .table();

    private static final String SHOWN =
            "altitude_m ambient_pressure_Pa throttle mixture_ratio thrust_N isp_s mass_flow_kg_s exit_pressure_Pa separated";
    private static final String POINTS = "points";

    private final EngineTable table;

    /** @param table an engine over its settings */
    public EngineTableView(EngineTable table) {
        this.table = table;
    }

    private static Function<EngineTable.Point, OptionalDouble> state(ToDoubleFunction<EngineTable.State> value) {
        return point -> point.state()
                .map(s -> OptionalDouble.of(value.applyAsDouble(s)))
                .orElse(OptionalDouble.empty());
    }

    /** @return JSON document: the axes, what each column holds, every point, and which of them do not close */
    public Map<String, Object> json() {
        Map<String, Object> axes = new LinkedHashMap<>();
        if (table.surroundings().get(0).altitude().isPresent()) {
            axes.put(
                    "altitude_m",
                    table.surroundings().stream()
                            .map(a -> a.altitude().orElseThrow())
                            .toList());
        } else {
            axes.put(
                    "ambient_pressure_Pa",
                    table.surroundings().stream()
                            .map(EngineTable.Surrounding::pressure)
                            .toList());
        }
        axes.put("throttle", table.throttles());
        axes.put("mixture_ratio", table.mixtureRatios());
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", table.design().concept().name());
        map.put("axes", axes);
        map.put("columns", schema().document());
        map.put("complete", table.points().stream().allMatch(p -> p.state().isPresent()));
        map.put("not_closed", table.failures());
        map.put(POINTS, FigureJson.each(COLUMNS, table.points()));
        return map;
    }

    /** @return a heading line and a line for each point */
    public String csv() {
        return new DocumentTable(json()).csv(POINTS).orElseThrow();
    }

    /** @return bytes of a Parquet file with a row for each point */
    public byte[] parquet() {
        List<Row> rows = new ArrayList<>();
        for (EngineTable.Point point : table.points()) {
            List<Optional<Object>> cells = new ArrayList<>();
            for (Object value : FigureJson.of(COLUMNS, point).values()) {
                cells.add(value instanceof Optional<?> optional ? optional.map(v -> v) : Optional.of(value));
            }
            rows.add(new Row(cells));
        }
        return RowFile.parquet(schema(), rows);
    }

    private static RowSchema schema() {
        return new RowSchema(
                COLUMNS.figures().stream().map(EngineTableView::column).toList());
    }

    private static Column column(Figure<EngineTable.Point> figure) {
        Column.Role role =
                switch (figure.key()) {
                    case "altitude_m", "ambient_pressure_Pa", "throttle", "mixture_ratio" -> Column.Role.INPUT;
                    case "failure" -> Column.Role.FAILURE;
                    case "within_limits" -> Column.Role.LIMIT;
                    default -> Column.Role.FIGURE;
                };
        Column.Kind kind = figure.isNumber()
                ? Column.Kind.NUMBER
                : role == Column.Role.FAILURE ? Column.Kind.WORD : Column.Kind.TRUTH;
        String unit = figure.isNumber() ? figure.notation().siUnit() : "";
        return new Column(figure.key(), kind, role, unit, figure.title());
    }

    /** @return table for a terminal, and which settings do not close */
    public String text() {
        StringBuilder text = new StringBuilder(
                TextTable.of(FigureRows.list(table.design().concept().name(), COLUMNS, POINTS, table.points(), SHOWN)));
        table.failures()
                .forEach(line -> text.append("does not run at ").append(line).append(System.lineSeparator()));
        return text.toString();
    }
}
