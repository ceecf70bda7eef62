package dev.penstock.study.store;

import dev.penstock.errors.InvalidInput;
import dev.penstock.study.store.StudySummary.Reason;
import dev.penstock.study.store.StudySummary.Share;
import dev.penstock.study.store.StudySummary.Spread;
import java.nio.file.Path;
import java.sql.Array;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * The rows of a study's folder, asked by SQL. The files stay where they are: DuckDB reads the columns that a question needs,
 * a few thousand values at a time. Only finished batches count, so a study may be asked while it runs. Not thread-safe.
 */
public final class StoredRows implements AutoCloseable {

    /** Names of the columns that every study of many points has. */
    public static final String POINT = "point";

    /** Whether the answer keeps all its limits. */
    public static final String WITHIN_LIMITS = "within_limits";

    /** Limits that the answer misses. */
    public static final String LIMITS_MISSED = "limits_missed";

    /** The limit with the least margin. */
    public static final String TIGHTEST_LIMIT = "tightest_limit";

    /** Whether the answer keeps the constraints of the study; a column of those that have some. */
    public static final String CONSTRAINTS_KEPT = "constraints_kept";

    /** One sentence on why there is no answer. */
    public static final String FAILURE = "failure";

    /** Kind of the failure. */
    public static final String FAILURE_KIND = "failure_kind";

    /** What could not be solved. */
    public static final String FAILURE_SUBJECT = "failure_subject";

    /** Values that a question about percentiles may hold at once. */
    private static final long HELD = 20_000_000;

    private static final int MOST_REASONS = 20;
    private static final String NUMBERS = "'-?[0-9]+[.]?[0-9]*([eE][-+]?[0-9]+)?'";

    private final Connection connection;
    private final List<Path> parts;
    private final List<Column> columns = new ArrayList<>();
    private String name = "";
    private long points;
    private long batches;

    private StoredRows(Connection connection, List<Path> parts) {
        this.connection = connection;
        this.parts = parts;
    }

    /**
     * @param folder folder of a study
     * @return its rows
     * @throws InvalidInput if it is not the folder of a study, or nothing is finished there
     */
    public static StoredRows open(Path folder) {
        List<Path> parts = BatchFolder.parts(folder);
        if (parts.isEmpty()) {
            throw new InvalidInput("", "OUT", folder.toString(), "no batch is finished there yet");
        }
        StoredRows rows = new StoredRows(RowDatabase.open(), parts);
        try {
            rows.readSchema(folder.resolve(BatchFolder.SCHEMA));
            String files = parts.stream()
                    .map(part -> RowDatabase.literal(part.toString()))
                    .collect(Collectors.joining(", "));
            rows.execute("SET enable_object_cache = true");
            rows.execute("CREATE VIEW rows AS SELECT * FROM read_parquet([" + files + "], hive_partitioning = false)");
            return rows;
        } catch (SQLException e) {
            rows.close();
            throw new InvalidInput(
                    "", "OUT", folder.toString(), "its files cannot be read (" + RowDatabase.firstLine(e) + ")");
        }
    }

    private void readSchema(Path file) throws SQLException {
        String json = "read_json(" + RowDatabase.literal(file.toString()) + ")";
        each("SELECT study, points, batches FROM " + json, row -> {
            name = row.getString(1);
            points = row.getLong(2);
            batches = row.getLong(3);
        });
        each(
                "SELECT unnest(columns, recursive := true) FROM " + json,
                row -> columns.add(new Column(
                        row.getString("name"),
                        Column.Kind.valueOf(row.getString("kind").toUpperCase(Locale.ROOT)),
                        Column.Role.valueOf(row.getString("role").toUpperCase(Locale.ROOT)),
                        row.getString("unit"),
                        row.getString("title"))));
    }

    /** @return the columns */
    public List<Column> columns() {
        return List.copyOf(columns);
    }

    /**
     * @param objectives two figures that a frontier is wanted of, or none
     * @return what the rows say together
     * @throws InvalidInput if an objective is no figure of the rows
     */
    public StudySummary summary(List<Objective> objectives) {
        try {
            long[] counts = new long[4];
            each(
                    "SELECT count(*), count(*) FILTER (failure IS NULL), count(*) FILTER (within_limits), count(*) FILTER ("
                            + (constrained() ? CONSTRAINTS_KEPT : "false") + ") FROM rows",
                    row -> {
                        for (int i = 0; i < counts.length; i++) {
                            counts[i] = row.getLong(i + 1);
                        }
                    });
            return new StudySummary(
                    name,
                    points,
                    batches,
                    parts.size(),
                    counts[0],
                    counts[1],
                    counts[2],
                    constrained() ? OptionalLong.of(counts[3]) : OptionalLong.empty(),
                    spreads(counts[0]),
                    shares("SELECT unnest(limits_missed) AS name FROM rows"),
                    shares("SELECT tightest_limit AS name FROM rows WHERE tightest_limit IS NOT NULL"),
                    reasons(),
                    objectives.isEmpty() ? Optional.empty() : Optional.of(frontier(objectives)));
        } catch (SQLException e) {
            throw RowDatabase.defect(e);
        }
    }

    private boolean constrained() {
        return columns.stream().anyMatch(c -> c.name().equals(CONSTRAINTS_KEPT));
    }

