package dev.penstock.app.web;

import dev.penstock.reports.text.PageTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A table as the pages' script draws it. Column titles that start with {@code <} hold text. Not thread-safe. */
final class Grid {

    private final String caption;
    private final List<Map<String, Object>> columns = new ArrayList<>();
    private final List<Map<String, Object>> rows = new ArrayList<>();

    Grid(String caption, String... titles) {
        this.caption = caption;
        for (String title : titles) {
            boolean text = title.startsWith("<");
            columns.add(Map.of("title", text ? title.substring(1) : title, "text", text));
        }
    }

    /**
     * @param table a table of a report
     * @return the same as the pages' script draws it
     */
    static Map<String, Object> of(PageTable table) {
        List<Map<String, Object>> lines = new ArrayList<>();
        for (PageTable.Row row : table.rows()) {
            List<Object> cells = new ArrayList<>();
            for (int i = 0; i < row.cells().size(); i++) {
                String text = row.cells().get(i);
                cells.add(row.trail(i).isEmpty() ? text : new Cell(text, row.trail(i)).map());
            }
            lines.add(Map.of("cells", cells));
        }
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("caption", table.caption());
        map.put(
                "columns",
                table.columns().stream()
                        .map(c -> Map.of("title", c.title(), "text", c.text()))
                        .toList());
        map.put("rows", lines);
        return map;
    }

    /**
     * @param cells texts, and {@link Cell}s for numbers that have a trail; the first is the heading of the row
     * @return this table
     */
    Grid row(Object... cells) {
        List<Object> shown = new ArrayList<>();
        for (Object cell : cells) {
            shown.add(cell instanceof Cell number ? number.map() : cell);
        }
        rows.add(Map.of("cells", shown));
        return this;
    }

    Map<String, Object> map() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("caption", caption);
        map.put("columns", columns);
        map.put("rows", rows);
        return map;
    }
}
