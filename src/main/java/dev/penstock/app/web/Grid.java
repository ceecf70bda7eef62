package dev.penstock.app.web;

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
