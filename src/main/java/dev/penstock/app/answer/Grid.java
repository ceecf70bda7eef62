package dev.penstock.app.answer;

import dev.penstock.reports.text.PageTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A table as the pages' script draws it. */
public final class Grid {

    private Grid() {}

    /**
     * @param table a table of a report
     * @return the same as the pages' script draws it
     */
    public static Map<String, Object> of(PageTable table) {
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
}
