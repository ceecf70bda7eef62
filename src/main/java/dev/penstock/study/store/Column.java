package dev.penstock.study.store;

/**
 * One column of a study's rows.
 *
 * @param name name in the files, the same as in documents and trails
 * @param kind what its cells hold
 * @param role what it tells of the row
 * @param unit SI unit; empty for plain numbers and words
 * @param title name for people
 */
public record Column(String name, Kind kind, Role role, String unit, String title) {

    /** What a cell holds, if it holds anything. */
    public enum Kind {
        /** a {@link Long} */
        WHOLE("BIGINT"),
        /** a {@link Double} */
        NUMBER("DOUBLE"),
        /** a {@link Boolean} */
        TRUTH("BOOLEAN"),
        /** a {@link String} */
        WORD("VARCHAR"),
        /** a list of {@link String} */
        WORDS("VARCHAR[]");

        private final String sql;

        Kind(String sql) {
            this.sql = sql;
        }

        /** @return its type in SQL */
        String sql() {
            return sql;
        }
    }

    /** What a column tells. */
    public enum Role {
        /** which point of the study it is */
        POINT,
        /** a varied input */
        INPUT,
        /** a figure of the answer */
        FIGURE,
        /** a limit of the answer */
        LIMIT,
        /** why there is no answer */
        FAILURE
    }

    /** @return the name as SQL writes it */
    String quoted() {
        return quoted(name);
    }

    static String quoted(String name) {
        return '"' + name.replace("\"", "\"\"") + '"';
    }
}
