package dev.penstock.study.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.duckdb.DuckDBAppender;
import org.duckdb.DuckDBConnection;

/** Makes the Parquet file of a batch. The same rows give the same bytes. */
public final class RowFile {

    private static final String TABLE = "part";

    private RowFile() {}

    /**
     * @param schema columns
     * @param rows rows, each with a cell for every column
     * @return the bytes of a Parquet file
     * @throws dev.penstock.errors.InvalidInput if DuckDB is not there for this machine
     */
    public static byte[] parquet(RowSchema schema, List<Row> rows) {
        try {
            Path folder = Files.createTempDirectory("penstock-rows");
            Path file = folder.resolve(BatchFolder.PART);
            try {
                write(schema, rows, file);
                return Files.readAllBytes(file);
            } finally {
                Files.deleteIfExists(file);
                Files.deleteIfExists(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(RowSchema schema, List<Row> rows, Path file) {
        try (Connection connection = RowDatabase.open();
                Statement statement = connection.createStatement()) {
            statement.execute("CREATE TABLE " + TABLE + " (" + schema.declaration() + ")");
            try (DuckDBAppender appender =
                    connection.unwrap(DuckDBConnection.class).createAppender(TABLE)) {
                for (Row row : rows) {
                    append(appender, schema, row);
                }
            }
            statement.execute("COPY " + TABLE + " TO " + RowDatabase.literal(file.toString())
                    + " (FORMAT parquet, COMPRESSION zstd)");
        } catch (SQLException e) {
            throw RowDatabase.defect(e);
        }
    }

    private static void append(DuckDBAppender appender, RowSchema schema, Row row) throws SQLException {
        if (row.cells().size() != schema.columns().size()) {
            throw new IllegalArgumentException(row + " does not fit " + schema);
        }
        appender.beginRow();
        for (int i = 0; i < row.cells().size(); i++) {
            Object cell = row.cells().get(i).orElse(null);
            if (cell == null) {
                appender.appendNull();
                continue;
            }
            switch (schema.columns().get(i).kind()) {
                case WHOLE -> appender.append((long) (Long) cell);
                case NUMBER -> appender.append((double) (Double) cell);
                case TRUTH -> appender.append((boolean) (Boolean) cell);
                case WORD -> appender.append((String) cell);
                case WORDS -> appender.append((List<?>) cell);
            }
        }
        appender.endRow();
    }
}
