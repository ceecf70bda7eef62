package dev.penstock.reports.text;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * A table of a page.
 *
 * @param caption what it shows
 * @param columns columns
 * @param rows cells, row by row
 */
public record PageTable(String caption, List<Column> columns, List<Row> rows) {

    /**
     * A column.
     *
     * @param title title with the unit
     * @param text whether it holds text, set to the left; figures are set to the right
     */
    public record Column(String title, boolean text) {}

    /**
     * A row.
     *
     * @param cells cells
     * @param trails path of the trail of each cell; empty text, or a shorter list, for none
     * @param mark "missed" for a missed limit, "best" for the best of a comparison, else empty
     */
    public record Row(List<String> cells, List<String> trails, String mark) {

        public Row {
            cells = List.copyOf(cells);
            trails = List.copyOf(trails);
        }

        /**
         * @param column index of a cell
         * @return path of its trail; empty text for none
         */
        public String trail(int column) {
            return column < trails.size() ? trails.get(column) : "";
        }
    }

    public PageTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * @param other table of the same columns, or of the first of them
     * @return this table with the rows of the other after its own
     */
    public PageTable and(PageTable other) {
        List<Row> all = new ArrayList<>(rows);
        for (Row row : other.rows) {
            List<String> cells = new ArrayList<>(row.cells);
            cells.addAll(Collections.nCopies(columns.size() - cells.size(), ""));
            all.add(new Row(cells, row.trails, row.mark));
        }
        return new PageTable(caption, columns, all);
    }

    /**
     * @param name what the rows belong to
     * @return the same table with that name before the title of each row
     */
    public PageTable named(String name) {
        List<Row> all = new ArrayList<>();
        for (Row row : rows) {
            List<String> cells = new ArrayList<>(row.cells);
            cells.set(0, name + ", " + cells.get(0));
            all.add(new Row(cells, row.trails, row.mark));
        }
        return new PageTable(caption, columns, all);
    }

    /**
     * @param words what a cell becomes
     * @return the same table in these words
     */
    public PageTable inWords(UnaryOperator<String> words) {
        return new PageTable(
                caption,
                columns,
                rows.stream()
                        .map(row -> new Row(row.cells.stream().map(words).toList(), row.trails, row.mark))
                        .toList());
    }

    /** @return the same table without the columns in which no row has anything; the first one stays */
    public PageTable filled() {
        List<Integer> kept = IntStream.range(0, columns.size())
                .filter(c -> c == 0 || rows.stream().anyMatch(row -> says(row.cells.get(c))))
                .boxed()
                .toList();
        return new PageTable(
                caption,
                kept.stream().map(columns::get).toList(),
                rows.stream()
                        .map(row -> new Row(
                                kept.stream().map(row.cells::get).toList(),
                                row.trails.isEmpty()
                                        ? row.trails
                                        : kept.stream().map(row::trail).toList(),
                                row.mark))
                        .toList());
    }

    private static boolean says(String cell) {
        return !cell.isEmpty() && !cell.equals("-");
    }

    /** @return the same table on a page that holds no trail of its numbers */
    public PageTable untraced() {
        return new PageTable(
                caption,
                columns,
                rows.stream()
                        .map(row -> new Row(row.cells, List.of(), row.mark))
                        .toList());
    }

    /**
     * @param caption what it shows
     * @param titles column titles; one that starts with {@code <} holds text
     * @return an empty table to add rows to
     */
    public static Builder titled(String caption, String... titles) {
        return new Builder(caption, titles);
    }

    /** Collects the rows of a table. Not thread-safe. */
    public static final class Builder {

        private final String caption;
        private final List<Column> columns = new ArrayList<>();
        private final List<Row> rows = new ArrayList<>();

        private Builder(String caption, String... titles) {
            this.caption = caption;
            for (String title : titles) {
                boolean text = title.startsWith("<");
                columns.add(new Column(text ? title.substring(1) : title, text));
            }
        }

        /**
         * @param cells cells of the next row
         * @return this builder
         */
        public Builder row(String... cells) {
            rows.add(new Row(List.of(cells), List.of(), ""));
            return this;
        }

        /**
         * @param mark "missed", "best" or empty text
         * @param cells cells of the next row
         * @return this builder
         */
        public Builder marked(String mark, String... cells) {
            rows.add(new Row(List.of(cells), List.of(), mark));
            return this;
        }

        /**
         * Ties the cells of the last row to their trails.
         *
         * @param paths path of the trail of each cell; empty text for none
         * @return this builder
         */
        public Builder traced(String... paths) {
            Row row = rows.remove(rows.size() - 1);
            rows.add(new Row(row.cells(), List.of(paths), row.mark()));
            return this;
        }

        /** @return the table */
        public PageTable table() {
            return new PageTable(caption, columns, rows);
        }
    }
}