    private List<Spread> spreads(long rows) throws SQLException {
        List<Column> numbers = columns.stream()
                .filter(c -> c.kind() == Column.Kind.NUMBER && c.role() != Column.Role.INPUT)
                .toList();
        String levels = StudySummary.PERCENTILES.stream()
                .map(p -> Double.toString(p / 100.0))
                .collect(Collectors.joining(", "));
        int together = (int) Math.max(1, Math.min(numbers.size(), HELD / Math.max(1, rows)));
        List<Spread> spreads = new ArrayList<>();
        for (int from = 0; from < numbers.size(); from += together) {
            List<Column> some = numbers.subList(from, Math.min(numbers.size(), from + together));
            String asked = some.stream()
                    .map(Column::quoted)
                    .map(c -> "count(" + c + "), min(" + c + "), max(" + c + "), avg(" + c + "), quantile_cont(" + c
                            + ", [" + levels + "])")
                    .collect(Collectors.joining(", "));
            each("SELECT " + asked + " FROM rows", row -> {
                int at = 1;
                for (Column column : some) {
                    if (row.getLong(at) > 0) {
                        spreads.add(new Spread(
                                column,
                                row.getLong(at),
                                row.getDouble(at + 1),
                                row.getDouble(at + 2),
                                row.getDouble(at + 3),
                                doubles(row.getArray(at + 4))));
                    }
                    at += 5;
                }
            });
        }
        return spreads;
    }

    private List<Share> shares(String names) throws SQLException {
        List<Share> shares = new ArrayList<>();
        each(
                "SELECT name, count(*) AS n FROM (" + names + ") GROUP BY name ORDER BY n DESC, name",
                row -> shares.add(new Share(row.getString(1), row.getLong(2))));
        return shares;
    }

    private List<Reason> reasons() throws SQLException {
        List<Reason> reasons = new ArrayList<>();
        each(
                "SELECT failure_kind, failure_subject, regexp_replace(failure, " + NUMBERS + ", '#', 'g') AS words,"
                        + " arg_min(failure, point), count(*) AS n FROM rows WHERE failure IS NOT NULL"
                        + " GROUP BY ALL ORDER BY n DESC, words LIMIT " + MOST_REASONS,
                row -> reasons.add(new Reason(
                        row.getString(1), row.getString(2), row.getString(3), row.getString(4), row.getLong(5))));
        return reasons;
    }

    /**
     * A figure that should be small or large.
     *
     * @param figure name of its column
     * @param least whether less is better
     */
    public record Objective(String figure, boolean least) {}

    private List<Map<String, Object>> frontier(List<Objective> objectives) throws SQLException {
        if (objectives.size() != 2) {
            throw new InvalidInput(
                    "", "frontier", objectives.size() + " objectives", "a summary shows a frontier of two figures");
        }
        List<String> costs = new ArrayList<>();
        for (Objective objective : objectives) {
            Column column = column(objective.figure());
            costs.add((objective.least() ? "" : "-") + column.quoted());
        }
        String shown = columns.stream()
                .filter(c -> c.role() == Column.Role.POINT
                        || c.role() == Column.Role.INPUT
                        || objectives.stream().anyMatch(o -> o.figure().equals(c.name())))
                .map(Column::quoted)
                .collect(Collectors.joining(", "));
        List<Map<String, Object>> frontier = new ArrayList<>();
        each(
                "SELECT * EXCLUDE (a, b, best) FROM (SELECT *, min(b) OVER (ORDER BY a, b, point ROWS BETWEEN UNBOUNDED"
                        + " PRECEDING AND 1 PRECEDING) AS best FROM (SELECT " + shown + ", " + costs.get(0) + " AS a, "
                        + costs.get(1) + " AS b FROM rows WHERE within_limits"
                        + (constrained() ? " AND " + CONSTRAINTS_KEPT : "")
                        + ") WHERE a IS NOT NULL AND b IS NOT NULL)"
                        + " WHERE best IS NULL OR b < best ORDER BY a",
                row -> {
                    Map<String, Object> map = new LinkedHashMap<>();
                    for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
                        Object value = row.getObject(i);
                        map.put(row.getMetaData().getColumnName(i), value instanceof Long n ? n.intValue() : value);
                    }
                    frontier.add(map);
                });
        return frontier;
    }

    private Column column(String figure) {
        return columns.stream()
                .filter(c -> c.name().equals(figure) && c.kind() == Column.Kind.NUMBER)
                .findFirst()
                .orElseThrow(() -> new InvalidInput(
                        "",
                        "figure",
                        figure,
                        "write one of "
                                + columns.stream()
                                        .filter(c -> c.kind() == Column.Kind.NUMBER)
                                        .map(Column::name)
                                        .collect(Collectors.joining(", "))));
    }

    /**
     * Hands over every row, batch after batch.
     *
     * @param each told of the cells of each row in the order of the columns
     */
    public void forEach(Consumer<List<Optional<Object>>> each) {
        try {
            each("SELECT * FROM rows", row -> {
                List<Optional<Object>> cells = new ArrayList<>();
                for (int i = 1; i <= columns.size(); i++) {
                    Object value = row.getObject(i);
                    cells.add(Optional.ofNullable(value instanceof Array list ? words(list) : value));
                }
                each.accept(cells);
            });
        } catch (SQLException e) {
            throw RowDatabase.defect(e);
        }
    }

    private static List<String> words(Array array) throws SQLException {
        List<String> words = new ArrayList<>();
        for (Object word : (Object[]) array.getArray()) {
            words.add((String) word);
        }
        return words;
    }

    private static List<Double> doubles(Array array) throws SQLException {
        List<Double> numbers = new ArrayList<>();
        for (Object number : (Object[]) array.getArray()) {
            numbers.add((Double) number);
        }
        return numbers;
    }

    /** Takes a row of an answer. */
    private interface Taker {
        void take(ResultSet row) throws SQLException;
    }

    private void each(String question, Taker taker) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet answer = statement.executeQuery(question)) {
            while (answer.next()) {
                taker.take(answer);
            }
        }
    }

    private void execute(String command) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(command);
        }
    }

    @Override
    public void close() {
        try {
            connection.close();
        } catch (SQLException e) {
            throw RowDatabase.defect(e);
        }
    }
}
