package dev.penstock.study.store;

import dev.penstock.errors.InvalidInput;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Properties;
import org.duckdb.DuckDBDriver;

/**
 * Opens DuckDB in this process: SQL over files, no server, nothing fetched. One thread and little memory, so that it never
 * competes with the balances and writes the same bytes for the same rows.
 */
final class RowDatabase {

    private static final String MOST_MEMORY = "512MB";

    private RowDatabase() {}

    /**
     * @return an empty database in memory
     * @throws InvalidInput if DuckDB is not there for this machine
     */
    static Connection open() {
        Properties settings = new Properties();
        settings.setProperty("threads", "1");
        settings.setProperty("memory_limit", MOST_MEMORY);
        settings.setProperty("preserve_insertion_order", "true");
        settings.setProperty("autoinstall_known_extensions", "false");
        settings.setProperty("autoload_known_extensions", "false");
        settings.setProperty("jdbc_stream_results", "true");
        try {
            return new DuckDBDriver().connect("jdbc:duckdb:", settings);
        } catch (SQLException | LinkageError e) {
            throw new InvalidInput(
                    "",
                    "duckdb_jdbc",
                    "not usable here (" + firstLine(e) + ")",
                    "rows are stored by DuckDB; put the archive of Maven Central for this machine among the libraries");
        }
    }

    /** An answer of the database that only a defect explains. */
    static IllegalStateException defect(SQLException e) {
        return new IllegalStateException(firstLine(e), e);
    }

    static String firstLine(Throwable e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("").strip();
    }

    /** A text as SQL writes it. */
    static String literal(String text) {
        return "'" + text.replace("'", "''") + "'";
    }
}
