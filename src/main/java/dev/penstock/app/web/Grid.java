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

    Grid row(String... cells) {
        return marked("", cells);
    }

    /**
     * @param mark class of the row: "missed" or empty
     * @param cells cells, the first a heading
     */
    Grid marked(String mark, String... cells) {
        rows.add(Map.of("mark", mark, "cells", List.of(cells)));
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
