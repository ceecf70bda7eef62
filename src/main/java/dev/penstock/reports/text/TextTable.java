package dev.penstock.reports.text;

import java.util.ArrayList;
import java.util.List;

/** A table for a terminal: first column to the left, the others to the right unless told otherwise. Not thread-safe. */
public final class TextTable {

    private final List<List<String>> rows = new ArrayList<>();
    private final List<Boolean> left = new ArrayList<>();
    private boolean headed;

    /**
     * @param table a table of a page
     * @return its lines; the caption stands above the first column where that holds words
     */
    public static String of(PageTable table) {
        TextTable text = new TextTable();
        List<String> titles = new ArrayList<>();
        for (PageTable.Column c : table.columns()) {
            boolean captioned = titles.isEmpty() && c.text() && !table.caption().isEmpty();
            titles.add((c.text() ? "<" : "") + (captioned ? table.caption() : c.title()));
        }
        text.header(titles.toArray(String[]::new));
        table.rows().forEach(row -> text.row(row.cells().toArray(String[]::new)));
        return text.text();
    }

    /**
     * @param titles column titles; one that starts with {@code <} is aligned to the left
     * @return this table
     */
    public TextTable header(String... titles) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < titles.length; i++) {
            left.add(i == 0 || titles[i].startsWith("<"));
            cells.add(titles[i].startsWith("<") ? titles[i].substring(1) : titles[i]);
        }
        rows.add(0, cells);
        headed = true;
        return this;
    }

    /**
     * @param cells cells of the next row
     * @return this table
     */
    public TextTable row(String... cells) {
        rows.add(List.of(cells));
        return this;
    }

    /** @return whether no row but the header was added */
    public boolean isEmpty() {
        return rows.size() <= (headed ? 1 : 0);
    }

    /** @return the table as lines, each ended */
    public String text() {
        int columns = rows.stream().mapToInt(List::size).max().orElse(0);
        int[] width = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                width[i] = Math.max(width[i], length(row.get(i)));
            }
        }
        StringBuilder text = new StringBuilder();
        for (int r = 0; r < rows.size(); r++) {
            line(text, rows.get(r), width);
            if (r == 0 && headed) {
                List<String> rules = new ArrayList<>();
                for (int w : width) {
                    rules.add("-".repeat(w));
                }
                line(text, rules, width);
            }
        }
        return text.toString();
    }

    private void line(StringBuilder text, List<String> cells, int[] width) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            String pad = " ".repeat(width[i] - length(cells.get(i)));
            boolean leftwards = i < left.size() ? left.get(i) : i == 0;
            line.append(i == 0 ? "" : "  ").append(leftwards ? cells.get(i) + pad : pad + cells.get(i));
        }
        text.append(line.toString().stripTrailing()).append(System.lineSeparator());
    }

    private static int length(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
